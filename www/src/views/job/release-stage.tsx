import type { JSX } from "preact";

export function ReleaseStage(): JSX.Element {
  return <p />;
}
