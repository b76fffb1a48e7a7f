// Undo and redo, each with what it would take back or do again.

import type { JSX } from "preact";
import { useJob } from "../../job/job-context";
import { placeText } from "../../job/place-words";
import { message } from "../../locale";
import type { Step, TreeObject } from "../../store/jobs";

export function UndoRedo(): JSX.Element {
  const { job, document } = useJob();
  return (
    <div class="undo-redo">
      <StepButton action="undo" step={job.undoStep} document={document} onTap={() => job.undo()} />
      <StepButton action="redo" step={job.redoStep} document={document} onTap={() => job.redo()} />
    </div>
  );
}

function StepButton({ action, step, document, onTap }: {
  readonly action: "undo" | "redo";
  readonly step: Step | undefined;
  readonly document: TreeObject;
  readonly onTap: () => void;
}): JSX.Element {
  return (
    <button data-action={action} disabled={step === undefined} onClick={onTap}>
      {message(`job-${action}`)}
      {step && <small>{stepText(document, step)}</small>}
    </button>
  );
}

/** Where the step wrote; of several places the first. */
function stepText(document: TreeObject, { edits }: Step): string {
  const [first] = edits;
  if (first === undefined) return "";
  const path = first.kind === "put" ? [...first.path, `#${first.item.id}`] : first.path;
  const place = placeText(document, path, "item" in first ? first.item : undefined);
  return edits.length === 1 ? place : message("step-places", { place, count: edits.length - 1 });
}
