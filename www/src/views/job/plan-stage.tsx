// The plan: what the plate says, how the lines run, which rooms there are, with which instruments; what follows for
// charge, room and van. What is filled stands as one line.

import type { JSX } from "preact";
import { useJob } from "../../job/job-context";
import { itemsAt, textAt } from "../../job/job-path";
import { message } from "../../locale";
import { Working } from "../../parts/working";
import { floorUnit, roomUnit, runUnit } from "../../unit-choice";
import { captionOf } from "./circuit-view";
import { BringList, NitrogenFields } from "./plan/bring-list";
import { insulationPlace, lineSetPlace } from "./plan/card-links";
import { InstrumentFields } from "./plan/instrument-fields";
import { LineFields, NameFields, PlaceFields, PlateFields, RoomFields } from "./plan/plan-fields";
import { PlanFinding } from "./plan/plan-finding";
import { PlanPart } from "./plan/plan-part";

const names = ["name", "site", "customer", "technician"];
const air = ["altitude", "barometer"];

export function PlanStage(): JSX.Element {
  const { document, assessment, problems } = useJob();
  const [charge, roomLimit] = [assessment.charge ?? undefined, assessment.roomLimit ?? undefined];
  const texts = (...steps: readonly (readonly string[])[]): readonly string[] => steps.map((path) => textAt(document, ...path));
  const lines = texts(["lines", "length"], ["lines", "liquidLine", "tube"], ["lines", "gasLine", "tube"]);
  return (
    <>
      <PlanFinding charge={charge} roomLimit={roomLimit} limits={assessment.plateLimits ?? undefined} problems={problems} />
      {charge && <Working steps={charge.working} of={message("plan-charge")} isNamed units={{ length: runUnit() }} />}
      {roomLimit && (
        <Working
          steps={roomLimit.working}
          of={message("fact-largest-charge")}
          isNamed
          units={{ area: floorUnit(), length: runUnit(), volume: roomUnit() }}
        />
      )}
      <PlanPart title={message("plan-name")} told={texts(...names.map((name) => [name]))} starts={names}>
        <NameFields />
      </PlanPart>
      <PlanPart
        title={message("field-plate")}
        told={texts(...["refrigerant", "plateCharge", "plateAdder", "equipment"].map((name) => ["plate", name]))}
        starts={["plate."]}
      >
        <PlateFields />
      </PlanPart>
      <PlanPart title={message("field-lines")} told={lines.some((text) => text !== "") ? [captionOf(assessment.circuit)] : []} starts={["lines."]}>
        <LineFields />
      </PlanPart>
      <PlanPart
        title={message("field-rooms")}
        told={itemsAt(document, "rooms").map((room) => ["name", "area"].map((name) => textAt(room, name)).filter((text) => text !== "").join(" "))}
        starts={["rooms", "roomRule"]}
      >
        <RoomFields />
      </PlanPart>
      <PlanPart title={message("plan-air")} told={texts(...air.map((name) => [name]))} starts={air}>
        <PlaceFields />
      </PlanPart>
      <h2>{message("field-instruments")}</h2>
      <InstrumentFields />
      <BringList />
      <NitrogenFields />
      <h2>{message("plan-cards")}</h2>
      <div class="plan-cards">
        <a class="onward" href={lineSetPlace(document)}>
          {message("plan-to-line-set")}
        </a>
        <a class="onward" href={insulationPlace(document)}>
          {message("plan-to-insulation")}
        </a>
      </div>
    </>
  );
}
