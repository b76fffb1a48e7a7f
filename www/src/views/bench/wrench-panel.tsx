// What to set on the wrench, and whether this wrench suits.

import type { JSX } from "preact";
import { calculate, type Problem, type Step, type TorqueAnswer } from "../../core";
import { WrenchView } from "../../drawings/wrench-view";
import { useSheet } from "../../drawings/sheet";
import { message } from "../../locale";
import { Chips } from "../../parts/chips";
import { EntryField } from "../../parts/entry-field";
import { bandText, figureText } from "../../parts/figures";
import { SourceList } from "../../parts/sources";
import { VerdictLine, VerdictMark } from "../../parts/verdict-line";
import { Working } from "../../parts/working";
import { unitOf } from "../../unit-choice";
import { askTorque, flareInput, leverInput, wrenchInput } from "./joint";

export function WrenchPanel(): JSX.Element {
  const head = askTorque();
  const levered = calculate("torque", leverInput());
  const fitted = calculate("torque", wrenchInput());
  const headProblems = "problems" in head ? head.problems.map(({ field }) => field) : [];
  const problems = ("problems" in fitted ? fitted.problems : []).filter(({ field }) => !headProblems.includes(field));
  const answer = "answer" in levered ? levered.answer : undefined;
  const step = answer && settingStep(answer);
  const flare = calculate("flare", flareInput());
  return (
    <section>
      <h2>{message("wrench-heading")}</h2>
      <SetFigure head={"answer" in head ? head.answer : undefined} answer={answer} />
      {step && <LeverDrawing step={step} nutAcrossFlats={"answer" in flare ? flare.answer.nutAcrossFlats : undefined} />}
      <WrenchFields problems={problems} />
      {step && <Working steps={[step]} of={message("figure-wrench-setting")} />}
      {"answer" in fitted && <WrenchFit answer={fitted.answer} />}
      <EntryField name="wrenchRange" problems={problems} unit={unitOf("torque")} words />
      <EntryField name="wrenchAccuracy" problems={problems} unit="%" />
    </section>
  );
}

/** The setting, if the adapter can be reckoned with; a flawed adapter withholds it. */
function SetFigure({ head, answer }: {
  readonly head: TorqueAnswer | undefined;
  readonly answer: TorqueAnswer | undefined;
}): JSX.Element {
  const setting = answer?.setting;
  if (head === undefined || answer === undefined) {
    return <p class="set-figure withheld">{message("wrench-withheld")}</p>;
  }
  if (setting === undefined || setting === null) {
    return (
      <div class="set-figure">
        <span>{message("wrench-set")}</span>
        <b>{figureText("torque", answer.aim)}</b>
        <p>{message("wrench-straight")}</p>
      </div>
    );
  }
  return (
    <div class="set-figure">
      <span>{message("wrench-set")}</span>
      <b data-figure="setting">{figureText("torque", setting.aim)}</b>
      <p>{message("wrench-gives", { aim: figureText("torque", answer.aim), band: bandText("torque", setting.band) })}</p>
    </div>
  );
}

/** How the setting on the wrench is reached; there is no such step without an adapter. */
export function settingStep({ working }: TorqueAnswer): Step | undefined {
  return working.find(({ title }) => title === "step-wrench-setting");
}

/** The wrench on the nut to scale. Lengths and angle as the core has read them stand in the working. */
export function LeverDrawing({ step, nutAcrossFlats }: { readonly step: Step; readonly nutAcrossFlats: number | null | undefined }): JSX.Element {
  const sheet = useSheet();
  const read = (symbol: string): number => step.figures.find((figure) => figure.symbol === symbol)?.si ?? 0;
  const [wrench, adapter, angle] = [read("L"), read("A"), read("θ")];
  const labels = {
    wrench: figureText("length", wrench, "significant"),
    adapter: figureText("length", adapter, "significant"),
    angle: figureText("angle", angle),
  };
  return (
    <WrenchView
      sheet={sheet}
      figures={{
        wrench,
        adapter,
        angle,
        nutAcrossFlats: nutAcrossFlats ?? undefined,
      }}
      labels={{
        ...labels,
        holdStill: message("wrench-hold-still"),
        alternative: message("wrench-drawing", {
          length: labels.wrench,
          adapter: labels.adapter,
          angle: labels.angle,
        }),
      }}
    />
  );
}

function WrenchFields({ problems }: { readonly problems: readonly Problem[] }): JSX.Element {
  return (
    <>
      <div class="fields">
        <EntryField name="adapterLength" problems={problems} unit={unitOf("length")} />
        <EntryField name="wrenchLength" problems={problems} unit={unitOf("length")} />
      </div>
      <EntryField name="adapterAngle" problems={problems} unit="°" />
      <Chips field="adapterAngle" label={message("wrench-angles")} texts={["0°", "45°", "90°", "180°"]} />
    </>
  );
}

/** Whether this wrench suits. */
export function WrenchFit({ answer: { wrench: fit, band, accuracy } }: { readonly answer: TorqueAnswer }): JSX.Element {
  if (fit === undefined || fit === null) {
    return (
      <div class="fit">
        <h3>{message("wrench-fit-heading")}</h3>
        <VerdictLine quantity="torque" words={message("wrench-fit-open")} />
      </div>
    );
  }
  const { verdict, trusted, onScale, hitsBand } = fit;
  return (
    <div class="fit" data-fit={verdict}>
      <h3>{message(`wrench-fit-${verdict}`)}</h3>
      <VerdictLine judged={onScale} limits={trusted} quantity="torque">
        <p>
          {message("wrench-fit-on-scale", {
            figure: figureText("torque", onScale.figure),
            band: bandText("torque", trusted),
          })}
        </p>
      </VerdictLine>
      {hitsBand ? (
        <VerdictLine judged={hitsBand} quantity="torque" limits={band}>
          <p>{message("wrench-fit-hits", { accuracy: figureText("ratio", accuracy, "significant") })}</p>
        </VerdictLine>
      ) : (
        <p class="note">
          <VerdictMark /> {message("wrench-fit-hits-open")}
        </p>
      )}
      <SourceList ids={["iso-6789"]} />
    </div>
  );
}
