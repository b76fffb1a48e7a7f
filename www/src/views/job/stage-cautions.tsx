// The usual cautions of a stage: the shortest of them always there, all of them until the stage is begun.

import type { JSX } from "preact";
import { useState } from "preact/hooks";
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

/** What the calculations of a stage caution of, and the stage itself has said. */
export const cautionsTold = {
  "pressure-test": ["standing-test-caution-oxygen"],
  evacuate: ["pump-down-caution-compressor"],
  "release-and-charge": ["choice-refrigerant-burns", "choice-refrigerant-freezes"],
  "run-check": ["choice-live-parts", "choice-turning-parts", "choice-hot-and-cold-lines", "choice-instructions-and-code-first"],
} as const satisfies Partial<Record<Stage, readonly string[]>>;

/** What somebody has folded away (false) or opened (true) in this window. */
const chosen = new Map<string, boolean>();

export function StageCautions({ stage, job, isBegun }: {
  readonly stage: Stage;
  readonly job: string;
  /** Whoever comes back to a stage has read them. */
  readonly isBegun: boolean;
}): JSX.Element {
  const key = `${job} ${stage}`;
  // What stood open at first stays so while somebody works there.
  const [isOpenAtFirst] = useState(!isBegun);
  return (
    <details
      class="stage-cautions"
      open={chosen.get(key) ?? isOpenAtFirst}
      onToggle={({ currentTarget }) => {
        // What opens by itself is nobody's choice.
        if (chosen.has(key) || currentTarget.open !== isOpenAtFirst) chosen.set(key, currentTarget.open);
      }}
    >
      <summary>{message(`caution-${stage}`)}</summary>
      <Cautions ids={matters[stage].map((matter) => `caution-${stage}-${matter}`)} />
    </details>
  );
}
