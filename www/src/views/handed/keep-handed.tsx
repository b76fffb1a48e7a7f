// What to do with a job that was handed on: keep it, or compare it with one that is here and merge it into that.

import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { goTo, readPlace } from "../../address";
import { previewInto, type HandedDocument } from "../../job/handed";
import { keepGlance } from "../../job/glance";
import { textAt } from "../../job/job-path";
import { merged, take, type Decision } from "../../job/merge";
import { jobPlace } from "../../job/stages";
import { message } from "../../locale";
import type { BackupPreview, Shelf, Summary } from "../../store/jobs";
import { Differences } from "../jobs/merge-job";
import { shownName } from "../jobs/job-row";

interface KeepProps {
  readonly shelf: Shelf;
  readonly document: HandedDocument;
}

export function KeepHanded({ shelf, document }: KeepProps): JSX.Element {
  const jobs = shelf.list().filter(({ unreadable }) => unreadable === undefined);
  const isHere = jobs.some(({ id }) => id === document.id);
  const [chosen, setChosen] = useState<string | undefined>(undefined);
  const into = chosen ?? (isHere ? document.id : "");
  return (
    <section class="keep-handed">
      {isHere ? <p>{message("handed-here")}</p> : <KeepIt shelf={shelf} document={document} />}
      {isHere && <KeepCopy shelf={shelf} document={document} />}
      {jobs.length > 0 && <ComparedWith jobs={jobs} own={document.id} chosen={into} onChoose={setChosen} />}
      {into !== "" && <MergeInto key={into} shelf={shelf} document={document} id={into} />}
    </section>
  );
}

/** Under the id that it has where it comes from, so that later links of it are known as the same job. */
function KeepIt({ shelf, document }: KeepProps): JSX.Element {
  const keep = async (): Promise<void> => {
    const preview = await previewInto(shelf, document, document.id);
    await takeInto(shelf, preview, document.id, { kind: "take" });
  };
  return (
    <button class="do" data-action="keep-handed" onClick={() => void keep()}>
      {message("handed-keep")}
    </button>
  );
}

function KeepCopy({ shelf, document }: KeepProps): JSX.Element {
  const keep = (): void => {
    const job = shelf.create({ ...document, name: message("jobs-copy-named", { name: textAt(document, "name") }) });
    keepGlance(job);
    goTo(readPlace(jobPlace(job.id)));
    job.close();
  };
  return (
    <button class="framed" data-action="copy-handed" onClick={keep}>
      {message("handed-keep-copy")}
    </button>
  );
}

function ComparedWith({ jobs, own, chosen, onChoose }: {
  readonly jobs: readonly Summary[];
  readonly own: string;
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
}): JSX.Element {
  const ordered = [...jobs.filter(({ id }) => id === own), ...jobs.filter(({ id }) => id !== own)];
  return (
    <div class="entry">
      <label for="compare-with">{message("handed-compare")}</label>
      <select id="compare-with" name="compareWith" value={chosen} onChange={({ currentTarget }) => onChoose(currentTarget.value)}>
        <option value="">{message("handed-compare-none")}</option>
        {ordered.map(({ id, name }) => (
          <option key={id} value={id}>
            {shownName(name)}
          </option>
        ))}
      </select>
    </div>
  );
}

/** Additions come; what stands here stays unless theirs is chosen. */
function MergeInto({ shelf, document, id }: KeepProps & { readonly id: string }): JSX.Element | null {
  const [preview, setPreview] = useState<BackupPreview | undefined>(undefined);
  const [decision, setDecision] = useState<Decision>({ kind: "by field", theirs: [] });
  useEffect(() => {
    let isLeft = false;
    void previewInto(shelf, document, id).then((found) => {
      if (!isLeft) setPreview(found);
    });
    return () => {
      isLeft = true;
    };
  }, [shelf, document, id]);
  if (preview?.kind !== "backup") return null;
  const [job] = preview.jobs;
  if (job === undefined) return null;
  const toOpen = <a href={jobPlace(id)}>{message("handed-open-mine")}</a>;
  if (job.differences.length === 0) {
    return (
      <p role="status" data-differences="0">
        {message("handed-same")} {toOpen}
      </p>
    );
  }
  const added = job.differences.filter(({ mine }) => mine === undefined).length;
  const count = added + (decision.kind === "by field" ? decision.theirs.length : 0);
  return (
    <div class="merge" data-differences={job.differences.length}>
      <p role="status">
        {message("handed-differs", { count: job.differences.length })} {toOpen}
      </p>
      <Differences job={job} decision={decision} onDecide={setDecision} from="link" />
      <button class="do" data-action="merge-handed" disabled={count === 0} onClick={() => void takeInto(shelf, preview, id, decision)}>
        {message("handed-merge", { count })}
      </button>
    </div>
  );
}

async function takeInto(shelf: Shelf, preview: BackupPreview, id: string, decision: Decision): Promise<void> {
  if (preview.kind !== "backup") return;
  await take(shelf, preview, merged(shelf, preview), new Map([[id, decision]]));
  goTo(readPlace(jobPlace(id)));
}
