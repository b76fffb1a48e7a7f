// Both units of a quantity at once, the chosen one strong: a tap changes over.

import type { JSX } from "preact";
import type { QuantityKind } from "../core";
import { message } from "../locale";
import { chooseUnit } from "../settings";
import { otherUnitOf, unitOf } from "../unit-choice";

export function UnitSwitch({ quantity, onSwitch }: {
  readonly quantity: QuantityKind;
  readonly onSwitch?: (from: string, to: string) => void;
}): JSX.Element {
  const [chosen, other] = [unitOf(quantity), otherUnitOf(quantity)];
  const change = (): void => {
    chooseUnit(quantity, other);
    onSwitch?.(chosen, other);
  };
  return (
    <button class="unit-switch" data-unit={other} onClick={change}>
      <b>{chosen}</b>
      <span>{other}</span>
      <span class="heard">{message("torque-switch-unit", { unit: other })}</span>
    </button>
  );
}
