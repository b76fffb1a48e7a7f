// Written by `./build.sh types` from the core's catalogue: do not edit.

/**
 * How the pressure of the air is known.
 */
export type AmbientBasis = "barometer" | "altitude" | "assumed-sea-level";
/**
 * absolute-pressure in Pa
 */
export type AbsolutePressure = number & {readonly quantity?: "absolute-pressure"};
/**
 * length in m
 */
export type Length = number & {readonly quantity?: "length"};
/**
 * Which quantity a number is of.
 */
export type QuantityKind =
  | "gauge-pressure"
  | "absolute-pressure"
  | "vacuum"
  | "torque"
  | "length"
  | "temperature"
  | "mass"
  | "power"
  | "volume-flow"
  | "area"
  | "volume"
  | "mass-per-length"
  | "density"
  | "mass-flow"
  | "force"
  | "energy"
  | "velocity"
  | "specific-enthalpy"
  | "specific-heat-capacity"
  | "dynamic-viscosity"
  | "time"
  | "angle"
  | "ratio"
  | "temperature-difference"
  | "pressure-difference"
  | "stress"
  | "altitude";
/**
 * Points at an entry of the bibliography.
 */
export type SourceId =
  | "common-practice"
  | "nist-sp-811"
  | "icao-doc-7488"
  | "astm-b280"
  | "astm-b280-tolerance"
  | "en-12735-1"
  | "copper-tube-handbook-3c"
  | "copper-tube-handbook-rating"
  | "copper-density"
  | "jis-b-8607"
  | "en-378-2"
  | "sae-j513"
  | "real-decreto-552-2019"
  | "army-tm-1-1500-204-23-9"
  | "navedtra-14315"
  | "iso-6789"
  | "plate";
/**
 * altitude as a number in m, or as text with a unit such as "450 m"; {text, assume} gives the unit of a bare number
 */
export type AltitudeEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * absolute-pressure as a number in Pa, or as text with a unit such as "500 micron"; {text, assume} gives the unit of a bare number
 */
export type AbsolutePressureEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * one of the words, or an empty text for none
 */
export type ConvertQuantityEntry =
  | (
      | "gauge-pressure"
      | "absolute-pressure"
      | "vacuum"
      | "torque"
      | "length"
      | "temperature"
      | "temperature-difference"
      | "pressure-difference"
      | "mass"
      | "mass-per-length"
      | "density"
      | "mass-flow"
      | "area"
      | "volume"
      | "volume-flow"
      | "velocity"
      | "force"
      | "energy"
      | "power"
      | "specific-enthalpy"
      | "specific-heat-capacity"
      | "dynamic-viscosity"
      | "time"
      | "angle"
      | "ratio"
      | "stress"
      | "altitude"
    )
  | ""
  | null;
export type TextEntry = string | null;
/**
 * Kind of flaring tool.
 */
export type FlaringTool = "eccentric-clutch" | "ordinary-clutch" | "wing-nut-bar";
/**
 * angle in rad
 */
export type Angle = number & {readonly quantity?: "angle"};
/**
 * Pressure class of a flare joint. The higher class has a wider cone and, at two sizes, a larger nut.
 */
export type FlareClass = "class-1" | "class-2";
/**
 * What to do about a measured cone.
 */
export type ConeAdvice = "keep" | "measure-again" | "more-above-bar" | "less-above-bar";
/**
 * How a measured figure stands to its limits.
 */
export type Verdict = "in-band" | "out-of-band" | "cannot-tell";
/**
 * What else has to be known about a flare.
 */
export type FlareNotice = "no-cone-in-series" | "largest-flared-tube";
/**
 * length as a number in m, or as text with a unit such as "5/8 in"; {text, assume} gives the unit of a bare number
 */
export type LengthEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * one of the words, or an empty text for none
 */
export type FlareClassEntry = ("class-1" | "class-2") | "" | null;
/**
 * one of the words, or an empty text for none
 */
