// Room limit: how much refrigerant a room may have to bear, and how small it may be for a charge.

import type { JSX } from "preact";
import { calculate, type OccupiedRoomInput, type RoomAllowance, type RoomLimitAnswer } from "../core";
import { message } from "../locale";
import { answerOf, Card, problemsOf } from "../parts/card";
import { Cautions } from "../parts/cautions";
import { CardFields, inputOf, type CardField } from "../parts/card-fields";
import { Disclosure } from "../parts/disclosure";
import { EntryRows } from "../parts/entry-rows";
import { figureText, limitText } from "../parts/figures";
import { Finding, type FoundFigure, type FoundVerdict } from "../parts/finding";
import { rowsOf, type RowList } from "../parts/row-list";
import { Row, Rows } from "../parts/rows";
import { SourceList } from "../parts/sources";
import { VerdictMark } from "../parts/verdict-line";
import { Working } from "../parts/working";
import { applyStyle } from "../style";
import style from "../styles/room-limit.css";
import { floorUnit, roomUnit, runUnit } from "../unit-choice";

applyStyle(style);

const fields: readonly CardField<"room-limit">[] = [
  { name: "refrigerant", as: "refrigerant", none: "choose" },
  { name: "charge", quantity: "mass", words: true },
];

/** Limits that the table has, what it lacks, and another rule. */
const others: readonly CardField<"room-limit">[] = [
  { name: "rule", choices: ["room-formula", "concentration-limit"], otherwise: "room-formula" },
  { name: "lowerFlammabilityLimit", quantity: "density" },
  { name: "concentrationLimit", quantity: "density", words: true },
  { name: "safetyClass", choices: ["A1", "A2L", "A3"], none: "room-limit-class-of-refrigerant" },
  { name: "chargeUncertainty", quantity: "mass", words: true },
];

const rooms: RowList<OccupiedRoomInput> = {
  name: "rooms",
  isStacked: true,
  columns: [
    { name: "name", words: true },
    { name: "area", quantity: "area", unit: floorUnit },
    { name: "mounting", choices: () => mountings.map((word) => ({ word, label: message(`choice-${word}`) })) },
    { name: "releaseHeight", quantity: "length", unit: runUnit },
    { name: "height", quantity: "length", unit: runUnit },
  ],
};

const mountings = ["floor", "window", "wall", "ceiling"] as const;

/** A split with two rooms, one of them too small for a unit on its floor. */
const example = {
  refrigerant: "R-32",
  charge: "2.1 kg",
  name1: "studio",
  area1: "24 m²",
  mounting1: "wall",
  height1: "2.5 m",
  name2: "workshop",
  area2: "16 m²",
  mounting2: "floor",
  height2: "2.6 m",
};

export function RoomLimit(): JSX.Element {
  const reply = calculate("room-limit", { ...inputOf(fields), ...inputOf(others), rooms: rowsOf(rooms) });
  const [answer, problems] = [answerOf(reply), problemsOf(reply)];
  const shownAt = [...fields, ...others, rooms].map(({ name }) => name);
  return (
    <Card name="room-limit" example={example} fromKit={["refrigerant"]}>
      <Finding
        figures={answer ? figuresOf(answer) : []}
        verdict={answer && verdictOf(answer)}
        sentence={answer && sentenceOf(answer)}
        problems={problems}
        shownAt={shownAt}
        empty={message("room-limit-empty")}
        cautions={answer ? cautionsOf(answer) : ["choice-local-code-decides"]}
      />
      <CardFields fields={fields} problems={problems} />
      <EntryRows list={rooms} problems={problems} legend={message("field-rooms")} add={message("room-limit-add")} hint={message("room-limit-rooms-hint")} />
      {answer && <RoomRows answer={answer} />}
      {answer && <SmallestRooms answer={answer} />}
      {answer && <Basis answer={answer} />}
      {answer && <Working steps={answer.working} of={message("room-limit-largest")} units={{ area: floorUnit(), length: runUnit(), volume: roomUnit() }} />}
      <Disclosure
        name="other-limits"
        summary={<span>{message("room-limit-others")}</span>}
        mustShow={problems.some(({ field }) => others.some(({ name }) => name === field))}
      >
        <CardFields fields={others} problems={problems} />
      </Disclosure>
      <Cautions ids={["saturation-caution-cold", "room-limit-caution-licence"]} />
    </Card>
  );
}

/** The room that allows least. */
function governing({ rooms, governingRoom }: RoomLimitAnswer): RoomAllowance | undefined {
  return governingRoom == null ? undefined : rooms[governingRoom];
}

function figuresOf(answer: RoomLimitAnswer): readonly FoundFigure[] {
  const room = governing(answer);
  const figures: FoundFigure[] = [];
  if (room) figures.push({ mark: "largestCharge", name: message("room-limit-largest"), quantity: "mass", si: room.largestCharge, bound: "most" });
  if (room?.smallestArea != null) {
    figures.push({ mark: "smallestArea", name: message("room-limit-smallest"), quantity: "area", si: room.smallestArea, unit: floorUnit(), bound: "least" });
  } else if (!room && answer.smallestVolume != null) {
    figures.push({ mark: "smallestVolume", name: message("room-limit-smallest"), quantity: "volume", si: answer.smallestVolume, unit: roomUnit(), bound: "least" });
  }
  return figures;
}

