// Where a refrigerant boils and condenses: a gauge reading or a temperature in, both lines out.

import type { JSX } from "preact";
import { useEffect } from "preact/hooks";
import type { Problem } from "../core";
import { message } from "../locale";
import { AirFields, airText } from "../parts/air-fields";
import { Cautions } from "../parts/cautions";
import { EntryField } from "../parts/entry-field";
import { textOf, writeOut } from "../parts/fields";
import { RefrigerantChoice } from "../parts/refrigerant-choice";
import { Working } from "../parts/working";
import { askFacts, askReading } from "./saturation/ask";
import { CurvePanel } from "./saturation/curve-panel";
import { FactsPanel } from "./saturation/facts-panel";
import { HeadFigures } from "./saturation/head-figures";
import { PropertyRows } from "./saturation/property-rows";
import { TablePanel } from "./saturation/table-panel";

export function Saturation(): JSX.Element {
  useEffect(() => writeOut(["refrigerant", "altitude"]), []);
  const reply = askReading();
  const facts = askFacts();
  const answer = "answer" in reply ? reply.answer : undefined;
  const problems = "problems" in reply ? reply.problems.filter(isMistake) : [];
  return (
    <main class="saturation">
      <section class="head">
        <h1>{message("saturation-heading", { refrigerant: textOf("refrigerant") })}</h1>
        <RefrigerantChoice problems={problems} isTitled />
        <div class="fields">
          <EntryField name="gaugePressure" problems={problems} switches="gauge-pressure" signed instead={["temperature"]} />
          <EntryField name="temperature" problems={problems} switches="temperature" signed instead={["gaugePressure"]} />
        </div>
        <HeadFigures answer={answer} isMistaken={problems.length > 0} />
        {answer && <p class="assumes sentence">{airText(answer.ambient)}</p>}
      </section>
      <CurvePanel answer={answer} />
      <AirFields problems={problems} />
      {answer && <PropertyRows answer={answer} />}
      {answer && <Working steps={answer.working} of={message("title-saturation")} />}
      {facts && <FactsPanel facts={facts} />}
      {answer && <TablePanel />}
      {facts && <Cautions ids={cautions(facts.facts.safetyClass.figure)} />}
    </main>
  );
}

/** Fields that nobody has filled in yet are no mistake. */
function isMistake(problem: Problem): boolean {
  return !(problem.code === "wrong-count" && problem.found === 0);
}

function cautions(safetyClass: string): readonly string[] {
  const own = { A1: [], A2L: ["saturation-caution-flammable"], A3: ["saturation-caution-flammable"], B2L: ["saturation-caution-toxic"] };
  return [...(own[safetyClass as keyof typeof own] ?? []), "saturation-caution-cold", "torque-caution-code"];
}
