// Marks the glossary's terms where a screen first says them. Preact calls back for each element before it is drawn: in those
// that carry a sentence of their own the terms are told apart, and no view knows of it. What is tapped as a whole
// (button, link, summary, the choices of a row) says its words in other elements, and stays as it is.

import { h, options, type ComponentChildren } from "preact";
import { piecesOf, type NamedTerm } from "./split";
import { areTermsHere } from "./terms";

const carriers: ReadonlySet<unknown> = new Set(["p", "li", "dt", "label", "legend", "figcaption", "caption"]);

export const markClass = "term";

/** What is read by itself: a sheet over the screen, and each entry of the glossary. */
const readAlone = "dialog, .term-list > li";

/** What a mark has beside its words. */
const marking = { role: "button", tabindex: "0", "aria-haspopup": "dialog" };

const before = options.vnode;
options.vnode = (vnode) => {
  const { type, props } = vnode;
  if (carriers.has(type) && areTermsHere()) props.children = markedAll(props.children, type === "label");
  before?.(vnode);
};

/** A label with more than its words in it is of a choice, and tapped as a whole. */
function markedAll(children: ComponentChildren, isAlone: boolean): ComponentChildren {
  if (Array.isArray(children) && !isAlone) return children.map(marked);
  return marked(children);
}

function marked(child: ComponentChildren): ComponentChildren {
  if (typeof child !== "string") return child;
  const pieces = piecesOf(child);
  // In one element, for there are parents that lay out each child by itself.
  return pieces.length === 1 ? child : h("span", null, pieces.map((piece) => (typeof piece === "string" ? piece : mark(piece))));
}

/** Inline, so that a name breaks into lines as its sentence does: a button would not. Whether it is marked hangs on what else is on the screen. */
function mark({ id, text }: NamedTerm): ComponentChildren {
  return h("span", { "data-term": id }, text);
}

new MutationObserver(markFirst).observe(document.body, { childList: true, subtree: true, attributeFilter: ["data-term"] });

/** A text full of marks is hard to read: each term has one, and one more where a fold says it that nobody may have opened. */
function markFirst(): void {
  const said = new Map<Element, Set<string>>();
  for (const name of document.querySelectorAll<HTMLElement>("[data-term]")) {
    const places = placesAround(name);
    const [own] = places;
    const term = name.dataset.term ?? "";
    const isFirst = !places.some((place) => said.get(place)?.has(term));
    if (isFirst && own !== undefined) said.set(own, (said.get(own) ?? new Set()).add(term));
    if (name.classList.contains(markClass) !== isFirst) setMark(name, isFirst);
  }
}

/** The fold that a name stands in, those around it, and what all of it is read in. */
function placesAround(name: Element): readonly Element[] {
  const place = name.closest(`details, ${readAlone}`) ?? document.body;
  const isFold = place.matches("details");
  return isFold && place.parentElement !== null ? [place, ...placesAround(place.parentElement)] : [place];
}

function setMark(name: HTMLElement, isMarked: boolean): void {
  name.classList.toggle(markClass, isMarked);
  for (const [attribute, value] of Object.entries(marking)) {
    if (isMarked) name.setAttribute(attribute, value);
    else name.removeAttribute(attribute);
  }
}
