// Names of a job: what it is called, where, for whom, by whom; and the job as a file.

import type { JSX } from "preact";
import { JobFields } from "../../job/job-fields";
import { useJob } from "../../job/job-context";
import { fileNameOf, jobFile } from "../../job/job-file";
import { textAt } from "../../job/job-path";
import { saveFile } from "../../job/save-file";
import { message } from "../../locale";
import { Disclosure } from "../../parts/disclosure";

const names = ["name", "site", "customer", "technician"] as const;

export function JobNames(): JSX.Element {
  const { document } = useJob();
  const told = ["site", "customer"].map((name) => textAt(document, name)).filter((text) => text.trim() !== "");
  return (
    <Disclosure
      name="job-names"
      summary={
        <>
          <span>{message("job-names")}</span>
          <em>{told.join("; ")}</em>
        </>
      }
      mustShow={textAt(document, "name").trim() === ""}
    >
      <JobFields at={[]} fields={names.map((name) => ({ name, words: true as const }))} />
      <div class="job-actions">
        <button class="framed" data-action="save-job" onClick={() => saveFile(jobFile(document), fileNameOf(document))}>
          {message("job-save-file")}
        </button>
      </div>
      <p class="note">{message("job-save-file-hint")}</p>
    </Disclosure>
  );
}
