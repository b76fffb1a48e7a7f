// Places of a job and what stands there, in the words that its fields have on the screen.

import { assess, type JointAssessment } from "../core";
import { hasMessage, message } from "../locale";
import { settled } from "../parts/fields";
import { read, type Path, type Tree, type TreeObject } from "../store/jobs";
import { entryText } from "./job-path";
import { jointText } from "./job-words";
import { isMoment, momentNow, momentText } from "./moment";

/** `Joints: Gas line, indoor port: Oil on thread and faces`. `found` is what stood there, where the document no longer has it. */
export function placeText(document: TreeObject, path: Path, found?: Tree): string {
  const words = path.map((step, index) => {
    if (!step.startsWith("#")) return nameWords(step);
    return itemWords(document, path.slice(0, index + 1), index === path.length - 1 ? found : undefined);
  });
  return words.reduce((outer, inner) => message("place-within", { outer, inner }));
}

/** `member-…` is what a member is called where a field of the same name is called something else. */
export function nameWords(name: string): string {
  const id = [`member-${name}`, `field-${name}`].find(hasMessage);
  return id === undefined ? name : message(id);
}

/** What an item of a list is called: its joint, its name, its time, else what number it has. */
function itemWords(document: TreeObject, path: Path, found: Tree | undefined): string {
  const id = (path[path.length - 1] ?? "").slice(1);
  const joint = path[0] === "joints" && path.length === 2 ? jointsOf(document).find((one) => one.id === id) : undefined;
  if (joint !== undefined) return jointText(joint);
  const item = read(document, path) ?? found;
  const [name, at] = ["name", "at"].map((member) => entryText(read(item, [member])));
  if (name !== undefined && name !== "") return name;
  if (at !== undefined && at !== "") return momentText(at);
  const list = read(document, path.slice(0, -1));
  const number = Array.isArray(list) ? list.indexOf(item) + 1 : 0;
  return number === 0 ? message("place-item") : message("place-number", { number });
}

function jointsOf(document: TreeObject): readonly JointAssessment[] {
  const reply = assess(document, momentNow(), null);
  return "answer" in reply ? reply.answer.joints : [];
}

/** Members of an object that are told, at most; and of an object within it. */
const [mostTold, mostToldWithin] = [6, 2];

/** What stands at a place. */
export function contentText(found: Tree | undefined, most = mostTold): string {
  if (found === undefined || found === null || found === "") return message("place-nothing");
  if (typeof found === "boolean") return message(`truth-${found}`);
  if (Array.isArray(found)) return message("place-entries", { count: found.length });
  if (typeof found !== "object") return wordText(String(found));
  if ("text" in found && "assume" in found) return settled(entryText(found), String(found.assume));
  const told = Object.entries(found).filter(([name]) => name !== "id");
  const texts = told.slice(0, most).map(([name, inner]) => message("place-within", { outer: nameWords(name), inner: contentText(inner, mostToldWithin) }));
  if (texts.length === 0) return message("place-nothing");
  return told.length > most ? message("place-more", { texts: texts.join("; ") }) : texts.join("; ");
}

function wordText(text: string): string {
  if (isMoment(text)) return momentText(text);
  const spoken = ["choice", "mounting", "leak-look", "stage", "joint-kind", "joint-line"].map((kind) => `${kind}-${text}`);
  const id = /^[a-z][a-z0-9-]*$/.test(text) ? spoken.find(hasMessage) : undefined;
  return id === undefined ? text : message(id);
}
