// The plate's adder against physics: what the line holds, to scale beside each other.

import type { JSX } from "preact";
import type { ChargeAnswer, LineCharge, Problem } from "../../core";
import { AdderBars } from "../../drawings/adder-bars";
import { useSheet } from "../../drawings/sheet";
import { message } from "../../locale";
import { CardFields } from "../../parts/card-fields";
import { Disclosure } from "../../parts/disclosure";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { isFilled, isWrong, lineFields, stateFields } from "./ask";

export function LinePanel({ answer, problems }: {
  readonly answer: ChargeAnswer | undefined;
  readonly problems: readonly Problem[];
}): JSX.Element {
  const line = answer?.line;
  return (
    <section>
      <h2>{message("charge-physics")}</h2>
      <CardFields fields={lineFields} problems={problems} />
      <Disclosure name="line-states" summary={<span>{message("charge-states")}</span>} mustShow={isFilled(stateFields) || isWrong(stateFields, problems)}>
        <CardFields fields={stateFields} problems={problems} />
      </Disclosure>
      {line?.physicsAdder != null && <Comparison line={line} physicsAdder={line.physicsAdder} />}
      {line?.vapour != null && line.liquid == null && (
        <Rows>
          <Row mark="vapourPerLength" name={message("charge-vapour-holds")} figure={perLength(line.vapour.massPerLength)} />
        </Rows>
      )}
      {answer?.notices.filter((notice) => notice === "liquid-line-taken-full" || notice === "plate-and-physics-apart" || notice === "vapour-line-not-counted").map((notice) => (
        <p key={notice} class="note" data-notice={notice}>
          {message(`choice-${notice}`)}
        </p>
      ))}
    </section>
  );
}

function Comparison({ line, physicsAdder }: { readonly line: LineCharge; readonly physicsAdder: number }): JSX.Element {
  const { plateAdder, liquid, vapour, adderDifference, plateExtra, physicsExtra, extraDifference, contents } = line;
  const sheet = useSheet();
  const parts = [
    ...(liquid ? [{ label: message("choice-liquid"), si: liquid.massPerLength }] : []),
    ...(vapour ? [{ label: message("choice-vapour"), si: vapour.massPerLength }] : []),
  ];
  const told = { plate: plateAdder == null ? "—" : perLength(plateAdder), physics: perLength(physicsAdder) };
  return (
    <>
      <AdderBars sheet={sheet} plate={plateAdder ?? undefined} physics={parts} textOf={perLength} alternative={message("charge-bars", told)} />
      <Rows>
        {liquid != null && <Row mark="liquidPerLength" name={message("charge-liquid-holds", { temperature: figureText("temperature", liquid.temperature) })} figure={perLength(liquid.massPerLength)} />}
        {vapour != null && <Row mark="vapourPerLength" name={message("charge-vapour-holds", { temperature: figureText("temperature", vapour.temperature) })} figure={perLength(vapour.massPerLength)} />}
        {adderDifference != null && <Row mark="adderDifference" name={message("charge-adder-difference")} figure={signed("mass-per-length", adderDifference)} />}
        {physicsExtra != null && <Row mark="physicsExtra" name={message("charge-physics-extra")} figure={figureText("mass", physicsExtra, "table")} beneath={plateExtra == null ? undefined : message("charge-plate-extra", { mass: figureText("mass", plateExtra, "table") })} />}
        {extraDifference != null && <Row mark="extraDifference" name={message("charge-extra-difference")} figure={signed("mass", extraDifference)} />}
        {contents != null && <Row mark="contents" name={message("charge-contents")} figure={figureText("mass", contents, "table")} />}
      </Rows>
    </>
  );
}

function perLength(si: number): string {
  return figureText("mass-per-length", si, "table");
}

function signed(quantity: "mass" | "mass-per-length", si: number): string {
  const text = figureText(quantity, si, "table");
  return si > 0 ? `+${text}` : text;
}
