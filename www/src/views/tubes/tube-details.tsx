// One size opened: its figures, how its rating stands to the design pressure, a length of it, the working.

import type { JSX } from "preact";
import { calculate, type TubeAnswer } from "../../core";
import { message } from "../../locale";
import { EntryField } from "../../parts/entry-field";
import { entryOf } from "../../parts/fields";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { VerdictLine } from "../../parts/verdict-line";
import { Working } from "../../parts/working";
import { otherUnitOf, runUnit, unitOf } from "../../unit-choice";
import type { AskedSize } from "../tubes";
import { perMetreUnits } from "./tube-units";

export function TubeDetails({ asked }: { readonly asked: AskedSize }): JSX.Element | null {
  const reply = calculate("tube", asked.input);
  if ("problems" in reply) return null;
  const { answer } = reply;
  return (
    <div class="tube-details">
      <TubeFigures answer={answer} />
      <TubeRating answer={answer} />
      <TubeLength asked={asked} />
      <Working steps={answer.working} of={asked.label} />
    </div>
  );
}

function TubeFigures({ answer }: { readonly answer: TubeAnswer }): JSX.Element {
  const length = (si: number): { readonly figure: string; readonly beneath: string } => ({
    figure: figureText("length", si, "table"),
    beneath: figureText("length", si, "table", otherUnitOf("length")),
  });
  return (
    <Rows>
      <Row name={message("tubes-outside-diameter")} {...length(answer.outsideDiameter)} />
      <Row name={message("tubes-wall")} {...length(answer.wall)} />
      <Row name={message("tubes-bore")} {...length(answer.bore)} />
      <Row name={message("tubes-bore-area")} figure={figureText("area", answer.boreArea, "table")} />
      <Row
        name={message("tubes-mass-per-length")}
        figure={figureText("mass-per-length", answer.massPerLength, "table")}
        beneath={figureText("mass-per-length", answer.massPerLength, "table", otherUnitOf("mass-per-length"))}
      />
      <Row
        name={message("tubes-volume-per-metre")}
        figure={figureText("volume", answer.volumePerMetre, "table", perMetreUnits().volume)}
      />
    </Rows>
  );
}

function TubeRating({ answer }: { readonly answer: TubeAnswer }): JSX.Element | null {
  const { rating } = answer;
  if (rating === undefined || rating === null) return null;
  const judged = rating.againstDesignPressure ?? undefined;
  return (
    <>
      <Rows>
        <Row
          name={message("tubes-rated-pressure")}
          figure={figureText("gauge-pressure", rating.ratedPressure)}
          beneath={figureText("gauge-pressure", rating.ratedPressure, "instrument", otherUnitOf("gauge-pressure"))}
        />
        <Row
          name={message("tubes-allowable-stress", {
            temperature: figureText("temperature", rating.tableTemperature, "table"),
          })}
          figure={figureText("stress", rating.allowableStress)}
        />
      </Rows>
      {judged && (
        <VerdictLine
          judged={judged}
          quantity="pressure-difference"
          unit={unitOf("gauge-pressure")}
          words={message(`tubes-verdict-${judged.verdict}`)}
        />
      )}
    </>
  );
}

function TubeLength({ asked }: { readonly asked: AskedSize }): JSX.Element {
  const unit = runUnit();
  const reply = calculate("tube", { ...asked.input, length: entryOf("length", "length", unit) });
  const answer = "answer" in reply ? reply.answer : undefined;
  return (
    <>
      <EntryField
        name="length"
        problems={"problems" in reply ? reply.problems : []}
        unit={unit}
        words
        label="tubes-length"
      />
      {answer && typeof answer.volume === "number" && typeof answer.mass === "number" && (
        <Rows>
          <Row name={message("tubes-length-volume")} figure={figureText("volume", answer.volume, "table")} />
          <Row name={message("tubes-length-mass")} figure={figureText("mass", answer.mass, "table")} />
        </Rows>
      )}
    </>
  );
}
