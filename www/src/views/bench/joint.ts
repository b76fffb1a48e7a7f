// What the panels of the bench ask the core: each just what it depends on, so that one bad field
// never blanks another panel.

import { calculate, type Input, type Reply, type TorqueAnswer } from "../../core";
import { entryOf, textOf, wordOf } from "../../parts/fields";

/** What the head figure depends on. */
export function torqueInput(): Input<"torque"> {
  return { tube: textOf("tube"), family: wordOf("family"), plateTorque: entryOf("plateTorque", "torque") };
}

export function askTorque(): Reply<"torque"> {
  return calculate("torque", torqueInput());
}

/** The families' bands, whatever plate or family is chosen. */
export function familyBands(): TorqueAnswer["families"] {
  const reply = calculate("torque", { tube: textOf("tube") });
  return "answer" in reply ? reply.answer.families : [];
}

/** What the setting on the wrench depends on besides. */
export function leverInput(): Input<"torque"> {
  return {
    ...torqueInput(),
    adapterLength: entryOf("adapterLength", "length"),
    adapterAngle: entryOf("adapterAngle", "angle"),
    wrenchLength: entryOf("wrenchLength", "length"),
  };
}

/** What the wrench's suitability depends on besides. */
export function wrenchInput(): Input<"torque"> {
  return {
    ...leverInput(),
    wrenchRange: entryOf("wrenchRange", "torque"),
    wrenchAccuracy: entryOf("wrenchAccuracy", "ratio"),
  };
}

export function flareInput(): Input<"flare"> {
  return { tube: textOf("tube"), flareClass: wordOf("flareClass"), tool: wordOf("tool") };
}

export function measuredInput(): Input<"flare"> {
  return {
    ...flareInput(),
    measuredCone: entryOf("measuredCone", "length"),
    caliperUncertainty: entryOf("caliperUncertainty", "length"),
  };
}

/** The size's name where it has one, else the text as typed. */
export function sizeName(): string {
  const tube = textOf("tube");
  const reply = calculate("flare", { tube, flareClass: "class-2" });
  return "answer" in reply ? reply.answer.name : tube;
}
