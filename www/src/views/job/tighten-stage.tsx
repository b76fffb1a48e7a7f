// The stage of the nuts: joint by joint, how tight, what to set, was it done.

import type { JSX } from "preact";
import { JointList } from "./joints/joint-list";
import { JointWalk } from "./joints/joint-walk";
import { NutView } from "./joints/nut-view";
import { TightenedAct } from "./joints/tightened-act";

export function TightenStage(): JSX.Element {
  return (
    <>
      <JointWalk work={{ kinds: ["flare", "cap"], steps: ["oil", "tighten", "remake"] }} view={NutView} act={TightenedAct} />
      <JointList stage="tighten" />
    </>
  );
}
