// Changes of a document as values: what to do, and what stood there before, so that it can be undone.

import { deepest, indexOf, isItem, isList, isObject, isSame, member, read, treeOf, type Item, type Path, type Tree } from "./tree";

/** An item's place in its list: the id of the item in front, null at the start, empty at the end. */
export type After = string | null;

/** What a screen asks for. */
export type Change =
  /** Writes a member or a whole item; without `to`, takes the member out. */
  | { readonly kind: "set"; readonly path: Path; readonly to?: Tree }
  /** Puts an item into the list at `path`, which is made if it is not there. */
  | { readonly kind: "put"; readonly path: Path; readonly item: Item; readonly after: After }
  /** Takes the item at `path` out of its list. */
  | { readonly kind: "take"; readonly path: Path }
  | { readonly kind: "move"; readonly path: Path; readonly after: After };

/** A change with what stood there before. `made`: how many objects and lists around the place came with it, and go with it. */
export type Edit =
  | { readonly kind: "set"; readonly path: Path; readonly to?: Tree; readonly from?: Tree; readonly made: number }
  | { readonly kind: "put"; readonly path: Path; readonly item: Item; readonly after: After; readonly made: number }
  | { readonly kind: "take"; readonly path: Path; readonly item: Item; readonly after: After; readonly made: number }
  | { readonly kind: "move"; readonly path: Path; readonly after: After; readonly from: After };

/** Writes the member or item at `path`; objects on the way are made if they are not there. */
export const setting = (path: Path, to: Tree): Change => ({ kind: "set", path, to });
/** Takes a member out of its object. */
export const clearing = (path: Path): Change => ({ kind: "set", path });
export const puttingIn = (path: Path, item: Item, after: After = ""): Change => ({ kind: "put", path, item, after });
/** Takes an item out of its list. */
export const takingOut = (path: Path): Change => ({ kind: "take", path });
export const moving = (path: Path, after: After): Change => ({ kind: "move", path, after });

/** The change as an edit of this document; undefined where it does not apply: the place is gone, or no such thing can stand there. */
export function editOfChange(document: Tree, change: Change): Edit | undefined {
  const edit = completed(document, change);
  return edit !== undefined && isSound(edit) && applied(document, edit) !== undefined ? edit : undefined;
}

function completed(document: Tree, change: Change): Edit | undefined {
  const { path } = change;
  const found = read(document, path);
  const around = read(document, path.slice(0, -1));
  switch (change.kind) {
    case "set": {
      const to = change.to === undefined ? undefined : treeOf(change.to, path.length);
      if ((change.to !== undefined && to === undefined) || (to === undefined && isList(around))) return undefined;
      return { kind: "set", path, ...(to !== undefined && { to }), ...(found !== undefined && { from: found }), made: missing(document, path) };
    }
    case "put": {
      const item = treeOf(change.item, path.length + 1);
      return isItem(item) ? { ...change, item, made: found === undefined ? missing(document, path) + 1 : 0 } : undefined;
    }
    case "take":
      return isList(around) && isItem(found) ? { ...change, item: found, after: inFront(around, found.id), made: 0 } : undefined;
    case "move":
      return isList(around) && isItem(found) ? { ...change, from: inFront(around, found.id) } : undefined;
  }
}

/** How many objects around the place are not there yet. */
function missing(document: Tree, path: Path): number {
  let there = path.length - 1;
  while (there > 0 && read(document, path.slice(0, there)) === undefined) there -= 1;
  return Math.max(0, path.length - 1 - there);
}

function inFront(list: readonly Tree[], id: string): After {
  const index = indexOf(list, id);
  const before = list[index - 1];
  if (index === 0) return null;
  return isItem(before) ? before.id : "";
}

/** Whether the edit leaves everything as it is. */
export function isIdle(edit: Edit): boolean {
  if (edit.kind === "set") return isSame(edit.from, edit.to);
  return edit.kind === "move" && edit.after === edit.from;
}

/** The edit that takes this one back. */
export function inverse(edit: Edit): Edit {
  const { path } = edit;
  switch (edit.kind) {
    case "set":
      return { kind: "set", path, ...(edit.from !== undefined && { to: edit.from }), ...(edit.to !== undefined && { from: edit.to }), made: edit.made };
    case "put":
      return { ...edit, kind: "take", path: [...path, `#${edit.item.id}`] };
    case "take":
      return { ...edit, kind: "put", path: path.slice(0, -1) };
    case "move":
      return { ...edit, after: edit.from, from: edit.after };
  }
}

