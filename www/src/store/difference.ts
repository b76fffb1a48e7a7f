// Where two documents of one job differ, place by place, and the changes that take one over into the other.

import { clearing, puttingIn, setting, takingOut, type Change } from "./edits";
import { isItem, isList, isObject, isSame, member, read, type Item, type Path, type Tree } from "./tree";

export interface Difference {
  readonly path: Path;
  /** Undefined where there is nothing. */
  readonly mine: Tree | undefined;
  readonly theirs: Tree | undefined;
}

export function differences(mine: Tree | undefined, theirs: Tree | undefined, path: Path = []): readonly Difference[] {
  if (isSame(mine, theirs)) return [];
  const whole = [{ path, mine, theirs }];
  if (isObject(mine) && isObject(theirs)) {
    const names = new Set([...Object.keys(mine), ...Object.keys(theirs)]);
    return [...names].flatMap((name) => differences(member(mine, name), member(theirs, name), [...path, name]));
  }
  const myItems = itemsOf(mine);
  const theirItems = itemsOf(theirs);
  if (myItems === undefined || theirItems === undefined) return whole;
  const ids = new Set([...myItems.keys(), ...theirItems.keys()]);
  const found = [...ids].flatMap((id) => differences(myItems.get(id), theirItems.get(id), [...path, `#${id}`]));
  return found.length > 0 ? found : whole; // Only the order differs.
}

/** The items of a list by their ids; undefined if it is none of items that can be told apart. */
function itemsOf(list: Tree | undefined): ReadonlyMap<string, Item> | undefined {
  if (!isList(list)) return undefined;
  const items = new Map(list.filter(isItem).map((item) => [item.id, item]));
  return items.size === list.length ? items : undefined;
}

/** Takes over what stands at these places in their document. */
export function changesOf(taken: readonly Difference[], theirs: Tree): readonly Change[] {
  return taken.map(({ path, mine, theirs: found }): Change => {
    const last = path[path.length - 1] ?? "";
    if (found !== undefined && (mine !== undefined || !isItem(found) || !last.startsWith("#"))) return setting(path, found);
    if (isItem(found)) return puttingIn(path.slice(0, -1), found, inFront(read(theirs, path.slice(0, -1)), found));
    return isItem(mine) && last === `#${mine.id}` ? takingOut(path) : clearing(path);
  });
}

function inFront(list: Tree | undefined, item: Item): string | null {
  const index = isList(list) ? list.indexOf(item) : -1;
  const before = isList(list) ? list[index - 1] : undefined;
  if (index === 0) return null;
  return isItem(before) ? before.id : "";
}
