// What each stage has found, as lines of the record: figure, verdict, margin and uncertainty.

import type { Assessment, Check, QuantityKind, RunningAnswer, StandingTestAnswer, VacuumHoldAnswer, Verdict } from "../../../core";
import { textAt } from "../../../job/job-path";
import { momentText } from "../../../job/moment";
import { hasMessage, message } from "../../../locale";
import { bandText, figureText, limitText } from "../../../parts/figures";
import { vacuumText } from "../../../parts/vacuum-unit";
import { marginText, type Judged, type MarkState } from "../../../parts/verdict-line";
import type { TreeObject } from "../../../store/jobs";
import { holdText, rateUnit } from "../../standing-test/ask";
import { marginText as likelihoodText } from "../../vacuum-hold/hold-finding";
import { differenceText } from "../../vacuum-hold/texts";

export interface FoundLine {
  readonly mark: string;
  /** Message id. */
  readonly name: string;
  readonly figure: string;
  /** Of what is judged. */
  readonly state?: MarkState;
  /** Verdict, margin, uncertainty. */
  readonly standing?: string;
}

export function foundLines(assessment: Assessment, document: TreeObject): readonly FoundLine[] {
  return [
    ...planned(assessment, document),
    ...pressureTested(assessment),
    ...evacuated(assessment),
    ...released(assessment, document),
    ...charged(assessment),
    ...ran(assessment, document),
  ].filter(({ figure }) => figure !== "");
}

/** `in band: 1.2 bar inside the limit, measured to ± 0.3 bar`. */
function judged(judgement: Judged, quantity: QuantityKind, unit?: string): Pick<FoundLine, "state" | "standing"> {
  return { state: judgement.verdict, standing: `${verdictText(judgement.verdict)}: ${marginText(judgement, quantity, "table", unit)}` };
}

function verdictText(verdict: Verdict): string {
  return message(`verdict-${verdict}`);
}

function planned({ charge, roomLimit, stages }: Assessment, document: TreeObject): readonly FoundLine[] {
  const total = charge?.charge?.total;
  const [length, lift] = ["fact-length", "fact-lift"].map((meaning) => {
    const fact = stages.flatMap(({ facts }) => facts).find((found) => found.meaning === meaning);
    return fact && figureText(fact.quantity, fact.si);
  });
  const tubes = ["liquidLine", "gasLine"].map((line) => textAt(document, "lines", line, "tube")).filter((tube) => tube !== "");
  return [
    { mark: "lines", name: "record-lines", figure: length === undefined ? "" : message("record-lines-run", { length, lift: lift ?? "?", tubes: tubes.join(", ") }) },
    ...(total == null
      ? []
      : [{ mark: "total", name: "charge-total", figure: message("record-charge-sum", { total: mass(total), factory: mass(charge?.charge?.factory ?? 0), line: mass(charge?.charge?.line ?? 0) }) }]),
    ...(roomLimit?.charge == null
      ? []
      : [{ mark: "room", name: "fact-largest-charge", figure: mass(roomLimit.charge.limit), ...judged(roomLimit.charge, "mass") }]),
  ];
}

function mass(si: number): string {
  return figureText("mass", si, "table");
}

const holdStates: Readonly<Record<StandingTestAnswer["verdict"], MarkState>> = { tight: "in-band", "losing-gas": "out-of-band", "cannot-tell": "cannot-tell", open: "open" };

function pressureTested({ standingTest }: Assessment): readonly FoundLine[] {
  if (standingTest == null) return [];
  const { guidance, hold, verdict } = standingTest;
  const rate = (si: number): string => figureText("pressure-rate", si, "table", rateUnit());
  const word = message(verdict === "tight" || verdict === "losing-gas" ? `choice-${verdict}` : "standing-test-cannot-tell");
  return [
    ...(guidance
      ? [{ mark: "testPressure", name: "standing-test-at", figure: `${limitText("gauge-pressure", guidance.testPressure, "most")} (${message(`choice-${guidance.rule}`)})` }]
      : []),
    ...(hold
      ? [
          {
            mark: "hold",
            name: "record-hold",
            figure: message("record-hold-figure", {
              duration: holdText(hold.duration),
              measured: figureText("gauge-pressure", hold.measuredGaugePressure, "table"),
              expected: figureText("gauge-pressure", hold.expectedGaugePressure, "table"),
              difference: figureText("pressure-difference", hold.difference, "table"),
              uncertainty: figureText("pressure-difference", hold.differenceUncertainty, "table"),
            }),
            state: holdStates[verdict],
            standing: `${word} ${message(hold.margin < 0 ? "standing-test-beyond" : "standing-test-inside", {
              loss: rate(hold.pressureLossRate),
              uncertainty: rate(hold.pressureLossRateUncertainty),
              matters: rate(hold.leakToSee),
              margin: rate(Math.abs(hold.margin)),
            })}`,
          },
        ]
      : []),
  ];
}

const vacuumStates: Readonly<Record<VacuumHoldAnswer["verdict"], MarkState>> = {
  "dry-and-tight": "in-band",
  moisture: "out-of-band",
  leak: "out-of-band",
  "cannot-tell": "cannot-tell",
  open: "open",
};