/** The place as it is named once nothing stands there any more. */
const gone = Symbol("gone");
type Rewrite = (found: Tree | undefined) => Tree | typeof gone | undefined;

/** The document after the edit; undefined if the edit finds no place in it. */
export function applied(document: Tree, edit: Edit): Tree | undefined {
  const { path } = edit;
  switch (edit.kind) {
    case "set":
      return rewritten(document, path, () => edit.to ?? gone, edit.made);
    case "put":
      return rewritten(document, path, (list) => withItem(list ?? [], edit.item, edit.after));
    case "take":
      return rewritten(document, path, (item) => (item === undefined ? undefined : gone), edit.made);
    case "move":
      return rewritten(document, path.slice(0, -1), (list) => {
        const item = read(list, path.slice(-1));
        return isList(list) && isItem(item) ? withItem(list.filter((other) => other !== item), item, edit.after) : undefined;
      });
  }
}

function withItem(list: Tree, item: Item, after: After): Tree | undefined {
  if (!isList(list) || indexOf(list, item.id) >= 0) return undefined;
  const before = after === null ? -1 : indexOf(list, after);
  const at = after !== null && before < 0 ? list.length : before + 1;
  return [...list.slice(0, at), item, ...list.slice(at)];
}

/** The tree with another thing at a place; of what is then empty around it, as many as were `made` with it go too. */
function rewritten(document: Tree, path: Path, rewrite: Rewrite, made = 0): Tree | undefined {
  const inside = (tree: Tree | undefined, depth: number): Tree | typeof gone | undefined => {
    const step = path[depth];
    if (step === undefined) return rewrite(tree);
    if (isList(tree)) {
      const index = step.startsWith("#") ? indexOf(tree, step.slice(1)) : -1;
      const inner = index < 0 ? undefined : inside(tree[index], depth + 1);
      if (inner === undefined) return undefined;
      if (inner === gone) return emptied(tree.filter((_, other) => other !== index), depth);
      return tree.map((item, other) => (other === index ? inner : item));
    }
    if ((tree !== undefined && !isObject(tree)) || step.startsWith("#")) return undefined;
    const inner = inside(tree && member(tree, step), depth + 1);
    if (inner === undefined || (inner === gone && tree === undefined)) return inner;
    if (inner !== gone) return { ...tree, [step]: inner };
    return emptied(Object.fromEntries(Object.entries(tree ?? {}).filter(([name]) => name !== step)), depth);
  };
  const emptied = (tree: Tree, depth: number): Tree | typeof gone => {
    const goesToo = depth > 0 && depth >= path.length - made && Object.keys(tree as object).length === 0;
    return goesToo ? gone : tree;
  };
  const result = inside(document, 0);
  return result === gone ? undefined : result;
}

/** Whether an edit keeps what the store relies on: the document, its `id` and the ids of items stay. */
function isSound(edit: Edit): boolean {
  const { path } = edit;
  const last = path[path.length - 1];
  if (last === undefined || path.length > deepest || path.includes("__proto__")) return false;
  if (edit.kind === "put") return path[0] !== "id" && edit.item.id !== "";
  if (edit.kind !== "set") return last.startsWith("#") && edit.after !== last.slice(1);
  if (last.startsWith("#") && edit.to !== undefined) return isItem(edit.to) && edit.to.id === last.slice(1);
  return last !== "id" || !(path.length === 1 || path[path.length - 2]?.startsWith("#"));
}

/** Reads an edit that was stored; undefined if it is none. */
export function editOf(found: unknown): Edit | undefined {
  const tree = treeOf(found);
  if (!isObject(tree)) return undefined;
  const { kind, path, item, after, from, made = 0 } = tree;
  if (!isList(path) || !path.every((step) => typeof step === "string")) return undefined;
  const hasPlace = after === null || typeof after === "string";
  const isWhole =
    (kind === "set" && typeof made === "number") ||
    ((kind === "put" || kind === "take") && typeof made === "number" && isItem(item) && hasPlace) ||
    (kind === "move" && hasPlace && (from === null || typeof from === "string"));
  // The members have just been looked at one by one.
  const edit = tree as unknown as Edit;
  return isWhole && isSound(edit) ? edit : undefined;
}
