// What liquid and vapour are like at the reading.

import type { JSX } from "preact";
import type { Precision, QuantityKind, SaturationAnswer } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { SourceList } from "../../parts/sources";
import { otherUnitOf } from "../../unit-choice";
import { isByTemperature } from "./ask";

export function PropertyRows({ answer }: { readonly answer: SaturationAnswer }): JSX.Element {
  return (
    <section>
      <h2>{message("saturation-properties")}</h2>
      <Rows>
        {isByTemperature() && answer.bubblePressure !== answer.dewPressure ? (
          <>
            <Both mark="bubble-pressure" quantity="absolute-pressure" si={answer.bubblePressure} />
            <Both mark="dew-pressure" quantity="absolute-pressure" si={answer.dewPressure} />
          </>
        ) : (
          <Both mark="absolute-pressure" quantity="absolute-pressure" si={answer.dewPressure} />
        )}
        <Both mark="liquid-density" quantity="density" si={answer.liquidDensity} />
        <Both mark="vapour-density" quantity="density" si={answer.vapourDensity} />
        <Both mark="latent-heat" quantity="specific-enthalpy" si={answer.latentHeat} precision="instrument" />
      </Rows>
      <SourceList ids={answer.sources} />
    </section>
  );
}

function Both({ mark, quantity, si, precision = "table" }: {
  readonly mark: string;
  readonly quantity: QuantityKind;
  readonly si: number;
  readonly precision?: Precision;
}): JSX.Element {
  return (
    <Row
      mark={mark}
      name={message(`saturation-${mark}`)}
      figure={figureText(quantity, si, precision)}
      beneath={figureText(quantity, si, precision, otherUnitOf(quantity))}
    />
  );
}
