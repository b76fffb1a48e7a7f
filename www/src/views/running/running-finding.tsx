// The head of the card: superheat and subcooling at arm's length, the verdict on each, and on the whole.

import type { JSX } from "preact";
import type { RunningAnswer, RunningCaution } from "../../core";
import { message } from "../../locale";
import { Finding, type FoundFigure, type FoundVerdict } from "../../parts/finding";
import type { Asked } from "./ask";
import { CheckLine } from "./check-row";

/** Those that hold for every running system, before there is an answer. */
const usualCautions: readonly RunningCaution[] = ["live-parts", "turning-parts", "hot-and-cold-lines", "instructions-and-code-first"];

export function RunningFinding({ asked: { circuit, air, problems }, shownAt, told = [] }: {
  readonly asked: Asked;
  /** Fields that show their own problems; without it all of them do. */
  readonly shownAt?: readonly string[];
  /** Cautions that stand above already. */
  readonly told?: readonly string[];
}): JSX.Element {
  const answer = circuit ?? air;
  return (
    <Finding
      figures={answer ? figuresOf(answer) : []}
      verdict={answer && verdictOf(answer)}
      problems={problems}
      {...(shownAt && { shownAt })}
      empty={message("running-empty")}
      cautions={(answer?.cautions ?? usualCautions).map((caution) => `choice-${caution}`)}
      told={told}
    >
      {circuit && <CheckLine figure="superheat" check={circuit.superheat} />}
      {circuit && <CheckLine figure="subcooling" check={circuit.subcooling} />}
      {answer?.notices.map((notice) => (
        <p key={notice} class="note" data-notice={notice}>
          {message(`choice-${notice}`)}
        </p>
      ))}
      {answer && answer.missing.length > 0 && (
        <p class="note" data-missing>
          {message("running-missing", { fields: answer.missing.map((field) => message(`field-${field}`)).join("; ") })}
        </p>
      )}
    </Finding>
  );
}

/** Superheat and subcooling; without them what else is there, if only what the superheat should be. */
function figuresOf(answer: RunningAnswer): readonly FoundFigure[] {
  const figures: FoundFigure[] = [];
  const put = (mark: string, name: string, si: number | null | undefined): void => {
    if (si != null) figures.push({ mark, name, quantity: "temperature-difference", si });
  };
  put("superheat", message("running-superheat"), answer.superheat.figure);
  put("subcooling", message("running-subcooling"), answer.subcooling.figure);
  if (figures.length > 0) return figures;
  const target = answer.superheat.target;
  if (target) put("targetSuperheat", message("running-target-superheat"), (target.band.low + target.band.high) / 2);
  else put("temperatureSplit", message("running-split"), answer.temperatureSplit.figure);
  if (figures.length > 0) return figures;
  for (const [mark, side] of [["evaporating", answer.evaporating], ["condensing", answer.condensing]] as const) {
    if (side) figures.push({ mark, name: message(`running-${mark}`), quantity: "temperature", si: side.temperature });
  }
  return figures;
}

function verdictOf({ verdict }: RunningAnswer): FoundVerdict | undefined {
  return verdict == null ? undefined : { state: verdict, word: message(`running-${verdict}`) };
}
