// The readings of the vacuum gauge, with the pump running and valved off.

import type { JSX } from "preact";
import { enter } from "../../../address";
import { useJob } from "../../../job/job-context";
import { itemsAt, textAt } from "../../../job/job-path";
import type { ReadingKind } from "../../../job/readings";
import { message } from "../../../locale";
import type { AnyField } from "../../../parts/card-fields";
import { ChoiceRow } from "../../../parts/choice-row";
import { textOf } from "../../../parts/fields";
import { vacuumUnit } from "../../../parts/vacuum-unit";
import { ReadingEntry } from "./reading-entry";
import { ReadingList, type ReadingNote } from "./reading-list";

const kind: ReadingKind = {
  path: ["evacuation", "readings"],
  columns: [
    {
      name: "pressure",
      label: "reading-vacuum",
      quantity: "absolute-pressure",
      unit: vacuumUnit,
      stepAt: ["instruments", "vacuumGauge", "resolution"],
      counts: [-100, -10, -1, 1, 10, 100],
    },
  ],
};

const fields: readonly AnyField[] = [
  { name: "pressure", quantity: "absolute-pressure", unit: vacuumUnit },
  { name: "valvedOff", as: "yes-no", otherwise: "false" },
];

const valve = "next_valvedOff";

/** As chosen, else as at the last reading. */
function useValvedOff(): boolean {
  const { document } = useJob();
  const last = itemsAt(document, ...kind.path).at(-1);
  const chosen = textOf(valve);
  return (chosen === "" && last !== undefined ? textAt(last, "valvedOff") : chosen) === "true";
}

export function VacuumEntry(): JSX.Element {
  const valvedOff = useValvedOff();
  return (
    <ReadingEntry kind={kind} more={{ valvedOff }} emptied={{ [valve]: "" }}>
      <ChoiceRow
        name={valve}
        legend={message("reading-valve")}
        beside
        chosen={String(valvedOff)}
        onChoose={(word) => enter(valve, word)}
        choices={["false", "true"].map((word) => ({ word, label: message(`valved-off-${word}`) }))}
      />
    </ReadingEntry>
  );
}

export function VacuumList(): JSX.Element {
  const { assessment } = useJob();
  const valvedOff = useValvedOff();
  const noteOf = (place: number, reading: Parameters<typeof textAt>[0]): ReadingNote => {
    const isOff = textAt(reading, "valvedOff") === "true";
    const isOfHold = assessment.vacuumHoldReadings.includes(place);
    return { text: message(isOff && !isOfHold ? "reading-before-hold" : `valved-off-${isOff}`), isLeftOut: !isOfHold };
  };
  return <ReadingList kind={kind} fields={fields} noteOf={noteOf} more={{ valvedOff }} />;
}
