import type { JSX } from "preact";

export function TightenStage(): JSX.Element {
  return <p />;
}
