import type { JSX } from "preact";

export function PlanStage(): JSX.Element {
  return <p />;
}
