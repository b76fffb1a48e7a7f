// That a joint was flared, or brazed: one tap, and the moment is kept.

import type { JSX } from "preact";
import type { JointAssessment } from "../../../core";
import { nowIn, useJob } from "../../../job/job-context";
import { record } from "../../../job/joint-records";
import { momentText } from "../../../job/moment";
import { message } from "../../../locale";

export function MadeAct({ joint: { id, kind, madeAt } }: { readonly joint: JointAssessment }): JSX.Element | null {
  const { job, document } = useJob();
  if (kind === "cap") return null;
  const word = kind === "brazed" ? "brazed" : "flared";
  return (
    <DoneAct
      action="made"
      word={message(`joints-act-${word}`)}
      done={madeAt == null ? undefined : message(`joints-${word}-at`, { at: momentText(madeAt) })}
      onDo={() => record(job, id, { made: nowIn(document) })}
      onTakeBack={() => record(job, id, { made: undefined })}
    />
  );
}

/** What is done with one tap, and told with its moment once it is. */
export function DoneAct({ action, word, done, onDo, onTakeBack }: {
  readonly action: string;
  readonly word: string;
  /** What is told once it is done. */
  readonly done: string | undefined;
  readonly onDo: () => void;
  readonly onTakeBack: () => void;
}): JSX.Element {
  return (
    <div class="joint-act">
      {done === undefined ? (
        <button class="do" data-action={action} onClick={onDo}>
          {word}
        </button>
      ) : (
        <p data-done={action}>
          <b>{done}</b>
          <button data-action={`${action}-not`} onClick={onTakeBack}>
            {message("joints-take-back")}
          </button>
        </p>
      )}
    </div>
  );
}
