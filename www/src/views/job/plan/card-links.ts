// The cards that take their figures from the plan, filled in.

import { writePlace } from "../../../address";
import { itemsAt, textAt } from "../../../job/job-path";
import { settled } from "../../../parts/fields";
import { read, type TreeObject } from "../../../store/jobs";

/** Text at a place with the unit that stood beside it. */
function whole(document: TreeObject, ...steps: readonly string[]): string {
  const found = read(document, steps);
  const assume = typeof found === "object" && found !== null && "assume" in found ? String(found.assume) : undefined;
  return settled(textAt(document, ...steps), assume);
}

export function lineSetPlace(document: TreeObject): string {
  const ports = (["liquid", "gas"] as const).flatMap((line) =>
    itemsAt(document, "lines", `${line}Line`, "indoorPorts").map(({ id }, place) => [`${line}Port${place + 1}`, whole(document, "lines", `${line}Line`, "indoorPorts", `#${id}`, "tube")]),
  );
  // A single port takes an adapter: only several are joined into a line.
  const joined = ports.filter(([name = ""]) => ports.some(([other = ""]) => other !== name && other.startsWith(name.replace(/\d+$/, ""))));
  return writePlace({
    path: "line-set",
    entries: {
      refrigerant: whole(document, "plate", "refrigerant"),
      liquidTube: whole(document, "lines", "liquidLine", "tube"),
      gasTube: whole(document, "lines", "gasLine", "tube"),
      length: whole(document, "lines", "length"),
      lift: whole(document, "lines", "lift"),
      higherUnit: whole(document, "lines", "higherUnit"),
      longestLength: whole(document, "plate", "longestLength"),
      longestLift: whole(document, "plate", "longestLift"),
      prechargedLength: whole(document, "plate", "prechargedLength"),
      designPressure: whole(document, "plate", "designPressure"),
      ...Object.fromEntries(joined),
    },
  });
}

export function insulationPlace(document: TreeObject): string {
  const altitude = whole(document, "altitude");
  return writePlace({ path: "insulation", entries: { tube: whole(document, "lines", "gasLine", "tube"), altitude } });
}
