// One series of sizes, a row each; a tap on a row opens what belongs to it under it.

import type { ComponentChildren, JSX } from "preact";
import { Fragment } from "preact";
import { calculate, show, type QuantityKind, type TubeAnswer } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { VerdictMark } from "../../parts/verdict-line";
import { unitOf } from "../../unit-choice";
import type { AskedSize } from "../tubes";
import { perMetreUnits } from "./tube-units";

const columns = 5;

export function TubeTable({ title, sizes, opened, onToggle, details }: {
  readonly title: string;
  readonly sizes: readonly AskedSize[];
  readonly opened: string | undefined;
  readonly onToggle: (key: string) => void;
  readonly details: ComponentChildren;
}): JSX.Element {
  const heads: readonly (readonly [string, string])[] = [
    ["tubes-bore", unitOf("length")],
    ["tubes-mass", unitOf("mass-per-length")],
    ["tubes-volume", `${perMetreUnits().volume}/m`],
    ["tubes-rated", unitOf("gauge-pressure")],
  ];
  return (
    <div class="table-frame" role="region" aria-label={title} tabIndex={0}>
      <table>
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">
              {message("tubes-size")} <small>{message("tubes-wall")}</small>
            </th>
            {heads.map(([id, unit]) => (
              <th scope="col" key={id}>
                {message(id)} <small>{unit}</small>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sizes.map((asked) => {
            const reply = calculate("tube", asked.input);
            if ("problems" in reply) return null;
            const isOpen = asked.key === opened;
            return (
              <Fragment key={asked.key}>
                <TubeRow asked={asked} answer={reply.answer} isOpen={isOpen} onToggle={onToggle} />
                {isOpen && (
                  <tr class="tube-opened">
                    <td colSpan={columns}>{details}</td>
                  </tr>
                )}
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

function TubeRow({ asked, answer, isOpen, onToggle }: {
  readonly asked: AskedSize;
  readonly answer: TubeAnswer;
  readonly isOpen: boolean;
  readonly onToggle: (key: string) => void;
}): JSX.Element {
  const { rating } = answer;
  const judged = rating?.againstDesignPressure ?? undefined;
  const wall = figureText("length", answer.wall, "table");
  return (
    <tr class={isOpen ? "open" : undefined} onClick={() => onToggle(asked.key)}>
      <th scope="row">
        <button
          aria-expanded={isOpen}
          onClick={(event) => {
            event.stopPropagation();
            onToggle(asked.key);
          }}
        >
          <span>{asked.size.name}</span>
          <small>
            <span class="heard">{message("tubes-wall")}</span> {wall}
          </small>
        </button>
      </th>
      <td>{number("length", answer.bore)}</td>
      <td>{number("mass-per-length", answer.massPerLength)}</td>
      <td>{number("volume", answer.volumePerMetre, perMetreUnits().volume)}</td>
      <td class="rated" data-verdict={judged?.verdict}>
        {rating ? number("gauge-pressure", rating.ratedPressure) : "—"}
        {judged && <VerdictMark judged={judged} />}
        {judged && <span class="heard">{message(`verdict-${judged.verdict}`)}</span>}
      </td>
    </tr>
  );
}

function number(quantity: QuantityKind, si: number, unit = unitOf(quantity)): string {
  return show(quantity, si, unit, quantity === "gauge-pressure" ? "instrument" : "table").number;
}
