// What was entered and stands nowhere else on the record: what the plate says, the rooms, the rules, the scale, the
// readings of the running unit.

import type { JSX } from "preact";
import { useJob } from "../../../job/job-context";
import { itemsAt } from "../../../job/job-path";
import { contentText, nameWords } from "../../../job/place-words";
import { message } from "../../../locale";
import { read, type Tree, type TreeObject } from "../../../store/jobs";

interface EnteredLine {
  readonly name: string;
  readonly text: string;
}

export function Entered(): JSX.Element | null {
  const { document } = useJob();
  const lines = enteredLines(document).filter(({ text }) => text !== "");
  if (lines.length === 0) return null;
  return (
    <section class="record-entered">
      <h3>{message("record-entered")}</h3>
      <dl>
        {lines.map(({ name, text }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function enteredLines(document: TreeObject): readonly EnteredLine[] {
  const members = (...path: readonly string[]): string => memberTexts(read(document, path));
  const items = (...path: readonly string[]): string => itemsAt(document, ...path).map(memberTexts).join(" · ");
  return [
    { name: message("field-plate"), text: members("plate") },
    { name: message("field-liquidLine"), text: members("lines", "liquidLine") },
    { name: message("field-gasLine"), text: members("lines", "gasLine") },
    { name: message("field-accessories"), text: items("lines", "accessories") },
    { name: message("field-rooms"), text: items("rooms") },
    { name: message("record-place"), text: memberTexts(placeOf(document)) },
    { name: message("stage-pressure-test"), text: members("pressureTest", "test") },
    { name: message("stage-evacuate"), text: joined(memberTexts(evacuationOf(document)), members("evacuation", "hold")) },
    { name: message("release-charge"), text: members("release", "charge") },
    { name: message("stage-run-check"), text: members("runCheck", "readings") },
  ];
}

/** Told in the head of the record, or with what was found. */
const toldElsewhere: ReadonlySet<string> = new Set(["id", "equipment", "refrigerant", "tube", "testRule", "passRule", "passPressure", "passTime", "mode"]);

/** `Altitude: 620 m; Barometer at the place: 950 mbar`. Lists have a line of their own. */
function memberTexts(found: Tree | undefined): string {
  if (typeof found !== "object" || found === null || Array.isArray(found)) return "";
  const told = Object.entries(found).filter(([name, inner]) => !toldElsewhere.has(name) && !Array.isArray(inner) && inner !== "");
  return joined(...told.map(([name, inner]) => message("place-within", { outer: nameWords(name), inner: contentText(inner) })));
}

function placeOf({ altitude = "", barometer = "", roomRule = "" }: TreeObject): TreeObject {
  return { altitude, barometer, roomRule };
}

function evacuationOf(document: TreeObject): TreeObject {
  return { coresOut: read(document, ["evacuation", "coresOut"]) ?? "" };
}

function joined(...texts: readonly string[]): string {
  return texts.filter((text) => text !== "").join("; ");
}
