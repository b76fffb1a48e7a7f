// The working of an answer: formula, the same with figures put in, result, sources, step by step.

import type { ComponentChildren, JSX } from "preact";
import type { Figure, Step } from "../core";
import { message } from "../locale";
import { figureText } from "./figures";
import { SourceList } from "./sources";

/** The steps behind a disclosure; `of` names the figure that they explain, for those who hear the page. */
export function Working({ steps, of, children }: {
  readonly steps: readonly Step[];
  readonly of: string;
  readonly children?: ComponentChildren;
}): JSX.Element | null {
  if (steps.length === 0) return null;
  return (
    <details class="working" data-working>
      <summary aria-label={message("why-of", { figure: of })}>
        <span>{message("why")}</span>
      </summary>
      <div class="opened">
        {steps.map((step) => (
          <WorkingStep key={step.title} step={step} />
        ))}
        {children}
      </div>
    </details>
  );
}

function WorkingStep({ step }: { readonly step: Step }): JSX.Element {
  const equals = step.formula.indexOf("=");
  const right = step.formula.slice(equals + 1).trim();
  return (
    <section class="step">
      <p class="step-title">{message(step.title)}</p>
      <p class="formula">{withSymbols(step.formula)}</p>
      <p class="formula">
        {withSymbols(`{${step.result.symbol}} = `)}
        {withFigures(right, step.figures)}
      </p>
      <p class="formula result">
        {withSymbols(`{${step.result.symbol}} = `)}
        <b>{valueText(step.result)}</b>
      </p>
      <dl class="symbols">
        {step.figures.map((figure) => (
          <div key={figure.symbol}>
            <dt>
              <var>{figure.symbol}</var> {message(figure.meaning)}
            </dt>
            <dd>{valueText(figure)}</dd>
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

/** A power stands raised. */
function raised(part: string): ComponentChildren {
  return part.split(/\^([\d.]+)/).map((piece, place) => (place % 2 === 1 ? <sup key={place}>{piece}</sup> : piece));
}

function withSymbols(formula: string): ComponentChildren {
  return parts(formula).map((part, place) => (place % 2 === 1 ? <var key={place}>{part}</var> : raised(part)));
}

function withFigures(formula: string, figures: readonly Figure[]): ComponentChildren {
  return parts(formula).map((part, place) => {
    const figure = place % 2 === 1 ? figures.find(({ symbol }) => symbol === part) : undefined;
    return figure === undefined ? raised(part) : <span key={place}>{valueText(figure)}</span>;
  });
}

/** A count is a plain number, not a percentage. */
function valueText({ quantity, si, meaning }: Figure): string {
  return meaning === "figure-threads-per-inch" ? String(si) : figureText(quantity, si, "significant");
}
