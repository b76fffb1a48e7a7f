// Where an answer says more than the working at which it stands: sources of that, by the step.

import type { SourceId } from "../../core";

const practice: readonly SourceId[] = ["common-practice"];
const evacuation: readonly SourceId[] = ["evacuation-practice"];
const climate: readonly SourceId[] = ["ipcc-ar4-ar5-ar6"];
const hotCylinder: readonly SourceId[] = ["49-cfr-173.304"];
const rooms: readonly SourceId[] = ["real-decreto-552-2019-rooms"];

export const sourcesOfAnswers: Readonly<Record<string, readonly SourceId[]>> = {
  "aim-plate": practice,
  "aim-family": practice,
  "aim-overlap": practice,
  "wrench-setting": practice,
  "least-cone": practice,
  "thread-pitch": practice,
  "rated-pressure": ["copper-tube-handbook-3c"],
  "standard-pressure": ["icao-doc-7488"],
  "dew-pressure": practice,
  "latent-heat": practice,
  superheat: practice,
  subcooling: practice,
  "ideal-gas-hold": practice,
  "test-pressure": ["real-decreto-552-2019-if-09", "ufgs-15182-pressure-test"],
  "frost-point": ["iapws-r14-08"],
  "sublimation-pressure": evacuation,
  "core-conductance": evacuation,
  residual: evacuation,
  "water-gone": ["iapws-r7-97"],
  velocity: practice,
  "oil-return": practice,
  "friction-transition": practice,
  "compression-ratio": practice,
  "orifice-rule": practice,
  "liquid-contents": ["coolprop-8.0.0"],
  "line-extra": practice,
  "line-reduction": practice,
  "stop-mark": practice,
  "fill-by-volume": ["ari-guideline-k"],
  "fill-when-hot": hotCylinder,
  "part-full-when-hot": hotCylinder,
  "warming-ar4": climate,
  "warming-ar5": climate,
  "no-room-limit": rooms,
  "charge-cap": rooms,
  "room-charge": rooms,
  "smallest-room": rooms,
  "insulation-thickness": practice,
};
