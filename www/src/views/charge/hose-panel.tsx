// What a hose lets into the air when it is taken off.

import type { JSX } from "preact";
import type { ChargeAnswer, Problem } from "../../core";
import { message } from "../../locale";
import { CardFields, type AnyField } from "../../parts/card-fields";
import { Disclosure } from "../../parts/disclosure";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { fineUnit, hoseFields, isFilled, isWrong } from "./ask";

export function HosePanel({ answer, problems, fields = hoseFields }: {
  readonly answer: ChargeAnswer | undefined;
  readonly problems: readonly Problem[];
  /** Its fields, where they are not those of the card. */
  readonly fields?: readonly AnyField[];
}): JSX.Element {
  const mass = answer?.hose?.mass;
  return (
    <Disclosure name="hose" summary={<h2><span>{message("charge-hose")}</span></h2>} mustShow={isFilled(fields) || isWrong(fields, problems)}>
      <CardFields fields={fields} problems={problems} />
      {mass != null && (
        <Rows>
          <Row mark="hose" name={message("charge-hose-holds")} figure={figureText("mass", mass, "table", fineUnit())} />
        </Rows>
      )}
      <p class="note">{message("charge-hose-note")}</p>
    </Disclosure>
  );
}
