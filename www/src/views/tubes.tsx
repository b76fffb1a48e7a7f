// The tube table: what each coil holds, weighs and bears.

import type { JSX } from "preact";
import { calculate, tubeSizes, type Input, type Problem, type TubeSize } from "../core";
import { message } from "../locale";
import { Cautions } from "../parts/cautions";
import { EntryField } from "../parts/entry-field";
import { entryOf, textOf, write } from "../parts/fields";
import { unitOf } from "../unit-choice";
import { TubeDetails } from "./tubes/tube-details";
import { TubeTable } from "./tubes/tube-table";

/** A size with what the core says of it. */
export interface AskedSize {
  readonly size: TubeSize;
  /** What opens it in the address. */
  readonly key: string;
  readonly label: string;
  readonly input: Input<"tube">;
}

/** The condition that all ratings are for. */
function condition(): Input<"tube"> {
  return {
    temperature: entryOf("temperature", "temperature"),
    designPressure: entryOf("designPressure", "gauge-pressure"),
  };
}

function asked(size: TubeSize, rating: Input<"tube">): AskedSize {
  const isMetric = size.series === "en-12735-1";
  const key = `${size.name}${isMetric ? " mm" : ""}${size.wall ? " other wall" : ""}`;
  const own = { tube: isMetric ? `${size.name} mm` : size.name, series: size.series, wall: size.wall ?? null };
  return { size, key, label: isMetric ? `${size.name} mm` : size.name, input: { ...own, ...rating } };
}

export function Tubes(): JSX.Element {
  const problems = conditionProblems();
  // A flawed condition withholds the ratings and nothing else.
  const rating = problems.length === 0 ? condition() : {};
  const sizes = tubeSizes().map((size) => asked(size, rating));
  const opened = sizes.find(({ key }) => key === textOf("open"));
  const toggle = (key: string): void => write("open", key === textOf("open") ? "" : key);
  return (
    <main class="tubes">
      <h1>{message("tubes-heading")}</h1>
      <p class="note">{message("tubes-intro")}</p>
      <div class="fields">
        <EntryField
          name="temperature"
          label="tubes-metal-temperature"
          problems={problems}
          unit={unitOf("temperature")}
          words
        />
        <EntryField name="designPressure" problems={problems} unit={unitOf("gauge-pressure")} words />
      </div>
      {(["astm-b280", "en-12735-1"] as const).map((series) => (
        <TubeTable
          key={series}
          title={message(`choice-${series}`)}
          sizes={sizes.filter(({ size }) => size.series === series)}
          opened={opened?.key}
          onToggle={toggle}
          details={opened && <TubeDetails asked={opened} />}
        />
      ))}
      <Cautions ids={["tubes-brazed", "tubes-caution"]} />
    </main>
  );
}

/** What is wrong with temperature and design pressure, whatever the size. */
function conditionProblems(): readonly Problem[] {
  const first = tubeSizes()[0];
  if (first === undefined) return [];
  const reply = calculate("tube", { tube: first.name, ...condition() });
  return "problems" in reply ? reply.problems : [];
}
