// What the stages have found, a line each, beside the drawing of the circuit.

import type { JSX } from "preact";
import { useJob } from "../../../job/job-context";
import { message } from "../../../locale";
import { VerdictMark } from "../../../parts/verdict-line";
import { foundLines, type FoundLine } from "./found";

export function Findings(): JSX.Element | null {
  const { assessment, document } = useJob();
  const lines = foundLines(assessment, document);
  if (lines.length === 0) return null;
  return (
    <section class="record-found">
      <h3>{message("record-found")}</h3>
      <dl>
        {lines.map((line) => (
          <Line key={line.mark} line={line} />
        ))}
      </dl>
    </section>
  );
}

function Line({ line: { mark, name, figure, state, standing } }: { readonly line: FoundLine }): JSX.Element {
  return (
    <div data-found={mark} data-verdict={state}>
      <dt>{message(name)}</dt>
      <dd>
        {figure}
        {state !== undefined && (
          <span class="standing">
            <VerdictMark state={state} /> {standing}
          </span>
        )}
      </dd>
    </div>
  );
}
