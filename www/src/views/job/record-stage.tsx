// The record: what was done, measured and left open, on one printed page, and as files.

import type { JSX } from "preact";
import { message } from "../../locale";
import { CircuitView } from "./circuit-view";
import { Attempts } from "./record/attempts";
import { Entered } from "./record/entered";
import { Findings } from "./record/findings-table";
import { Instruments } from "./record/instruments";
import { Joints } from "./record/joints-table";
import { LeftOpen } from "./record/left-open";
import { Notes } from "./record/notes";
import { Readings } from "./record/readings";
import { RecordHead } from "./record/record-head";
import { RecordPhotos } from "./record/record-photos";
import { SignatureLines, SignOffs } from "./record/sign-offs";
import { TakeAlong } from "./record/take-along";

export function RecordStage(): JSX.Element {
  return (
    <>
      <TakeAlong />
      <SignOffs />
      <RecordSheet />
    </>
  );
}

/** All that is known of the job, for reading alone. */
export function RecordSheet(): JSX.Element {
  return (
    <article class="job-record" aria-label={message("record-title")}>
      <div class="record-top">
        <div>
          <RecordHead />
          <LeftOpen />
        </div>
        <CircuitView isOnPaper />
      </div>
      <Findings />
      <Entered />
      <Joints />
      <Readings />
      <div class="record-pair">
        <Instruments />
        <div>
          <Attempts />
          <Notes />
        </div>
      </div>
      <p class="disclaimer">{message("record-disclaimer")}</p>
      <SignatureLines />
      <RecordPhotos />
    </article>
  );
}
