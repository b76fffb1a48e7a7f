// Without the tube nothing is known of a flare: asked for where a joint was added, else entered in the plan.

import type { JSX } from "preact";
import type { JointAssessment } from "../../../core";
import { useJob } from "../../../job/job-context";
import { jointField } from "../../../job/joint-records";
import { jobPlace } from "../../../job/stages";
import { message } from "../../../locale";
import { TubeChoice } from "../../../parts/tube-choice";

export function TubeWanted({ joint: { id, place, tube } }: { readonly joint: JointAssessment }): JSX.Element | null {
  const { job, problems } = useJob();
  if (tube != null) return null;
  if (place === "own") return <TubeChoice name={jointField(id, "tube")} problems={problems} />;
  return (
    <p class="notice">
      {message("joints-no-tube")} <a href={jobPlace(job.id, "plan")}>{message("joints-to-plan")}</a>
    </p>
  );
}
