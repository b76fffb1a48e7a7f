// The air around, by altitude or barometer: what gauge pressures count from.

import type { JSX } from "preact";
import type { Ambient, Problem } from "../core";
import { message } from "../locale";
import { unitOf } from "../unit-choice";
import { Disclosure } from "./disclosure";
import { EntryField } from "./entry-field";
import { entryOf } from "./fields";
import { figureText } from "./figures";

type Typed = ReturnType<typeof entryOf>;

export function airInput(): { readonly altitude: Typed; readonly barometer: Typed } {
  return {
    altitude: entryOf("altitude", "altitude"),
    barometer: entryOf("barometer", "absolute-pressure", barometerUnit()),
  };
}

/** The pressure of the air and how it is known. */
export function airText({ basis, pressure }: Ambient): string {
  return message(`convert-air-${basis}`, {
    pressure: figureText("absolute-pressure", pressure, "significant", barometerUnit()),
  });
}

/** What barometers and weather reports are marked in. */
export function barometerUnit(): string {
  return unitOf("altitude") === "ft" ? "inHg" : "mbar";
}

export function AirFields({ problems }: { readonly problems: readonly Problem[] }): JSX.Element {
  return (
    <Disclosure
      name="air"
      summary={<span>{message("convert-air")}</span>}
      mustShow={problems.some(({ field }) => field === "altitude" || field === "barometer")}
    >
      <EntryField name="altitude" problems={problems} unit={unitOf("altitude")} signed instead={["barometer"]} />
      <EntryField name="barometer" problems={problems} unit={barometerUnit()} words instead={["altitude"]} />
    </Disclosure>
  );
}
