// The head of the charge card: where to close the valve, or what goes in where no cylinder is weighed yet.

import type { JSX } from "preact";
import type { ChargeAnswer, ChargeNotice, Problem, ScaleAnswer } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { Finding, type FoundFigure, type FoundVerdict } from "../../parts/finding";
import { Row, Rows } from "../../parts/rows";
import { otherUnitOf } from "../../unit-choice";

export function ChargeFinding({ charge, weighed, problems, shownAt, showsRemaining = false, told = [] }: {
  /** Plate, line and accessories. */
  readonly charge: ChargeAnswer | undefined;
  /** The same with the scale. */
  readonly weighed: ChargeAnswer | undefined;
  readonly problems: readonly Problem[];
  /** Fields that show their own problems; without it all of them do. */
  readonly shownAt?: readonly string[];
  /** Whether what is still to move stands beside the mark to stop at. */
  readonly showsRemaining?: boolean;
  /** Cautions that stand above already. */
  readonly told?: readonly string[];
}): JSX.Element {
  const scale = weighed?.scale ?? undefined;
  return (
    <Finding
      figures={[...(showsRemaining ? remainingOf(scale) : []), ...figuresOf(charge, scale)]}
      verdict={scale && verdictOf(scale)}
      sentence={scale && sentenceOf(scale)}
      problems={problems}
      {...(shownAt && { shownAt })}
      empty={message("charge-empty")}
      cautions={charge?.cautions.filter((caution) => caution !== "cylinder-never-above-eighty").map((caution) => `choice-${caution}`) ?? []}
      told={told}
    >
      {(weighed ?? charge)?.notices.filter(isOfHead).map((notice) => (
        <p key={notice} class="note" data-notice={notice}>
          {message(`choice-${notice}`)}
        </p>
      ))}
      {charge?.charge && <ChargeRows charge={charge.charge} />}
    </Finding>
  );
}

function figuresOf(answer: ChargeAnswer | undefined, scale: ScaleAnswer | undefined): readonly FoundFigure[] {
  if (scale?.stopMark != null) {
    const isOut = scale.direction === "out-of-cylinder";
    return [{ mark: "stopMark", name: message(isOut ? "charge-stop-falling" : "charge-stop-rising"), ...mass(scale.stopMark) }];
  }
  const charge = answer?.charge;
  if (charge == null) return [];
  const takesOut = charge.toTakeOut > 0;
  const moved: FoundFigure = takesOut
    ? { mark: "toTakeOut", name: message("charge-to-take-out"), ...mass(charge.toTakeOut) }
    : { mark: "toAdd", name: message("charge-to-add"), ...mass(charge.toAdd) };
  return [moved];
}

/** What is still to move; beyond the mark there is nothing, and the verdict says so. */
function remainingOf(scale: ScaleAnswer | undefined): readonly FoundFigure[] {
  if (scale?.remaining == null) return [];
  return [{ mark: "remaining", name: message("charge-remaining"), ...mass(Math.max(scale.remaining, 0)) }];
}

function mass(si: number): Pick<FoundFigure, "quantity" | "si" | "precision"> {
  return { quantity: "mass", si, precision: "table" };
}

function verdictOf({ state, remaining }: ScaleAnswer): FoundVerdict | undefined {
  if (state == null || remaining == null) return undefined;
  const amount = grams(Math.abs(remaining));
  switch (state) {
    case "scale-go-on":
      return { state: "open", word: message("charge-go-on", { amount }) };
    case "scale-stop":
      return { state: "in-band", word: message("choice-scale-stop") };
    case "scale-too-much":
      return { state: "out-of-band", word: message("charge-too-much", { amount }) };
  }
}

/** What has moved, how surely, and the same for a scale that was set to zero. */
function sentenceOf({ target, chargedSoFar, uncertainty, lacking, direction }: ScaleAnswer): string {
  const moved = chargedSoFar == null ? [] : [message("charge-moved", { amount: grams(chargedSoFar), uncertainty: grams(uncertainty) })];
  if (target == null) return [...moved, message("charge-no-target")].join(" ");
  const sign = direction === "out-of-cylinder" ? "−" : "";
  const zeroed = lacking > 0 ? message("charge-lacking", { amount: grams(lacking) }) : message("charge-zeroed", { amount: sign + grams(target) });
  return [...moved, zeroed].join(" ");
}

function grams(si: number): string {
  return figureText("mass", si, "table");
}

/** What the lines' panel does not say. */
function isOfHead(notice: ChargeNotice): boolean {
  return notice !== "liquid-line-taken-full" && notice !== "plate-and-physics-apart" && notice !== "vapour-line-not-counted";
}

function ChargeRows({ charge }: { readonly charge: NonNullable<ChargeAnswer["charge"]> }): JSX.Element {
  const { factory, line, reduction, accessories: added, total, toAdd, toTakeOut, basis } = charge;
  const row = (mark: string, si: number, name = `charge-${mark}`): JSX.Element => (
    <Row mark={mark} name={message(name)} figure={figureText("mass", si, "table")} beneath={figureText("mass", si, "table", otherUnitOf("mass"))} />
  );
  const isEntered = basis === "charge-entered";
  return (
    <Rows>
      {factory != null && row("factory", factory)}
      {!isEntered && row("line", line, basis === "line-from-physics" ? "charge-line-physics" : "charge-line")}
      {reduction > 0 && row("reduction", reduction)}
      {added > 0 && row("accessories", added, "charge-accessories")}
      {total != null && row("total", total)}
      {toTakeOut > 0 ? row("toTakeOut", toTakeOut, "charge-to-take-out") : row("toAdd", toAdd, "charge-to-add")}
    </Rows>
  );
}
