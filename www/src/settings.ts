// Choices that outlive a visit: language, units, theme, the hand, the wrench and the tool that were last in it.
// A link never changes them; only the person does.

import type { QuantityKind } from "./catalogue";
import { keepText, keptText } from "./kept-text";

export type Theme = "system" | "day" | "dark" | "sunlight";
export type Hand = "right" | "left";
export type UnitSystem = "metric" | "customary";

export interface Settings {
  /** Empty: as the browser has it. */
  readonly language: string;
  readonly theme: Theme;
  readonly hand: Hand;
  /** Workings stand open, with a question at each step. */
  readonly learn: boolean;
  /** Units of everything that has no choice of its own in `units`. */
  readonly system: UnitSystem;
  /** Unit symbols chosen one by one; the torque unit follows the wrench in hand. */
  readonly units: Readonly<Partial<Record<QuantityKind, string>>>;
  /** Texts that go with the person from job to job (wrench, tool, class), by field name, as typed. */
  readonly kit: Readonly<Record<string, string>>;
}

export const initialSettings: Settings = {
  language: "",
  theme: "system",
  hand: "right",
  learn: false,
  system: "metric",
  units: {},
  kit: {},
};

/** Several pages may share an origin: the name keeps them apart. */
const storageKey = "coldwright settings 1";

let current: Settings | undefined;
let listener: () => void = () => {};

export function settings(): Settings {
  current ??= readStored();
  return current;
}

/** Changes some choices and keeps them. */
export function choose(changes: Partial<Settings>): void {
  current = { ...settings(), ...changes };
  storing ??= setTimeout(store);
  applyToDocument();
  listener();
}

let storing: ReturnType<typeof setTimeout> | undefined;

/** Keeps the choices, after the figures that hang on them have been drawn. */
function store(): void {
  clearTimeout(storing);
  storing = undefined;
  // Where the browser refuses, the choice holds for this visit.
  keepText(storageKey, JSON.stringify(settings()));
}

/** Chooses the unit of one quantity. */
export function chooseUnit(quantity: QuantityKind, symbol: string): void {
  choose({ units: { ...settings().units, [quantity]: symbol } });
}

/** Keeps a text of the kit as typed; an empty text takes it out. */
export function keepInKit(name: string, text: string): void {
  const { [name]: _, ...others } = settings().kit;
  choose({ kit: text === "" ? others : { ...others, [name]: text } });
}

/** Calls `changed` after each change, also one made in another tab; there is one listener, the page. */
export function listenToSettings(changed: () => void): void {
  listener = changed;
  addEventListener("pagehide", () => storing !== undefined && store());
  addEventListener("storage", (event) => {
    if (event.key !== storageKey && event.key !== null) return;
    current = undefined;
    applyToDocument();
    changed();
  });
}

/** Theme and hand stand on the root element, where style sheets find them; `system` leaves none. */
export function applyToDocument(): void {
  const { theme, hand } = settings();
  const root = document.documentElement;
  if (theme === "system") delete root.dataset.theme;
  else root.dataset.theme = theme;
  root.dataset.hand = hand;
}

function readStored(): Settings {
  try {
    return readSettings(JSON.parse(keptText(storageKey) ?? "{}"));
  } catch {
    return initialSettings;
  }
}

/** Takes from something stored whatever still is a choice. */
function readSettings(stored: unknown): Settings {
  const { language, theme, hand, learn, system, units, kit } = recordOf(stored);
  return {
    language: typeof language === "string" ? language : initialSettings.language,
    theme: oneOf(["system", "day", "dark", "sunlight"], theme) ?? initialSettings.theme,
    hand: oneOf(["right", "left"], hand) ?? initialSettings.hand,
    learn: learn === true,
    system: oneOf(["metric", "customary"], system) ?? initialSettings.system,
    units: textsOf(units),
    kit: textsOf(kit),
  };
}

function oneOf<Word extends string>(words: readonly Word[], found: unknown): Word | undefined {
  return words.find((word) => word === found);
}

function textsOf(found: unknown): Record<string, string> {
  const isText = (member: [string, unknown]): member is [string, string] => typeof member[1] === "string";
  return Object.fromEntries(Object.entries(recordOf(found)).filter(isText));
}

function recordOf(found: unknown): Record<string, unknown> {
  return typeof found === "object" && found !== null ? { ...found } : {};
}
