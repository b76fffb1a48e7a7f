import type { JSX } from "preact";

export function EvacuateStage(): JSX.Element {
  return <p />;
}
