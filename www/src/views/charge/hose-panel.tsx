// What a hose lets into the air when it is taken off.

import type { JSX } from "preact";
import type { ChargeAnswer, Problem } from "../../core";
import { message } from "../../locale";
import { CardFields } from "../../parts/card-fields";
import { Disclosure } from "../../parts/disclosure";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { fineUnit, hoseFields, isFilled, isWrong } from "./ask";

export function HosePanel({ answer, problems }: {
  readonly answer: ChargeAnswer | undefined;
  readonly problems: readonly Problem[];
}): JSX.Element {
  const mass = answer?.hose?.mass;
  return (
    <Disclosure name="hose" summary={<h2><span>{message("charge-hose")}</span></h2>} mustShow={isFilled(hoseFields) || isWrong(hoseFields, problems)}>
      <CardFields fields={hoseFields} problems={problems} />
      {mass != null && (
        <Rows>
          <Row mark="hose" name={message("charge-hose-holds")} figure={figureText("mass", mass, "table", fineUnit())} />
        </Rows>
      )}
      <p class="note">{message("charge-hose-note")}</p>
    </Disclosure>
  );
}
