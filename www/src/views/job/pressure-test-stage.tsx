// The pressure test: how far up and by what stages, the clock, the readings, what they say, each joint under the soap.

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { useJob, presentJoints } from "../../job/job-context";
import { JobFields } from "../../job/job-fields";
import { itemsAt, textAt } from "../../job/job-path";
import { message } from "../../locale";
import type { AnyField } from "../../parts/card-fields";
import { Disclosure } from "../../parts/disclosure";
import { isMistake } from "../../parts/fields";
import { Working } from "../../parts/working";
import { rateUnit, workingUnits } from "../standing-test/ask";
import { GuidancePanel } from "../standing-test/guidance-panel";
import { HoldCourse } from "../standing-test/hold-course";
import { HoldFinding } from "../standing-test/hold-finding";
import { LossRows } from "../standing-test/loss-rows";
import { DueLine } from "./holds/due-line";
import { HoldClock } from "./holds/hold-clock";
import { PressureEntry, PressureList, usePressureRowsText } from "./holds/pressure-readings";
import { LeakLookRows } from "./joints/leak-look";
import { cautionsTold } from "./stage-cautions";

const fields: readonly AnyField[] = [
  { name: "testRule", choices: ["real-decreto-552-2019", "ufgs-15182", "plate"], otherwise: "real-decreto-552-2019" },
  { name: "volume", quantity: "volume", label: "standing-test-volume" },
  { name: "cylinderVolume", quantity: "volume" },
  { name: "cylinderPressure", quantity: "gauge-pressure" },
];
const lossFields: readonly AnyField[] = [{ name: "leakToSee", quantity: "pressure-rate", unit: rateUnit, words: true }];
const at = ["pressureTest", "test"];

export function PressureTestStage(): JSX.Element {
  const { document, assessment, problems } = useJob();
  const rowsText = usePressureRowsText();
  const answer = assessment.standingTest ?? undefined;
  const isBegun = itemsAt(document, "pressureTest", "readings").length > 0;
  // The pump draws on what has been proven: the nitrogen is out.
  const isOver = assessment.pumpClock != null;
  // A hold that goes on is read first; one that begins is prepared first, and its entry then stays where it is.
  const [goesOn] = useState(isBegun);
  // One entry by its key, or what it tells of the first reading would be lost.
  const entry = (!isBegun || !isOver) && <PressureEntry key="entry" />;
  const course = answer && isBegun && <HoldCourse answer={answer} rowsText={rowsText} />;
  const asked = { before: answer?.guidance ? answer : undefined, after: isBegun && answer?.instruments ? answer : undefined, problems: [] };
  const isWrong = problems.some((problem) => isMistake(problem) && problem.field.startsWith("job:pressureTest.test."));
  const joints = presentJoints(assessment).filter(({ kind }) => kind !== "cap");
  return (
    <>
      {isOver ? <DueLine text={message("clock-pressure-ended")} /> : <HoldClock of="pressureClock" isRunning={!isOver} />}
      {goesOn && entry}
      <HoldFinding asked={asked} empty={message("pressure-test-empty")} told={cautionsTold["pressure-test"]} />
      {goesOn && course}
      <Disclosure name="prepare" summary={<h2>{message("standing-test-prepare")}</h2>} mustShow={!isBegun || isWrong}>
        <JobFields at={at} fields={fields} />
        {asked.before && <GuidancePanel answer={asked.before} />}
      </Disclosure>
      {!goesOn && entry}
      {!goesOn && course}
      <PressureList answer={answer} />
      {isBegun && isOver && (
        <Disclosure name="late-reading" summary={<span>{message("standing-test-add")}</span>} mustShow={false}>
          <PressureEntry />
        </Disclosure>
      )}
      {answer && isBegun && <LossRows answer={answer} refrigerant={textAt(document, "plate", "refrigerant")} />}
      <JobFields at={at} fields={lossFields} />
      <Working steps={answer?.working ?? []} of={message("title-standing-test")} isNamed units={workingUnits()} />
      {joints.length > 0 && (
        <section>
          <h2>{message("pressure-test-looks")}</h2>
          <p class="note">{message("pressure-test-looks-note")}</p>
          <LeakLookRows joints={joints} />
        </section>
      )}
    </>
  );
}
