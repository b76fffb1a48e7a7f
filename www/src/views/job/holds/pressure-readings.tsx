// The readings of the pressure test: what one is made of, and which of them count.

import type { JSX } from "preact";
import type { StandingTestAnswer } from "../../../core";
import { useJob } from "../../../job/job-context";
import { itemsAt, textAt } from "../../../job/job-path";
import { timeOfDay } from "../../../job/moment";
import type { ReadingKind } from "../../../job/readings";
import { enter } from "../../../address";
import { message } from "../../../locale";
import { barometerUnit } from "../../../parts/air-fields";
import type { AnyField } from "../../../parts/card-fields";
import { textOf } from "../../../parts/fields";
import { Tick } from "../../../parts/tick";
import { unitOf } from "../../../unit-choice";
import { ReadingEntry } from "./reading-entry";
import { ReadingList, type ReadingNote } from "./reading-list";

const kind: ReadingKind = {
  path: ["pressureTest", "readings"],
  columns: [
    {
      name: "gaugePressure",
      label: "reading-gauge",
      quantity: "gauge-pressure",
      unit: () => unitOf("gauge-pressure"),
      stepAt: ["instruments", "gauge", "resolution"],
      counts: [-10, -1, 1, 10],
    },
    {
      name: "temperature",
      label: "standing-test-tube",
      quantity: "temperature",
      unit: () => unitOf("temperature"),
      stepAt: ["instruments", "thermometer", "resolution"],
      counts: [-10, -1, 1, 10],
    },
  ],
};

const fields: readonly AnyField[] = [
  { name: "gaugePressure", quantity: "gauge-pressure" },
  { name: "temperature", label: "standing-test-tube", quantity: "temperature", signed: true },
  { name: "ambientTemperature", label: "standing-test-ambient", quantity: "temperature", signed: true },
  { name: "barometer", label: "standing-test-barometer", quantity: "absolute-pressure", unit: barometerUnit },
  { name: "holdBegins", as: "yes-no", otherwise: "false" },
];

const begins = "next_holdBegins";

/** The next reading of the gauge. */
export function PressureEntry(): JSX.Element {
  const { document } = useJob();
  const isFirst = itemsAt(document, ...kind.path).length === 0;
  const holdBegins = isFirst || textOf(begins) === "true";
  return (
    <ReadingEntry kind={kind} more={holdBegins ? { holdBegins: true } : {}} emptied={{ [begins]: "" }}>
      {!isFirst && (
        <Tick name={begins} isOn={holdBegins} onChange={(isOn) => enter(begins, isOn ? "true" : "")} detail={message("reading-begins-detail")}>
          {message("field-holdBegins")}
        </Tick>
      )}
    </ReadingEntry>
  );
}

export function PressureList({ answer }: { readonly answer: StandingTestAnswer | undefined }): JSX.Element {
  const { assessment } = useJob();
  const places = assessment.pressureHoldReadings;
  const noteOf = (place: number): ReadingNote | undefined => {
    const inHold = places.indexOf(place);
    if (inHold < 0) return { text: message("reading-before-hold"), isLeftOut: true };
    const found = answer?.leftOut.find((other) => other.place === inHold);
    if (found) return { text: message(`choice-${found.reason}`), isLeftOut: true };
    return inHold === 0 ? { text: message("field-holdBegins"), isLeftOut: false } : undefined;
  };
  return <ReadingList kind={kind} fields={fields} noteOf={noteOf} more={{}} />;
}

/** Which readings, by their numbers in the list, and what a single one showed. */
export function usePressureRowsText(): (first: number, last: number) => string {
  const { document, assessment } = useJob();
  const items = itemsAt(document, ...kind.path);
  return (first, last) => {
    const [from = first, to = last] = [assessment.pressureHoldReadings[first], assessment.pressureHoldReadings[last]];
    if (from !== to) return message("reading-rows", { from: from + 1, to: to + 1 });
    const reading = items[from];
    const [time, pressure] = reading ? [timeOfDay(textAt(reading, "at")), textAt(reading, "gaugePressure")] : ["", ""];
    return message("reading-row", { row: from + 1, time, pressure });
  };
}
