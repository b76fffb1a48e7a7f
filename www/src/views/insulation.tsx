// Insulation of a cold line: how thick it must be so that no water condenses on it.

import type { JSX } from "preact";
import { calculate, type InsulationAnswer, type Layer, type Problem } from "../core";
import { InsulationSection } from "../drawings/insulation-section";
import { message } from "../locale";
import { AirFields, airInput } from "../parts/air-fields";
import { answerOf, Card, problemsOf } from "../parts/card";
import { CardFields, inputOf, type CardField } from "../parts/card-fields";
import { Disclosure } from "../parts/disclosure";
import { figureText, limitText } from "../parts/figures";
import { Finding, type FoundFigure, type FoundVerdict } from "../parts/finding";
import { Row, Rows } from "../parts/rows";
import { SourceList } from "../parts/sources";
import { VerdictMark } from "../parts/verdict-line";
import { Working } from "../parts/working";
import { applyStyle } from "../style";
import style from "../styles/insulation.css";
import { unitOf } from "../unit-choice";

applyStyle(style);

const moisture = ["relativeHumidity", "wetBulb", "dewPoint"] as const;

const fields: readonly CardField<"insulation">[] = [
  { name: "tube", as: "tube" },
  { name: "lineTemperature", quantity: "temperature", signed: true },
  { name: "dryBulb", label: "insulation-air", quantity: "temperature", signed: true },
  { name: "relativeHumidity", quantity: "ratio", instead: ["wetBulb", "dewPoint"] },
  { name: "thickness", quantity: "length" },
];

/** What has a usual value, or says the same in another way. */
const others: readonly CardField<"insulation">[] = [
  { name: "wetBulb", quantity: "temperature", signed: true, instead: ["relativeHumidity", "dewPoint"] },
  { name: "dewPoint", quantity: "temperature", signed: true, instead: ["relativeHumidity", "wetBulb"] },
  { name: "dewPointMargin", quantity: "temperature-difference" },
  { name: "conductivity", quantity: "thermal-conductivity", words: true },
  { name: "emissivity", instead: ["surfaceCoefficient"] },
  { name: "airSpeed", quantity: "velocity", instead: ["surfaceCoefficient"] },
  { name: "surfaceCoefficient", quantity: "heat-transfer-coefficient", words: true, instead: ["emissivity", "airSpeed"] },
  { name: "thermometerUncertainty", quantity: "temperature-difference" },
  { name: "humidityUncertainty", quantity: "ratio" },
];

/** The suction line of a split in a damp cellar. */
const example = {
  tube: "5/8",
  lineTemperature: "6 °C",
  dryBulb: "26 °C",
  relativeHumidity: "74 %",
  thickness: "13 mm",
};

export function Insulation(): JSX.Element {
  const reply = calculate("insulation", { ...inputOf(fields), ...inputOf(others), ...airInput() });
  const [answer, problems] = [answerOf(reply), problemsOf(reply)];
  const shownAt = [...[...fields, ...others].map(({ name }) => name), "altitude", "barometer"];
  const wanted = problems.filter(({ field, code }) => !(code === "wrong-count" && field !== "relativeHumidity"));
  return (
    <Card name="insulation" example={example} fromKit={["tube", "altitude"]}>
      <Finding
        figures={answer ? figuresOf(answer) : []}
        verdict={answer && verdictOf(answer)}
        sentence={answer ? sentenceOf(answer) : isTooMoist(problems) ? message("insulation-no-thickness") : undefined}
        problems={problems}
        shownAt={shownAt}
        empty={message("insulation-empty")}
        cautions={["insulation-caution-joints", "insulation-caution-code"]}
      />
      <CardFields fields={fields} problems={wanted} />
      {answer && <Section answer={answer} />}
      {answer && <CommonWalls answer={answer} />}
      {answer && <Others answer={answer} />}
      {answer && <Working steps={answer.working} of={message("insulation-least")} />}
      <Disclosure
        name="other-facts"
        summary={<span>{message("insulation-others")}</span>}
        mustShow={wanted.some(({ field }) => others.some(({ name }) => name === field))}
      >
        <CardFields fields={others} problems={wanted} />
      </Disclosure>
      <AirFields problems={problems} />
    </Card>
  );
}

/** A wall as it is sold: whole millimetres. */
function wallText(thickness: number): string {
  return figureText("length", thickness, unitOf("length") === "mm" ? "significant" : "instrument");
}

/** Whether the air, and not a slip of the pen, is why there is no figure. */
function isTooMoist(problems: readonly Problem[]): boolean {
  return problems.some(({ field, code }) => code === "too-high" && (field === "dewPointMargin" || moisture.some((name) => name === field)));
}

