// A part of the plan: its fields while something is to be entered; later a line that says what stands there.

import type { ComponentChildren, JSX } from "preact";
import { useState } from "preact/hooks";
import { stageOf, useJob } from "../../../job/job-context";
import { Disclosure } from "../../../parts/disclosure";
import { isMistake, jobPrefix } from "../../../parts/fields";

export function PlanPart({ title, told, starts, children }: {
  readonly title: string;
  /** What stands there, in short. */
  readonly told: readonly string[];
  /** Starts of the places of its fields in the job: `plate.`. */
  readonly starts: readonly string[];
  readonly children: ComponentChildren;
}): JSX.Element {
  const { assessment, problems } = useJob();
  const texts = told.filter((text) => text.trim() !== "");
  const isOfPart = (field: string): boolean => starts.some((start) => field.startsWith(start));
  const isOpen = (stageOf(assessment, "plan")?.open ?? []).some(({ field }) => field != null && isOfPart(field));
  const isWrong = problems.some((problem) => isMistake(problem) && isOfPart(problem.field.slice(jobPrefix.length)));
  // Nothing folds while somebody works in it.
  const [isFilledAtFirst] = useState(texts.length > 0 && !isOpen);
  return (
    <Disclosure
      name="plan-part"
      summary={
        <>
          <h2>{title}</h2>
          {texts.length > 0 && <em>{texts.join(" · ")}</em>}
        </>
      }
      mustShow={!isFilledAtFirst || isWrong}
    >
      {children}
    </Disclosure>
  );
}
