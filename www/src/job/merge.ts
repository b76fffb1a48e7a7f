// What is taken of a file of jobs: a decision for each job, from the person.

import { message } from "../locale";
import { isSame, type BackupChoice, type BackupChoices, type BackupJob, type BackupPreview, type Path, type Shelf } from "../store/jobs";
import { refusals } from "./job-file";
import { keepGlance } from "./glance";

export type Backup = Extract<BackupPreview, { kind: "backup" }>;

/** How a job of the file stands to this phone: `removed` is here, deleted; `refused` cannot be taken. */
export type Standing = BackupJob["kind"] | "removed" | "refused";

export type Decision =
  | { readonly kind: "leave" | "take" }
  /** Places where theirs is taken; and whatever is only theirs. */
  | { readonly kind: "by field"; readonly theirs: readonly Path[] };

export type Decisions = ReadonlyMap<string, Decision>;

export interface MergedJob {
  readonly job: BackupJob;
  readonly standing: Standing;
  /** Why it is refused. */
  readonly refusal?: string;
}

export function merged(shelf: Shelf, { jobs }: Backup): readonly MergedJob[] {
  const removed = new Set(shelf.removed().map(({ id }) => id));
  return jobs.map((job) => {
    const [problem] = job.kind === "same" ? [] : refusals(job.document);
    if (problem !== undefined) return { job, standing: "refused", refusal: message(`files-refused-${problem.code === "newer-version" ? "newer" : "broken"}`) };
    return { job, standing: removed.has(job.id) ? "removed" : job.kind };
  });
}

/** What happens to a job unless the person says otherwise: nothing here is written over. */
export function decisionOf(decisions: Decisions, { job, standing }: MergedJob): Decision {
  return decisions.get(job.id) ?? { kind: standing === "new" || standing === "removed" ? "take" : "leave" };
}

export function withPlace(theirs: readonly Path[], place: Path, isTheirs: boolean): readonly Path[] {
  const others = theirs.filter((path) => !isSame(path, place));
  return isTheirs ? [...others, place] : others;
}

/** Takes what was decided on. */
export async function take(shelf: Shelf, preview: Backup, jobs: readonly MergedJob[], decisions: Decisions): Promise<void> {
  const wanted = jobs.filter((one) => decisionOf(decisions, one).kind !== "leave");
  const choices: BackupChoices = new Map(jobs.map((one): [string, BackupChoice] => [one.job.id, choiceOf(decisionOf(decisions, one))]));
  await shelf.takeBackup(preview, choices);
  for (const { job } of wanted) {
    const opened = await shelf.open(job.id);
    if (opened.kind !== "job") continue;
    keepGlance(opened.job);
    opened.job.close();
  }
}

function choiceOf(decision: Decision): BackupChoice {
  return decision.kind === "by field" ? { theirs: decision.theirs } : decision.kind;
}
