// A joint in the stage of the cones: its cone in large figures, nut, tube above the bar, the measured cone and its verdict.

import type { JSX } from "preact";
import { calculate, type FlareAnswer, type Input, type JointAssessment, type Problem } from "../../../core";
import { useJob } from "../../../job/job-context";
import { textAt } from "../../../job/job-path";
import { jointField } from "../../../job/joint-records";
import { message } from "../../../locale";
import { Disclosure } from "../../../parts/disclosure";
import { EntryField } from "../../../parts/entry-field";
import { textOf } from "../../../parts/fields";
import { bandNumbers, bandText } from "../../../parts/figures";
import { VerdictLine } from "../../../parts/verdict-line";
import { otherUnitOf, unitOf } from "../../../unit-choice";
import { FlareDetails, FlareDrawing, ToolChoice } from "../../bench/flare-panel";
import { HeadBand } from "./head-band";
import { NutFigure } from "./nut-figure";
import { Remaking } from "./remaking";
import { TubeWanted } from "./tube-wanted";

export function ConeView({ joint }: { readonly joint: JointAssessment }): JSX.Element {
  if (joint.kind === "cap") return <p class="joint-told">{message("joints-cap-no-cone")}</p>;
  return (
    <>
      {joint.kind === "flare" ? <Cone joint={joint} /> : <p class="joint-told">{message("joints-braze")}</p>}
      <Remaking joint={joint} />
    </>
  );
}

function Cone({ joint }: { readonly joint: JointAssessment }): JSX.Element {
  const { document } = useJob();
  const refrigerant = textAt(document, "plate", "refrigerant");
  const reply = joint.tube == null ? undefined : calculate("flare", questionOf(joint.tube, refrigerant));
  const answer = reply && "answer" in reply ? reply.answer : undefined;
  const problems = reply && "problems" in reply ? reply.problems : [];
  return (
    <>
      <TubeWanted joint={joint} />
      <HeadBand mark="cone" name={message("joints-cone")} quantity="length" band={joint.cone} />
      {joint.cone == null && joint.tube != null && <p class="notice">{message(refrigerant === "" ? "joints-no-refrigerant" : "joints-no-cone")}</p>}
      <dl class="pair">
        <NutFigure joint={joint} />
        <ProjectionFigure answer={answer} />
      </dl>
      <MeasuredCone joint={joint} />
      <Tool problems={problems.filter(({ field }) => field === "tool")} />
      {answer && <FlareDrawing answer={answer} measured={joint.measuredCone?.judgement.figure} />}
      {answer && (
        <Disclosure name="joint-more" summary={message("joints-flare-more")} mustShow={false}>
          <FlareDetails answer={answer} />
        </Disclosure>
      )}
    </>
  );
}

/** What is drawn and explained: the class goes by the refrigerant, the tool is that of the kit. */
function questionOf(tube: number, refrigerant: string): Input<"flare"> {
  return { tube, refrigerant, tool: textOf("tool") } as Input<"flare">;
}

function ProjectionFigure({ answer }: { readonly answer: FlareAnswer | undefined }): JSX.Element {
  const band = answer?.barProjection?.band;
  return (
    <div>
      <dt>{message("flare-projection")}</dt>
      {band ? (
        <dd data-figure="above-bar">
          {bandNumbers("length", band)}
          <i>{unitOf("length")}</i>
          <small>{bandText("length", band, otherUnitOf("length"))}</small>
        </dd>
      ) : (
        <dd class="absent">{message(textOf("tool") === "" ? "flare-projection-open" : "joints-not-told")}</dd>
      )}
    </div>
  );
}

function MeasuredCone({ joint: { id, cone, measuredCone } }: { readonly joint: JointAssessment }): JSX.Element {
  const { problems } = useJob();
  return (
    <>
      <EntryField name={jointField(id, "measuredCone")} problems={problems} unit={unitOf("length")} />
      {cone && (
        <VerdictLine
          judged={measuredCone?.judgement}
          limits={cone}
          quantity="length"
          {...(measuredCone ? {} : { words: message("flare-measured-open") })}
        >
          {measuredCone && <p data-advice={measuredCone.advice}>{message(`choice-${measuredCone.advice}`)}</p>}
        </VerdictLine>
      )}
    </>
  );
}

/** The tool goes with the person; it is asked for once. */
function Tool({ problems }: { readonly problems: readonly Problem[] }): JSX.Element {
  const tool = textOf("tool");
  const summary = tool === "" ? message("joints-tool-open") : message("joints-tool", { tool: message(`choice-${tool}`) });
  return (
    <Disclosure name="joint-more" summary={summary} mustShow={problems.length > 0}>
      <ToolChoice problems={problems} />
    </Disclosure>
  );
}