/** Of the charge in the room that allows least; without a room or a charge it is open. */
function verdictOf({ charge, chargeStanding }: RoomLimitAnswer): FoundVerdict {
  if (charge != null) return { state: charge.verdict, word: message(`room-limit-${charge.verdict}`), judged: charge, limits: { low: 0, high: charge.limit }, quantity: "mass" };
  if (chargeStanding === "above-cap") return { state: "out-of-band", word: message("choice-above-cap") };
  if (chargeStanding === "no-room-limit") return { state: "in-band", word: message("choice-no-room-limit") };
  return { state: "open", word: message(chargeStanding == null ? "room-limit-no-charge" : "room-limit-no-room") };
}

function sentenceOf(answer: RoomLimitAnswer): string {
  const room = governing(answer);
  const rule = message("room-limit-by-rule", { rule: message(`choice-${answer.rule}`) });
  if (room === undefined) return rule;
  const limit = message(`choice-${room.governor}`);
  const said = answer.rooms.length > 1 ? message("room-limit-governs", { room: nameOf(room, answer), limit }) : message("room-limit-limited-by", { limit });
  return `${said} ${rule}`;
}

function nameOf(room: RoomAllowance, { rooms }: RoomLimitAnswer): string {
  return room.name ?? message("room-limit-room", { number: rooms.indexOf(room) + 1 });
}

function cautionsOf({ notices, safetyClass }: RoomLimitAnswer): readonly string[] {
  const own = notices.map((notice) => `choice-${notice}`);
  return safetyClass.figure === "A1" ? own : [...own, "saturation-caution-flammable"];
}

/** Each room with what it allows, what limits it and how small it might be. */
function RoomRows({ answer }: { readonly answer: RoomLimitAnswer }): JSX.Element | null {
  if (answer.rooms.length === 0) return null;
  return (
    <>
      <h2>{message("room-limit-rooms")}</h2>
      <dl class="rows marked">
        {answer.rooms.map((room, place) => (
          <div key={place} class="row" data-room={place + 1}>
            <dt>
              {room.charge && <VerdictMark judged={room.charge} limits={{ low: 0, high: room.charge.limit }} />}
              <span>{nameOf(room, answer)}</span>
            </dt>
            <dd>
              <span data-figure={`room${place + 1}`}>{limitText("mass", room.largestCharge, "most")}</span>
              <small>{message(`choice-${room.governor}`)}</small>
              {room.smallestArea != null && <small>{message("room-limit-at-least", { area: limitText("area", room.smallestArea, "least", floorUnit()) })}</small>}
              {room.concentrationCharge != null && room.governor !== "by-concentration" && (
                <small>{message("room-limit-concentration", { mass: limitText("mass", room.concentrationCharge, "most") })}</small>
              )}
            </dd>
          </div>
        ))}
      </dl>
    </>
  );
}

/** Smallest floor for the charge at each usual mounting. */
function SmallestRooms({ answer: { smallestRooms } }: { readonly answer: RoomLimitAnswer }): JSX.Element | null {
  if (smallestRooms.length === 0) return null;
  return (
    <>
      <h2>{message("room-limit-mountings")}</h2>
      <Rows>
        {smallestRooms.map(({ mounting, releaseHeight, area }) => (
          <Row
            key={mounting}
            mark={`smallest-${mounting}`}
            name={message("room-limit-mounting", { mounting: message(`choice-${mounting}`), height: figureText("length", releaseHeight, "table", runUnit()) })}
            figure={limitText("area", area, "least", floorUnit())}
          />
        ))}
      </Rows>
    </>
  );
}

/** What the figures go by, each with its source. */
function Basis({ answer }: { readonly answer: RoomLimitAnswer }): JSX.Element {
  const { safetyClass, lowerFlammabilityLimit: flammability, concentrationLimit: concentration, caps, sources } = answer;
  const named = [...sources, safetyClass.source];
  if (flammability) named.push(flammability.source);
  if (concentration) named.push(concentration.source);
  return (
    <Disclosure name="basis" mustShow={false} summary={<span>{message("room-limit-basis")}</span>}>
      <Rows>
        <Row mark="safetyClass" name={message("facts-safety-class")} figure={safetyClass.figure} />
        {flammability && <Row mark="flammability" name={message("facts-flammability-limit")} figure={figureText("density", flammability.figure, "significant")} />}
        {concentration && <Row mark="concentration" name={message("facts-concentration-limit")} figure={figureText("density", concentration.figure, "significant")} />}
        {caps && <Row mark="noRoomLimit" name={message("step-no-room-limit")} figure={limitText("mass", caps.noRoomLimit, "most")} />}
        {caps && <Row mark="cap" name={message("step-charge-cap")} figure={limitText("mass", caps.cap, "most")} />}
        {caps && <Row mark="withMeasures" name={message("room-limit-with-measures")} figure={limitText("mass", caps.withMeasures, "most")} />}
      </Rows>
      <SourceList ids={named} />
    </Disclosure>
  );
}
