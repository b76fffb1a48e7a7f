// Whether everything of the job is on this phone.

import type { JSX } from "preact";
import { useJob } from "../../job/job-context";
import { message } from "../../locale";

/** Quiet while all is well: what is just being written is no news. */
export function KeptState(): JSX.Element {
  const { shelf, job } = useJob();
  const { safekeeping } = shelf;
  if (safekeeping.kept === "on this phone") {
    return (
      <p class="kept-state" data-unsaved={job.unsaved}>
        {message(job.unsaved === 0 ? "job-kept" : "job-being-kept", { count: job.unsaved })}
      </p>
    );
  }
  return (
    <p class="kept-state problem" role="status" data-unsaved={job.unsaved} data-reason={safekeeping.reason}>
      {message(`jobs-in-memory-${safekeeping.reason}`)} {job.unsaved > 0 && message("job-unsaved", { count: job.unsaved })}
    </p>
  );
}
