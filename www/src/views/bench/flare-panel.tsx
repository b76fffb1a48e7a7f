// How wide: the flare drawn to scale, the measured cone and what to change, and what belongs to it.

import type { JSX } from "preact";
import { calculate, type FlareAnswer, type Problem } from "../../core";
import { FlareSection } from "../../drawings/flare-section";
import { useSheet } from "../../drawings/sheet";
import { message } from "../../locale";
import { ChoiceRow } from "../../parts/choice-row";
import { EntryField } from "../../parts/entry-field";
import { textOf, write } from "../../parts/fields";
import { bandNumbers, bandText, figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { SourceList } from "../../parts/sources";
import { VerdictLine } from "../../parts/verdict-line";
import { Working } from "../../parts/working";
import { otherUnitOf, unitOf } from "../../unit-choice";
import { flareInput, measuredInput } from "./joint";

const classes = ["class-2", "class-1"] as const;
const tools = ["eccentric-clutch", "ordinary-clutch", "wing-nut-bar"] as const;

export function FlarePanel(): JSX.Element {
  const reply = calculate("flare", flareInput());
  const measured = calculate("flare", measuredInput());
  const answer = "answer" in reply ? reply.answer : undefined;
  const problems = "problems" in measured ? measured.problems : [];
  const judgement = "answer" in measured ? (measured.answer.measured ?? undefined) : undefined;
  return (
    <section>
      <h2>{message("flare-heading")}</h2>
      {answer && <FlareDrawing answer={answer} measured={judgement?.judgement.figure} />}
      {answer?.notices.map((notice) => (
        <p class="notice" key={notice}>
          {message(`notice-${notice}`)}
        </p>
      ))}
      {answer?.cone && (
        <>
          <div class="fields">
            <EntryField name="measuredCone" problems={problems} unit={unitOf("length")} />
            <EntryField name="caliperUncertainty" problems={problems} unit={unitOf("length")} />
          </div>
          <VerdictLine
            judged={judgement?.judgement}
            limits={answer.cone}
            quantity="length"
            {...(judgement ? {} : { words: message("flare-measured-open") })}
          >
            {judgement && <p data-advice={judgement.advice}>{message(`choice-${judgement.advice}`)}</p>}
          </VerdictLine>
        </>
      )}
      <ClassAndTool problems={problems} />
      {answer && <FlareDetails answer={answer} />}
    </section>
  );
}

/** The flare to scale, before and after. */
export function FlareDrawing({ answer, measured }: {
  readonly answer: FlareAnswer;
  readonly measured: number | undefined;
}): JSX.Element | null {
  const sheet = useSheet();
  const tube = calculate("tube", { tube: answer.tube });
  if ("problems" in tube) return null;
  const { cone, barProjection, coneHalfAngle } = answer;
  const halfAngle = (coneHalfAngle.low + coneHalfAngle.high) / 2;
  const scaleLength = unitOf("length") === "in" ? 0.0127 : 0.01;
  const labels = {
    tube: figureText("length", answer.tube, "table"),
    cone: cone ? bandNumbers("length", cone) : "",
    halfAngle: figureText("angle", halfAngle),
    projection: barProjection ? bandNumbers("length", barProjection.band) : "",
    inBar: message("flare-in-bar"),
    finished: message("flare-finished"),
    scale: figureText("length", scaleLength, "significant"),
  };
  return (
    <FlareSection
      sheet={sheet}
      scaleLength={scaleLength}
      figures={{
        tube: answer.tube,
        wall: tube.answer.wall,
        cone: cone ?? undefined,
        halfAngle,
        projection: barProjection?.band,
        measured,
      }}
      labels={{ ...labels, alternative: alternative(answer, labels, measured) }}
    />
  );
}

function alternative(
  { name, cone, barProjection }: FlareAnswer,
  labels: { readonly tube: string; readonly halfAngle: string },
  measured: number | undefined,
): string {
  const size = { tube: name, diameter: labels.tube, angle: labels.halfAngle };
  const sentences = [
    cone
      ? message("flare-drawing", { ...size, cone: bandText("length", cone) })
      : message("flare-drawing-no-cone", size),
    barProjection ? message("flare-drawing-projection", { projection: bandText("length", barProjection.band) }) : "",
    measured === undefined ? "" : message("flare-drawing-measured", { measured: figureText("length", measured, "table") }),
  ];
  return sentences.filter((sentence) => sentence !== "").join(" ");
}

function ClassAndTool({ problems }: { readonly problems: readonly Problem[] }): JSX.Element {
  return (
    <>
      <ChoiceRow
        name="flareClass"
        legend={message("field-flareClass")}
        beside
        chosen={textOf("flareClass")}
        problems={problems}
        onChoose={(word) => write("flareClass", word)}
        choices={classes.map((word) => ({
          word,
          label: message(`choice-${word}`),
          detail: message(`class-use-${word}`),
        }))}
      />
      <ToolChoice problems={problems} />
    </>
  );
}

/** The flaring tool of the kit. */
export function ToolChoice({ problems }: { readonly problems: readonly Problem[] }): JSX.Element {
  return (
    <ChoiceRow
      name="tool"
      legend={message("field-tool")}
      chosen={textOf("tool")}
      problems={problems}
      onChoose={(word) => write("tool", word)}
      choices={tools.map((word) => ({ word, label: message(`choice-${word}`) }))}
    />
  );
}

/** What else belongs to the flare, and its working. */
export function FlareDetails({ answer }: { readonly answer: FlareAnswer }): JSX.Element {
  const { barProjection, coneHalfAngle, cornerRadius, thread, source } = answer;
  const both = (band: { readonly low: number; readonly high: number }): string =>
    bandText("length", band, otherUnitOf("length"));
  return (
    <>
      <Rows>
        <Row
          name={message("flare-projection")}
          mark="projection"
          figure={barProjection ? bandText("length", barProjection.band) : message("flare-projection-open")}
          beneath={barProjection ? both(barProjection.band) : undefined}
        />
        <Row
          name={message("flare-thread")}
          mark="thread"
          figure={thread.designation}
          beneath={message("flare-thread-pitch", { pitch: figureText("length", thread.pitch, "table") })}
        />
        <Row name={message("flare-angle")} figure={bandText("angle", coneHalfAngle)} />
        <Row name={message("flare-radius")} figure={bandText("length", cornerRadius)} />
      </Rows>
      <p class="note">{message("flare-steps")}</p>
      <Working steps={answer.working} of={message("flare-cone")}>
        <SourceList ids={[source, thread.source, ...(barProjection ? [barProjection.source] : [])]} />
      </Working>
    </>
  );
}
