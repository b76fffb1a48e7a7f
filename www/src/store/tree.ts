// What a job is made of: objects, lists and texts, of which the store knows no more than how to find a place in it.

/** Never changed in place: every edit makes a new one that shares what stayed the same. */
export type Tree = null | boolean | number | string | readonly Tree[] | TreeObject;

export type TreeObject = { readonly [name: string]: Tree };

/** A member of a list. */
export type Item = TreeObject & { readonly id: string };

/** Steps from the document inwards: a member's name, or `#id` for an item of a list. */
export type Path = readonly string[];

/** Deeper than any job; what comes from elsewhere must not use up the stack. */
export const deepest = 64;

/** More parts than any job has: a record whose parts contain each other would otherwise never end. */
const mostParts = 1_000_000;

/**
 * The tree that `found` is, without members that are undefined; undefined if it is none: a date, a function, a number
 * that is not finite, something too deep, or a member whose name could be taken for the prototype or for an item.
 */
export function treeOf(found: unknown, depth = 0): Tree | undefined {
  const parts = { left: mostParts };
  return copied(found, depth, parts);
}

function copied(found: unknown, depth: number, parts: { left: number }): Tree | undefined {
  parts.left -= 1;
  if (parts.left < 0 || depth > deepest) return undefined;
  if (found === null || typeof found === "boolean" || typeof found === "string") return found;
  if (typeof found === "number") return Number.isFinite(found) ? found : undefined;
  if (Array.isArray(found)) return copiedList(found, depth, parts);
  if (typeof found !== "object") return undefined;
  const prototype: unknown = Object.getPrototypeOf(found);
  if (prototype !== Object.prototype && prototype !== null) return undefined;
  const members: [string, Tree][] = [];
  for (const [name, member] of Object.entries(found)) {
    if (member === undefined) continue;
    const tree = name === "__proto__" || name.startsWith("#") ? undefined : copied(member, depth + 1, parts);
    if (tree === undefined) return undefined;
    members.push([name, tree]);
  }
  return Object.fromEntries(members);
}

function copiedList(found: readonly unknown[], depth: number, parts: { left: number }): Tree | undefined {
  if (found.length > parts.left) return undefined;
  const list: Tree[] = [];
  // By index: a list with gaps is none.
  for (let index = 0; index < found.length; index++) {
    const tree = copied(found[index], depth + 1, parts);
    if (tree === undefined) return undefined;
    list.push(tree);
  }
  return list;
}

export function isList(tree: Tree | undefined): tree is readonly Tree[] {
  return Array.isArray(tree);
}

export function isObject(tree: Tree | undefined): tree is TreeObject {
  return typeof tree === "object" && tree !== null && !isList(tree);
}

export function isItem(tree: Tree | undefined): tree is Item {
  return isObject(tree) && typeof member(tree, "id") === "string";
}

/** The member of this name; names such as `constructor` find nothing that was not put there. */
export function member(tree: TreeObject, name: string): Tree | undefined {
  return Object.hasOwn(tree, name) ? tree[name] : undefined;
}

/** Where in the list the item with this id is; -1 if nowhere. */
export function indexOf(list: readonly Tree[], id: string): number {
  return list.findIndex((item) => isItem(item) && item.id === id);
}

/** What stands at a place; undefined where there is no such place. */
export function read(tree: Tree | undefined, path: Path): Tree | undefined {
  let found = tree;
  for (const step of path) {
    if (isList(found)) found = step.startsWith("#") ? found[indexOf(found, step.slice(1))] : undefined;
    else if (isObject(found)) found = member(found, step);
    else return undefined;
  }
  return found;
}

/** Whether two trees say the same; the order of an object's members says nothing. */
export function isSame(one: Tree | undefined, other: Tree | undefined): boolean {
  if (one === other) return true;
  if (isList(one) && isList(other)) {
    return one.length === other.length && one.every((item, index) => isSame(item, other[index]));
  }
  if (!isObject(one) || !isObject(other)) return false;
  const names = Object.keys(one);
  return names.length === Object.keys(other).length && names.every((name) => isSame(one[name], member(other, name)));
}

export function isSamePath(one: Path, other: Path): boolean {
  return one.length === other.length && startsWith(one, other);
}

/** Whether `path` is `start` or leads further in from there. */
export function startsWith(path: Path, start: Path): boolean {
  return start.every((step, index) => path[index] === step);
}

/** A short random text that no other job has, nor anything else that is named alone. */
export function newId(length = 12): string {
  const letters = "abcdefghijkmnpqrstuvwxyz23456789";
  return Array.from(crypto.getRandomValues(new Uint8Array(length)), (byte) => letters[byte % letters.length]).join("");
}

/**
 * A random text that no item of a list has: short, for the link of a job carries every one. That two phones which add to
 * the same list give the same, before they have seen each other's items, is one chance in 33 million for each two items.
 */
export function newItemId(items: readonly { readonly id: string }[]): string {
  const id = newId(5);
  return items.some((item) => item.id === id) ? newItemId(items) : id;
}
