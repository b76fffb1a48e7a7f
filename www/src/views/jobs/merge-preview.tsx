// What a file would bring, job by job, and what the person takes of it. Nothing is written before they say so.

import type { JSX } from "preact";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { decisionOf, merged, take, type Backup, type Decision, type Decisions, type MergedJob } from "../../job/merge";
import { momentText } from "../../job/moment";
import { message } from "../../locale";
import type { BackupPreview, Shelf } from "../../store/jobs";
import { MergeJob } from "./merge-job";

/** Jobs of which nothing has to be decided are told of by their number beyond this many. */
const mostShown = 100;

interface PreviewProps<Preview> {
  readonly shelf: Shelf;
  readonly preview: Preview;
  /** The preview has served. */
  readonly onEnd: (isTaken: boolean) => void;
}

export function MergePreview({ shelf, preview, onEnd }: PreviewProps<BackupPreview>): JSX.Element {
  if (preview.kind === "backup") return <Merge shelf={shelf} preview={preview} onEnd={onEnd} />;
  return (
    <p class="problem" role="alert">
      {message(`files-${preview.kind}`)}
    </p>
  );
}

function Merge({ shelf, preview, onEnd }: PreviewProps<Backup>): JSX.Element {
  const jobs = useMemo(() => merged(shelf, preview), [preview]);
  const [decisions, setDecisions] = useState<Decisions>(new Map());
  const [isTaking, setTaking] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), [preview]);
  const decide = (id: string, decision: Decision): void => setDecisions(new Map(decisions).set(id, decision));
  const count = jobs.filter((job) => decisionOf(decisions, job).kind !== "leave").length;
  const takeAll = async (): Promise<void> => {
    setTaking(true);
    await take(shelf, preview, jobs, decisions);
    onEnd(true);
  };
  return (
    <div class="merge">
      <h3 ref={heading} tabIndex={-1}>
        {message("files-made", { made: momentText(preview.made) })}
      </h3>
      <p>{countsText(jobs)}</p>
      {preview.broken > 0 && <p class="problem">{message("files-broken", { count: preview.broken })}</p>}
      <MergeRows jobs={jobs} decisions={decisions} onDecide={decide} />
      <div class="job-actions">
        <button class="framed" data-action="take-file" disabled={count === 0 || isTaking} onClick={() => void takeAll()}>
          {message("files-take", { count })}
        </button>
        <button class="framed" data-action="leave-file" onClick={() => onEnd(false)}>
          {message("files-leave")}
        </button>
      </div>
    </div>
  );
}

const standings = ["new", "removed", "differs", "same", "refused"] as const;

function countsText(jobs: readonly MergedJob[]): string {
  const counts = standings.map((standing) => ({ standing, count: jobs.filter((job) => job.standing === standing).length }));
  const told = counts.filter(({ count }) => count > 0).map(({ standing, count }) => message(`files-count-${standing}`, { count }));
  return told.length === 0 ? message("files-no-jobs") : told.join("; ");
}

/** What needs a decision first. */
function MergeRows({ jobs, decisions, onDecide }: {
  readonly jobs: readonly MergedJob[];
  readonly decisions: Decisions;
  readonly onDecide: (id: string, decision: Decision) => void;
}): JSX.Element {
  const pressing = jobs.filter(({ standing }) => standing === "differs" || standing === "refused");
  const others = jobs.filter(({ standing }) => standing === "new" || standing === "removed");
  const hidden = others.length - mostShown;
  return (
    <>
      <ol class="merge-rows">
        {[...pressing, ...others.slice(0, mostShown)].map((one) => (
          <MergeJob key={one.job.id} merged={one} decision={decisionOf(decisions, one)} onDecide={(decision) => onDecide(one.job.id, decision)} />
        ))}
      </ol>
      {hidden > 0 && <p class="note">{message("files-more-new", { count: hidden })}</p>}
    </>
  );
}
