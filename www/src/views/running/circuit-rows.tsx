// Both sides of the circuit: where the refrigerant evaporates and condenses, and how far that is from the air.

import type { JSX } from "preact";
import type { RunningAnswer, SideAnswer } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { Row } from "../../parts/rows";
import { CheckRow } from "./check-row";

export function CircuitRows({ answer }: { readonly answer: RunningAnswer }): JSX.Element | null {
  const { evaporating, condensing, evaporatingDifference, condensingDifference, compressionRatio } = answer;
  if (evaporating == null && condensing == null) return null;
  const heating = answer.mode === "heating" ? "-heating" : "";
  return (
    <dl class="rows judged">
      {evaporating && <SideRow mark="evaporating" side={evaporating} />}
      <CheckRow mark="evaporatingDifference" name={message(`running-evaporating-difference${heating}`)} check={evaporatingDifference} />
      {condensing && <SideRow mark="condensing" side={condensing} />}
      <CheckRow mark="condensingDifference" name={message(`running-condensing-difference${heating}`)} check={condensingDifference} />
      {compressionRatio != null && (
        <Row mark="compressionRatio" name={message("figure-compression-ratio")} figure={message("running-ratio", { ratio: Number(compressionRatio.toFixed(2)) })} />
      )}
    </dl>
  );
}

function SideRow({ mark, side }: { readonly mark: "evaporating" | "condensing"; readonly side: SideAnswer }): JSX.Element {
  const { temperature, uncertainty } = side;
  return (
    <Row
      mark={mark}
      name={message(`running-${mark}`)}
      figure={figureText("temperature", temperature)}
      beneath={`± ${figureText("temperature-difference", uncertainty)}`}
    />
  );
}
