// The converter: one free text, every meaning it can have, every unit of each.

import type { JSX } from "preact";
import { calculate, type Ambient, type ConvertReading } from "../core";
import { message } from "../locale";
import { Chips } from "../parts/chips";
import { Disclosure } from "../parts/disclosure";
import { EntryField } from "../parts/entry-field";
import { entryOf, textOf } from "../parts/fields";
import { figureText } from "../parts/figures";
import { Working } from "../parts/working";
import { unitOf } from "../unit-choice";

const examples = ["140 psi", "5/8", "500 micron", "29.9 inHg vac", "25 ft-lb", "−12 °F", "2 lb 6 oz", "12,5 bar"];

export function Convert(): JSX.Element {
  const text = textOf("text");
  const isEmpty = text.trim() === "";
  const reply = calculate("convert", { text, ...air() });
  const problems = "problems" in reply ? reply.problems.filter(({ field }) => field !== "text" || !isEmpty) : [];
  // A flawed altitude withholds what needs the air, not what the text says by itself.
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
        <Reading
          key={reading.quantity}
          reading={reading}
          isFirst={place === 0}
          air={isAirSound ? (answer?.ambient ?? undefined) : undefined}
        />
      ))}
      {isAirSound && answer && <Working steps={answer.working} of={message("convert-working")} />}
      <Disclosure
        name="air"
        summary={<span>{message("convert-air")}</span>}
        mustShow={problems.some(({ field }) => field !== "text")}
      >
        <EntryField name="altitude" problems={problems} unit={unitOf("altitude")} signed />
        <EntryField name="barometer" problems={problems} unit={barometerUnit()} words />
      </Disclosure>
    </main>
  );
}

function air(): { readonly altitude: ReturnType<typeof entryOf>; readonly barometer: ReturnType<typeof entryOf> } {
  return {
    altitude: entryOf("altitude", "altitude"),
    barometer: entryOf("barometer", "absolute-pressure", barometerUnit()),
  };
}

/** What barometers and weather reports are marked in. */
function barometerUnit(): string {
  return unitOf("altitude") === "ft" ? "inHg" : "mbar";
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
        <p class="note">
          {message(`convert-air-${around.basis}`, {
            pressure: figureText("absolute-pressure", around.pressure, "significant", barometerUnit()),
          })}
        </p>
      )}
      <div class="systems">
        {systems.map((members, column) => (
          <dl key={column} hidden={members.length === 0}>
            {members.map(({ unit, text }) => (
              <div key={unit} data-unit-row={unit}>
                <dt>{unit}</dt>
                <dd>{text}</dd>
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