export type FlaringToolEntry = ("eccentric-clutch" | "ordinary-clutch" | "wing-nut-bar") | "" | null;
/**
 * torque in N·m
 */
export type Torque = number & {readonly quantity?: "torque"};
/**
 * What torque figures take for granted.
 */
export type TorqueAssumption = "oil-on-thread-and-faces";
/**
 * Why a band holds.
 */
export type TorqueBasis = "plate" | "family" | "overlap";
/**
 * A family of torque figures.
 */
export type TorqueFamily = "en-378-2" | "jis-b-8607" | "common-practice";
/**
 * ratio in 1
 */
export type Ratio = number & {readonly quantity?: "ratio"};
/**
 * angle as a number in rad, or as text with a unit such as "45°"; {text, assume} gives the unit of a bare number
 */
export type AngleEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * one of the words, or an empty text for none
 */
export type TorqueFamilyEntry = ("en-378-2" | "jis-b-8607" | "common-practice") | "" | null;
/**
 * a band of torque: text such as "34-42 N·m", "38 ± 4 N·m" or "38 N·m"; {low, high}; or a number in N·m
 */
export type TorqueBandEntry =
  | number
  | string
  | {
      high: number | string;
      low: number | string;
    }
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * ratio as a number in 1, or as text with a unit such as "4 %"; {text, assume} gives the unit of a bare number
 */
export type RatioEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * area in m²
 */
export type Area = number & {readonly quantity?: "area"};
/**
 * mass in kg
 */
export type Mass = number & {readonly quantity?: "mass"};
/**
 * mass-per-length in kg/m
 */
export type MassPerLength = number & {readonly quantity?: "mass-per-length"};
/**
 * gauge-pressure in Pa gauge
 */
export type GaugePressure = number & {readonly quantity?: "gauge-pressure"};
/**
 * pressure-difference in Pa
 */
export type PressureDifference = number & {readonly quantity?: "pressure-difference"};
/**
 * stress in Pa
 */
export type Stress = number & {readonly quantity?: "stress"};
/**
 * temperature in K
 */
export type Temperature = number & {readonly quantity?: "temperature"};
/**
 * A series of tube sizes.
 */
export type TubeSeries = "astm-b280" | "en-12735-1";
/**
 * volume in m³
 */
export type Volume = number & {readonly quantity?: "volume"};
/**
 * gauge-pressure as a number in Pa gauge, or as text with a unit such as "140 psi"; {text, assume} gives the unit of a bare number
 */
export type GaugePressureEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * one of the words, or an empty text for none
 */
export type TubeSeriesEntry = ("astm-b280" | "en-12735-1") | "" | null;
/**
 * temperature as a number in K, or as text with a unit such as "-12 °F"; {text, assume} gives the unit of a bare number
 */
export type TemperatureEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * One thing that keeps a calculation from answering.
 */
export type Problem = Problem1 & {
  field: Field;
};
export type Problem1 = Flaw | Misfit;
/**
 * What is wrong with an entry, and what would do. Which field it concerns is known one room up.
 */
