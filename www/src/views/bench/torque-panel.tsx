// How tight: the band at arm's length, and why it holds.

import type { JSX } from "preact";
import { show, type Problem, type TorqueAnswer } from "../../core";
import { TorqueBands } from "../../drawings/torque-bands";
import { useSheet } from "../../drawings/sheet";
import { message } from "../../locale";
import { problemOf, problemText, textOf } from "../../parts/fields";
import { bandNumbers, bandText, figureText } from "../../parts/figures";
import { UnitSwitch } from "../../parts/unit-switch";
import { Working } from "../../parts/working";
import { otherUnitOf, unitOf } from "../../unit-choice";
import { askTorque, sizeName } from "./joint";
import { TorqueBasis } from "./torque-basis";
import { SettingLine } from "./setting-line";

export function TorquePanel(): JSX.Element {
  const reply = askTorque();
  const problems = "problems" in reply ? reply.problems : [];
  const answer = "answer" in reply ? reply.answer : undefined;
  return (
    <section class="head">
      <h1>{message("torque-heading", { tube: sizeName() })}</h1>
      <p class="head-line">
        <span data-figure="torque">
          {answer ? <HeadFigure answer={answer} /> : <b class="head-figure withheld">—</b>}
          <UnitSwitch quantity="torque" />
        </span>
      </p>
      {answer ? <Beneath answer={answer} /> : <Withheld problems={problems} />}
      {answer && <SettingLine />}
      {answer && <BandsOf answer={answer} />}
      <div class="disclosures">
        <TorqueBasis answer={answer} problems={problems} />
        {answer && <Working steps={answer.working.slice(0, 1)} of={message("figure-aim")} />}
      </div>
    </section>
  );
}

function HeadFigure({ answer }: { readonly answer: TorqueAnswer }): JSX.Element {
  const numbers = bandNumbers("torque", answer.band);
  return (
    <b class="head-figure" style={{ "--characters": numbers.length }}>
      {numbers}
    </b>
  );
}

function Beneath({ answer }: { readonly answer: TorqueAnswer }): JSX.Element {
  const { band, aim, assumes } = answer;
  const isOneFigure = band.low === band.high;
  return (
    <>
      <p class="beneath">
        <span>{bandText("torque", band, otherUnitOf("torque"))}</span>
        <b>{isOneFigure ? message("torque-one-figure") : message("torque-aim", { aim: figureText("torque", aim) })}</b>
      </p>
      <p class="assumes">{message(`assumes-${assumes}`)}</p>
    </>
  );
}

/** A tube that is not flared has no field of its own here: its problem stands in the figure's place. */
function Withheld({ problems }: { readonly problems: readonly Problem[] }): JSX.Element {
  const tube = problemOf("tube", problems);
  return (
    <div role="alert">
      {tube && <p class="problem" data-problem-of="tube">{`“${textOf("tube")}”: ${problemText(tube)}`}</p>}
      <p class="beneath">{message("torque-withheld")}</p>
    </div>
  );
}

/** What each family says, and what holds. */
export function BandsOf({ answer }: { readonly answer: TorqueAnswer }): JSX.Element {
  const sheet = useSheet();
  const lines = answer.families.map(({ family, band }) => ({ label: message(`choice-${family}`), ...band }));
  const spoken = lines.map((line) => message("torque-family-band", { family: line.label, band: bandText("torque", line) }));
  return (
    <TorqueBands
      sheet={sheet}
      lines={lines}
      holds={answer.band}
      aim={answer.aim}
      numberOf={(torque) => show("torque", torque, unitOf("torque")).number}
      alternative={message("torque-bands-drawn", {
        families: spoken.join(", "),
        band: bandText("torque", answer.band),
        aim: figureText("torque", answer.aim),
      })}
    />
  );
}