function figuresOf(answer: InsulationAnswer): readonly FoundFigure[] {
  const { isNeeded, thickness, entered, dewPoint } = answer;
  const figures: FoundFigure[] = [];
  if (isNeeded) figures.push({ mark: "thickness", name: message("insulation-least"), quantity: "length", si: thickness, bound: "least" });
  if (entered) {
    const name = message("insulation-outside", { thickness: wallText(entered.thickness) });
    figures.push({ mark: "surfaceTemperature", name, quantity: "temperature", si: entered.surfaceTemperature });
  } else figures.push({ mark: "dewPoint", name: message("insulation-dew-point"), quantity: "temperature", si: dewPoint });
  return figures;
}

/** Of the wall entered, else of none, where none is needed, else of the next one that is sold. */
function verdictOf(answer: InsulationAnswer): FoundVerdict | undefined {
  const judged = (answer.entered ?? (answer.isNeeded ? undefined : answer.bare))?.againstDewPoint;
  return judged && { state: judged.verdict, word: message(`insulation-${judged.verdict}`), judged, quantity: "temperature-difference" };
}

function sentenceOf({ isNeeded, commonThickness, sureThickness }: InsulationAnswer): string {
  if (!isNeeded) return message("insulation-none-needed");
  if (commonThickness == null) return message("insulation-none-so-thick");
  const next = message("insulation-next", { thickness: wallText(commonThickness) });
  if (sureThickness === commonThickness) return next;
  return `${next} ${sureThickness == null ? message("insulation-none-sure") : message("insulation-sure", { thickness: wallText(sureThickness) })}`;
}

function Section({ answer }: { readonly answer: InsulationAnswer }): JSX.Element | null {
  const layer = answer.entered ?? answer.least;
  if (layer.thickness === 0) return null;
  const told = {
    tube: message("insulation-tube", { tube: figureText("length", answer.outsideDiameter, "table") }),
    thickness: answer.entered ? wallText(layer.thickness) : limitText("length", layer.thickness, "least"),
    temperature: figureText("temperature", layer.surfaceTemperature),
    dewPoint: figureText("temperature", answer.dewPoint),
  };
  const labels = { ...told, alternative: message("insulation-drawing", told), dewPoint: message("insulation-dew-point-at", { dewPoint: told.dewPoint }) };
  return <InsulationSection tube={answer.outsideDiameter} outside={layer.outsideDiameter} labels={labels} isDry={layer.againstDewPoint.verdict !== "out-of-band"} />;
}

function CommonWalls({ answer: { common, bare } }: { readonly answer: InsulationAnswer }): JSX.Element {
  return (
    <>
      <h2>{message("insulation-common")}</h2>
      <dl class="rows marked">
        {[bare, ...common].map((layer) => (
          <CommonWall key={layer.thickness} layer={layer} />
        ))}
      </dl>
    </>
  );
}

function CommonWall({ layer }: { readonly layer: Layer }): JSX.Element {
  const { thickness, surfaceTemperature, heatGain, againstDewPoint } = layer;
  return (
    <div class="row" data-wall={Math.round(thickness * 1000)}>
      <dt>
        <VerdictMark judged={againstDewPoint} />
        <span>{thickness === 0 ? message("insulation-bare") : wallText(thickness)}</span>
      </dt>
      <dd>
        {figureText("temperature", surfaceTemperature)}
        <small>{`${message(`insulation-${againstDewPoint.verdict}`)}; ${figureText("heat-flow-per-length", heatGain)}`}</small>
      </dd>
    </div>
  );
}

function Others({ answer }: { readonly answer: InsulationAnswer }): JSX.Element {
  const { dewPoint, relativeHumidity, entered, least, conductivity, coefficientBasis, isNeeded } = answer;
  const layer = entered ?? (isNeeded ? least : answer.bare);
  return (
    <>
      <Rows>
        <Row mark="dew" name={message("insulation-figure-dew-point")} figure={figureText("temperature", dewPoint)} />
        <Row mark="humidity" name={message("insulation-figure-humidity")} figure={figureText("ratio", relativeHumidity, "table", "%")} />
        <Row mark="heatGain" name={message("insulation-figure-heat")} figure={figureText("heat-flow-per-length", layer.heatGain)} />
        <Row mark="conductivity" name={message("insulation-figure-conductivity")} figure={figureText("thermal-conductivity", conductivity.figure)} />
        <Row mark="coefficient" name={message("insulation-figure-coefficient")} figure={figureText("heat-transfer-coefficient", layer.surfaceCoefficient)} />
      </Rows>
      <p class="note">{message(`choice-${coefficientBasis}`)}</p>
      <SourceList ids={[conductivity.source]} />
    </>
  );
}
