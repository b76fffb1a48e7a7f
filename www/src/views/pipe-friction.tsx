// Friction in a tube: what pressure a flow costs on its way.

import type { JSX } from "preact";
import { calculate, type PipeFrictionAnswer } from "../core";
import { message, numberText } from "../locale";
import { answerOf, Card, problemsOf } from "../parts/card";
import { CardFields, inputOf, type CardField } from "../parts/card-fields";
import { figureText } from "../parts/figures";
import { Finding, type FoundFigure } from "../parts/finding";
import { Row, Rows } from "../parts/rows";
import { Working } from "../parts/working";
import { runUnit } from "../unit-choice";

const fields: readonly CardField<"pipe-friction">[] = [
  { name: "bore", quantity: "length" },
  { name: "length", quantity: "length", unit: runUnit },
  { name: "density", quantity: "density" },
  { name: "viscosity", quantity: "dynamic-viscosity" },
  { name: "massFlow", quantity: "mass-flow", instead: ["volumeFlow", "velocity"] },
  { name: "volumeFlow", quantity: "volume-flow", instead: ["massFlow", "velocity"] },
  { name: "velocity", quantity: "velocity", instead: ["massFlow", "volumeFlow"] },
  { name: "roughness", quantity: "length" },
  { name: "elbows90" },
  { name: "elbows45" },
  { name: "teeRuns" },
  { name: "teeBranches" },
];

/** Liquid refrigerant in the smaller line of a small split. */
const example = {
  bore: "7.94 mm",
  length: "15 m",
  density: "961 kg/m³",
  viscosity: "0.12 mPa·s",
  massFlow: "80 kg/h",
  elbows90: "4",
};

export function PipeFriction(): JSX.Element {
  const reply = calculate("pipe-friction", inputOf(fields));
  const [answer, problems] = [answerOf(reply), problemsOf(reply)];
  return (
    <Card name="pipe-friction" example={example}>
      <Finding figures={answer ? figuresOf(answer) : []} problems={problems} shownAt={fields.map(({ name }) => name)} empty={message("pipe-friction-empty")} />
      <CardFields fields={fields} problems={problems} />
      {answer && <Others answer={answer} />}
      {answer && <Working steps={answer.working} of={message("title-pipe-friction")} />}
    </Card>
  );
}

/** Without a length there is no drop to tell. */
function figuresOf({ pressureDrop, velocity }: PipeFrictionAnswer): readonly FoundFigure[] {
  const speed: FoundFigure = { mark: "velocity", name: message("figure-velocity"), quantity: "velocity", si: velocity, precision: "table" };
  if (pressureDrop === undefined || pressureDrop === null) return [speed];
  return [
    { mark: "pressureDrop", name: message("figure-pressure-drop"), quantity: "pressure-difference", si: pressureDrop, precision: "table" },
    speed,
  ];
}

function Others({ answer }: { readonly answer: PipeFrictionAnswer }): JSX.Element {
  const { regime, reynolds, frictionFactor, equivalentLength, fittingsLength } = answer;
  return (
    <Rows>
      <Row mark="regime" name={message("pipe-friction-regime")} figure={message(`choice-${regime}`)} />
      <Row mark="reynolds" name={message("figure-reynolds")} figure={plain(reynolds)} />
      <Row mark="frictionFactor" name={message("figure-friction-factor")} figure={plain(frictionFactor)} />
      <Row mark="fittingsLength" name={message("pipe-friction-fittings")} figure={figureText("length", fittingsLength, "table", runUnit())} />
      {equivalentLength != null && (
        <Row mark="equivalentLength" name={message("figure-equivalent-length")} figure={figureText("length", equivalentLength, "table", runUnit())} />
      )}
    </Rows>
  );
}

/** A number without a unit, as fine as the method is. */
function plain(number: number): string {
  return numberText(Number(number.toPrecision(3)));
}
