// The working of an answer: formula, the same with figures put in, result, sources, step by step.

import type { ComponentChildren, JSX } from "preact";
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { Figure, QuantityKind, Step } from "../core";
import { StepQuestion } from "../fetched";
import { isLearning, setLearning } from "../learning";
import { message, numberText } from "../locale";
import { unitOf } from "../unit-choice";
import { figureText } from "./figures";
import { SourceList } from "./sources";

type UnitsOfSteps = Readonly<Partial<Record<QuantityKind, string>>>;

/** The steps behind a disclosure; `of` names the figure that they explain, for those who hear the page. */
export function Working({ steps, of, isNamed = false, units = {}, children }: {
  readonly steps: readonly Step[];
  readonly of: string;
  /** Whether the figure is named for the eye as well: it does not stand beside. */
  readonly isNamed?: boolean;
  /** Units other than the person's usual ones. */
  readonly units?: UnitsOfSteps;
  readonly children?: ComponentChildren;
}): JSX.Element | null {
  const details = useRef<HTMLDetailsElement>(null);
  const [isEmpty, learn] = [steps.length === 0, isLearning()];
  // What nobody has opened is not drawn, so that nobody waits for it.
  const [isOpen, setOpen] = useState(false);
  // Opened for those who learn, and by nothing closed but the person's tap.
  useLayoutEffect(() => {
    if (learn && details.current !== null) details.current.open = true;
  }, [learn, isEmpty]);
  if (isEmpty) return null;
  return (
    <details class="working" data-working ref={details} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary aria-label={message("why-of", { figure: of })}>
        <span>{isNamed ? message("why-of", { figure: of }) : message("why")}</span>
      </summary>
      <div class="opened">
        {(isOpen || learn) && (
          <>
            {steps.map((step, place) => (
              <WorkingStep key={place} step={step} units={units} learn={learn} />
            ))}
            {children}
            <button class="learn" data-action="learn" aria-pressed={learn} onClick={() => setLearning(!learn)}>
              {message("learn-steps")}
            </button>
          </>
        )}
      </div>
    </details>
  );
}

function WorkingStep({ step, units, learn }: {
  readonly step: Step;
  readonly units: UnitsOfSteps;
  readonly learn: boolean;
}): JSX.Element {
  return (
    <section class="step">
      <p class="step-title">{message(step.title)}</p>
      {learn && <StepQuestion step={step.title} />}
      <p class="formula">{withSymbols(step.formula)}</p>
      <p class="formula">
        {withFigures(step.formula, step.figures, units)}
      </p>
      <p class="formula result">
        {withSymbols(`{${step.result.symbol}} = `)}
        <b>{valueText(step.result, units)}</b>
      </p>
      <dl class="symbols">
        {step.figures.map((figure) => (
          <div key={figure.symbol}>
            <dt>
              <var>{scripted(figure.symbol)}</var> {message(figure.meaning)}
            </dt>
            <dd>{valueText(figure, units)}</dd>
          </div>
        ))}
      </dl>
      <SourceList ids={step.sources} />
    </section>
  );
}

/** The formula's parts: what stands in braces is a symbol, at odd places. */
function parts(formula: string): readonly string[] {
  return formula.split(/[{}]/);
}

/** A power stands raised, an index lowered. */
function scripted(part: string): ComponentChildren {
  return part.split(/([\^_][\p{L}\d.]+)/u).map((piece, place) => {
    if (place % 2 === 0) return piece;
    return piece.startsWith("^") ? <sup key={place}>{piece.slice(1)}</sup> : <sub key={place}>{piece.slice(1)}</sub>;
  });
}

function withSymbols(formula: string): ComponentChildren {
  return parts(formula).map((part, place) => (place % 2 === 1 ? <var key={place}>{scripted(part)}</var> : scripted(part)));
}

function withFigures(formula: string, figures: readonly Figure[], units: UnitsOfSteps): ComponentChildren {
  return parts(formula).map((part, place) => {
    if (place % 2 === 0) return scripted(part);
    const figure = figures.find(({ symbol }) => symbol === part);
    return figure === undefined ? <var key={place}>{scripted(part)}</var> : <span key={place}>{valueText(figure, units)}</span>;
  });
}

/** What is no part of a whole: a plain number, not a percentage. */
const plainNumbers: readonly string[] = [
  "figure-threads-per-inch",
  "figure-warming-potential",
  "figure-compressibility",
  "figure-compression-ratio",
  "figure-test-factor",
  "figure-hold-points",
  "figure-hold-scatter",
  "figure-coverage-factor",
];

function valueText({ quantity, si, meaning }: Figure, units: UnitsOfSteps): string {
  return plainNumbers.includes(meaning) ? numberText(Number(si.toPrecision(5))) : figureText(quantity, si, "significant", units[quantity] ?? unitOf(quantity));
}
