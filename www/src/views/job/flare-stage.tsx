// The stage of the cones: joint by joint, how wide, which tool, was it measured.

import type { JSX } from "preact";
import { ConeView } from "./joints/cone-view";
import { JointList } from "./joints/joint-list";
import { JointWalk } from "./joints/joint-walk";
import { MadeAct } from "./joints/made-act";

export function FlareStage(): JSX.Element {
  return (
    <>
      <JointWalk work={{ kinds: ["flare", "brazed"], steps: ["make", "measure-cone", "remake"] }} view={ConeView} act={MadeAct} />
      <JointList stage="flare" />
    </>
  );
}
