// The usual cautions of a stage: the shortest of them always there, all of them until somebody has folded them away.

import type { JSX } from "preact";
import type { Stage } from "../../core";
import { message } from "../../locale";
import { Cautions } from "../../parts/cautions";

/** Message ids `caution-<stage>-<matter>`. */
const matters: Readonly<Record<Stage, readonly string[]>> = {
  plan: ["licence", "plate", "flammable", "electricity"],
  flare: ["licence", "eyes", "nitrogen", "flammable"],
  tighten: ["licence", "back-up", "torque", "pressure"],
  "pressure-test": ["licence", "nitrogen", "regulator", "stages", "eyes", "release"],
  evacuate: ["licence", "electricity", "pressure", "flammable", "oil-mist"],
  "release-and-charge": ["licence", "cold", "flammable", "air", "cylinder"],
  "run-check": ["licence", "electricity", "moving", "hot"],
  record: ["licence", "handover"],
};

/** Folded in this window. */
const folded = new Set<string>();

export function StageCautions({ stage, job }: { readonly stage: Stage; readonly job: string }): JSX.Element {
  const key = `${job} ${stage}`;
  return (
    <details
      key={key}
      class="stage-cautions"
      open={!folded.has(key)}
      onToggle={({ currentTarget }) => {
        if (currentTarget.open) folded.delete(key);
        else folded.add(key);
      }}
    >
      <summary>{message(`caution-${stage}`)}</summary>
      <Cautions ids={matters[stage].map((matter) => `caution-${stage}-${matter}`)} />
    </details>
  );
}
