import type { JSX } from "preact";

export function PressureTestStage(): JSX.Element {
  return <p />;
}
