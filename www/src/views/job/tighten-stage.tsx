// The stage of the nuts: joint by joint, how tight, what to set, was it done.

import type { JSX } from "preact";
import { Cautions } from "../../parts/cautions";
import { JointList } from "./joints/joint-list";
import { JointWalk } from "./joints/joint-walk";
import { NutView } from "./joints/nut-view";

export function TightenStage(): JSX.Element {
  return (
    <>
      <JointWalk work={{ kinds: ["flare", "cap"], steps: ["oil", "tighten", "remake"] }} view={NutView} />
      <JointList stage="tighten" />
      <Cautions ids={["torque-caution-wrench", "torque-caution-code"]} />
    </>
  );
}
