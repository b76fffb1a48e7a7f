// Notes of a stage: written straight into the job, taken out with one tap, which can be undone.

import type { JSX } from "preact";
import type { Stage } from "../../core";
import { useJob } from "../../job/job-context";
import { fieldName, itemsAt, textAt } from "../../job/job-path";
import { momentNow, momentText } from "../../job/moment";
import { message } from "../../locale";
import { textOf, write } from "../../parts/fields";
import { newItemId, puttingIn, takingOut } from "../../store/jobs";

export function StageNotes({ stage }: { readonly stage: Stage }): JSX.Element {
  const { job, document } = useJob();
  const notes = itemsAt(document, "notes").filter((note) => note.stage === stage);
  const add = (): void => {
    const id = newItemId(itemsAt(document, "notes"));
    job.apply(puttingIn(["notes"], { id, stage, at: momentNow(itemsAt(document, "clockChanges").length) }));
    requestAnimationFrame(() => window.document.getElementById(`entry-${nameOf(id)}`)?.focus());
  };
  return (
    <section class="stage-notes">
      <h2>{message("field-notes")}</h2>
      {notes.map(({ id }) => (
        <div key={id} class="stage-note">
          <label for={`entry-${nameOf(id)}`}>{noteTitle(textAt(document, "notes", `#${id}`, "at"))}</label>
          <textarea id={`entry-${nameOf(id)}`} name={nameOf(id)} rows={2} value={textOf(nameOf(id))} onInput={({ currentTarget }) => write(nameOf(id), currentTarget.value)} />
          <button class="framed" data-action="take-note-out" onClick={() => job.apply(takingOut(["notes", `#${id}`]))}>
            {message("note-take-out")}
          </button>
        </div>
      ))}
      <button class="framed" data-action="add-note" onClick={add}>
        {message("note-add")}
      </button>
    </section>
  );
}

function nameOf(id: string): string {
  return fieldName("notes", `#${id}`, "text");
}

function noteTitle(at: string): string {
  return message("note-of", { at: at === "" ? "" : momentText(at) });
}
