// The pressure or temperature of the converter as a refrigerant has it: bubble and dew.

import type { JSX } from "preact";
import { place, writePlace } from "../../address";
import { show, type ConvertAnswer, type QuantityKind } from "../../core";
import { asEntered, message } from "../../locale";
import { problemText, textOf } from "../../parts/fields";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { otherUnitOf, unitOf } from "../../unit-choice";

export function Boiling({ answer }: { readonly answer: ConvertAnswer }): JSX.Element | null {
  const { saturation, noSaturation } = answer;
  if (!saturation && !noSaturation) return null;
  return (
    <section class="reading" data-reading="saturation">
      <h2>{message("convert-boiling", { refrigerant: textOf("refrigerant") })}</h2>
      {noSaturation && <p class="problem">{problemText(noSaturation)}</p>}
      {saturation && <Lines saturation={saturation} meant={meantQuantity(answer)} />}
      {saturation && (
        <a class="onward" href={writePlace({ path: "saturation", entries: entriesOf(answer, saturation) })}>
          {message("convert-to-saturation")}
        </a>
      )}
    </section>
  );
}

type Saturation = NonNullable<ConvertAnswer["saturation"]>;

/** What bubble and dew were found from: the first pressure or temperature that the text can mean. */
function meantQuantity({ readings }: ConvertAnswer): QuantityKind | undefined {
  return readings.find(({ quantity }) => ["temperature", "gauge-pressure", "absolute-pressure", "vacuum"].includes(quantity))?.quantity;
}

/** The same question for the card: as typed, where one of its fields takes the text. */
function entriesOf(answer: ConvertAnswer, { dewGaugePressure }: Saturation): Record<string, string> {
  const { altitude = textOf("altitude"), barometer = "" } = place().entries;
  const air = barometer === "" ? { altitude } : { barometer };
  const meant = meantQuantity(answer);
  const { number, unit } = show("gauge-pressure", dewGaugePressure, unitOf("gauge-pressure"), "significant");
  const gaugePressure = meant === "gauge-pressure" ? textOf("text") : `${asEntered(number)} ${unit}`;
  return { refrigerant: textOf("refrigerant"), ...air, ...(meant === "temperature" ? { temperature: textOf("text") } : { gaugePressure }) };
}

/** At a pressure two temperatures, at a temperature two pressures; one of a pure substance. */
function Lines({ saturation, meant }: { readonly saturation: Saturation; readonly meant: QuantityKind | undefined }): JSX.Element {
  const [quantity, bubble, dew] =
    meant === "temperature"
      ? (["gauge-pressure", saturation.bubbleGaugePressure, saturation.dewGaugePressure] as const)
      : (["temperature", saturation.bubbleTemperature, saturation.dewTemperature] as const);
  if (bubble === dew) return <Rows>{line("both", quantity, dew)}</Rows>;
  return (
    <Rows>
      {line("bubble", quantity, bubble)}
      {line("dew", quantity, dew)}
    </Rows>
  );
}

function line(mark: "bubble" | "dew" | "both", quantity: QuantityKind, si: number): JSX.Element {
  return (
    <Row
      key={mark}
      mark={mark}
      name={message(`saturation-${mark}`)}
      figure={figureText(quantity, si)}
      beneath={figureText(quantity, si, "instrument", otherUnitOf(quantity))}
    />
  );
}
