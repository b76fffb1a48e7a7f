// The ways to take the record along: on paper, as the job's document, as tables.

import type { JSX } from "preact";
import { jointsCsv, readingsCsv } from "../../../job/csv-tables";
import { fileNameOf, jobFile } from "../../../job/job-file";
import { useJob } from "../../../job/job-context";
import { jointText } from "../../../job/job-words";
import { saveFile } from "../../../job/save-file";
import { message } from "../../../locale";
import { schemaAddress } from "./record-head";

export function TakeAlong(): JSX.Element {
  const { assessment, document } = useJob();
  const schema = schemaAddress();
  const table = (name: string, text: string): void => saveFile(new Blob([text], { type: "text/csv;charset=utf-8" }), fileNameOf(document, `${name}.csv`));
  return (
    <section class="take-along">
      <button class="do" data-action="print" onClick={() => print()}>
        {message("record-print")}
      </button>
      <div class="actions">
        <button class="framed" data-action="save-json" onClick={() => saveFile(jobFile(document), fileNameOf(document))}>
          {message("record-save-json")}
        </button>
        <button class="framed" data-action="save-readings" onClick={() => table("readings", readingsCsv(assessment))}>
          {message("record-save-readings")}
        </button>
        <button class="framed" data-action="save-joints" onClick={() => table("joints", jointsCsv(assessment, document, jointText))}>
          {message("record-save-joints")}
        </button>
      </div>
      {schema !== undefined && (
        <p class="note">
          {message("record-schema-note")} <a href={schema}>{schema}</a>
        </p>
      )}
    </section>
  );
}
