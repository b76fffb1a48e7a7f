// Texts and lists of a job's document. Nothing here needs the page.

import { read, type Tree, type TreeObject } from "../store/tree";

/** The text of an entry: typed, with or without the unit of a bare number, a number or a truth. */
export function entryText(found: Tree | undefined): string {
  if (typeof found === "string") return found;
  if (typeof found === "number" || typeof found === "boolean") return String(found);
  if (typeof found === "object" && found !== null && "text" in found) return String(found.text);
  return "";
}

/** Text at a place of the job. */
export function textAt(document: TreeObject, ...steps: readonly string[]): string {
  return entryText(read(document, steps));
}

/** The members of a list of the job, which are objects with an id. */
export function itemsAt(document: TreeObject, ...steps: readonly string[]): readonly (TreeObject & { readonly id: string })[] {
  const list = read(document, steps);
  const isItem = (item: Tree): item is TreeObject & { readonly id: string } =>
    typeof item === "object" && item !== null && "id" in item && typeof item.id === "string";
  return Array.isArray(list) ? list.filter(isItem) : [];
}
