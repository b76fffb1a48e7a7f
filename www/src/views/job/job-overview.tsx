// The overview of a job: the drawing of its circuit, then the stages in the order of work.

import type { JSX } from "preact";
import { CircuitView } from "./circuit-view";
import { HiddenProblems } from "./hidden-problems";
import { StageList } from "./stage-list";

export function JobOverview(): JSX.Element {
  return (
    <>
      <CircuitView />
      <StageList />
      <HiddenProblems />
    </>
  );
}
