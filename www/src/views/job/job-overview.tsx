// The overview of a job: the drawing of its circuit, then the stages in the order of work.

import type { JSX } from "preact";
import { useJob } from "../../job/job-context";
import { StageList } from "./stage-list";

export function JobOverview(): JSX.Element {
  useJob();
  return <StageList />;
}
