// How much a recovery cylinder may hold, and how full it is.

import type { JSX } from "preact";
import type { ChargeAnswer, Problem, RecoveryFill } from "../../core";
import { CylinderFill } from "../../drawings/cylinder-fill";
import { useSheet } from "../../drawings/sheet";
import { message } from "../../locale";
import { CardFields, type AnyField } from "../../parts/card-fields";
import { Cautions } from "../../parts/cautions";
import { Disclosure } from "../../parts/disclosure";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { SourceList } from "../../parts/sources";
import { VerdictLine } from "../../parts/verdict-line";
import { Working } from "../../parts/working";
import { otherUnitOf } from "../../unit-choice";
import { isFilled, isWrong, recoveryFields } from "./ask";

export function RecoveryPanel({ answer, problems, fields = recoveryFields() }: {
  readonly answer: ChargeAnswer | undefined;
  readonly problems: readonly Problem[];
  /** Its fields, where they are not those of the card. */
  readonly fields?: readonly AnyField[];
}): JSX.Element {
  const fill = answer?.recovery;
  return (
    <Disclosure name="recovery" summary={<h2><span>{message("charge-recovery")}</span></h2>} mustShow={isFilled(fields) || isWrong(fields, problems)}>
      {fill != null ? <Fill fill={fill} /> : <p class="note">{message("charge-recovery-empty")}</p>}
      <CardFields fields={fields} problems={problems} />
      {fill != null && <FillRows fill={fill} />}
      {answer?.notices.map((notice) => (
        <p key={notice} class="note" data-notice={notice}>
          {message(`choice-${notice}`)}
        </p>
      ))}
      <Cautions ids={["choice-cylinder-never-above-eighty", "charge-recovery-caution"]} />
      {answer && fill != null && <Working steps={answer.working} of={message("charge-recovery")} />}
    </Disclosure>
  );
}

function Fill({ fill }: { readonly fill: RecoveryFill }): JSX.Element {
  const sheet = useSheet();
  const { room, partFull, largestGross, largestContents, liquidDensity, volume } = fill;
  const limit = largestContents / (liquidDensity * volume);
  const mass = figureText("mass", largestGross, "table");
  const now = partFull == null ? undefined : { part: partFull, text: percent(partFull) };
  return (
    <>
      <div class="recovery-figures">
        <CylinderFill
          sheet={sheet}
          limit={{ part: limit, text: percent(limit) }}
          now={now}
          alternative={message(now ? "charge-cylinder" : "charge-cylinder-empty", { limit: percent(limit), now: now?.text ?? "" })}
        />
        <div>
          <p class="figure-name">{message("charge-largest-gross")}</p>
          <p data-figure="largestGross">
            <b class="large">{mass}</b> <small>{figureText("mass", largestGross, "table", otherUnitOf("mass"))}</small>
          </p>
        </div>
      </div>
      {room != null && (
        <VerdictLine judged={room} words={message(`charge-room-${room.verdict}`, { room: figureText("mass", Math.abs(room.margin), "table") })}>
          <span class="margin">{message("charge-room-uncertainty", { uncertainty: figureText("mass", room.uncertainty, "table") })}</span>
        </VerdictLine>
      )}
    </>
  );
}

function FillRows({ fill }: { readonly fill: RecoveryFill }): JSX.Element {
  const { readings, limitedBy, temperature, partFullWhenHot, contents, partFull } = fill;
  return (
    <>
      <h3>{message("charge-rules")}</h3>
      <Rows>
        {readings.map(({ rule, gross, beyondLimit }) => (
          <Row
            key={rule}
            mark={rule}
            name={message(`choice-${rule}`) + (rule === "eighty-percent-of-volume" ? ` ${message("charge-at", { temperature: figureText("temperature", temperature) })}` : "")}
            figure={<span class={beyondLimit ? "beyond-limit" : undefined}>{figureText("mass", gross, "table")}</span>}
            beneath={rule === limitedBy ? message("charge-rule-holds") : undefined}
          />
        ))}
        <Row mark="partFullWhenHot" name={message("charge-full-when-hot")} figure={percent(partFullWhenHot)} />
        {contents != null && <Row mark="contents" name={message("charge-in-it")} figure={figureText("mass", contents, "table")} beneath={partFull == null ? undefined : percent(partFull)} />}
      </Rows>
      <SourceList ids={[...new Set(readings.map(({ source }) => source))]} />
    </>
  );
}

function percent(ratio: number): string {
  return figureText("ratio", ratio, "instrument", "%");
}
