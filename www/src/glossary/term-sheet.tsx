// What a term means, over the page at the thumb: closed by Escape, by its button or by a tap beside it; the browser then
// gives the focus back to the mark.

import { render, type JSX } from "preact";
import { writePlace } from "../address";
import { message } from "../locale";
import { termNamed, type Term } from "./terms";

const host = document.createElement("div");
const dialog = (): HTMLDialogElement | null => host.querySelector("dialog");

/** Opens the sheet with a term; a term that is tapped in the sheet takes the place of the one before. */
export function openTerm(id: string): void {
  const term = termNamed(id);
  if (term === undefined) return;
  document.body.append(host);
  render(<TermSheet term={term} />, host);
  const sheet = dialog();
  if (sheet?.open === false) sheet.showModal();
  sheet?.querySelector("button")?.focus();
}

function close(): void {
  dialog()?.close();
}

addEventListener("hashchange", close);

function TermSheet({ term }: { readonly term: Term }): JSX.Element {
  const isBeside = (event: MouseEvent): boolean => event.target === event.currentTarget;
  return (
    <dialog class="term-sheet" aria-labelledby="term-name" onClick={(event) => isBeside(event) && close()}>
      <div>
        <h2 id="term-name">{term.name}</h2>
        <TermText term={term} />
        <div class="term-ways">
          <a href={writePlace({ path: "terms", entries: {} })}>{message("terms-all")}</a>
          <button data-action="close-term" onClick={close}>
            {message("terms-close")}
          </button>
        </div>
      </div>
    </dialog>
  );
}

export function TermText({ term }: { readonly term: Term }): JSX.Element {
  return (
    <>
      {/* A new element for each term: what was tapped in the one before is gone. */}
      <p key={term.id}>{message(`says-${term.id}`)}</p>
      {term.others.length > 0 && <small>{message("terms-others", { names: term.others.join(", ") })}</small>}
    </>
  );
}
