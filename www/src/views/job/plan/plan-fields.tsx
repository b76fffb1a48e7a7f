// What the plan asks: plate, lines, rooms, the air, the instruments.

import type { JSX } from "preact";
import { JobFields } from "../../../job/job-fields";
import { useJob } from "../../../job/job-context";
import { fieldName, itemsAt, textAt } from "../../../job/job-path";
import { message } from "../../../locale";
import { barometerUnit } from "../../../parts/air-fields";
import type { AnyField } from "../../../parts/card-fields";
import { Disclosure } from "../../../parts/disclosure";
import { floorUnit, runUnit } from "../../../unit-choice";
import { ItemList } from "./item-list";

/** Plates and scales in pounds say "6 lb 4 oz", for which a pad of figures has no letters. */
function mass(name: string): AnyField {
  return { name, quantity: "mass", ...(runUnit() === "ft" && { words: true as const }) };
}

const run = (name: string): AnyField => ({ name, quantity: "length", unit: runUnit });

/** Whether something behind a line of the plan is entered or wrong. */
function useMustShow(at: readonly string[], names: readonly string[]): boolean {
  const { document, problems } = useJob();
  return names.some((name) => textAt(document, ...at, name) !== "" || problems.some(({ field }) => field === fieldName(...at, name)));
}

export function NameFields(): JSX.Element {
  return <JobFields at={[]} fields={["name", "site", "customer", "technician"].map((name) => ({ name, words: true as const }))} />;
}

export function PlateFields(): JSX.Element {
  const more = ["designPressure", "plateTestPressure", "lowestRating", "plateReduction"];
  return (
    <>
      <JobFields
        at={["plate"]}
        fields={[
          { name: "equipment", words: true },
          { name: "refrigerant", as: "refrigerant", none: "choose" },
          mass("plateCharge"),
          run("prechargedLength"),
          { name: "plateAdder", quantity: "mass-per-length" },
          run("longestLength"),
          run("longestLift"),
          { name: "arrives", choices: ["charged", "empty"], otherwise: "charged" },
        ]}
      />
      <Disclosure name="plan-more" summary={<span>{message("plan-more-plate")}</span>} mustShow={useMustShow(["plate"], more)}>
        <JobFields
          at={["plate"]}
          fields={[
            { name: "designPressure", quantity: "gauge-pressure" },
            { name: "plateTestPressure", quantity: "gauge-pressure" },
            { name: "lowestRating", quantity: "gauge-pressure" },
            { name: "plateReduction", quantity: "mass-per-length" },
          ]}
        />
      </Disclosure>
    </>
  );
}

export function LineFields(): JSX.Element {
  return (
    <>
      <JobFields at={["lines"]} fields={[run("length"), run("lift"), { name: "higherUnit", choices: ["indoor", "outdoor"] }]} />
      <OneLine line="liquidLine" />
      <OneLine line="gasLine" />
      <ItemList
        at={["lines", "accessories"]}
        fields={[{ name: "name", words: true }, mass("mass")]}
        legend={message("field-accessories")}
        add={message("plan-add-accessory")}
        nameOf={(number) => message("plan-accessory-numbered", { number })}
      />
    </>
  );
}

function OneLine({ line }: { readonly line: "liquidLine" | "gasLine" }): JSX.Element {
  const { document } = useJob();
  const at = ["lines", line];
  const hasPorts = ["indoorPorts", "outdoorPorts"].some((ports) => itemsAt(document, ...at, ports).length > 0);
  return (
    <div class="plan-line" role="group" aria-label={message(`field-${line}`)}>
      <h3>{message(`field-${line}`)}</h3>
      <JobFields at={at} fields={[{ name: "tube", as: "tube" }, { name: "wall", quantity: "length" }, { name: "unions" }, { name: "brazedCouplings" }]} />
      <Disclosure name="plan-more" summary={<span>{message("plan-ports")}</span>} mustShow={hasPorts}>
        <p class="note">{message("plan-ports-hint")}</p>
        <Ports at={[...at, "indoorPorts"]} title="plan-indoor-ports" />
        <Ports at={[...at, "outdoorPorts"]} title="plan-outdoor-ports" />
      </Disclosure>
    </div>
  );
}

function Ports({ at, title }: { readonly at: readonly string[]; readonly title: string }): JSX.Element {
  return (
    <ItemList
      at={at}
      fields={[{ name: "tube", as: "tube", label: "plan-port" }]}
      legend={message(title)}
      add={message("plan-add-port")}
      nameOf={(number) => message("plan-port-numbered", { number })}
    />
  );
}

export function RoomFields(): JSX.Element {
  return (
    <>
      <ItemList
        at={["rooms"]}
        fields={[
          { name: "name", words: true },
          { name: "area", quantity: "area", unit: floorUnit },
          run("height"),
          run("releaseHeight"),
          { name: "mounting", choices: ["floor", "window", "wall", "ceiling"] },
        ]}
        legend={message("field-rooms")}
        isTitled
        add={message("plan-add-room")}
        nameOf={(number) => message("plan-room-numbered", { number })}
      />
      <Disclosure name="plan-more" summary={<span>{message("field-roomRule")}</span>} mustShow={useMustShow([], ["roomRule"])}>
        <JobFields at={[]} fields={[{ name: "roomRule", choices: ["room-formula", "concentration-limit"], otherwise: "room-formula" }]} />
      </Disclosure>
    </>
  );
}

export function PlaceFields(): JSX.Element {
  return (
    <JobFields
      at={[]}
      fields={[
        { name: "altitude", quantity: "altitude", signed: true, instead: ["barometer"] },
        { name: "barometer", quantity: "absolute-pressure", unit: barometerUnit, words: true, instead: ["altitude"] },
      ]}
    />
  );
}
