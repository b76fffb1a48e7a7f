// Whether the hold passes by its rule: its fields, its verdict, and each thing that it asks for.

import type { JSX } from "preact";
import type { PassCheck, Problem } from "../../core";
import { message } from "../../locale";
import { CardFields } from "../../parts/card-fields";
import { SourceList } from "../../parts/sources";
import { vacuumText } from "../../parts/vacuum-unit";
import { VerdictLine, VerdictMark, type Judged } from "../../parts/verdict-line";
import { ruleFields } from "./ask";
import { differenceText, levelText, timeText } from "./texts";

export function RulePanel({ pass, problems }: {
  readonly pass: PassCheck | undefined;
  readonly problems: readonly Problem[];
}): JSX.Element {
  return (
    <section class="rule">
      <h2>{message("vacuum-hold-rule")}</h2>
      <CardFields fields={ruleFields()} problems={problems} />
      {pass && <Passed pass={pass} />}
    </section>
  );
}

export function Passed({ pass: { verdict, time, remaining, source, start, pressure, rise, expected } }: { readonly pass: PassCheck }): JSX.Element {
  const isOver = remaining === 0;
  return (
    <>
      <VerdictLine state={verdict} words={message(`vacuum-hold-rule-${verdict}`)}>
        <span class="margin" data-remaining={remaining}>
          {message(isOver ? "vacuum-hold-rule-over" : "vacuum-hold-rule-remaining", { time: timeText(time), remaining: timeText(remaining) })}
        </span>
      </VerdictLine>
      <dl class="rows marked">
        <Asked name="start" judged={start} text={vacuumText} limit={vacuumText} />
        <Asked name={isOver ? "end" : "now"} judged={pressure} text={vacuumText} limit={vacuumText} />
        <Asked name="rise" judged={rise} text={differenceText} limit={differenceText} />
        <Asked name="expected" judged={expected} text={levelText} limit={vacuumText} />
      </dl>
      <SourceList ids={[source]} />
    </>
  );
}

/** One thing that the rule asks for: the mark, the figure, its limit. */
function Asked({ name, judged, text, limit }: {
  readonly name: string;
  readonly judged: Judged | null | undefined;
  readonly text: (si: number) => string;
  readonly limit: (si: number) => string;
}): JSX.Element | null {
  if (judged == null) return null;
  return (
    <div class="row" data-verdict={judged.verdict}>
      <dt>
        <VerdictMark judged={judged} limits={{ low: Math.min(0, judged.figure), high: judged.limit }} />
        <span>{message(`vacuum-hold-rule-${name}`)}</span>
      </dt>
      <dd data-figure={`rule-${name}`}>
        {text(judged.figure)}
        <small>
          {message("vacuum-hold-rule-limit", {
            limit: limit(judged.limit),
            margin: differenceText(Math.abs(judged.margin)),
            side: judged.margin < 0 ? "beyond" : "inside",
            uncertainty: judged.uncertainty === 0 ? "none" : differenceText(judged.uncertainty),
          })}
        </small>
      </dd>
    </div>
  );
}
