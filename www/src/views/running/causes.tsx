// What the deviations usually mean, the best fit first, each with what to look at next. Airflow comes before all.

import type { ComponentChildren, JSX } from "preact";
import type { Pattern } from "../../core";
import { message } from "../../locale";
import { SourceList } from "../../parts/sources";

export function Causes({ pattern, children }: {
  readonly pattern: Pattern | undefined;
  /** The field that says whether airflow was looked at. */
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    <section class="causes">
      <h2>{message("running-causes")}</h2>
      {pattern === undefined ? <p class="note">{message("running-causes-open")}</p> : <Ranked pattern={pattern} />}
      {children}
      {pattern && pattern.causes.length > 0 && <SourceList ids={[pattern.source]} />}
    </section>
  );
}

function Ranked({ pattern }: { readonly pattern: Pattern }): JSX.Element {
  const { causes, deviations, airflow, wouldDecide } = pattern;
  if (deviations === 0) return <p class="note">{message("running-nothing-out")}</p>;
  return (
    <>
      {airflow !== "airflow-ruled-out" && (
        <p class="airflow-first" data-airflow={airflow}>
          {message(`choice-${airflow}`)}
        </p>
      )}
      {causes.length === 0 && <p class="note">{message("running-nothing-fits")}</p>}
      <ol>
        {causes.map(({ cause, explains, nextCheck }) => (
          <li key={cause} data-cause={cause}>
            <b>{message(`choice-${cause}`)}</b>
            <small>{message("running-explains", { explains, deviations })}</small>
            <span data-next={nextCheck}>{message(`choice-${nextCheck}`)}</span>
          </li>
        ))}
      </ol>
      {wouldDecide.length > 0 && (
        <p class="note" data-would-decide>
          {message("running-would-decide", { figures: wouldDecide.map((figure) => message(`choice-${figure}`)).join(", ") })}
        </p>
      )}
    </>
  );
}
