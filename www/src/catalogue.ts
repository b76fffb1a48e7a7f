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
      code: "too-low";
      /**
       * Smallest valid, SI.
       */
      limit: number;
      quantity: QuantityKind;
    }
  | {
      code: "too-high";
      /**
       * Largest valid, SI.
       */
      limit: number;
      quantity: QuantityKind;
    }
  | {
      code: "near-critical";
      /**
       * Its value at the critical point, SI.
       */
      critical: number;
      /**
       * Largest valid, SI.
       */
      limit: number;
      quantity: QuantityKind;
    }
  | {
      code: "above-critical";
      /**
       * Its value at the critical point, SI.
       */
      critical: number;
      quantity: QuantityKind;
    }
  | {
      code: "not-vapour";
      /**
       * Dew temperature at the pressure, SI.
       */
      limit: number;
      quantity: QuantityKind;
    }
  | {
      /**
       * The fields to choose from.
       */
      accepted: Field[];
      code: "wrong-count";
      /**
       * How many are.
       */
      found: number;
      /**
       * How many.
       */
      needed: number;
    }
  | {
      code: "dependent";
      with: Field;
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
      accepted: Field[];
      code: "unknown-field";
    }
  | {
      code: "not-an-object";
    }
  | {
      code: "not-a-list";
    }
  | {
      code: "too-few";
      /**
       * How many there are.
       */
      found: number;
      /**
       * How many are needed.
       */
      needed: number;
    }
  | {
      code: "too-many";
      /**
       * How many there are.
       */
      found: number;
      /**
       * How many are read.
       */
      most: number;
    }
  | {
      code: "out-of-order";
      with: Field;
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
 * length in m
 */
export type Length = number & {readonly quantity?: "length"};
/**
 * gauge-pressure in Pa gauge
 */
export type GaugePressure = number & {readonly quantity?: "gauge-pressure"};
/**
 * temperature in K
 */
export type Temperature = number & {readonly quantity?: "temperature"};
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
  | "ashrae-34"
  | "imc-1103.1"
  | "real-decreto-552-2019-refrigerants"
  | "en-378-1"
  | "pure-substance"
  | "ipcc-ar4-ar5-ar6"
  | "ipcc-recalled"
  | "coolprop-8.0.0"
  | "coolprop-composition"
  | "equation-of-state"
  | "mixture-model"
  | "kamei-1995"
  | "tillner-roth-yokozeki-1997"
  | "tillner-roth-baehr-1994"
  | "lemmon-2009"
  | "lemmon-2003"
  | "buecker-wagner-2006"
  | "gao-2023"
  | "span-wagner-1996"
  | "lemmon-akasaka-2022"
  | "thol-lemmon-2016"
  | "bell-2022-2023-2025"
  | "lemmon-jacobsen-2004"
  | "span-2000"
  | "iapws-r7-97"
  | "iapws-r14-08"
  | "hyland-wexler-1983"
  | "ashrae-fundamentals-2017"
  | "colebrook-1939"
  | "moody-1944"
  | "fitting-equivalent-lengths"
  | "plate"
  | "vacuum-conductance"
  | "knudsen-1909"
  | "evacuation-time"
  | "vacuum-purging"
  | "valve-core-resistance"
  | "damp-system"
  | "evacuation-practice"
  | "water-conductivity";
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
/**
 * one of the words, or an empty text for none
 */
export type RefrigerantEntry =
  | (
      | "R-22"
      | "R-32"
      | "R-134a"
      | "R-290"
      | "R-404A"
      | "R-407C"
      | "R-410A"
      | "R-448A"
      | "R-449A"
      | "R-452B"
      | "R-454B"
      | "R-507A"
      | "R-513A"
      | "R-600a"
      | "R-717"
      | "R-744"
      | "R-1234yf"
      | "R-1234ze(E)"
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
 * density in kg/m³
 */
export type Density = number & {readonly quantity?: "density"};
/**
 * specific-enthalpy in J/kg
 */
export type SpecificEnthalpy = number & {readonly quantity?: "specific-enthalpy"};
/**
 * ratio in 1
 */
export type Ratio = number & {readonly quantity?: "ratio"};
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
 * specific-enthalpy as a number in J/kg, or as text with a unit such as "200 kJ/kg"; {text, assume} gives the unit of a bare number
 */
export type SpecificEnthalpyEntry =
  | number
  | string
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
 * pressure-difference in Pa
 */
export type PressureDifference = number & {readonly quantity?: "pressure-difference"};
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
 * mass-flow in kg/s
 */
export type MassFlow = number & {readonly quantity?: "mass-flow"};
/**
 * How the fluid flows.
 */
export type Regime = "laminar" | "transition" | "turbulent";
/**
 * velocity in m/s
 */
export type Velocity = number & {readonly quantity?: "velocity"};
/**
 * volume-flow in m³/s
 */
export type VolumeFlow = number & {readonly quantity?: "volume-flow"};
/**
 * density as a number in kg/m³, or as text with a unit such as "961 kg/m³"; {text, assume} gives the unit of a bare number
 */
export type DensityEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * a whole number
 */
export type CountEntry = number | string | null;
/**
 * mass-flow as a number in kg/s, or as text with a unit such as "90 kg/h"; {text, assume} gives the unit of a bare number
 */
export type MassFlowEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * velocity as a number in m/s, or as text with a unit such as "6 m/s"; {text, assume} gives the unit of a bare number
 */
export type VelocityEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * dynamic-viscosity as a number in Pa·s, or as text with a unit such as "0.16 mPa·s"; {text, assume} gives the unit of a bare number
 */
export type DynamicViscosityEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * volume-flow as a number in m³/s, or as text with a unit such as "4 cfm"; {text, assume} gives the unit of a bare number
 */
export type VolumeFlowEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * Something to change, the rest staying as it is.
 */
export type LineChange = "cores-out" | "larger-hose" | "shorter-hose" | "second-hose" | "larger-pump";
/**
 * time in s
 */
export type Time = number & {readonly quantity?: "time"};
/**
 * A part of what lies between the system and the vacuum.
 */
export type LinePart = "pump" | "hose" | "valve-core";
/**
 * What limits the figures of a pump-down.
 */
export type PumpDownNotice =
  | "no-hose-entered"
  | "hose-short-for-its-bore"
  | "core-resistance-assumed"
  | "target-below-ultimate"
  | "water-stays"
  | "vapour-taken-as-air"
  | "water-left-at-break"
  | "laminar-flow-assumed"
  | "tight-system-assumed";
/**
 * volume in m³
 */
export type Volume = number & {readonly quantity?: "volume"};
/**
 * power in W
 */
export type Power = number & {readonly quantity?: "power"};
/**
 * What the vapour stands over.
 */
export type Surface = "ice" | "liquid";
/**
 * Whether water freezes under the pump. Ice forms below 611.657 Pa, 4588 micron.
 */
export type IceRisk = "no-ice" | "ice-possible" | "ice-forms";
/**
 * mass in kg
 */
export type Mass = number & {readonly quantity?: "mass"};
/**
 * volume as a number in m³, or as text with a unit such as "1.8 L"; {text, assume} gives the unit of a bare number
 */
export type VolumeEntry =
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
export type ValveCoreEntry = ("in" | "out") | "" | null;
/**
 * one of the words, or an empty text for none
 */
export type MoistureEntry = ("dry" | "damp") | "" | null;
/**
 * one of the words, or an empty text for none
 */
export type TubeSeriesEntry = ("astm-b280" | "en-12735-1") | "" | null;
/**
 * mass as a number in kg, or as text with a unit such as "2 lb 6 oz"; {text, assume} gives the unit of a bare number
 */
export type MassEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * A pure substance in a refrigerant.
 */
export type Substance =
  "R-22" | "R-32" | "R-125" | "R-134a" | "R-143a" | "R-290" | "R-600a" | "R-717" | "R-744" | "R-1234yf" | "R-1234ze(E)";
/**
 * A family of compressor oils.
 */
export type OilFamily = "mineral" | "alkylbenzene" | "polyolester" | "polyalkylene-glycol";
/**
 * Safety class: A lower, B higher toxicity; 1 no flame propagation, 2L slowly burning, 3 highly flammable.
 */
export type SafetyClass = "A1" | "A2L" | "A3" | "B2L";
/**
 * temperature-difference in K
 */
export type TemperatureDifference = number & {readonly quantity?: "temperature-difference"};
/**
 * specific-heat-capacity in J/(kg·K)
 */
export type SpecificHeatCapacity = number & {readonly quantity?: "specific-heat-capacity"};
/**
 * dynamic-viscosity in Pa·s
 */
export type DynamicViscosity = number & {readonly quantity?: "dynamic-viscosity"};
/**
 * A refrigerant, by its designation in ASHRAE Standard 34 and ISO 817.
 */
export type Refrigerant =
  | "R-22"
  | "R-32"
  | "R-134a"
  | "R-290"
  | "R-404A"
  | "R-407C"
  | "R-410A"
  | "R-448A"
  | "R-449A"
  | "R-452B"
  | "R-454B"
  | "R-507A"
  | "R-513A"
  | "R-600a"
  | "R-717"
  | "R-744"
  | "R-1234yf"
  | "R-1234ze(E)";
/**
 * Where viscosities come from.
 */
export type ViscosityBasis = "viscosity-of-the-library" | "viscosity-mixed-from-components";
/**
 * temperature-difference as a number in K, or as text with a unit such as "5 K"; {text, assume} gives the unit of a bare number
 */
export type TemperatureDifferenceEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
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
 * area in m²
 */
export type Area = number & {readonly quantity?: "area"};
/**
 * mass-per-length in kg/m
 */
export type MassPerLength = number & {readonly quantity?: "mass-per-length"};
/**
 * stress in Pa
 */
export type Stress = number & {readonly quantity?: "stress"};
/**
 * A series of tube sizes.
 */
export type TubeSeries = "astm-b280" | "en-12735-1";
/**
 * State of a vapour.
 */
export type VapourState = "saturated" | "superheated";
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
    "moist-air": {
      answer: MoistAirAnswer;
      input: MoistAirInput;
    };
    "nitrogen-hold": {
      answer: NitrogenHoldAnswer;
      input: NitrogenHoldInput;
    };
    "pipe-friction": {
      answer: PipeFrictionAnswer;
      input: PipeFrictionInput;
    };
    "pump-down": {
      answer: PumpDownAnswer;
      input: PumpDownInput;
    };
    saturation: {
      answer: SaturationAnswer;
      input: SaturationInput;
    };
    torque: {
      answer: TorqueAnswer;
      input: TorqueInput;
    };
    tube: {
      answer: TubeAnswer;
      input: TubeInput;
    };
    vapour: {
      answer: VapourAnswer;
      input: VapourInput;
    };
    "water-saturation": {
      answer: WaterSaturationAnswer;
      input: WaterSaturationInput;
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
   * Why there is no bubble and dew at that pressure or temperature.
   */
  noSaturation?: Problem | null;
  /**
   * What the text can mean, the trade's usual meaning first.
   */
  readings: ConvertReading[];
  /**
   * Bubble and dew at the first pressure or temperature that the text can mean; absent without a refrigerant.
   */
  saturation?: SaturationPoint | null;
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
 * Bubble and dew of a refrigerant, at one pressure or at one temperature.
 */
export interface SaturationPoint {
  bubbleGaugePressure: GaugePressure;
  bubblePressure: AbsolutePressure;
  bubbleTemperature: Temperature;
  dewGaugePressure: GaugePressure;
  dewPressure: AbsolutePressure;
  dewTemperature: Temperature;
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
  refrigerant?: RefrigerantEntry;
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
  refrigerant?: RefrigerantEntry;
  tool?: FlaringToolEntry;
  tube?: LengthEntry;
}
/**
 * What [`moist_air`] finds.
 */
export interface MoistAirAnswer {
  ambient: Ambient;
  density: Density;
  dewPoint: Temperature;
  dryBulb: Temperature;
  enthalpy: SpecificEnthalpy;
  humidityRatio: Ratio;
  relativeHumidity: Ratio;
  /**
   * Volume in m³ for a kilogram of dry air.
   */
  specificVolume: number;
  wetBulb: Temperature;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * What [`moist_air`] asks for: exactly two facts, and the pressure of the air.
 */
export interface MoistAirInput {
  altitude?: AltitudeEntry;
  barometer?: AbsolutePressureEntry;
  dewPoint?: TemperatureEntry;
  dryBulb?: TemperatureEntry;
  enthalpy?: SpecificEnthalpyEntry;
  humidityRatio?: RatioEntry;
  relativeHumidity?: RatioEntry;
  wetBulb?: TemperatureEntry;
}
/**
 * What [`nitrogen_hold`] finds.
 */
export interface NitrogenHoldAnswer {
  ambient: Ambient;
  expectedAbsolutePressure: AbsolutePressure;
  expectedChange: PressureDifference;
  expectedGaugePressure: GaugePressure;
  firstAbsolutePressure: AbsolutePressure;
  firstCompressibility: Ratio;
  idealAbsolutePressure: AbsolutePressure;
  idealGaugePressure: GaugePressure;
  /**
   * Second gauge reading less the expected one: negative if less than temperature and air explain
   * is left. Whether that is a leak depends on the instruments.
   */
  measuredLessExpected?: PressureDifference | null;
  realLessIdeal: PressureDifference;
  secondAmbient: Ambient;
  secondCompressibility: Ratio;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * What [`nitrogen_hold`] asks for.
 */
export interface NitrogenHoldInput {
  altitude?: AltitudeEntry;
  barometer?: AbsolutePressureEntry;
  firstAbsolutePressure?: AbsolutePressureEntry;
  firstGaugePressure?: GaugePressureEntry;
  firstTemperature?: TemperatureEntry;
  secondBarometer?: AbsolutePressureEntry;
  secondGaugePressure?: GaugePressureEntry;
  secondTemperature?: TemperatureEntry;
}
/**
 * What [`pipe_friction`] finds.
 */
export interface PipeFrictionAnswer {
  /**
   * Straight tube and fittings together; absent without a length.
   */
  equivalentLength?: Length | null;
  fittingsLength: Length;
  /**
   * Darcy friction factor, four times Fanning's.
   */
  frictionFactor: number;
  massFlow: MassFlow;
  /**
   * Fall of pressure by friction over the equivalent length; absent without a length.
   */
  pressureDrop?: PressureDifference | null;
  regime: Regime;
  /**
   * Roughness over bore.
   */
  relativeRoughness: number;
  /**
   * Reynolds number.
   */
  reynolds: number;
  roughness: Length;
  velocity: Velocity;
  volumeFlow: VolumeFlow;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * What [`pipe_friction`] asks for.
 */
export interface PipeFrictionInput {
  bore?: LengthEntry;
  density?: DensityEntry;
  elbows45?: CountEntry;
  elbows90?: CountEntry;
  length?: LengthEntry;
  massFlow?: MassFlowEntry;
  roughness?: LengthEntry;
  teeBranches?: CountEntry;
  teeRuns?: CountEntry;
  velocity?: VelocityEntry;
  viscosity?: DynamicViscosityEntry;
  volumeFlow?: VolumeFlowEntry;
}
/**
 * What [`pump_down`](super::pump_down) finds.
 */
export interface PumpDownAnswer {
  ambient: Ambient;
  /**
   * The change that saves most; absent if none saves anything.
   */
  bestChange?: LineChange | null;
  /**
   * What a change would save on the way to the goal, the best first.
   */
  changes: Change[];
  /**
   * The course of the pressure from the start to the goal, for a drawing; empty without a goal.
   */
  curve: CurvePoint[];
  /**
   * About how much longer each of these takes because gas near the pressure of the air does not flow
   * smoothly but turbulent, or choked in a narrow core: a rough estimate, not in the times. Absent without hoses.
   */
  earlyTurbulence?: Time | null;
  /**
   * Several evacuations with nitrogen between them.
   */
  evacuations: PlannedEvacuation[];
  /**
   * Pumping time of all of them; absent if one never gets there.
   */
  evacuationsTime?: Time | null;
  /**
   * The pressure for which the changes are reckoned: the lowest target that is reached.
   */
  goal?: AbsolutePressure | null;
  heldBack: HeldBack;
  limitPressure: AbsolutePressure;
  /**
   * Time to each target, in the order of the targets.
   */
  milestones: Milestone[];
  /**
   * What limits these figures.
   */
  notices: PumpDownNotice[];
  startingPressure: AbsolutePressure;
  volume: Volume;
  /**
   * The water; absent if the system is dry.
   */
  water?: WaterRemoval | null;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * What a change would save.
 */
export interface Change {
  /**
   * Bore of the larger hose.
   */
  bore?: Length | null;
  change: LineChange;
  /**
   * Speed of the larger pump.
   */
  pumpSpeed?: VolumeFlow | null;
  saved: Time;
  time: Time;
}
/**
 * A point of the pressure's course.
 */
export interface CurvePoint {
  pressure: AbsolutePressure;
  time: Time;
}
/**
 * One evacuation of several.
 */
export interface PlannedEvacuation {
  breakPressure: AbsolutePressure;
  lowPressure: AbsolutePressure;
  residual: Ratio;
  residualPressure: AbsolutePressure;
  /**
   * Pumping time of this evacuation; absent if it never gets there.
   */
  time?: Time | null;
}
/**
 * What holds the pump back at a pressure in the system.
 */
export interface HeldBack {
  effectiveSpeed: VolumeFlow;
  inletPressure: AbsolutePressure;
  /**
   * Shares of the resistance, which add up to 1: the pump first, then each hose with its core.
   */
  parts: PartShare[];
  pressure: AbsolutePressure;
  speedPart: Ratio;
}
/**
 * One part's share of the resistance.
 */
export interface PartShare {
  /**
   * Place of the hose in the list, from 1; absent for the pump.
   */
  hose?: number | null;
  part: LinePart;
  share: Ratio;
}
/**
 * Time to a pressure.
 */
export interface Milestone {
  pressure: AbsolutePressure;
  /**
   * Time from the start, 0 if it is no lower than the start; absent if it is never reached.
   */
  time?: Time | null;
}
/**
 * How the water goes.
 */
export interface WaterRemoval {
  boiling: Boiling;
  ice: IceRisk;
  /**
   * The same if it stands in drops 3 mm deep, which get cold; absent if its depth was entered.
   */
  inDrops?: Boiling | null;
  mass: Mass;
}
/**
 * Water boiling away under a pump.
 */
export interface Boiling {
  /**
   * How deep it stands; absent for a film that keeps the ambient temperature.
   */
  depth?: Length | null;
  /**
   * Time from the start until it is gone; absent if the pump does not get it out.
   */
  dryAfter?: Time | null;
  heat: Power;
  pressure: AbsolutePressure;
  surface: Surface;
  temperature: Temperature;
}
/**
 * What [`pump_down`](super::pump_down) asks for.
 */
export interface PumpDownInput {
  altitude?: AltitudeEntry;
  ambientTemperature?: TemperatureEntry;
  barometer?: AbsolutePressureEntry;
  coilVolume?: VolumeEntry;
  coreBore?: LengthEntry;
  coreLength?: LengthEntry;
  /**
   * Evacuations one after the other, each but the last broken with dry nitrogen. If nothing is
   * entered: to 1500, 1500 and 500 micron, broken to the pressure of the air.
   *
   * @maxItems 20000
   */
  evacuations?: NitrogenBreakInput[];
  /**
   * The hoses, side by side, each from the system to the pump; none: the pump stands right at the system.
   *
   * @maxItems 20000
   */
  hoses?: VacuumHoseInput[];
  moisture?: MoistureEntry;
  pumpSpeed?: VolumeFlowEntry;
  sharePressure?: AbsolutePressureEntry;
  startingPressure?: AbsolutePressureEntry;
  /**
   * Pressures whose times are wanted; 5000, 1000, 500 and 300 micron if nothing is entered.
   *
   * @maxItems 20000
   */
  targets?: VacuumTargetInput[];
  /**
   * The tubes to empty, whose volumes are added up.
   *
   * @maxItems 20000
   */
  tubes?: EvacuatedTubeInput[];
  ultimatePressure?: AbsolutePressureEntry;
  volume?: VolumeEntry;
  water?: MassEntry;
  waterDepth?: LengthEntry;
}
/**
 * One evacuation of several, and the nitrogen that follows it.
 */
export interface NitrogenBreakInput {
  breakPressure?: GaugePressureEntry;
  lowPressure?: AbsolutePressureEntry;
}
/**
 * A hose, or several alike, from the system to the pump.
 */
export interface VacuumHoseInput {
  bore?: LengthEntry;
  core?: ValveCoreEntry;
  count?: CountEntry;
  length?: LengthEntry;
}
/**
 * A pressure to reach.
 */
export interface VacuumTargetInput {
  pressure?: AbsolutePressureEntry;
}
/**
 * A length of tube that is emptied.
 */
export interface EvacuatedTubeInput {
  length?: LengthEntry;
  tube?: LengthEntry;
  tubeSeries?: TubeSeriesEntry;
}
/**
 * What [`saturation`] finds.
 */
export interface SaturationAnswer {
  ambient: Ambient;
  bubbleGaugePressure: GaugePressure;
  bubblePressure: AbsolutePressure;
  bubbleTemperature: Temperature;
  criticalPoint: CriticalPoint;
  /**
   * Points of both lines for a plot.
   */
  curve: SaturationPoint[];
  dewGaugePressure: GaugePressure;
  dewPressure: AbsolutePressure;
  dewTemperature: Temperature;
  facts: RefrigerantFacts;
  /**
   * Dew less bubble temperature at one pressure: that entered, or the dew pressure at the
   * temperature entered. Absent where the bubble line does not reach that pressure.
   */
  glide?: TemperatureDifference | null;
  latentHeat: SpecificEnthalpy;
  liquidDensity: Density;
  liquidEnthalpy: SpecificEnthalpy;
  liquidHeatCapacity: SpecificHeatCapacity;
  liquidViscosity: DynamicViscosity;
  refrigerant: Refrigerant;
  /**
   * Where the properties come from.
   */
  sources: SourceId[];
  /**
   * Rows around the reading.
   */
  table: SaturationPoint[];
  uncertainty: SourcedSaturationUncertainty;
  validTemperatures: Band4;
  vapourDensity: Density;
  vapourEnthalpy: SpecificEnthalpy;
  vapourHeatCapacity: SpecificHeatCapacity;
  vapourViscosity: DynamicViscosity;
  viscosityBasis: ViscosityBasis;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * Where liquid and vapour become one.
 */
export interface CriticalPoint {
  density: Density;
  pressure: AbsolutePressure;
  temperature: Temperature;
}
/**
 * Facts about a refrigerant that hold at any pressure and temperature.
 */
export interface RefrigerantFacts {
  chargedAsLiquid: Sourcedboolean;
  composition: SourcedArrayOf_Component;
  concentrationLimit: SourcedDensity;
  /**
   * Pressure class of flare joints, absent where it is not run through flared copper tube.
   */
  flareClass?: SourcedFlareClass | null;
  globalWarmingPotential: WarmingPotentials;
  /**
   * Lower flammability limit, absent if it does not burn.
   */
  lowerFlammabilityLimit?: SourcedDensity | null;
  oils: SourcedArrayOf_OilFamily;
  safetyClass: SourcedSafetyClass;
}
/**
 * A figure and where it comes from.
 */
export interface Sourcedboolean {
  /**
   * The figure.
   */
  figure: boolean;
  source: SourceId;
}
/**
 * A figure and where it comes from.
 */
export interface SourcedArrayOf_Component {
  /**
   * The figure.
   */
  figure: Component[];
  source: SourceId;
}
/**
 * A component of a blend and its part of the mass.
 */
export interface Component {
  massFraction: Ratio;
  substance: Substance;
}
/**
 * A figure and where it comes from.
 */
export interface SourcedDensity {
  figure: Density;
  source: SourceId;
}
/**
 * A figure and where it comes from.
 */
export interface SourcedFlareClass {
  figure: FlareClass;
  source: SourceId;
}
/**
 * Global warming potential in three assessment reports of the IPCC.
 */
export interface WarmingPotentials {
  ar4: Sourceddouble;
  ar5: Sourceddouble;
  ar6: Sourceddouble;
}
/**
 * A figure and where it comes from.
 */
export interface Sourceddouble {
  /**
   * The figure.
   */
  figure: number;
  source: SourceId;
}
/**
 * A figure and where it comes from.
 */
export interface SourcedArrayOf_OilFamily {
  /**
   * The figure.
   */
  figure: OilFamily[];
  source: SourceId;
}
/**
 * A figure and where it comes from.
 */
export interface SourcedSafetyClass {
  figure: SafetyClass;
  source: SourceId;
}
/**
 * A figure and where it comes from.
 */
export interface SourcedSaturationUncertainty {
  figure: SaturationUncertainty;
  source: SourceId;
}
/**
 * How far bubble and dew data may be from the truth, besides the fit.
 */
export interface SaturationUncertainty {
  pressure: Ratio;
  temperature: TemperatureDifference;
}
/**
 * Two limits, both inside the band; the lower one is never above the upper one.
 */
export interface Band4 {
  high: Temperature;
  low: Temperature;
}
/**
 * What [`saturation`] asks for.
 */
export interface SaturationInput {
  absolutePressure?: AbsolutePressureEntry;
  altitude?: AltitudeEntry;
  barometer?: AbsolutePressureEntry;
  curveFrom?: TemperatureEntry;
  curvePoints?: CountEntry;
  curveTo?: TemperatureEntry;
  gaugePressure?: GaugePressureEntry;
  refrigerant?: RefrigerantEntry;
  tableRows?: CountEntry;
  tableStep?: TemperatureDifferenceEntry;
  temperature?: TemperatureEntry;
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
 * What [`vapour`] finds.
 */
export interface VapourAnswer {
  ambient: Ambient;
  density: Density;
  dewTemperature: Temperature;
  dewUncertainty: TemperatureDifference;
  enthalpy: SpecificEnthalpy;
  gaugePressure: GaugePressure;
  pressure: AbsolutePressure;
  refrigerant: Refrigerant;
  /**
   * Where the properties come from.
   */
  sources: SourceId[];
  state: VapourState;
  superheat: TemperatureDifference;
  temperature: Temperature;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * What [`vapour`] asks for.
 */
export interface VapourInput {
  absolutePressure?: AbsolutePressureEntry;
  altitude?: AltitudeEntry;
  barometer?: AbsolutePressureEntry;
  dewTemperature?: TemperatureEntry;
  gaugePressure?: GaugePressureEntry;
  refrigerant?: RefrigerantEntry;
  superheat?: TemperatureDifferenceEntry;
  temperature?: TemperatureEntry;
}
/**
 * What [`water_saturation`] finds.
 */
export interface WaterSaturationAnswer {
  absolutePressure: AbsolutePressure;
  /**
   * Ice at the pressure or temperature entered; absent above the triple point.
   */
  overIce?: WaterState | null;
  /**
   * Liquid at the pressure or temperature entered, supercooled below 0.01 °C; absent below -40 °C.
   */
  overLiquid?: WaterState | null;
  surface: Surface;
  temperature: Temperature;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * Ice or liquid in balance with vapour.
 */
export interface WaterState {
  pressure: AbsolutePressure;
  temperature: Temperature;
}
/**
 * What [`water_saturation`] asks for.
 */
export interface WaterSaturationInput {
  absolutePressure?: AbsolutePressureEntry;
  temperature?: TemperatureEntry;
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
