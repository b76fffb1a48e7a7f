// A figure of the running system in a row: the mark of its verdict, where it stands, what it should be.

import type { JSX } from "preact";
import type { Check } from "../../core";
import { message } from "../../locale";
import { bandText, figureText } from "../../parts/figures";
import { VerdictLine, VerdictMark } from "../../parts/verdict-line";

/** A figure that may be judged, with its mark. */
export function CheckRow({ mark, name, check }: {
  readonly mark: string;
  readonly name: string;
  readonly check: Check;
}): JSX.Element | null {
  const { figure, uncertainty, judgement, target, deviation } = check;
  if (figure == null || uncertainty == null) return null;
  return (
    <div class="row" data-verdict={judgement?.verdict ?? "open"}>
      <dt>
        <VerdictMark judged={judgement ?? undefined} limits={target?.band} />
        <span>{name}</span>
      </dt>
      <dd data-figure={mark}>
        {figureText("temperature-difference", figure)} <small>± {figureText("temperature-difference", uncertainty)}</small>
        {judgement && <small class="standing">{message("running-standing", { standing: standingOf(check), target: targetText(check) })}</small>}
        {deviation == null && judgement == null && check.open != null && <small class="standing">{message(`choice-${check.open}`)}</small>}
      </dd>
    </div>
  );
}

/** The verdict on superheat or subcooling in a line of its own. */
export function CheckLine({ figure, check }: {
  readonly figure: "superheat" | "subcooling";
  readonly check: Check;
}): JSX.Element | null {
  const { judgement, target, open, largestError } = check;
  if (check.figure == null && target == null) return null;
  const name = message(`choice-${figure}`);
  const words = message("running-line", { figure: name, standing: judgement ? standingOf(check) : message("running-no-verdict") });
  return (
    <VerdictLine judged={judgement ?? undefined} limits={target?.band} quantity="temperature-difference" words={words}>
      {target && <span class="margin">{message("running-target", { target: targetText(check), basis: message(`running-basis-${target.basis}`) })}</span>}
      {open != null && <span class="margin">{message(`choice-${open}`)}</span>}
      {judgement?.verdict === "cannot-tell" && largestError != null && (
        <span class="margin" data-decides={largestError}>
          {message(largestError === "refrigerant-data" ? "running-data-decide" : "running-decides", { instrument: message(`choice-${largestError}`) })}
        </span>
      )}
    </VerdictLine>
  );
}

/** Low, in band, high, or too near a limit to tell. */
function standingOf({ deviation }: Check): string {
  return deviation == null ? message("verdict-cannot-tell") : message(`choice-${deviation}`);
}

function targetText({ target }: Check): string {
  return target ? bandText("temperature-difference", target.band) : "";
}
