// The head of the answer: the time to the lowest vacuum that is reached, the other milestones, water and ice, cautions.

import type { JSX } from "preact";
import type { Problem, PumpDownAnswer, WaterRemoval } from "../../core";
import { message } from "../../locale";
import { figureText } from "../../parts/figures";
import { Finding, type FoundFigure } from "../../parts/finding";
import { vacuumText } from "../../parts/vacuum-unit";
import { allFields, breaks, hoses, targets, timeText, timeUnit, tubes } from "./fields";

const shownAt = [...allFields(), hoses, tubes, targets, breaks].map(({ name }) => name as string).concat("altitude", "barometer");

export function DownFinding({ answer, problems }: {
  readonly answer: PumpDownAnswer | undefined;
  readonly problems: readonly Problem[];
}): JSX.Element {
  const figures = answer ? figuresOf(answer) : [];
  const isNeverReached = answer !== undefined && figures.length === 0;
  return (
    <Finding
      figures={figures}
      verdict={isNeverReached ? { state: "out-of-band", word: message("pump-down-none-reached", { limit: vacuumText(answer.limitPressure) }) } : undefined}
      problems={problems}
      shownAt={shownAt}
      empty={message("pump-down-empty")}
      cautions={["pump-down-caution-compressor"]}
    >
      {answer && figures.length > 0 && <Milestones answer={answer} />}
      {answer?.water && <Water water={answer.water} />}
    </Finding>
  );
}

/** The time to the goal, and with what it is not reckoned. */
function figuresOf({ goal, milestones, earlyTurbulence }: PumpDownAnswer): readonly FoundFigure[] {
  const time = milestones.find(({ pressure }) => pressure === goal)?.time;
  if (goal == null || time == null) return [];
  const more = earlyTurbulence ?? 0;
  const unit = timeUnit(time);
  return [
    {
      mark: "goal",
      name: message("pump-down-to", { pressure: vacuumText(goal) }),
      quantity: "time",
      si: time,
      unit,
      precision: unit === "s" ? "instrument" : "table",
      beneath: more > time * 0.01 && more >= 1 ? message("pump-down-turbulence", { time: timeText(more) }) : "",
    },
  ];
}

function Milestones({ answer: { milestones, goal } }: { readonly answer: PumpDownAnswer }): JSX.Element {
  return (
    <dl class="milestones">
      {milestones.filter(({ pressure }) => pressure !== goal).map(({ pressure, time }) => (
        <div key={pressure}>
          <dt>{vacuumText(pressure)}</dt>
          <dd data-milestone={pressure}>{time == null ? message("pump-down-never") : timeText(time)}</dd>
        </div>
      ))}
    </dl>
  );
}

/** Where the gauge stands while there is water, and whether it freezes. */
function Water({ water: { mass, boiling, inDrops, ice } }: { readonly water: WaterRemoval }): JSX.Element {
  const { pressure, temperature, dryAfter } = boiling;
  const told = {
    mass: figureText("mass", mass, "significant", "g"),
    pressure: vacuumText(pressure),
    temperature: figureText("temperature", temperature, "table"),
  };
  return (
    <div class="water">
      {ice !== "no-ice" && (
        <p class="ice" data-ice={ice}>
          <b>{message(`choice-${ice}`)}.</b> {message(`pump-down-${ice}`)}
        </p>
      )}
      <p data-figure="stand">
        {dryAfter == null ? message("pump-down-water-stays", told) : message("pump-down-water-stands", { ...told, time: timeText(dryAfter) })}
      </p>
      {inDrops?.dryAfter != null && (
        <p>
          {message("pump-down-drops", {
            time: timeText(inDrops.dryAfter),
            temperature: figureText("temperature", inDrops.temperature, "table"),
          })}
        </p>
      )}
    </div>
  );
}