export type Flaw =
  | {
      /**
       * Place of the first character that does not fit, counted from 1.
       */
      at: number;
      code: "not-a-number";
      /**
       * What would do.
       */
      example: string;
      /**
       * What was found there.
       */
      found: string;
    }
  | {
      code: "division-by-zero";
    }
  | {
      code: "ambiguous-number";
      /**
       * The same with a decimal point.
       */
      decimal: string;
      /**
       * The number as written.
       */
      found: string;
      /**
       * The same as thousands.
       */
      thousands: string;
    }
  | {
      code: "not-finite";
    }
  | {
      /**
       * Units that would do.
       */
      accepted: string[];
      code: "unit-missing";
    }
  | {
      /**
       * Units that would do.
       */
      accepted: string[];
      code: "unknown-unit";
      /**
       * The unit as written.
       */
      found: string;
    }
  | {
      /**
       * Units that would do.
       */
      accepted: string[];
      code: "other-quantity";
      found: QuantityKind;
      quantity: QuantityKind;
    }
  | {
      code: "parts-out-of-order";
      /**
       * What would do.
       */
      example: string;
    }
  | {
      code: "out-of-range";
      /**
       * Largest that is accepted, SI.
       */
      high: number;
      /**
       * Smallest that is accepted, SI.
       */
      low: number;
      quantity: QuantityKind;
    }
  | {
      /**
       * The words to choose from.
       */
      accepted: string[];
      code: "not-a-choice";
      /**
       * The word as written.
       */
      found: string;
    }
  | {
      code: "wrong-type";
      /**
       * What would do.
       */
      example: string;
    };
/**
 * Why something that can be read does not serve.
 */
export type Misfit =
  | {
      code: "missing";
      /**
       * What would do.
       */
      example: string;
    }
  | {
      code: "outside-validity";
      /**
       * Largest valid, SI.
       */
      high: number;
      /**
       * Smallest valid, SI.
       */
      low: number;
      quantity: QuantityKind;
    }
  | {
      /**
       * The entries it has.
       */
      accepted: string[];
      code: "not-in-table";
    }
  | {
      code: "conflict";
      with: Field;
    }
  | {
      code: "impossible";
      with: Field;
    }
  | {
      /**
       * The fields it has.
       */
      accepted: string[];
      code: "unknown-field";
    }
  | {
      code: "not-an-object";
    }
  | {
      /**
       * The names there are.
       */
      accepted: string[];
      code: "unknown-calculation";
      /**
       * The name that was asked for.
       */
      found: string;
    }
  | {
      /**
       * Column of the first character that does not fit, from 1.
       */
      at: number;
      code: "not-json";
    }
  | {
      code: "too-long";
      /**
       * Most bytes that are read.
       */
      most: number;
    };
export type Field = string;
/**
 * What kind of thing a source is.
 */
export type SourceKind = "standard" | "handbook" | "public-agency" | "reference-library" | "common-practice";
/**
 * How a figure came from its source into our tables.
 */
export type Standing = "read" | "second-hand" | "from-memory" | "derived" | "no-source";

/**
 * Calculations by name. A line {"calculation": name, "input": {…}} gets {"answer": {…}} or {"problems": [{"field", "code", "message", …}]}. Numbers are in SI units, named in each schema as x-unit.
 */
export interface Catalogue {
  calculations: {
    convert: {
      answer: ConvertAnswer;
      input: ConvertInput;
    };
    flare: {
      answer: FlareAnswer;
      input: FlareInput;
    };
    torque: {
      answer: TorqueAnswer;
      input: TorqueInput;
    };
    tube: {
      answer: TubeAnswer;
      input: TubeInput;
    };
  };
  problem: Problem;
  source: Source;
}
/**
 * What [`convert`] finds.
 */
export interface ConvertAnswer {
  /**
   * The air that gauge and absolute pressures are converted with; absent where none is in play.
   */
  ambient?: Ambient | null;
  /**
   * What the text can mean, the trade's usual meaning first.
   */
  readings: ConvertReading[];
  /**
   * The working.
   */
  working: Step[];
}
/**
 * Pressure of the air and how it is known.
 */
export interface Ambient {
  basis: AmbientBasis;
  pressure: AbsolutePressure;
}
/**
 * One meaning of the text.
 */
export interface ConvertReading {
  /**
   * Whether it was converted from the text's own meaning with the pressure of the air.
   */
  byAmbient: boolean;
  /**
   * Nearest sixty-fourth of an inch, for lengths.
   */
  fraction?: InchFraction | null;
  quantity: QuantityKind;
  /**
   * Its SI number.
   */
  si: number;
  /**
   * Its SI unit.
   */
  siUnit: string;
  /**
   * The same in every unit.
   */
  units: ConvertUnit[];
}
/**
 * A length as a fraction of an inch.
 */
