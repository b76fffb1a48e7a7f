// The jobs on this phone: search, state at a glance, new, practice; where they are kept, and as files.

import type { JSX } from "preact";
import { goTo, readPlace } from "../address";
import { newJob, practiceJob } from "../job/new-job";
import { useShelf } from "../job/open-shelf";
import { jobPlace } from "../job/stages";
import { message } from "../locale";
import type { TreeObject } from "../store/jobs";
import { FilePanel } from "./jobs/file-panel";
import { JobList } from "./jobs/job-list";
import { RemovedJobs } from "./jobs/removed-jobs";
import { Safekeeping } from "./jobs/safekeeping";

export function Jobs(): JSX.Element {
  const shelf = useShelf();
  const begin = (document: TreeObject): void => {
    if (shelf === undefined) return;
    const job = shelf.create(document);
    goTo(readPlace(jobPlace(job.id)));
    job.close();
  };
  return (
    <main class="jobs">
      <h1>{message("title-jobs")}</h1>
      <div class="job-starts">
        <button class="framed" data-action="new-job" disabled={shelf === undefined} onClick={() => begin(newJob())}>
          {message("jobs-new")}
        </button>
        <button class="framed" data-action="practice-job" disabled={shelf === undefined} onClick={async () => begin(await practiceJob())}>
          {message("jobs-practice")}
        </button>
      </div>
      {shelf && (
        <>
          <Safekeeping shelf={shelf} />
          <JobList shelf={shelf} />
          <RemovedJobs shelf={shelf} />
          <FilePanel shelf={shelf} />
        </>
      )}
    </main>
  );
}
