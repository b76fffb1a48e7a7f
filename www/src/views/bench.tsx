// The bench: how tight, how wide, which wrench. Opens without a question asked.

import type { JSX } from "preact";
import { AfterFirstFigures } from "../parts/after-first-figures";
import { Cautions } from "../parts/cautions";
import { drawnFor } from "../parts/drawn-for";
import { FlarePanel } from "./bench/flare-panel";
import { JointFigures } from "./bench/joint-figures";
import { TorquePanel } from "./bench/torque-panel";
import { WrenchPanel } from "./bench/wrench-panel";

const nut = ["tube", "family", "plateTorque"];
const lever = ["adapterLength", "adapterAngle", "wrenchLength"];

const Torque = drawnFor([...nut, ...lever], TorquePanel);
const Joint = drawnFor(["tube", "flareClass"], JointFigures);
const Flare = drawnFor(["tube", "flareClass", "tool", "measuredCone", "caliperUncertainty"], FlarePanel);
const Wrench = drawnFor([...nut, ...lever, "wrenchRange", "wrenchAccuracy"], WrenchPanel);

export function Bench(): JSX.Element {
  return (
    <main class="bench">
      <Torque />
      <Joint />
      <AfterFirstFigures>
        {() => (
          <>
            <Flare />
            <Wrench />
            <Cautions ids={["torque-caution-wrench", "torque-caution-code"]} />
          </>
        )}
      </AfterFirstFigures>
    </main>
  );
}
