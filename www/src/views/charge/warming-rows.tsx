// The charge as carbon dioxide, by three reports.

import type { JSX } from "preact";
import type { ChargeAnswer } from "../../core";
import { message, numberText } from "../../locale";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { SourceList } from "../../parts/sources";

export function WarmingRows({ answer }: { readonly answer: ChargeAnswer }): JSX.Element | null {
  const { warming, refrigerant } = answer;
  if (warming == null) return null;
  const reports = ["ar4", "ar5", "ar6"] as const;
  return (
    <section>
      <h2>{message("charge-warming", { charge: figureText("mass", warming.charge, "table"), refrigerant: refrigerant ?? "" })}</h2>
      <Rows>
        {reports.map((report) => (
          <Row
            key={report}
            mark={report}
            name={message(`facts-warming-${report}`)}
            figure={figureText("mass", warming[report], "significant")}
            beneath={`× ${numberText(Number(warming.potentials[report].figure.toPrecision(5)))}`}
          />
        ))}
      </Rows>
      <SourceList ids={[...new Set(reports.map((report) => warming.potentials[report].source))]} />
    </section>
  );
}
