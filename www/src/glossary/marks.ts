// Marks the glossary's terms wherever the page says them. Preact calls back for each element before it is drawn: in those
// that carry a sentence of their own the terms become marks, and no view knows of it. What is tapped as a whole
// (button, link, summary, the choices of a row) says its words in other elements, and stays as it is.

import { h, options, type ComponentChildren } from "preact";
import { piecesOf, type NamedTerm } from "./split";
import { areTermsHere } from "./terms";

const carriers: ReadonlySet<unknown> = new Set(["p", "li", "dt", "label", "legend", "figcaption", "caption"]);

export const markClass = "term";

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

/** Inline, so that a name breaks into lines as its sentence does: a button would not. */
function mark({ id, text }: NamedTerm): ComponentChildren {
  return h("span", { class: markClass, role: "button", tabIndex: 0, "aria-haspopup": "dialog", "data-term": id }, text);
}
