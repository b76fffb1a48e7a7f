// Release and charge: what must be shown before, the valves in their order, the pressure after, caps, the scale.

import type { JSX } from "preact";
import { Cautions } from "../../parts/cautions";
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
      <Cautions ids={["release-caution-face", "release-caution-air", "release-caution-flammable", "release-caution-code"]} />
    </>
  );
}
