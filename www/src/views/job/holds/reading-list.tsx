// The readings that stand in the job, the last one first: each can be put right or taken out; rows can be pasted.

import type { JSX } from "preact";
import { nowIn, useJob } from "../../../job/job-context";
import { fieldName, itemsAt, textAt } from "../../../job/job-path";
import { wallOf } from "../../../job/local-time";
import { momentNow, momentText } from "../../../job/moment";
import { pastedReadings } from "../../../job/pasted-readings";
import { idBefore, type ReadingKind } from "../../../job/readings";
import { message } from "../../../locale";
import type { AnyField } from "../../../parts/card-fields";
import { Disclosure } from "../../../parts/disclosure";
import { problemText } from "../../../parts/fields";
import { PasteBox, type Taken } from "../../../parts/paste-rows";
import { JobFields } from "../../../job/job-fields";
import { moving, takingOut, type TreeObject } from "../../../store/jobs";
import { MomentEntry } from "./moment-entry";

/** What is to be said of a reading, and whether it counts. */
export interface ReadingNote {
  readonly text: string;
  readonly isLeftOut: boolean;
}

export function ReadingList({ kind, fields, noteOf, more }: {
  readonly kind: ReadingKind;
  /** What can be put right besides the time. */
  readonly fields: readonly AnyField[];
  /** By the reading's place in the job's list. */
  readonly noteOf: (place: number, reading: TreeObject) => ReadingNote | undefined;
  /** What else is kept with pasted readings. */
  readonly more: TreeObject;
}): JSX.Element {
  const { document, problems } = useJob();
  const items = itemsAt(document, ...kind.path);
  const ofList = problems.filter(({ field }) => field === fieldName(...kind.path));
  return (
    <section class="readings" data-list={kind.path.join(".")}>
      <h2>{message("readings-count", { count: items.length })}</h2>
      {ofList.map((problem) => (
        <p key={problem.code} class="problem" data-problem-of={problem.field}>
          {problemText(problem)}
        </p>
      ))}
      <ol reversed>
        {items
          .map((reading, place) => <Reading key={reading.id} kind={kind} reading={reading} place={place} fields={fields} note={noteOf(place, reading)} />)
          .reverse()}
      </ol>
      <PasteReadings kind={kind} more={more} />
    </section>
  );
}

function Reading({ kind, reading, place, fields, note }: {
  readonly kind: ReadingKind;
  readonly reading: TreeObject & { readonly id: string };
  readonly place: number;
  readonly fields: readonly AnyField[];
  readonly note: ReadingNote | undefined;
}): JSX.Element {
  const { job, document, problems } = useJob();
  const path = [...kind.path, `#${reading.id}`];
  const isWrong = problems.some(({ field }) => field.startsWith(fieldName(...path, "")));
  /** Keeps the list in the order of time. */
  const inOrder = (moment: string) => {
    const others = itemsAt(document, ...kind.path).filter(({ id }) => id !== reading.id);
    return [moving(path, idBefore(others.map(({ id, at }) => ({ id, wall: wallOf(String(at)) })), wallOf(moment)))];
  };
  return (
    <li data-reading={place + 1} data-left-out={note?.isLeftOut === true ? true : undefined}>
      <Disclosure name="reading" mustShow={isWrong} summary={<Summary kind={kind} reading={reading} place={place} note={note} />}>
        <MomentEntry path={[...path, "at"]} label={message("field-at")} also={inOrder} />
        <JobFields at={path} fields={fields} />
        <button class="framed" data-action="take-out-reading" onClick={() => job.apply(takingOut(path))}>
          {message("reading-take-out", { number: place + 1 })}
        </button>
      </Disclosure>
    </li>
  );
}

function Summary({ kind, reading, place, note }: {
  readonly kind: ReadingKind;
  readonly reading: TreeObject;
  readonly place: number;
  readonly note: ReadingNote | undefined;
}): JSX.Element {
  return (
    <span class="reading-line">
      <span class="number">{place + 1}</span>
      <span>{momentText(textAt(reading, "at"))}</span>
      <b>{kind.columns.map(({ name }) => textAt(reading, name)).filter((text) => text !== "").join(" · ")}</b>
      {note && <small>{note.text}</small>}
    </span>
  );
}

function PasteReadings({ kind, more }: { readonly kind: ReadingKind; readonly more: TreeObject }): JSX.Element {
  const { job, document } = useJob();
  const take = (text: string): Taken => {
    const clock = itemsAt(document, "clockChanges").length;
    const now = { wall: wallOf(nowIn(document)), momentOf: (wall: number) => momentNow(clock, wall), more };
    const { ids, changes, refused } = pastedReadings(document, kind, text, now);
    job.apply(changes);
    return { count: ids.length, refused, takeOut: () => void job.apply(ids.map((id) => takingOut([...kind.path, `#${id}`]))) };
  };
  const names = [message("field-at"), ...kind.columns.map(({ label }) => message(label))].join("; ");
  return <PasteBox name={kind.path.join("-")} hint={message("readings-paste-hint", { names })} take={take} />;
}
