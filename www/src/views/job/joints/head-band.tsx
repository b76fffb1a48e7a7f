// A figure, or a band, as large as can be read from a metre away; a dash where it is not known.

import type { ComponentChildren, JSX } from "preact";
import type { Limits, QuantityKind } from "../../../core";
import { bandNumbers, bandText } from "../../../parts/figures";
import { otherUnitOf, unitOf } from "../../../unit-choice";

export function HeadBand({ mark, name, quantity, band, children }: {
  readonly mark: string;
  readonly name: string;
  readonly quantity: QuantityKind;
  readonly band: Limits | null | undefined;
  readonly children?: ComponentChildren;
}): JSX.Element {
  const numbers = band ? bandNumbers(quantity, band) : "—";
  return (
    <HeadNumbers mark={mark} name={name} numbers={numbers} isWithheld={band == null} unit={unitOf(quantity)}>
      {band && <p class="beneath">{bandText(quantity, band, otherUnitOf(quantity))}</p>}
      {children}
    </HeadNumbers>
  );
}

export function HeadNumbers({ mark, name, numbers, unit, isWithheld, children }: {
  readonly mark: string;
  readonly name: string;
  readonly numbers: string;
  /** The unit, or what changes it. */
  readonly unit: ComponentChildren;
  readonly isWithheld: boolean;
  readonly children?: ComponentChildren;
}): JSX.Element {
  return (
    <div class="head-band">
      <h3>{name}</h3>
      <p class="head-line">
        <span data-figure={mark}>
          <b class={isWithheld ? "head-figure withheld" : "head-figure"} style={{ "--characters": Math.max(numbers.length, 4) }}>
            {numbers}
          </b>{" "}
          {unit}
        </span>
      </p>
      {children}
    </div>
  );
}
