// The bench: how tight, how wide, which wrench. Opens without a question asked.

import type { JSX } from "preact";
import { AfterFirstFigures } from "../parts/after-first-figures";
import { Cautions } from "../parts/cautions";
import { FlarePanel } from "./bench/flare-panel";
import { JointFigures } from "./bench/joint-figures";
import { TorquePanel } from "./bench/torque-panel";
import { WrenchPanel } from "./bench/wrench-panel";

export function Bench(): JSX.Element {
  return (
    <main class="bench">
      <TorquePanel />
      <JointFigures />
      <AfterFirstFigures>
        {() => (
          <>
            <FlarePanel />
            <WrenchPanel />
            <Cautions ids={["torque-caution-wrench", "torque-caution-code"]} />
          </>
        )}
      </AfterFirstFigures>
    </main>
  );
}
