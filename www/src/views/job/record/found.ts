// What each stage has found, as lines of the record: figure, verdict, margin and uncertainty.

import type { Assessment, Check, QuantityKind, RunningAnswer, StandingTestAnswer, VacuumHoldAnswer } from "../../../core";
import { textAt } from "../../../job/job-path";
import { factFigure } from "../../../job/job-words";
import { shortMoment } from "../../../job/moment";
import { hasMessage, message } from "../../../locale";
import { bandText, figureText, limitText } from "../../../parts/figures";
import { vacuumText, vacuumUnit } from "../../../parts/vacuum-unit";
import { marginText, type Judged, type MarkState } from "../../../parts/verdict-line";
import type { TreeObject } from "../../../store/jobs";
import { unitOf } from "../../../unit-choice";
import { gaugeUnit, holdText, rateUnit } from "../../standing-test/ask";
import { marginText as likelihoodText } from "../../vacuum-hold/hold-finding";
import { stepUnit } from "../../vacuum-hold/ask";
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
  return { state: judgement.verdict, standing: `${message(`verdict-${judgement.verdict}`)}: ${marginText(judgement, quantity, "table", unit)}` };
}

/** As the stages write it: in the unit and as fine as people say it. */
function written(quantity: QuantityKind, si: number, uncertainty: number | null = null): string {
  return factFigure({ meaning: "", quantity, si, uncertainty });
}

function mass(si: number): string {
  return written("mass", si);
}

function planned({ charge, roomLimit, stages }: Assessment, document: TreeObject): readonly FoundLine[] {
  const total = charge?.charge?.total;
  const [length, lift] = ["fact-length", "fact-lift"].map((meaning) => {
    const fact = stages.flatMap(({ facts }) => facts).find((found) => found.meaning === meaning);
    return fact && factFigure(fact);
  });
  const tubes = ["liquidLine", "gasLine"].map((line) => textAt(document, "lines", line, "tube")).filter((tube) => tube !== "");
  return [
    { mark: "lines", name: "record-lines", figure: length === undefined ? "" : message("record-lines-run", { length, lift: lift ?? "?", tubes: tubes.join(", ") }) },
    ...(total == null
      ? []
      : [{ mark: "total", name: "charge-total", figure: message("record-charge-sum", { total: mass(total), factory: mass(charge?.charge?.factory ?? 0), line: mass(charge?.charge?.line ?? 0) }) }]),
    ...(roomLimit?.charge == null
      ? []
      : [{ mark: "room", name: "fact-largest-charge", figure: factFigure({ meaning: "fact-largest-charge", quantity: "mass", si: roomLimit.charge.limit }), ...judged(roomLimit.charge, "mass") }]),
  ];
}

const holdStates: Readonly<Record<StandingTestAnswer["verdict"], MarkState>> = { tight: "in-band", "losing-gas": "out-of-band", "cannot-tell": "cannot-tell", open: "open" };

function pressureTested({ standingTest }: Assessment): readonly FoundLine[] {
  if (standingTest == null) return [];
  const { guidance, hold, reached, verdict } = standingTest;
  const rate = (si: number): string => figureText("pressure-rate", si, "table", rateUnit());
  const word = message(verdict === "tight" || verdict === "losing-gas" ? `choice-${verdict}` : "standing-test-cannot-tell");
  return [
    ...(guidance
      ? [
          {
            mark: "testPressure",
            name: "standing-test-at",
            figure: `${limitText("gauge-pressure", guidance.testPressure, "most")} (${message(`choice-${guidance.rule}`)})`,
            ...(reached && {
              state: reached.verdict,
              standing: `${message(`standing-test-reached-${reached.verdict}`)}: ${figureText("gauge-pressure", reached.figure, "table")}, ${marginText(reached, "pressure-difference", "table", gaugeUnit())}`,
            }),
          },
        ]
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
              difference: written("pressure-difference", hold.difference, hold.differenceUncertainty),
            }),
            state: holdStates[verdict],
            standing: `${word}: ${message(hold.margin < 0 ? "standing-test-beyond" : "standing-test-inside", {
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
  const pumped = pumpClock == null ? [] : [{ mark: "pump", name: "record-pumped", figure: message("record-pumped-for", { time: holdText(pumpClock.passed), at: shortMoment(pumpClock.started) }) }];
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
      standing: `${message(`vacuum-hold-rule-${pass.verdict}`)} ${marginText(pass.pressure, "pressure-difference", vacuumUnit() === "mbar" ? "significant" : "table", stepUnit())}`,
    },
  ];
}

function released({ afterRelease }: Assessment, document: TreeObject): readonly FoundLine[] {
  const [liquid = "", gas = ""] = ["liquidValveOpened", "gasValveOpened"].map((valve) => textAt(document, "release", valve));
  const opened = (at: string): string => (at === "" ? message("record-not-opened") : shortMoment(at));
  const valves: FoundLine = { mark: "valves", name: "release-valves", figure: liquid === "" && gas === "" ? "" : message("record-valves", { liquid: opened(liquid), gas: opened(gas) }) };
  if (afterRelease?.pressure == null) return [valves];
  const { pressure, expected, ambientTemperature } = afterRelease;
  const figure = message("record-after-release", {
    pressure: written("gauge-pressure", pressure.figure, pressure.uncertainty),
    band: bandText("gauge-pressure", expected),
    temperature: figureText("temperature", ambientTemperature),
  });
  return [valves, { mark: "afterRelease", name: "fact-pressure-after-release", figure, ...judged(pressure, "pressure-difference", unitOf("gauge-pressure")) }];
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
      figure: [wanted, message("record-charged", { mass: written("mass", chargedSoFar, uncertainty) }), ...(remaining == null ? [] : [message("record-remaining", { mass: mass(remaining) })])].join("; "),
      ...(state != null && { state: scaleStates[state] ?? "open", standing: message(`choice-${state}`) }),
    },
  ];
}

function ran({ running }: Assessment, document: TreeObject): readonly FoundLine[] {
  const at = textAt(document, "runCheck", "at");
  const moment: FoundLine = { mark: "runAt", name: "stage-run-check", figure: at === "" ? "" : shortMoment(at) };
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
  const text = written("temperature-difference", figure, uncertainty);
  const should = target == null ? "" : `; ${message("record-should-be", { band: bandText("temperature-difference", target.band) })}`;
  const standing = judgement ? judged(judgement, "temperature-difference") : open == null ? {} : { state: "open" as const, standing: message(open === "needs-target" ? "record-needs-target" : `choice-${open}`) };
  return [{ mark, name, figure: text + should, ...standing }];
}

function causes({ pattern }: RunningAnswer): readonly FoundLine[] {
  const names = (pattern?.causes ?? []).map(({ cause }) => `choice-${cause}`).filter(hasMessage);
  return names.length === 0 ? [] : [{ mark: "causes", name: "running-causes", figure: names.map((name) => message(name)).join("; ") }];
}
