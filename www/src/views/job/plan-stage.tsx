// The plan: what the plate says, how the lines run, which rooms there are, with which instruments; what follows for
// charge, room and van.

import type { JSX } from "preact";
import { useJob } from "../../job/job-context";
import { message } from "../../locale";
import { Working } from "../../parts/working";
import { floorUnit, roomUnit, runUnit } from "../../unit-choice";
import { BringList, NitrogenFields } from "./plan/bring-list";
import { insulationPlace, lineSetPlace } from "./plan/card-links";
import { InstrumentFields } from "./plan/instrument-fields";
import { LineFields, NameFields, PlaceFields, PlateFields, RoomFields } from "./plan/plan-fields";
import { PlanFinding } from "./plan/plan-finding";

export function PlanStage(): JSX.Element {
  const { document, assessment, problems } = useJob();
  const [charge, roomLimit] = [assessment.charge ?? undefined, assessment.roomLimit ?? undefined];
  return (
    <>
      <PlanFinding charge={charge} roomLimit={roomLimit} limits={assessment.plateLimits ?? undefined} problems={problems} />
      {charge && <Working steps={charge.working} of={message("plan-charge")} units={{ length: runUnit() }} />}
      {roomLimit && <Working steps={roomLimit.working} of={message("room-limit-largest")} units={{ area: floorUnit(), length: runUnit(), volume: roomUnit() }} />}
      <h2>{message("plan-name")}</h2>
      <NameFields />
      <h2>{message("field-plate")}</h2>
      <PlateFields />
      <h2>{message("field-lines")}</h2>
      <LineFields />
      <RoomFields />
      <h2>{message("plan-air")}</h2>
      <PlaceFields />
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
