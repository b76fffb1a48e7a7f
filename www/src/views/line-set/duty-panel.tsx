// Cooling or heating: what flows, what each line takes of it, and the working of each.

import type { JSX } from "preact";
import type { Duty, LineFlow } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { Row, Rows } from "../../parts/rows";
import { SourceList } from "../../parts/sources";
import { Working } from "../../parts/working";

export function DutyPanel({ duty, way }: { readonly duty: Duty; readonly way: "cooling" | "heating" }): JSX.Element {
  const { massFlow, effect, staticHead, capacityRatio, dischargeSuperheat, oilReturn, liquidLine, suctionLine } = duty;
  const name = message(`line-set-${way}`);
  const gas = message(`line-set-gas-${way}`);
  return (
    <section>
      <h2>{message("line-set-flow", { way: name })}</h2>
      <Rows>
        <Row mark={`massFlow-${way}`} name={message("figure-mass-flow")} figure={figureText("mass-flow", massFlow)} />
        <Row name={message(`line-set-effect-${way}`)} figure={figureText("specific-enthalpy", effect)} />
        {dischargeSuperheat != null && (
          <Row
            name={message("line-set-discharge-superheat")}
            figure={figureText("temperature-difference", dischargeSuperheat.figure)}
            beneath={dischargeSuperheat.source === "plate" ? undefined : message("line-set-usual")}
          />
        )}
        {staticHead != null && staticHead !== 0 && (
          <Row
            mark={`staticHead-${way}`}
            name={message(staticHead < 0 ? "line-set-head-gained" : "line-set-head-lost")}
            figure={figureText("pressure-difference", Math.abs(staticHead), "table")}
          />
        )}
        {capacityRatio != null && (
          <Row mark="capacityRatio" name={message("line-set-capacity-row")} figure={figureText("ratio", capacityRatio, "table")} />
        )}
        {oilReturn != null && (
          <Row
            mark={`leastCapacity-${way}`}
            name={message("line-set-oil-from")}
            figure={figureText("power", oilReturn.leastCapacity, "table")}
            beneath={figureText("velocity", oilReturn.leastVelocity, "table")}
          />
        )}
      </Rows>
      <Working steps={duty.working} of={name}>
        {dischargeSuperheat != null && <SourceList ids={[dischargeSuperheat.source]} />}
      </Working>
      {liquidLine && <FlowRows flow={liquidLine} mark={`liquid-${way}`} name={message("line-set-liquid")} of={name} />}
      {suctionLine && <FlowRows flow={suctionLine} mark={`gas-${way}`} name={gas} of={name} />}
    </section>
  );
}

function FlowRows({ flow, mark, name, of }: {
  readonly flow: LineFlow;
  readonly mark: string;
  readonly name: string;
  readonly of: string;
}): JSX.Element {
  const { velocity, frictionDrop, saturationDrop } = flow;
  return (
    <>
      <h3>{name}</h3>
      <Rows>
        <Row mark={`velocity-${mark}`} name={message("figure-velocity")} figure={figureText("velocity", velocity, "table")} />
        {frictionDrop != null && (
          <Row
            mark={`drop-${mark}`}
            name={message("line-set-drop")}
            figure={figureText("pressure-difference", frictionDrop, "table")}
            beneath={saturationDrop == null ? undefined : figureText("temperature-difference", saturationDrop, "table")}
          />
        )}
      </Rows>
      <Working steps={flow.working} of={`${name}, ${of}`} />
    </>
  );
}
