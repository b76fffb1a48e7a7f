import type { JSX } from "preact";

export function RecordStage(): JSX.Element {
  return <p />;
}
