// A page for parts.test.mjs: rows of readings and their drawing, with problems that the test names.

import { render, type JSX } from "preact";
import { listenToAddress } from "../../src/address";
import { startWholeCore, type Problem } from "../../src/core";
import { ReadingPlot } from "../../src/drawings/reading-plot";
import { EntryRows } from "../../src/parts/entry-rows";
import { ExampleButton } from "../../src/parts/example-button";
import { Finding } from "../../src/parts/finding";
import { rowsOf, type RowList } from "../../src/parts/row-list";
import { tubeChoices } from "../../src/parts/tube-choice";
import { vacuumUnit, VacuumUnitChoice } from "../../src/parts/vacuum-unit";
import { speak } from "../../src/locale";
import { applyToDocument, listenToSettings } from "../../src/settings";
import { applyStyle } from "../../src/style";
import cardStyle from "../../src/styles/fetched.css";
import pageStyle from "../../src/styles/page.css";

interface Reading {
  readonly time?: unknown;
  readonly absolutePressure?: unknown;
  readonly temperature?: unknown;
}

interface Line {
  readonly tube?: unknown;
  readonly elbows90?: unknown;
}

const readings: RowList<Reading> = {
  name: "readings",
  least: 2,
  columns: [
    { name: "time", label: "quantity-time", quantity: "time" },
    { name: "absolutePressure", label: "quantity-vacuum", quantity: "absolute-pressure", unit: vacuumUnit },
    { name: "temperature", quantity: "temperature", words: true, repeats: true },
  ],
};

const lines: RowList<Line> = {
  name: "lines",
  columns: [{ name: "tube", choices: tubeChoices }, { name: "elbows90" }],
};

const example = { time1: "0 min", absolutePressure1: "900 micron", time2: "10 min", absolutePressure2: "950 micron" };

/** What the test hands over and asks for. */
declare global {
  var problems: readonly Problem[] | undefined;
  var sent: () => unknown;
}

globalThis.sent = () => ({ readings: rowsOf(readings), lines: rowsOf(lines) });

function Parts(): JSX.Element {
  const problems = globalThis.problems ?? [];
  return (
    <div class="frame">
      <main>
        <h1>Parts</h1>
        <ExampleButton example={example} />
        <Finding figures={[]} verdict={{ state: "cannot-tell", word: "cannot tell yet" }} problems={[]} empty="" />
        <EntryRows list={readings} problems={problems} legend="Readings" />
        <EntryRows list={lines} problems={problems} legend="Lines" />
        <VacuumUnitChoice />
        <ReadingPlot
          quantity="absolute-pressure"
          unit={vacuumUnit()}
          scale="logarithmic"
          readings={[
            { time: 0, value: 101_325 },
            { time: 600, value: 400, isLeftOut: true },
            { time: 1200, value: 70, uncertainty: 10 },
            { time: 1800, value: 140, uncertainty: 10, isBeyond: true },
            { time: 1900, value: 0 },
          ]}
          expected={{ curve: [0, 600, 1200, 1800].map((time) => ({ time, value: 101_325 * Math.exp(-time / 150) + 60 })), label: "expected" }}
          limit={{ value: 66.66, label: "500 micron" }}
          labels={{ alternative: "Pressure falls to 500 micron.", reading: "reading", leftOut: "left out" }}
        />
        <ReadingPlot
          quantity="gauge-pressure"
          unit="bar"
          scale="linear"
          readings={[{ time: 0, value: 40e5 }]}
          labels={{ alternative: "One reading.", reading: "reading", leftOut: "left out" }}
        />
      </main>
    </div>
  );
}

const root = document.getElementById("page") ?? document.body;
const draw = (): void => render(<Parts />, root);
addEventListener("redraw", draw);
applyStyle(pageStyle);
applyStyle(cardStyle);
applyToDocument();
await startWholeCore();
await speak("en");
listenToAddress(draw);
listenToSettings(draw);
draw();
