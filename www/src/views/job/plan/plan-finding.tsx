// What the plan comes to: the charge and by what, the room, how the lines keep to the plate.

import type { JSX } from "preact";
import type { ChargeAnswer, PlanLimits, Problem, QuantityKind, RoomLimitAnswer } from "../../../core";
import { factFigure } from "../../../job/job-words";
import { message } from "../../../locale";
import { figureText, limitText } from "../../../parts/figures";
import { Finding, type FoundFigure, type FoundVerdict } from "../../../parts/finding";
import { Row, Rows } from "../../../parts/rows";
import { VerdictLine, type Judged } from "../../../parts/verdict-line";
import { runUnit, unitOf } from "../../../unit-choice";

export function PlanFinding({ charge, roomLimit, limits, problems }: {
  readonly charge: ChargeAnswer | undefined;
  readonly roomLimit: RoomLimitAnswer | undefined;
  readonly limits: PlanLimits | undefined;
  readonly problems: readonly Problem[];
}): JSX.Element {
  const figures = charge ? figuresOf(charge) : [];
  return (
    <Finding figures={figures} problems={problems} empty={message("plan-empty")} verdict={roomLimit && roomVerdict(roomLimit)} sentence={roomLimit && roomSentence(roomLimit)}>
      <LimitLines limits={limits} isWanted={charge?.charge != null} />
      {charge?.charge && <ChargeRows charge={charge.charge} />}
      {charge?.notices.map((notice) => (
        <p key={notice} class="note">
          {message(`choice-${notice}`)}
        </p>
      ))}
    </Finding>
  );
}

function figuresOf({ charge }: ChargeAnswer): readonly FoundFigure[] {
  if (charge?.total == null) return [];
  const { total, toAdd, toTakeOut } = charge;
  const moved = toTakeOut > 0 ? ({ mark: "toTakeOut", name: message("plan-to-take-out"), si: toTakeOut } as const) : ({ mark: "toAdd", name: message("plan-to-add"), si: toAdd } as const);
  return [
    { mark: "totalCharge", name: message("plan-charge"), quantity: "mass", si: total },
    { ...moved, quantity: "mass" },
  ];
}

function roomVerdict({ charge, chargeStanding }: RoomLimitAnswer): FoundVerdict {
  if (charge != null) return { state: charge.verdict, word: message(`room-limit-${charge.verdict}`), judged: charge, limits: { low: 0, high: charge.limit }, quantity: "mass" };
  if (chargeStanding === "above-cap") return { state: "out-of-band", word: message("choice-above-cap") };
  if (chargeStanding === "no-room-limit") return { state: "in-band", word: message("choice-no-room-limit") };
  return { state: "open", word: message("plan-room-open") };
}

function roomSentence({ rooms, governingRoom, largestCharge, rule }: RoomLimitAnswer): string {
  const by = message("room-limit-by-rule", { rule: message(`choice-${rule}`) });
  const room = governingRoom == null ? undefined : rooms[governingRoom];
  if (room === undefined || largestCharge == null) return by;
  return `${room.name ?? message("plan-room")}: ${limitText("mass", largestCharge, "most")}. ${by}`;
}

/** Before anything is entered nothing is missed here. */
function LimitLines({ limits = {}, isWanted }: { readonly limits: PlanLimits | undefined; readonly isWanted: boolean }): JSX.Element | null {
  const { length, lift, liquidLine, gasLine } = limits;
  const isAny = [length, lift, liquidLine, gasLine].some((judged) => judged != null);
  if (!isAny && !isWanted) return null;
  return (
    <>
      <h2>{message("plan-limits")}</h2>
      {!isAny && <p class="note">{message("plan-no-limits")}</p>}
      <LimitLine name="length" judged={length} quantity="length" difference="length" unit={runUnit()} isUpper />
      <LimitLine name="lift" judged={lift} quantity="length" difference="length" unit={runUnit()} isUpper />
      <LimitLine name="liquidLine" judged={liquidLine} quantity="gauge-pressure" difference="pressure-difference" unit={unitOf("gauge-pressure")} />
      <LimitLine name="gasLine" judged={gasLine} quantity="gauge-pressure" difference="pressure-difference" unit={unitOf("gauge-pressure")} />
      {(liquidLine ?? gasLine) != null && <p class="hint">{message("plan-tube-temperature")}</p>}
    </>
  );
}

function LimitLine({ name, judged, quantity, difference, unit, isUpper }: {
  readonly name: keyof PlanLimits;
  readonly judged: Judged | null | undefined;
  readonly quantity: QuantityKind;
  readonly difference: QuantityKind;
  readonly unit: string;
  readonly isUpper?: true;
}): JSX.Element | null {
  if (judged == null) return null;
  const text = (si: number): string => figureText(quantity, si, "instrument", unit);
  const words = message(`plan-limit-${name}`, { figure: text(judged.figure), limit: text(judged.limit) });
  return (
    <div data-limit={name}>
      <VerdictLine judged={judged} limits={isUpper && { low: 0, high: judged.limit }} quantity={difference} unit={unit} precision="instrument" words={words} />
    </div>
  );
}

function ChargeRows({ charge }: { readonly charge: NonNullable<ChargeAnswer["charge"]> }): JSX.Element {
  const { factory, line, reduction, accessories, basis } = charge;
  const row = (mark: string, si: number, name: string): JSX.Element => (
    <Row mark={mark} name={message(name)} figure={factFigure({ meaning: "fact-total-charge", quantity: "mass", si })} />
  );
  return (
    <Rows>
      {factory != null && row("factory", factory, "charge-factory")}
      {row("line", line, basis === "line-from-physics" ? "charge-line-physics" : "charge-line")}
      {reduction > 0 && row("reduction", reduction, "charge-reduction")}
      {accessories > 0 && row("accessories", accessories, "charge-accessories")}
    </Rows>
  );
}