export interface InchFraction {
  remainder: Length;
  /**
   * The fraction in lowest terms, for example `1 1/8`.
   */
  text: string;
}
/**
 * A figure in one unit.
 */
export interface ConvertUnit {
  /**
   * Whether it is a metric unit.
   */
  metric: boolean;
  /**
   * The number rounded to five significant digits.
   */
  text: string;
  /**
   * The unit's symbol.
   */
  unit: string;
  /**
   * The number in that unit, unrounded.
   */
  value: number;
}
/**
 * One step.
 */
export interface Step {
  /**
   * The figures put in.
   */
  figures: Figure[];
  /**
   * The formula; each symbol that stands for a figure is in braces: `{A} = π/4·{d}²`.
   */
  formula: string;
  result: Figure;
  /**
   * Where the formula and its constants come from.
   */
  sources: SourceId[];
  /**
   * What the step finds: a message id.
   */
  title: string;
}
/**
 * A figure in a step.
 */
export interface Figure {
  /**
   * What it is: a message id.
   */
  meaning: string;
  quantity: QuantityKind;
  /**
   * Its SI number.
   */
  si: number;
  /**
   * Its symbol in the formula.
   */
  symbol: string;
}
/**
 * What [`convert`] asks for.
 */
export interface ConvertInput {
  altitude?: AltitudeEntry;
  barometer?: AbsolutePressureEntry;
  quantity?: ConvertQuantityEntry;
  text?: TextEntry;
}
/**
 * What [`flare`] finds.
 */
