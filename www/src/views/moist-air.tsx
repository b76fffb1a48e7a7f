// Moist air: any two facts give all the others.

import type { JSX } from "preact";
import { useEffect } from "preact/hooks";
import { calculate, type Input, type MoistAirAnswer, type QuantityKind } from "../core";
import { message } from "../locale";
import { AirFields, airInput, airText } from "../parts/air-fields";
import { EntryField } from "../parts/entry-field";
import { entryOf, textOf, writeOut } from "../parts/fields";
import { figureText } from "../parts/figures";
import { Row, Rows } from "../parts/rows";
import { Working } from "../parts/working";
import { otherUnitOf, unitOf } from "../unit-choice";

/** The facts in the order in which they are measured, each with its quantity. */
const facts = [
  { name: "dryBulb", quantity: "temperature" },
  { name: "wetBulb", quantity: "temperature" },
  { name: "relativeHumidity", quantity: "ratio" },
  { name: "dewPoint", quantity: "temperature" },
  { name: "humidityRatio", quantity: "ratio" },
  { name: "enthalpy", quantity: "specific-enthalpy" },
] as const satisfies readonly { name: keyof Input<"moist-air"> & keyof MoistAirAnswer; quantity: QuantityKind }[];

export function MoistAir(): JSX.Element {
  useEffect(() => writeOut(["altitude"]), []);
  const typed = Object.fromEntries(facts.map(({ name, quantity }) => [name, entryOf(name, quantity)]));
  const reply = calculate("moist-air", { ...typed, ...airInput() });
  const answer = "answer" in reply ? reply.answer : undefined;
  const problems = "problems" in reply ? reply.problems.filter((problem) => !(problem.code === "wrong-count" && problem.found < 2)) : [];
  return (
    <main class="moist-air">
      <h1>{message("moist-air-heading")}</h1>
      <p class="note">{message("moist-air-intro")}</p>
      <div class="fields">
        {facts.map(({ name, quantity }) => (
          <EntryField key={name} name={name} problems={problems} unit={unitOf(quantity)} words />
        ))}
      </div>
      <section>
        <h2>{message("moist-air-others")}</h2>
        {answer ? <Others answer={answer} /> : <p class="note">{message(problems.length > 0 ? "moist-air-withheld" : "moist-air-empty")}</p>}
      </section>
      {answer && <p class="note sentence">{airText(answer.ambient)}</p>}
      {answer && <Working steps={answer.working} of={message("title-moist-air")} />}
      <AirFields problems={problems} />
    </main>
  );
}

/** What was not entered. */
function Others({ answer }: { readonly answer: MoistAirAnswer }): JSX.Element {
  return (
    <Rows>
      {facts
        .filter(({ name }) => textOf(name).trim() === "")
        .map(({ name, quantity }) => (
          <Fact key={name} name={name} quantity={quantity} si={answer[name]} />
        ))}
      <Fact name="density" quantity="density" si={answer.density} />
    </Rows>
  );
}

function Fact({ name, quantity, si }: {
  readonly name: string;
  readonly quantity: QuantityKind;
  readonly si: number;
}): JSX.Element {
  const other = otherUnitOf(quantity);
  const precision = name === "humidityRatio" || name === "density" ? "significant" : "table";
  return (
    <Row
      mark={name}
      name={message(`field-${name}`)}
      figure={figureText(quantity, si, precision)}
      beneath={other === unitOf(quantity) ? undefined : figureText(quantity, si, precision, other)}
    />
  );
}
