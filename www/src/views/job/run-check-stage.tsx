import type { JSX } from "preact";

export function RunCheckStage(): JSX.Element {
  return <p />;
}
