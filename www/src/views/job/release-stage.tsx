// Release and charge: what must be shown before, the valves in their order, the pressure after, caps, the scale.

import type { JSX } from "preact";
import { AfterRelease } from "./release/after-release";
import { Caps } from "./release/caps";
import { Evidence } from "./release/evidence";
import { ScaleDesk } from "./release/scale-desk";
import { Valves } from "./release/valves";

export function ReleaseStage(): JSX.Element {
  return (
    <>
      <Evidence />
      <Valves />
      <AfterRelease />
      <Caps />
      <ScaleDesk />
    </>
  );
}
