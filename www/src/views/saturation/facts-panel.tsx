// What the refrigerant is and how it is handled, each fact with its source.

import type { JSX } from "preact";
import type { RefrigerantFacts, SaturationAnswer, SourceId } from "../../core";
import { message, numberText } from "../../locale";
import { Disclosure } from "../../parts/disclosure";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { SourceList } from "../../parts/sources";

export function FactsPanel({ facts: answer }: { readonly facts: SaturationAnswer }): JSX.Element {
  const { facts, refrigerant, criticalPoint } = answer;
  const { safetyClass, composition, oils, chargedAsLiquid, concentrationLimit, flareClass } = facts;
  const burns = facts.lowerFlammabilityLimit ?? undefined;
  const made = composition.figure.map(({ substance, massFraction }) => `${substance} ${figureText("ratio", massFraction, "significant")}`);
  const fill = message(chargedAsLiquid.figure ? "facts-as-liquid" : "facts-as-either");
  return (
    <Disclosure
      name="facts"
      mustShow={false}
      summary={
        <>
          <em>{message("facts-summary", { safetyClass: safetyClass.figure, fill })}</em>{" "}
          <span>{message("facts-about", { refrigerant })}</span>
        </>
      }
    >
      <Rows>
        <Row name={message("facts-safety-class")} figure={safetyClass.figure} beneath={message(`facts-class-${safetyClass.figure}`)} />
        <Row name={message("facts-charged")} figure={fill} />
        <Row name={message("facts-oils")} figure={oils.figure.map((oil) => message(`choice-${oil}`)).join(", ")} />
        {made.length > 1 && <Row name={message("facts-composition")} figure={made.join(", ")} />}
        {burns && <Row name={message("facts-flammability-limit")} figure={figureText("density", burns.figure, "significant")} />}
        <Row name={message("facts-concentration-limit")} figure={figureText("density", concentrationLimit.figure, "significant")} />
        {flareClass && <Row name={message("facts-flare-class")} figure={message(`choice-${flareClass.figure}`)} />}
        <Warming warming={facts.globalWarmingPotential} />
        <Row
          name={message("facts-critical-point")}
          figure={figureText("temperature", criticalPoint.temperature)}
          beneath={figureText("absolute-pressure", criticalPoint.pressure, "table")}
        />
      </Rows>
      <SourceList ids={sourcesOf(answer)} />
    </Disclosure>
  );
}

/** A small figure keeps its decimals, a large one is no better than its report's whole number. */
function Warming({ warming }: { readonly warming: RefrigerantFacts["globalWarmingPotential"] }): JSX.Element {
  const told = (figure: number): string => (figure < 10 ? numberText(Number(figure.toPrecision(2))) : figure.toFixed(0));
  return (
    <>
      {(["ar4", "ar5", "ar6"] as const).map((report) => (
        <Row key={report} name={message(`facts-warming-${report}`)} figure={told(warming[report].figure)} />
      ))}
    </>
  );
}

function sourcesOf({ facts, uncertainty, sources }: SaturationAnswer): readonly SourceId[] {
  const { globalWarmingPotential, ...others } = facts;
  const sourced = [...Object.values(others), ...Object.values(globalWarmingPotential), uncertainty];
  return [...sourced.flatMap((fact) => fact?.source ?? []), ...sources];
}
