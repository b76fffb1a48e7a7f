// The evacuation: the pump, the hold after it is valved off, and whether what remains is water, air or nothing.

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { nowIn, useJob } from "../../job/job-context";
import { JobFields } from "../../job/job-fields";
import { textAt } from "../../job/job-path";
import { isReleased } from "../../job/running-clocks";
import { useSteady } from "../../job/steady";
import { message } from "../../locale";
import type { AnyField } from "../../parts/card-fields";
import { Cautions } from "../../parts/cautions";
import { Disclosure } from "../../parts/disclosure";
import { Tick } from "../../parts/tick";
import { vacuumUnit, VacuumUnitChoice } from "../../parts/vacuum-unit";
import { Working } from "../../parts/working";
import { setting } from "../../store/jobs";
import { rateUnit, stepUnit } from "../vacuum-hold/ask";
import { Causes } from "../vacuum-hold/causes";
import { FoundRows } from "../vacuum-hold/found-rows";
import { HoldCourse } from "../vacuum-hold/hold-course";
import { HoldFinding } from "../vacuum-hold/hold-finding";
import { Passed } from "../vacuum-hold/rule-panel";
import { DueLine } from "./holds/due-line";
import { HoldClock } from "./holds/hold-clock";
import { MomentEntry } from "./holds/moment-entry";
import { VacuumEntry, VacuumList } from "./holds/vacuum-readings";
import { cautionsTold } from "./stage-cautions";

const at = ["evacuation", "hold"];
const placeFields: readonly AnyField[] = [
  { name: "ambientTemperature", quantity: "temperature", signed: true },
  { name: "volume", quantity: "volume", label: "vacuum-hold-volume" },
];

const pumpStarted = ["evacuation", "pumpStarted"];

/** The plate's own figures are asked for only where the plate's rule is chosen. */
function ruleFields(rule: string): readonly AnyField[] {
  return [
    { name: "passRule", choices: ["ufgs-15182", "real-decreto-552-2019", "plate"], otherwise: "ufgs-15182" },
    ...(rule === "plate"
      ? [
          { name: "passPressure", quantity: "absolute-pressure" as const, unit: vacuumUnit },
          { name: "passTime", quantity: "time" as const, unit: () => "min" },
        ]
      : []),
  ];
}

/** Beside those of the frame: what makes a reading wrong. */
const cautions = ["vacuum-hold-caution-ice", "vacuum-hold-caution-hoses"];

export function EvacuateStage(): JSX.Element {
  const { document, assessment } = useJob();
  const hold = assessment.vacuumHold ?? undefined;
  const isOver = isReleased(document);
  const hasStarted = textAt(document, ...pumpStarted) !== "";
  const isHolding = assessment.vacuumClock != null;
  // A pump that runs has been started: its readings come first. One that is started now stays where it is.
  const [ranBefore] = useState(hasStarted);
  return (
    <>
      {isOver ? (
        <DueLine text={message("clock-vacuum-ended")} />
      ) : (
        <>
          <HoldClock of="vacuumClock" isRunning />
          <HoldClock of="pumpClock" isRunning={!isHolding} />
        </>
      )}
      {!ranBefore && <Pump />}
      {!isOver && <VacuumEntry />}
      <HoldFinding asked={{ hold, problems: [] }} empty={message("vacuum-hold-empty")} told={cautionsTold.evacuate} />
      {hold && <HoldCourse answer={hold} />}
      {ranBefore && <Pump />}
      <section class="rule">
        <h2>{message("vacuum-hold-rule")}</h2>
        <JobFields at={at} fields={ruleFields(textAt(document, ...at, "passRule"))} />
        {hold && <Passed pass={hold.pass} />}
      </section>
      <VacuumList />
      {isOver && (
        <Disclosure name="late-reading" summary={<span>{message("standing-test-add")}</span>} mustShow={false}>
          <VacuumEntry />
        </Disclosure>
      )}
      <VacuumUnitChoice />
      <JobFields at={at} fields={placeFields} />
      {hold?.likelihoods && <Causes answer={hold} likelihoods={hold.likelihoods} />}
      {hold && <FoundRows answer={hold} />}
      <Cautions ids={cautions} />
      <Working
        steps={hold?.working ?? []}
        of={message("title-vacuum-hold")}
        isNamed
        units={{ "absolute-pressure": vacuumUnit(), "pressure-difference": stepUnit(), "pressure-rate": rateUnit(), time: "min" }}
      />
    </>
  );
}

/** When the pump began to draw, and whether the cores are out. */
function Pump(): JSX.Element {
  const { job, document } = useJob();
  const hasStarted = textAt(document, ...pumpStarted) !== "";
  const { part, hold } = useSteady<HTMLButtonElement>();
  const start = (): void => {
    hold();
    job.apply(setting(pumpStarted, nowIn(document)));
  };
  return (
    <section class="pump">
      <h2>{message("evacuate-pump")}</h2>
      <button class={hasStarted ? "framed" : "read-now"} data-action="pump-started" ref={part} onClick={start}>
        {message(hasStarted ? "evacuate-pump-again" : "evacuate-pump-now")}
      </button>
      {hasStarted && <MomentEntry path={pumpStarted} label={message("field-pumpStarted")} />}
      <Tick
        name="job:evacuation.coresOut"
        isOn={textAt(document, "evacuation", "coresOut") === "true"}
        onChange={(isOn) => job.apply(setting(["evacuation", "coresOut"], isOn))}
        detail={message("evacuate-cores-detail")}
      >
        {message("field-coresOut")}
      </Tick>
    </section>
  );
}
