// Two windows write to the same place without knowing of each other: the later edit stands, and both are told.

import type { Edit } from "./edits";
import { isSame, isSamePath, read, startsWith, type Path, type Tree } from "./tree";

export interface Clash {
  readonly path: Path;
  /** What this window wrote there; undefined if it took it out. */
  readonly mine: Tree | undefined;
  readonly theirs: Tree | undefined;
}

/** The place that an edit writes to and what is there afterwards; undefined if it only changes an order. */
function written(edit: Edit): { path: Path; to: Tree | undefined } | undefined {
  switch (edit.kind) {
    case "set":
      return { path: edit.path, to: edit.to };
    case "put":
      return { path: [...edit.path, `#${edit.item.id}`], to: edit.item };
    case "take":
      return { path: edit.path, to: undefined };
    case "move":
      return undefined;
  }
}

/** Where two edits, made without knowledge of each other, contradict each other. */
export function clashOf(mine: Edit, theirs: Edit): Clash | undefined {
  const one = written(mine);
  const other = written(theirs);
  if (one === undefined || other === undefined) return undefined;
  const path = one.path.length > other.path.length ? one.path : other.path;
  if (!startsWith(path, one.path) || !startsWith(path, other.path)) return undefined;
  const left = read(one.to, path.slice(one.path.length));
  const right = read(other.to, path.slice(other.path.length));
  return isSame(left, right) ? undefined : { path, mine: left, theirs: right };
}

/** The list with a clash in it; an earlier one at the same place gives way. */
export function withClash(clashes: readonly Clash[], clash: Clash): readonly Clash[] {
  return [...withoutClash(clashes, clash.path), clash];
}

export function withoutClash(clashes: readonly Clash[], path: Path): readonly Clash[] {
  return clashes.filter((clash) => !isSamePath(clash.path, path));
}
