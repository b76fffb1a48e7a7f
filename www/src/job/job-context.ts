// The job on the screen and how it stands, for every part of its screens.

import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { assess, type Assessment, type JointAssessment, type Problem, type Stage, type StageAssessment } from "../core";
import type { OpenJob, Shelf, TreeObject } from "../store/jobs";
import { itemsAt, problemsOfFields } from "./job-path";
import { momentNow } from "./moment";

export interface JobShown {
  readonly shelf: Shelf;
  readonly job: OpenJob;
  readonly document: TreeObject;
  readonly assessment: Assessment;
  /** By the names of the fields on the screen. */
  readonly problems: readonly Problem[];
}

export const JobContext = createContext<JobShown | undefined>(undefined);

export function useJob(): JobShown {
  const shown = useContext(JobContext);
  if (shown === undefined) throw new Error("no job is shown");
  return shown;
}

/** How the job stands at this moment, with the answers of a stage. */
export function shownNow(shelf: Shelf, job: OpenJob, stage: Stage | null): JobShown | readonly Problem[] {
  const { document } = job;
  const reply = assess(document, nowIn(document), stage);
  if ("problems" in reply) return reply.problems;
  return { shelf, job, document, assessment: reply.answer, problems: problemsOfFields(document, reply.answer.problems) };
}

/** Now, by the clock as the job knows it. */
export function nowIn(document: TreeObject): string {
  return momentNow(itemsAt(document, "clockChanges").length);
}

export function stageOf(assessment: Assessment, stage: Stage): StageAssessment | undefined {
  return assessment.stages.find((found) => found.stage === stage);
}

/** The joints that are not taken out. */
export function presentJoints({ joints }: Assessment): readonly JointAssessment[] {
  return joints.filter(({ state }) => state !== "removed");
}
