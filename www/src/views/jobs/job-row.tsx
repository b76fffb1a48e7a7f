// A job in the list: its name, how it stands, when it was changed; behind a button what can be done with it.

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { goTo, readPlace } from "../../address";
import { momentText } from "../../job/moment";
import { saveFile } from "../../job/save-file";
import { jobPlace } from "../../job/stages";
import { fromTemplate } from "../../job/template";
import { message } from "../../locale";
import type { Shelf, Summary } from "../../store/jobs";
import { DeleteForGood } from "./delete-for-good";

interface RowProps {
  readonly summary: Summary;
  readonly shelf: Shelf;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
  readonly onRemove: (id: string) => void;
}

export function JobRow(props: RowProps): JSX.Element {
  const { summary, shelf } = props;
  if (summary.removed !== undefined) return <RemovedRow summary={summary} shelf={shelf} />;
  if (summary.unreadable !== undefined) return <UnreadableRow summary={summary} shelf={shelf} />;
  return <ReadableRow {...props} />;
}

/** The name as it is shown: a job may have none yet. */
export function shownName(name: string): string {
  return name.trim() === "" ? message("jobs-unnamed") : name;
}

function ReadableRow({ summary: { id, name, glance, edited }, shelf, isOpen, onToggle, onRemove }: RowProps): JSX.Element {
  return (
    <li data-job={id}>
      <div class="job-row">
        <a href={jobPlace(id)}>
          <b>{shownName(name)}</b>
          <span>{glance}</span>
          <time dateTime={edited}>{momentText(edited)}</time>
        </a>
        <button aria-expanded={isOpen} aria-label={message("jobs-actions", { name: shownName(name) })} onClick={onToggle}>
          <span aria-hidden="true">⋯</span>
        </button>
      </div>
      {isOpen && <RowActions id={id} name={shownName(name)} shelf={shelf} onRemove={onRemove} />}
    </li>
  );
}

function RowActions({ id, name, shelf, onRemove }: {
  readonly id: string;
  readonly name: string;
  readonly shelf: Shelf;
  readonly onRemove: (id: string) => void;
}): JSX.Element {
  const duplicate = async (): Promise<void> => {
    const opened = await shelf.duplicate(id, (document) => fromTemplate(document, message("jobs-copy-named", { name })));
    if (opened.kind !== "job") return;
    goTo(readPlace(jobPlace(opened.job.id)));
    opened.job.close();
  };
  return (
    <div class="job-actions">
      <button class="framed" data-action="duplicate" onClick={() => void duplicate()}>
        {message("jobs-duplicate")}
      </button>
      <button
        class="framed"
        data-action="delete"
        onClick={() => {
          onRemove(id);
          void shelf.remove(id);
        }}
      >
        {message("jobs-delete")}
      </button>
      <p class="note">{message("jobs-duplicate-hint")}</p>
    </div>
  );
}

function RemovedRow({ summary: { id, name }, shelf }: { readonly summary: Summary; readonly shelf: Shelf }): JSX.Element {
  const button = useRef<HTMLButtonElement>(null);
  // The button that was tapped is gone.
  useEffect(() => button.current?.focus(), []);
  return (
    <li class="removed-row" data-job={id}>
      <p role="status">{message("jobs-deleted", { name: shownName(name) })}</p>
      <button ref={button} class="framed" data-action="put-back" onClick={() => void shelf.restore(id)}>
        {message("jobs-put-back")}
      </button>
    </li>
  );
}

/** What cannot be read is never thrown away unasked. */
function UnreadableRow({ summary: { id, name, unreadable = "no-document" }, shelf }: { readonly summary: Summary; readonly shelf: Shelf }): JSX.Element {
  const save = async (): Promise<void> => saveFile(new Blob([await shelf.exportRaw(id)], { type: "application/json" }), `${id}.json`);
  return (
    <li class="unreadable-row" data-job={id} data-unreadable={unreadable}>
      <b>{shownName(name)}</b>
      <p class="problem">{message(`job-unreadable-${unreadable}`)}</p>
      <p class="note">{message("jobs-unreadable-hint")}</p>
      <div class="job-actions">
        <button class="framed" data-action="save-raw" onClick={() => void save()}>
          {message("jobs-save-raw")}
        </button>
        {unreadable !== "newer" && unreadable !== "out-of-reach" && <DeleteForGood id={id} shelf={shelf} />}
      </div>
    </li>
  );
}
