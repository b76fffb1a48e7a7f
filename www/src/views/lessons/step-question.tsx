// The question at a step of a working, which opens into its answer and, where that says more than the working, its sources.

import type { JSX } from "preact";
import { message } from "../../locale";
import { SourceList } from "../../parts/sources";
import { sourcesOfAnswers } from "./answer-sources";

export function StepQuestion({ step }: { readonly step: string }): JSX.Element {
  const subject = step.replace(/^step-/, "");
  return (
    <details class="question">
      <summary>
        <span>{message(`why-${subject}`)}</span>
      </summary>
      <div class="answered">
        <p>{message(`because-${subject}`)}</p>
        <SourceList ids={sourcesOfAnswers[subject] ?? []} />
      </div>
    </details>
  );
}
