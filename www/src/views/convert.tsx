// The converter: one free text, every meaning it can have, every unit of each.

import type { JSX } from "preact";
import { Fragment } from "preact";
import { calculate, type Ambient, type ConvertReading } from "../core";
import { decimalMark, message } from "../locale";
import { AirFields, airInput, airText } from "../parts/air-fields";
import { Chips } from "../parts/chips";
import { EntryField } from "../parts/entry-field";
import { textOf, wordOf } from "../parts/fields";
import { figureText } from "../parts/figures";
import { RefrigerantChoice } from "../parts/refrigerant-choice";
import { Working } from "../parts/working";
import { Boiling } from "./convert/boiling";

const examples = ["140 psi", "5/8", "500 micron", "29.9 inHg vac", "25 ft-lb", "−12 °F", "2 lb 6 oz", "12,5 bar"];

export function Convert(): JSX.Element {
  const text = textOf("text");
  const isEmpty = text.trim() === "";
  const refrigerant = wordOf<"R-410A">("refrigerant");
  const reply = calculate("convert", { text, refrigerant, ...airInput() });
  const problems = "problems" in reply ? reply.problems.filter(({ field }) => field !== "text" || !isEmpty) : [];
  // A flawed altitude or refrigerant withholds what needs it, not what the text says by itself.
  const plain = problems.some(({ field }) => field === "text") ? reply : calculate("convert", { text });
  const answer = "answer" in reply ? reply.answer : "answer" in plain ? plain.answer : undefined;
  const isAirSound = "answer" in reply;
  const readings = (answer?.readings ?? []).filter(({ byAmbient }) => isAirSound || !byAmbient);
  return (
    <main class="convert">
      <h1>{message("convert-heading")}</h1>
      <EntryField name="text" label="convert-label" problems={problems} words signed />
      <Chips field="text" label={message("convert-examples")} texts={examples} isInOneLine />
      {isEmpty && <p class="note">{message("convert-empty")}</p>}
      {readings.map((reading, place) => (
        <Fragment key={reading.quantity}>
          <Reading reading={reading} isFirst={place === 0} air={isAirSound ? (answer?.ambient ?? undefined) : undefined} />
          {place === 0 && isAirSound && answer && <Boiling answer={answer} />}
        </Fragment>
      ))}
      {isAirSound && answer && <Working steps={answer.working} of={message("convert-working")} />}
      <RefrigerantChoice problems={problems} none={message("convert-no-refrigerant")} />
      <AirFields problems={problems} />
    </main>
  );
}

function Reading({ reading, isFirst, air: around }: {
  readonly reading: ConvertReading;
  readonly isFirst: boolean;
  readonly air: Ambient | undefined;
}): JSX.Element {
  const { quantity, units, byAmbient, fraction } = reading;
  const systems = [true, false].map((metric) => units.filter((unit) => unit.metric === metric));
  return (
    <section class={isFirst ? "reading first" : "reading"} data-reading={quantity}>
      <h2>{message(`quantity-${quantity}`)}</h2>
      {byAmbient && around && (
        <p class="note">{airText(around)}</p>
      )}
      <div class="systems">
        {systems.map((members, column) => (
          <dl key={column} hidden={members.length === 0}>
            {members.map(({ unit, text }) => (
              <div key={unit} data-unit-row={unit}>
                <dt>{unit}</dt>
                <dd>{text.replace(".", decimalMark)}</dd>
              </div>
            ))}
          </dl>
        ))}
      </div>
      {fraction && (
        <p class="fraction" data-unit-row="1/64 in">
          <span>{message("convert-fraction", { fraction: fraction.text })}</span>
          {fraction.remainder !== 0 && (
            <small>{message("convert-fraction-off", { remainder: figureText("length", fraction.remainder, "significant", "mm") })}</small>
          )}
        </p>
      )}
    </section>
  );
}
