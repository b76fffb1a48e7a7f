// The list of jobs with its search. The first rows are drawn at once, the others when they are scrolled to or asked for.

import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { message } from "../../locale";
import { EntryField } from "../../parts/entry-field";
import { textOf } from "../../parts/fields";
import type { Shelf, Summary } from "../../store/jobs";
import { JobRow } from "./job-row";

/** As many as a phone shows and a few more: each key in the search draws them anew. */
const rowsAtFirst = 8;
const rowsMore = 32;

export function JobList({ shelf }: { readonly shelf: Shelf }): JSX.Element {
  const words = textOf("words");
  const [removedHere, setRemovedHere] = useState<readonly string[]>([]);
  const found = shelf.list(words);
  const rows = withRemoved(found, shelf.removed().filter(({ id }) => removedHere.includes(id)));
  const isEmpty = rows.length === 0 && words.trim() === "";
  if (isEmpty) return <EmptyShelf />;
  return (
    <section class="job-rows" aria-label={message("title-jobs")}>
      <div role="search">
        <EntryField name="words" problems={[]} words />
      </div>
      <p class="note" role="status" data-found={found.length}>
        {words.trim() === "" ? message("jobs-count", { count: found.length }) : message("jobs-found", { count: found.length })}
      </p>
      <Rows rows={rows} words={words} shelf={shelf} onRemove={(id) => setRemovedHere([...removedHere, id])} />
    </section>
  );
}

function EmptyShelf(): JSX.Element {
  return (
    <div class="job-list-empty">
      <p>{message("jobs-empty")}</p>
      <p class="note">{message("intro-jobs")}</p>
    </div>
  );
}

/** What has just been deleted keeps its place, to be put back from there. */
function withRemoved(found: readonly Summary[], removed: readonly Summary[]): readonly Summary[] {
  if (removed.length === 0) return found;
  return [...found, ...removed].sort((one, other) => (one.edited < other.edited ? 1 : -1));
}

function Rows({ rows, words, shelf, onRemove }: {
  readonly rows: readonly Summary[];
  readonly words: string;
  readonly shelf: Shelf;
  readonly onRemove: (id: string) => void;
}): JSX.Element {
  const [asked, setAsked] = useState({ words, count: rowsAtFirst });
  const shown = asked.words === words ? asked.count : rowsAtFirst;
  const [opened, setOpened] = useState<string | undefined>(undefined);
  const left = rows.length - shown;
  return (
    <>
      <ol class="job-list">
        {rows.slice(0, shown).map((summary) => (
          <JobRow
            key={summary.id}
            summary={summary}
            shelf={shelf}
            isOpen={opened === summary.id}
            onToggle={() => setOpened(opened === summary.id ? undefined : summary.id)}
            onRemove={onRemove}
          />
        ))}
      </ol>
      {left > 0 && <More left={left} onMore={() => setAsked({ words, count: shown + rowsMore })} />}
    </>
  );
}

/** Stands under the rows that are drawn; coming into view draws more. */
function More({ left, onMore }: { readonly left: number; readonly onMore: () => void }): JSX.Element {
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (button.current === null || !("IntersectionObserver" in globalThis)) return;
    const observer = new IntersectionObserver((entries) => entries.some(({ isIntersecting }) => isIntersecting) && onMore(), { rootMargin: "200px" });
    observer.observe(button.current);
    return () => observer.disconnect();
  }, [left]);
  return (
    <button ref={button} class="framed more-jobs" data-action="more-jobs" onClick={onMore}>
      {message("jobs-more", { count: left })}
    </button>
  );
}
