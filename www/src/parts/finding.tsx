// The head of a card's answer: figures at arm's length, the verdict in the calculation's own word as a mark
// on a dimension line, a sentence, cautions. Without figures it says why there are none.
//
//   <Finding
//     figures={[{ mark: "pressureDrop", name: "pressure drop", quantity: "pressure-difference", si: 1234 }]}
//     verdict={{ state: "cannot-tell", word: "cannot tell yet" }}
//     sentence="Wait another three hours."
//     problems={problems} empty="Enter bore, fluid and flow."
//     cautions={["caution-nitrogen"]}
//   />
//
// `state` is in-band, out-of-band, cannot-tell or open. With `judged` (figure, margin, uncertainty, limit from
// the core) and `quantity` the line also says margin and uncertainty; with `limits` the mark stands to scale.

import type { ComponentChildren, JSX } from "preact";
import { show, type Limits, type Precision, type Problem, type QuantityKind, type Shown } from "../core";
import { message } from "../locale";
import { otherUnitOf, unitOf } from "../unit-choice";
import { Cautions } from "./cautions";
import { isMistake, problemText } from "./fields";
import { figureText, limitText, showLimit, type Bound } from "./figures";
import { VerdictLine, type Judged, type MarkState } from "./verdict-line";

export interface FoundFigure {
  /** Name of the figure, for those who look for it. */
  readonly mark: string;
  /** What it is, as a sentence's part. */
  readonly name: string;
  readonly quantity: QuantityKind;
  readonly si: number;
  /** Unit, where it is another than the person's. */
  readonly unit?: string;
  readonly precision?: Precision;
  /** Of a limit: to which side it is rounded. */
  readonly bound?: Bound;
  /** What stands beneath; else the same in the other system. */
  readonly beneath?: string;
}

export interface FoundVerdict {
  readonly state: MarkState;
  readonly word: string;
  readonly judged?: Judged | undefined;
  readonly limits?: Limits | undefined;
  readonly quantity?: QuantityKind;
  /** Unit of the margin, where it is not the quantity's own. */
  readonly unit?: string;
}

export function Finding({ figures, verdict, sentence, problems, shownAt, empty, cautions = [], told = [], children }: {
  /** None: withheld. */
  readonly figures: readonly FoundFigure[];
  readonly verdict?: FoundVerdict | undefined;
  readonly sentence?: string | undefined;
  readonly problems: readonly Problem[];
  /** Fields and lists of the card, which show their own problems: those of any other are told here. */
  readonly shownAt?: readonly string[];
  /** What to enter, said as long as there is neither figure nor mistake. */
  readonly empty: string;
  /** Message ids. */
  readonly cautions?: readonly string[];
  /** Cautions that stand above already. */
  readonly told?: readonly string[];
  readonly children?: ComponentChildren;
}): JSX.Element {
  const isMistaken = problems.some(isMistake);
  const cautious = cautions.filter((id) => !told.includes(id));
  // Figures beside each other are of one size.
  const characters = Math.max(...figures.map((figure) => shownOf(figure).number.length));
  return (
    <section class="head finding">
      {figures.length > 0 && (
        <div class="both-figures">
          {figures.map((figure) => (
            <LargeFigure key={figure.mark} figure={figure} characters={characters} isAlone={figures.length === 1} />
          ))}
        </div>
      )}
      {verdict && <VerdictLine {...verdict} words={verdict.word} />}
      {figures.length === 0 && verdict === undefined && (
        <>
          <p class="head-figure withheld">—</p>
          <p class="beneath">{isMistaken ? message("saturation-withheld") : empty}</p>
        </>
      )}
      {shownAt && problems.filter(({ field }) => !shownAt.includes(outermost(field))).map((problem) => (
        <p key={`${problem.field} ${problem.code}`} class="problem" data-problem-of={problem.field}>
          {`${message(`field-${outermost(problem.field)}`)}: ${problemText(problem)}`}
        </p>
      ))}
      {sentence !== undefined && <p class="finding-sentence">{sentence}</p>}
      {children}
      {cautious.length > 0 && <Cautions ids={cautious} />}
    </section>
  );
}

function LargeFigure({ figure, characters, isAlone }: {
  readonly figure: FoundFigure;
  readonly characters: number;
  readonly isAlone: boolean;
}): JSX.Element {
  const { mark, name, beneath = inOther(figure) } = figure;
  const shown = shownOf(figure);
  return (
    <div class={isAlone ? "both" : undefined}>
      <h2>{name}</h2>
      <p data-figure={mark}>
        <b class="head-figure" style={{ "--characters": characters }}>
          {shown.number}
        </b>{" "}
        {shown.unit}
      </p>
      {beneath !== "" && <p class="counts">{beneath}</p>}
    </div>
  );
}

/** The first name of a field within others: `readings` of `readings[2].pressure`. */
function outermost(field: string): string {
  return /^\w+/.exec(field)?.[0] ?? field;
}

function shownOf({ quantity, si, unit = unitOf(quantity), precision = "instrument", bound }: FoundFigure): Shown {
  return bound ? showLimit(quantity, si, bound, unit) : show(quantity, si, unit, precision);
}

/** The same in the other system, where that has another unit. */
function inOther({ quantity, si, unit, precision = "instrument", bound }: FoundFigure): string {
  const other = otherUnitOf(quantity);
  if (unit !== undefined || other === unitOf(quantity)) return "";
  return bound ? limitText(quantity, si, bound, other) : figureText(quantity, si, precision, other);
}
