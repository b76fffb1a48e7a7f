import type { JSX } from "preact";

export function FlareStage(): JSX.Element {
  return <p />;
}