function evacuated({ vacuumHold, pumpClock }: Assessment): readonly FoundLine[] {
  const pumped = pumpClock == null ? [] : [{ mark: "pump", name: "record-pumped", figure: message("record-pumped-for", { time: holdText(pumpClock.passed), at: momentText(pumpClock.started) }) }];
  if (vacuumHold == null) return pumped;
  const { verdict, latest, held, pass, likelihoods } = vacuumHold;
  return [
    ...pumped,
    {
      mark: "vacuum",
      name: "record-vacuum",
      figure: message("record-vacuum-figure", { time: holdText(held), level: vacuumText(latest.pressure), uncertainty: differenceText(latest.uncertainty) }),
      state: vacuumStates[verdict],
      standing: [message(`vacuum-hold-${verdict}`), ...(likelihoods ? [likelihoodText(vacuumHold)] : [])].join(": "),
    },
    {
      mark: "pass",
      name: "record-pass",
      figure: message("record-pass-figure", { limit: vacuumText(pass.pressure.limit), time: holdText(pass.time), level: vacuumText(pass.pressure.figure) }),
      state: pass.verdict,
      standing: `${message(`vacuum-hold-rule-${pass.verdict}`)} ${marginText(pass.pressure, "pressure-difference", "table", differenceUnit())}`,
    },
  ];
}

function differenceUnit(): string | undefined {
  return differenceText(1).split("\u00a0")[1];
}

function released({ afterRelease }: Assessment, document: TreeObject): readonly FoundLine[] {
  const [liquid = "", gas = ""] = ["liquidValveOpened", "gasValveOpened"].map((valve) => textAt(document, "release", valve));
  const opened = (at: string): string => (at === "" ? message("record-not-opened") : momentText(at));
  const valves: FoundLine = { mark: "valves", name: "release-valves", figure: liquid === "" && gas === "" ? "" : message("record-valves", { liquid: opened(liquid), gas: opened(gas) }) };
  if (afterRelease?.pressure == null) return [valves];
  const { pressure, expected, ambientTemperature } = afterRelease;
  const figure = message("record-after-release", {
    pressure: figureText("gauge-pressure", pressure.figure),
    band: bandText("gauge-pressure", expected),
    temperature: figureText("temperature", ambientTemperature),
  });
  return [valves, { mark: "afterRelease", name: "fact-pressure-after-release", figure, ...judged(pressure, "pressure-difference") }];
}

const scaleStates: Readonly<Record<string, MarkState>> = { "scale-stop": "in-band", "scale-too-much": "out-of-band", "scale-go-on": "open" };

function charged({ charge }: Assessment): readonly FoundLine[] {
  const scale = charge?.scale;
  const sum = charge?.charge;
  if (sum == null) return [];
  const wanted = sum.toTakeOut > 0 ? message("record-to-take-out", { mass: mass(sum.toTakeOut) }) : message("record-to-add", { mass: mass(sum.toAdd) });
  if (scale?.chargedSoFar == null) return [{ mark: "charge", name: "release-charge", figure: wanted }];
  const { chargedSoFar, uncertainty, state, remaining } = scale;
  return [
    {
      mark: "charge",
      name: "release-charge",
      figure: message("record-charged", { wanted, mass: mass(chargedSoFar), uncertainty: mass(uncertainty), remaining: mass(Math.abs(remaining ?? 0) < 1e-9 ? 0 : (remaining ?? 0)) }),
      ...(state != null && { state: scaleStates[state] ?? "open", standing: message(`choice-${state}`) }),
    },
  ];
}

function ran({ running }: Assessment, document: TreeObject): readonly FoundLine[] {
  const at = textAt(document, "runCheck", "at");
  const moment: FoundLine = { mark: "runAt", name: "stage-run-check", figure: at === "" ? "" : momentText(at) };
  if (running == null) return [moment];
  return [
    { ...moment, figure: [moment.figure, message(`choice-${running.mode}`)].filter((text) => text !== "").join(", ") },
    ...checked("superheat", "running-superheat", running.superheat),
    ...checked("subcooling", "running-subcooling", running.subcooling),
    ...checked("split", running.mode === "heating" ? "running-rise" : "running-split", running.temperatureSplit),
    ...causes(running),
  ];
}

function checked(mark: string, name: string, { figure, uncertainty, target, judgement, open }: Check): readonly FoundLine[] {
  if (figure == null) return [];
  const text = `${figureText("temperature-difference", figure)} ± ${figureText("temperature-difference", uncertainty ?? 0)}`;
  const should = target == null ? "" : `; ${message("record-should-be", { band: bandText("temperature-difference", target.band) })}`;
  const standing = judgement ? judged(judgement, "temperature-difference") : open == null ? {} : { state: "open" as const, standing: message(`choice-${open}`) };
  return [{ mark, name, figure: text + should, ...standing }];
}

function causes({ pattern }: RunningAnswer): readonly FoundLine[] {
  const names = (pattern?.causes ?? []).map(({ cause }) => `choice-${cause}`).filter(hasMessage);
  return names.length === 0 ? [] : [{ mark: "causes", name: "running-causes", figure: names.map((name) => message(name)).join("; ") }];
}