export interface FlareAnswer {
  /**
   * Tube above the flaring bar, if a tool was named.
   */
  barProjection?: BarProjection | null;
  /**
   * Outside diameter of the cone; absent where the series has no such size.
   */
  cone?: Band | null;
  coneHalfAngle: Band2;
  cornerRadius: Band;
  flareClass: FlareClass;
  /**
   * Verdict on the measured cone.
   */
  measured?: MeasuredCone | null;
  /**
   * Name of the size.
   */
  name: string;
  /**
   * What else has to be known.
   */
  notices: FlareNotice[];
  /**
   * Nut across flats, which is its wrench; absent where the series has no such size.
   */
  nutAcrossFlats?: Length | null;
  source: SourceId;
  thread: Thread;
  tube: Length;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * How far the tube stands above the flaring bar.
 */
export interface BarProjection {
  band: Band;
  source: SourceId;
  tool: FlaringTool;
}
/**
 * Two limits, both inside the band; the lower one is never above the upper one.
 */
export interface Band {
  high: Length;
  low: Length;
}
/**
 * Two limits, both inside the band; the lower one is never above the upper one.
 */
export interface Band2 {
  high: Angle;
  low: Angle;
}
/**
 * A measured cone and what to do about it.
 */
export interface MeasuredCone {
  advice: ConeAdvice;
  judgement: Judgement2;
}
/**
 * A verdict on a figure.
 */
export interface Judgement2 {
  figure: Length;
  limit: Length;
  margin: Length;
  uncertainty: Length;
  verdict: Verdict;
}
/**
 * A thread.
 */
export interface Thread {
  /**
   * Designation, for example `7/8-14 UNF`.
   */
  designation: string;
  majorDiameter: Length;
  pitch: Length;
  source: SourceId;
}
/**
 * What [`flare`] asks for.
 */
export interface FlareInput {
  caliperUncertainty?: LengthEntry;
  flareClass?: FlareClassEntry;
  measuredCone?: LengthEntry;
  tool?: FlaringToolEntry;
  tube?: LengthEntry;
}
/**
 * What [`torque`] finds.
 */
export interface TorqueAnswer {
  aim: Torque;
  assumes: TorqueAssumption;
  band: Band3;
  basis: TorqueBasis;
  /**
   * What every family says of this size.
   */
  families: FamilyBand[];
  /**
   * Whether the families differ on this size.
   */
  familiesDisagree: boolean;
  /**
   * What to set on the wrench with the adapter.
   */
  setting?: Setting | null;
  /**
   * The working.
   */
  working: Step[];
  /**
   * Whether the wrench suits.
   */
  wrench?: WrenchFit | null;
}
/**
 * Two limits, both inside the band; the lower one is never above the upper one.
 */
export interface Band3 {
  high: Torque;
  low: Torque;
}
/**
 * A family's band.
 */
export interface FamilyBand {
  band: Band3;
  family: TorqueFamily;
  source: SourceId;
}
/**
 * What to set on a wrench with an offset adapter.
 */
export interface Setting {
  aim: Torque;
  band: Band3;
  gain: Ratio;
}
/**
 * Whether a wrench suits.
 */
export interface WrenchFit {
  accuracy: Ratio;
  /**
   * Whether the wrench, as far off as it may be, still hits the band at the nut; absent where the
   * plate gives one figure with no tolerance.
   */
  hitsBand?: Judgement3 | null;
  onScale: Judgement3;
  trusted: Band3;
  verdict: Verdict;
}
/**
 * A verdict on a figure.
 */
export interface Judgement3 {
  figure: Torque;
  limit: Torque;
  margin: Torque;
  uncertainty: Torque;
  verdict: Verdict;
}
/**
 * What [`torque`] asks for.
 */
export interface TorqueInput {
  adapterAngle?: AngleEntry;
  adapterLength?: LengthEntry;
  family?: TorqueFamilyEntry;
  plateTorque?: TorqueBandEntry;
  tube?: LengthEntry;
  wrenchAccuracy?: RatioEntry;
  wrenchLength?: LengthEntry;
  wrenchRange?: TorqueBandEntry;
}
/**
 * What [`tube`] finds.
 */
export interface TubeAnswer {
  bore: Length;
  boreArea: Area;
  /**
   * Mass of the whole length of tube.
   */
  mass?: Mass | null;
  massPerLength: MassPerLength;
  /**
   * Name of the size; absent if it is in no table.
   */
  name?: string | null;
  outsideDiameter: Length;
  /**
   * Pressure rating at the temperature.
   */
  rating?: Rating | null;
  series: TubeSeries;
  /**
   * Where the dimensions come from; absent if they were entered.
   */
  source?: SourceId | null;
  /**
   * Volume of the whole length.
   */
  volume?: Volume | null;
  volumePerMetre: Volume;
  wall: Length;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * What a tube bears at a temperature.
 */
export interface Rating {
  /**
   * How it stands to the design pressure: at least as high is in band. Its uncertainty is 0,
   * since the rating already takes the least wall and the largest diameter.
   */
  againstDesignPressure?: Judgement | null;
  allowableStress: Stress;
  ratedPressure: GaugePressure;
  tableTemperature: Temperature;
  temperature: Temperature;
}
/**
 * A verdict on a figure.
 */
export interface Judgement {
  figure: GaugePressure;
  limit: GaugePressure;
  margin: PressureDifference;
  uncertainty: PressureDifference;
  verdict: Verdict;
}
/**
 * What [`tube`] asks for.
 */
export interface TubeInput {
  designPressure?: GaugePressureEntry;
  length?: LengthEntry;
  series?: TubeSeriesEntry;
  temperature?: TemperatureEntry;
  tube?: LengthEntry;
  wall?: LengthEntry;
}
/**
 * One entry of the bibliography.
 */
export interface Source {
  id: SourceId;
  kind: SourceKind;
  /**
   * Clause, table, page or figure.
   */
  place: string;
  standing: Standing;
  /**
   * Publisher, number, edition, title, in the source's language.
   */
  title: string;
}
