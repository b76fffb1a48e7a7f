// Written by `./build.sh types` from the core's catalogue: do not edit.

/**
 * mass in kg
 */
export type Mass = number & {readonly quantity?: "mass"};
/**
 * What can hurt where refrigerant is handled.
 */
export type ChargeCaution =
  | "refrigerant-burns"
  | "refrigerant-toxic"
  | "refrigerant-freezes"
  | "refrigerant-never-vented"
  | "charge-liquid-only"
  | "cylinder-never-above-eighty";
/**
 * How equipment arrives.
 */
export type Arrival = "charged" | "empty";
/**
 * Where the line's part of the charge comes from.
 */
export type LineBasis =
  "line-by-plate" | "line-from-physics" | "line-served-by-factory-charge" | "line-left-out" | "charge-entered";
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
  | "ashrae-refrigeration-2010-1"
  | "jacobs-1976"
  | "white-fluid-mechanics"
  | "ari-guideline-k"
  | "un-p200"
  | "49-cfr-173.304"
  | "water-at-60-f"
  | "real-decreto-552-2019-rooms"
  | "astm-c534"
  | "churchill-chu-1975"
  | "churchill-bernstein-1977"
  | "us-standard-atmosphere-1976"
  | "title-24-2008-ra3.2"
  | "ashrae-37"
  | "vacuum-conductance"
  | "knudsen-1909"
  | "evacuation-time"
  | "vacuum-purging"
  | "valve-core-resistance"
  | "damp-system"
  | "evacuation-practice"
  | "water-conductivity"
  | "ufgs-15182-evacuation"
  | "real-decreto-552-2019-evacuation"
  | "jeffreys-1939"
  | "vacuum-technology"
  | "real-decreto-552-2019-if-09"
  | "ufgs-15182-pressure-test"
  | "jcgm-100"
  | "poiseuille-leak"
  | "nitrogen-viscosity";
/**
 * length in m
 */
export type Length = number & {readonly quantity?: "length"};
/**
 * density in kg/m³
 */
export type Density = number & {readonly quantity?: "density"};
/**
 * mass-per-length in kg/m
 */
export type MassPerLength = number & {readonly quantity?: "mass-per-length"};
/**
 * Which of the two saturated phases: liquid lies on the bubble line, vapour on the dew line.
 */
export type Phase = "liquid" | "vapour";
/**
 * temperature in K
 */
export type Temperature = number & {readonly quantity?: "temperature"};
/**
 * What figures of a charge rest on, and what stands out.
 */
export type ChargeNotice =
  | "line-not-counted"
  | "line-by-physics"
  | "vapour-line-not-counted"
  | "liquid-line-taken-full"
  | "plate-and-physics-apart"
  | "no-reduction-on-plate"
  | "cylinder-lacks-refrigerant"
  | "scale-too-coarse"
  | "water-rule-overfills";
/**
 * A way to read how full a cylinder may be.
 */
export type FillRule = "eighty-percent-of-volume" | "never-full-when-hot" | "eighty-percent-of-water";
/**
 * ratio in 1
 */
export type Ratio = number & {readonly quantity?: "ratio"};
/**
 * How a measured figure stands to its limits.
 */
export type Verdict = "in-band" | "out-of-band" | "cannot-tell";
/**
 * volume in m³
 */
export type Volume = number & {readonly quantity?: "volume"};
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
 * Which way refrigerant goes on the scale.
 */
export type ScaleDirection = "out-of-cylinder" | "into-cylinder";
/**
 * How far charging is.
 */
export type ChargingState = "scale-go-on" | "scale-stop" | "scale-too-much";
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
  | "altitude"
  | "thermal-conductivity"
  | "heat-transfer-coefficient"
  | "heat-flow-per-length"
  | "pressure-rate"
  | "leak-rate"
  | "yearly-loss";
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
export type TextEntry = string | null;
/**
 * one of the words, or an empty text for none
 */
export type PhaseEntry = ("liquid" | "vapour") | "" | null;
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
export type ArrivalEntry = ("charged" | "empty") | "" | null;
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
 * mass-per-length as a number in kg/m, or as text with a unit such as "30 g/m"; {text, assume} gives the unit of a bare number
 */
export type MassPerLengthEntry =
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
      code: "newer-version";
      /**
       * The one found.
       */
      found: number;
      /**
       * The latest version that is known.
       */
      known: number;
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
 * gauge-pressure in Pa gauge
 */
export type GaugePressure = number & {readonly quantity?: "gauge-pressure"};
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
      | "thermal-conductivity"
      | "heat-transfer-coefficient"
      | "heat-flow-per-length"
      | "pressure-rate"
      | "leak-rate"
      | "yearly-loss"
    )
  | ""
  | null;
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
 * What else has to be known about a flare.
 */
export type FlareNotice = "no-cone-in-series" | "largest-flared-tube";
/**
 * one of the words, or an empty text for none
 */
export type FlareClassEntry = ("class-1" | "class-2") | "" | null;
/**
 * one of the words, or an empty text for none
 */
export type FlaringToolEntry = ("eccentric-clutch" | "ordinary-clutch" | "wing-nut-bar") | "" | null;
/**
 * temperature-difference in K
 */
export type TemperatureDifference = number & {readonly quantity?: "temperature-difference"};
/**
 * heat-flow-per-length in W/m
 */
export type HeatFlowPerLength = number & {readonly quantity?: "heat-flow-per-length"};
/**
 * heat-transfer-coefficient in W/(m²·K)
 */
export type HeatTransferCoefficient = number & {readonly quantity?: "heat-transfer-coefficient"};
/**
 * Where the heat transfer coefficient at the outside comes from.
 */
export type CoefficientBasis = "coefficient-entered" | "coefficient-still-air" | "coefficient-moving-air";
/**
 * thermal-conductivity in W/(m·K)
 */
export type ThermalConductivity = number & {readonly quantity?: "thermal-conductivity"};
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
 * thermal-conductivity as a number in W/(m·K), or as text with a unit such as "0.036 W/(m·K)"; {text, assume} gives the unit of a bare number
 */
export type ThermalConductivityEntry =
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
 * heat-transfer-coefficient as a number in W/(m²·K), or as text with a unit such as "9 W/(m²·K)"; {text, assume} gives the unit of a bare number
 */
export type HeatTransferCoefficientEntry =
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
 * a moment in universal time (RFC 3339)
 */
export type Moment = string;
/**
 * A thing to bring. Where no figure of the plan stands behind it: common practice, no source.
 */
export type BringMatter =
  | "torque-wrench"
  | "nut-wrench"
  | "hex-keys"
  | "service-port-adapter"
  | "flaring-tool"
  | "caliper"
  | "oil"
  | "nitrogen"
  | "regulator"
  | "leak-solution"
  | "gauges"
  | "vacuum-pump"
  | "hoses"
  | "refrigerant-cylinder"
  | "scale"
  | "recovery-cylinder"
  | "tube"
  | "insulation"
  | "brazing"
  | "protection"
  | "flammable-gear";
/**
 * A family of compressor oils.
 */
export type OilFamily = "mineral" | "alkylbenzene" | "polyolester" | "polyalkylene-glycol";
/**
 * Which of the two units stands higher.
 */
export type HigherUnit = "indoor" | "outdoor";
/**
 * A place in the order of work: any number, so that there is always room between two.
 */
export type JointOrder = number;
/**
 * torque in N·m
 */
export type Torque = number & {readonly quantity?: "torque"};
/**
 * How a joint is made.
 */
export type JointKind = "flare" | "brazed" | "cap";
/**
 * What bubbles, or an instrument, showed at a joint under pressure.
 */
export type LeakLook = "pass" | "leak";
/**
 * The line that a joint is in.
 */
export type JointLine = "liquid-line" | "gas-line";
/**
 * What is still to be done at a joint.
 */
export type JointStep = "make" | "measure-cone" | "oil" | "tighten" | "look-for-leaks" | "remake";
/**
 * Where a joint is.
 */
export type JointPlace =
  | "indoor-port"
  | "indoor-adapter"
  | "indoor-junction"
  | "union-indoor-side"
  | "union-outdoor-side"
  | "coupling"
  | "outdoor-junction"
  | "outdoor-adapter"
  | "outdoor-port"
  | "valve-cap"
  | "service-port-cap"
  | "own";
/**
 * How far a joint has come.
 */
export type JointState = "open" | "made" | "tightened" | "proven" | "leaking" | "out-of-band" | "removed";
/**
 * The stages of a job, in the order of work.
 */
export type Stage =
  "plan" | "flare" | "tighten" | "pressure-test" | "evacuate" | "release-and-charge" | "run-check" | "record";
/**
 * Why a time that passed is doubtful.
 */
export type ClockDoubt = "clock-went-back" | "clock-jumped-ahead";
/**
 * time in s
 */
export type Time = number & {readonly quantity?: "time"};
/**
 * How a charge stands to the caps.
 */
export type ChargeStanding = "no-room-limit" | "room-limited" | "above-cap";
/**
 * What must be known beside the figures.
 */
export type RoomNotice =
  | "local-code-decides"
  | "flammability-limit-entered"
  | "concentration-limit-entered"
  | "above-concentration-limit"
  | "measures-needed"
  | "above-every-cap";
/**
 * area in m²
 */
export type Area = number & {readonly quantity?: "area"};
/**
 * What limits the charge in a room.
 */
export type Governor = "by-room-formula" | "by-small-charge" | "by-cap" | "by-concentration";
/**
 * Which rule a limit follows.
 */
export type RoomRule = "room-formula" | "concentration-limit";
/**
 * Safety class: A lower, B higher toxicity; 1 no flame propagation, 2L slowly burning, 3 highly flammable.
 */
export type SafetyClass = "A1" | "A2L" | "A3" | "B2L";
/**
 * How an indoor unit is mounted.
 */
export type Mounting = "floor" | "window" | "wall" | "ceiling";
/**
 * volume-flow in m³/s
 */
export type VolumeFlow = number & {readonly quantity?: "volume-flow"};
/**
 * mass-flow in kg/s
 */
export type MassFlow = number & {readonly quantity?: "mass-flow"};
/**
 * power in W
 */
export type Power = number & {readonly quantity?: "power"};
/**
 * What can hurt beside a running system.
 */
export type RunningCaution =
  | "live-parts"
  | "turning-parts"
  | "hot-and-cold-lines"
  | "refrigerant-burns"
  | "refrigerant-toxic"
  | "instructions-and-code-first";
/**
 * Where a figure surely stands to its band.
 */
export type Deviation = "low" | "in-band" | "high";
/**
 * What a figure's error comes from.
 */
export type ErrorSource =
  | "suction-gauge"
  | "liquid-gauge"
  | "suction-thermometer"
  | "liquid-thermometer"
  | "air-thermometers"
  | "hygrometer"
  | "airflow-measurement"
  | "refrigerant-data";
/**
 * Why a figure has no verdict.
 */
export type WhyOpen =
  | "needs-readings"
  | "needs-plate"
  | "needs-target"
  | "needs-device"
  | "needs-wet-bulb-and-outdoor"
  | "target-too-low"
  | "outdoor-too-cold"
  | "outside-rule"
  | "not-settled";
/**
 * Why a band is the target.
 */
export type TargetBasis = "plate" | "valve-range" | "orifice-rule" | "common-practice";
/**
 * What the system does.
 */
export type RunningMode = "cooling" | "heating";
/**
 * What has to be known about the figures besides their verdicts.
 */
export type RunningNotice =
  | "liquid-in-suction"
  | "vapour-in-liquid"
  | "subcooling-from-discharge"
  | "settling-not-entered"
  | "outdoor-not-entered"
  | "outdoor-too-cold"
  | "air-the-other-way"
  | "causes-in-cooling-only";
/**
 * What is known of the airflow over the indoor coil.
 */
export type IndoorAirflow = "airflow-ruled-out" | "airflow-not-ruled-out" | "airflow-too-little";
/**
 * A usual cause of what is out of band.
 */
export type UsualCause =
  | "low-indoor-airflow"
  | "undercharge"
  | "overcharge"
  | "outdoor-coil"
  | "non-condensables"
  | "metering-restriction"
  | "liquid-line-restriction"
  | "metering-overfeed"
  | "weak-compressor";
/**
 * What to look at next. Only [`NextCheck::FindLeakThenWeighIn`] leads to adding refrigerant.
 */
export type NextCheck =
  | "check-indoor-airflow"
  | "rule-out-airflow"
  | "find-leak-then-weigh-in"
  | "compare-charge"
  | "check-outdoor-coil"
  | "check-standing-pressure"
  | "check-metering-device"
  | "check-liquid-line"
  | "check-bulb-and-orifice"
  | "check-compressor";
/**
 * The figures that deviations are looked for in, in the order of the table of signs.
 */
export type RunningFigure =
  "superheat" | "subcooling" | "evaporating-difference" | "condensing-difference" | "temperature-split";
/**
 * A rule of the order of work, or of safety, that was broken.
 */
export type OrderRule =
  | "pressure-before-tightened"
  | "above-lowest-rating"
  | "pump-before-tight"
  | "release-before-tight"
  | "release-before-dry"
  | "release-before-look"
  | "charge-above-room-limit"
  | "gas-valve-first";
/**
 * What is open.
 */
export type OpenMatter =
  | "field"
  | "room"
  | "joints-to-make"
  | "cones-to-measure"
  | "joints-to-remake"
  | "joints-to-oil"
  | "joints-to-tighten"
  | "torques-to-record"
  | "joints-to-look-at"
  | "hold-on"
  | "test-pressure"
  | "readings"
  | "pump-down"
  | "open-valves"
  | "caps-to-look-at"
  | "pressure-after-release"
  | "charge"
  | "run-readings"
  | "calibration"
  | "sign-off"
  | "stages";
/**
 * How a stage stands.
 */
export type StageState = "not-begun" | "under-way" | "in-band" | "cannot-tell" | "out-of-band" | "overridden";
/**
 * How the pressure that a rule wants stands to the lowest-rated part.
 */
export type RatingCheck = "within-rating" | "above-rating" | "rating-open";
/**
 * Whose rule a pressure test follows.
 */
export type PressureTestRule = "real-decreto-552-2019" | "ufgs-15182" | "plate";
/**
 * What to do at a stage.
 */
export type StageAction = "soap-joints" | "stop-and-look" | "hold";
/**
 * leak-rate in Pa·m³/s
 */
export type LeakRate = number & {readonly quantity?: "leak-rate"};
/**
 * yearly-loss in kg/s
 */
export type YearlyLoss = number & {readonly quantity?: "yearly-loss"};
/**
 * pressure-rate in Pa/s
 */
export type PressureRate = number & {readonly quantity?: "pressure-rate"};
/**
 * Why a reading is left out.
 */
export type LeftOutReason = "stray" | "temperature-changing" | "settling" | "before-step" | "after-step";
/**
 * Why the verdict is what it is.
 */
export type HoldReason =
  | "loss-ruled-out"
  | "loss-beyond-uncertainty"
  | "large-loss"
  | "too-few-readings"
  | "too-short-to-tell"
  | "near-leak-to-see"
  | "loss-may-have-ended"
  | "fell-near-end"
  | "pressure-rose"
  | "test-pressure-not-reached";
/**
 * What a hold shows.
 */
export type HoldVerdict = "tight" | "losing-gas" | "cannot-tell" | "open";
/**
 * What must not be missed in a hold.
 */
export type HoldWarning = "above-lowest-rating" | "test-pressure-capped";
/**
 * The laws that are fitted.
 */
export type Shape = "linear-rise" | "plateau" | "plateau-and-linear-rise";
/**
 * What the vapour stands over.
 */
export type Surface = "ice" | "liquid";
/**
 * Whose rule holds.
 */
export type PassRule = "ufgs-15182" | "real-decreto-552-2019" | "plate";
/**
 * Why there is no verdict.
 */
export type VacuumReason =
  | "too-few-readings"
  | "causes-alike"
  | "fits-no-law"
  | "readings-fall"
  | "level-too-high"
  | "slow-rise"
  | "gauge-shows-nothing";
/**
 * What the hold says of the system.
 */
export type VacuumVerdict = "dry-and-tight" | "moisture" | "leak" | "cannot-tell" | "open";
/**
 * a moment in universal time (RFC 3339), or seconds since 1970 began
 */
export type MomentEntry = string | number | null;
export type YesOrNoEntry = boolean | null;
/**
 * a whole number
 */
export type CountEntry = number | string | null;
/**
 * time as a number in s, or as text with a unit such as "30 min"; {text, assume} gives the unit of a bare number
 */
export type TimeEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * pressure-difference as a number in Pa, or as text with a unit such as "0.6 psi"; {text, assume} gives the unit of a bare number
 */
export type PressureDifferenceEntry =
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
export type PassRuleEntry = ("ufgs-15182" | "real-decreto-552-2019" | "plate") | "" | null;
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
 * one of the words, or an empty text for none
 */
export type JointKindEntry = ("flare" | "brazed" | "cap") | "" | null;
/**
 * one of the words, or an empty text for none
 */
export type LeakLookEntry = ("pass" | "leak") | "" | null;
/**
 * one of the words, or an empty text for none
 */
export type JointLineEntry = ("liquid-line" | "gas-line") | "" | null;
export type JointOrderEntry = number | null;
/**
 * torque as a number in N·m, or as text with a unit such as "38 N·m"; {text, assume} gives the unit of a bare number
 */
export type TorqueEntry =
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
 * one of the words, or an empty text for none
 */
export type HigherUnitEntry = ("indoor" | "outdoor") | "" | null;
/**
 * one of the words, or an empty text for none
 */
export type StageEntry =
  | ("plan" | "flare" | "tighten" | "pressure-test" | "evacuate" | "release-and-charge" | "run-check" | "record")
  | ""
  | null;
/**
 * one of the words, or an empty text for none
 */
export type OrderRuleEntry =
  | (
      | "pressure-before-tightened"
      | "above-lowest-rating"
      | "pump-before-tight"
      | "release-before-tight"
      | "release-before-dry"
      | "release-before-look"
      | "charge-above-room-limit"
      | "gas-valve-first"
    )
  | ""
  | null;
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
 * pressure-rate as a number in Pa/s, or as text with a unit such as "0.5 psi/h"; {text, assume} gives the unit of a bare number
 */
export type PressureRateEntry =
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
export type PressureTestRuleEntry = ("real-decreto-552-2019" | "ufgs-15182" | "plate") | "" | null;
/**
 * one of the words, or an empty text for none
 */
export type RoomRuleEntry = ("room-formula" | "concentration-limit") | "" | null;
/**
 * area as a number in m², or as text with a unit such as "21 m²"; {text, assume} gives the unit of a bare number
 */
export type AreaEntry =
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
export type MountingEntry = ("floor" | "window" | "wall" | "ceiling") | "" | null;
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
 * a band of temperature-difference: text such as "34-42 K", "38 ± 4 K" or "38 K"; {low, high}; or a number in K
 */
export type TemperatureDifferenceBandEntry =
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
 * one of the words, or an empty text for none
 */
export type MeteringDeviceEntry = ("thermostatic-valve" | "electronic-valve" | "fixed-orifice") | "" | null;
/**
 * one of the words, or an empty text for none
 */
export type RunningModeEntry = ("cooling" | "heating") | "" | null;
/**
 * power as a number in W, or as text with a unit such as "7.1 kW"; {text, assume} gives the unit of a bare number
 */
export type PowerEntry =
  | number
  | string
  | {
      assume?: string;
      text: string;
    }
  | null;
/**
 * specific-enthalpy in J/kg
 */
export type SpecificEnthalpy = number & {readonly quantity?: "specific-enthalpy"};
/**
 * velocity in m/s
 */
export type Velocity = number & {readonly quantity?: "velocity"};
/**
 * How the fluid flows.
 */
export type Regime = "laminar" | "transition" | "turbulent";
/**
 * dynamic-viscosity in Pa·s
 */
export type DynamicViscosity = number & {readonly quantity?: "dynamic-viscosity"};
/**
 * stress in Pa
 */
export type Stress = number & {readonly quantity?: "stress"};
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
 * Something to change, the rest staying as it is.
 */
export type LineChange = "cores-out" | "larger-hose" | "shorter-hose" | "second-hose" | "larger-pump";
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
 * Whether water freezes under the pump. Ice forms below 611.657 Pa, 4588 micron.
 */
export type IceRisk = "no-ice" | "ice-possible" | "ice-forms";
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
export type SafetyClassEntry = ("A1" | "A2L" | "A3" | "B2L") | "" | null;
/**
 * A pure substance in a refrigerant.
 */
export type Substance =
  "R-22" | "R-32" | "R-125" | "R-134a" | "R-143a" | "R-290" | "R-600a" | "R-717" | "R-744" | "R-1234yf" | "R-1234ze(E)";
/**
 * specific-heat-capacity in J/(kg·K)
 */
export type SpecificHeatCapacity = number & {readonly quantity?: "specific-heat-capacity"};
/**
 * Where viscosities come from.
 */
export type ViscosityBasis = "viscosity-of-the-library" | "viscosity-mixed-from-components";
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
 * one of the words, or an empty text for none
 */
export type TorqueFamilyEntry = ("en-378-2" | "jis-b-8607" | "common-practice") | "" | null;
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
    charge: {
      answer: ChargeAnswer;
      input: ChargeInput;
    };
    convert: {
      answer: ConvertAnswer;
      input: ConvertInput;
    };
    flare: {
      answer: FlareAnswer;
      input: FlareInput;
    };
    insulation: {
      answer: InsulationAnswer;
      input: InsulationInput;
    };
    job: {
      answer: Assessment;
      input: AssessInput;
    };
    "line-set": {
      answer: LineSetAnswer;
      input: LineSetInput;
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
    "room-limit": {
      answer: RoomLimitAnswer;
      input: RoomLimitInput;
    };
    running: {
      answer: RunningAnswer;
      input: RunningInput;
    };
    saturation: {
      answer: SaturationAnswer;
      input: SaturationInput;
    };
    "standing-test": {
      answer: StandingTestAnswer;
      input: StandingTestInput;
    };
    torque: {
      answer: TorqueAnswer;
      input: TorqueInput;
    };
    tube: {
      answer: TubeAnswer;
      input: TubeInput;
    };
    "vacuum-hold": {
      answer: VacuumHoldAnswer;
      input: VacuumHoldInput;
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
 * What [`charge`] finds. Each part is there when its own fields are.
 */
export interface ChargeAnswer {
  /**
   * What each accessory takes.
   */
  accessories: AccessoryCharge[];
  /**
   * What can hurt.
   */
  cautions: ChargeCaution[];
  /**
   * The whole charge and what is still to go in.
   */
  charge?: ChargeTotal | null;
  /**
   * Whether the refrigerant must leave its cylinder as liquid, or its composition shifts.
   */
  chargedAsLiquid?: Sourcedboolean | null;
  /**
   * What a hose lets into the air when it is taken off.
   */
  hose?: Contents | null;
  /**
   * The line's part, by the plate and from physics.
   */
  line?: LineCharge | null;
  /**
   * What the figures rest on and what stands out.
   */
  notices: ChargeNotice[];
  /**
   * How much the recovery cylinder may hold.
   */
  recovery?: RecoveryFill | null;
  /**
   * The refrigerant, if it is entered.
   */
  refrigerant?: Refrigerant | null;
  /**
   * Where the scale must stop and how far it is.
   */
  scale?: ScaleAnswer | null;
  /**
   * The charge as carbon dioxide.
   */
  warming?: Warming | null;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * What an accessory takes.
 */
export interface AccessoryCharge {
  mass: Mass;
  /**
   * What it was called.
   */
  name?: string | null;
}
/**
 * The whole charge and what of it is still to go in.
 */
export interface ChargeTotal {
  accessories: Mass;
  arrives: Arrival;
  basis: LineBasis;
  /**
   * Factory charge, if it is entered.
   */
  factory?: Mass | null;
  line: Mass;
  reduction: Mass;
  toAdd: Mass;
  toTakeOut: Mass;
  /**
   * All of the charge in the end, if the factory charge is known.
   */
  total?: Mass | null;
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
 * What a line or a hose holds.
 */
export interface Contents {
  bore: Length;
  density: Density;
  /**
   * Mass in the whole length, if that is entered.
   */
  mass?: Mass | null;
  massPerLength: MassPerLength;
  phase: Phase;
  temperature: Temperature;
}
/**
 * The line's part of the charge: the plate's figures, what physics says, and how they differ.
 */
export interface LineCharge {
  /**
   * The plate's adder less that of physics; negative if the plate's is smaller.
   */
  adderDifference?: MassPerLength | null;
  /**
   * What both lines hold over their whole length, by physics.
   */
  contents?: Mass | null;
  /**
   * The plate's less that of physics; negative if the plate's is smaller.
   */
  extraDifference?: Mass | null;
  /**
   * Length beyond what the factory charge serves; 0 if the line is shorter.
   */
  extraLength?: Length | null;
  /**
   * What the liquid line holds, full of liquid.
   */
  liquid?: Contents | null;
  /**
   * The adder from physics: liquid line, and vapour line if it is entered.
   */
  physicsAdder?: MassPerLength | null;
  /**
   * What the extra length takes by physics.
   */
  physicsExtra?: Mass | null;
  /**
   * The plate's adder.
   */
  plateAdder?: MassPerLength | null;
  /**
   * What the extra length takes by the plate.
   */
  plateExtra?: Mass | null;
  /**
   * Length short of what the factory charge serves; 0 if the line is longer.
   */
  shortBy?: Length | null;
  /**
   * What the vapour line holds.
   */
  vapour?: Contents | null;
}
/**
 * How much a recovery cylinder may hold.
 */
export interface RecoveryFill {
  /**
   * What is in it now, if it was weighed.
   */
  contents?: Mass | null;
  largestContents: Mass;
  largestGross: Mass;
  limitedBy: FillRule;
  liquidDensity: Density;
  /**
   * Part of the volume that this takes as liquid at `temperature`.
   */
  partFull?: Ratio | null;
  partFullWhenHot: Ratio;
  /**
   * What each reading of the rule allows.
   */
  readings: FillReading[];
  /**
   * Room that is left; in band if it is room for sure, out of band if the cylinder is overfilled.
   */
  room?: Judgement7 | null;
  temperature: Temperature;
  volume: Volume;
}
/**
 * What one reading of the rule allows.
 */
export interface FillReading {
  /**
   * Whether it allows more than the largest fill here: then it does not hold.
   */
  beyondLimit: boolean;
  contents: Mass;
  gross: Mass;
  rule: FillRule;
  source: SourceId;
}
/**
 * A verdict on a figure.
 */
export interface Judgement7 {
  figure: Mass;
  limit: Mass;
  margin: Mass;
  uncertainty: Mass;
  verdict: Verdict;
}
/**
 * The scale's part of the answer.
 */
export interface ScaleAnswer {
  /**
   * What has moved so far.
   */
  chargedSoFar?: Mass | null;
  direction: ScaleDirection;
  /**
   * Refrigerant in the cylinder at the start, if its tare is known.
   */
  inCylinder?: Mass | null;
  lacking: Mass;
  /**
   * The target less that; negative if `state` is `scale-too-much`.
   */
  remaining?: Mass | null;
  /**
   * How far charging is.
   */
  state?: ChargingState | null;
  /**
   * The reading at which to close the valve, rounded to the scale's step towards moving less;
   * absent if the cylinder does not hold enough.
   */
  stopMark?: Mass | null;
  /**
   * What has to move in all.
   */
  target?: Mass | null;
  uncertainty: Mass;
}
/**
 * The mass of carbon dioxide that warms as much over 100 years, by three assessment reports of the IPCC.
 */
export interface Warming {
  ar4: Mass;
  ar5: Mass;
  ar6: Mass;
  charge: Mass;
  potentials: WarmingPotentials;
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
 * What [`charge`](super::charge) asks for. Each part of the answer appears when its own fields are there.
 */
export interface ChargeInput {
  /**
   * What accessories take beyond that: filters, receivers, branches.
   *
   * @maxItems 20000
   */
  accessories?: AccessoryInput[];
  arrives?: ArrivalEntry;
  chargeToAdd?: MassEntry;
  cylinderNow?: MassEntry;
  cylinderStart?: MassEntry;
  cylinderTare?: MassEntry;
  hoseBore?: LengthEntry;
  hoseLength?: LengthEntry;
  hosePhase?: PhaseEntry;
  hoseTemperature?: TemperatureEntry;
  length?: LengthEntry;
  liquidBore?: LengthEntry;
  liquidTemperature?: TemperatureEntry;
  liquidTube?: LengthEntry;
  plateAdder?: MassPerLengthEntry;
  plateCharge?: MassEntry;
  plateReduction?: MassPerLengthEntry;
  prechargedLength?: LengthEntry;
  recoveryGross?: MassEntry;
  recoveryTare?: MassEntry;
  recoveryTemperature?: TemperatureEntry;
  recoveryVolume?: VolumeEntry;
  recoveryWaterCapacity?: MassEntry;
  refrigerant?: RefrigerantEntry;
  scaleResolution?: MassEntry;
  scaleUncertainty?: MassEntry;
  superheat?: TemperatureDifferenceEntry;
  vapourBore?: LengthEntry;
  vapourDewTemperature?: TemperatureEntry;
  vapourTube?: LengthEntry;
}
/**
 * An accessory in the circuit that takes refrigerant of its own.
 */
export interface AccessoryInput {
  mass?: MassEntry;
  name?: TextEntry;
  phase?: PhaseEntry;
  volume?: VolumeEntry;
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
 * What [`insulation`] finds.
 */
export interface InsulationAnswer {
  ambient: Ambient;
  bare: Layer;
  coefficientBasis: CoefficientBasis;
  /**
   * The line with each thickness that is commonly sold.
   */
  common: Layer[];
  /**
   * The next thickness that is commonly sold; absent if none is needed or none is so thick.
   */
  commonThickness?: Length | null;
  conductivity: SourcedThermalConductivity;
  dewPoint: Temperature;
  /**
   * The line with the thickness entered.
   */
  entered?: Layer | null;
  /**
   * Whether any insulation is needed against condensation.
   */
  isNeeded: boolean;
  least: Layer;
  leastSurfaceTemperature: Temperature;
  /**
   * Name of the tube's size; absent if it is in no table.
   */
  name?: string | null;
  outsideDiameter: Length;
  relativeHumidity: Ratio;
  /**
   * The least thickness commonly sold that is in band, further above the dew point than the instruments and the
   * coefficient may err; absent if none is needed or none is.
   */
  sureThickness?: Length | null;
  thickness: Length;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * A line with insulation of one thickness.
 */
export interface Layer {
  againstDewPoint: Judgement8;
  heatGain: HeatFlowPerLength;
  outsideDiameter: Length;
  surfaceCoefficient: HeatTransferCoefficient;
  surfaceTemperature: Temperature;
  thickness: Length;
}
/**
 * A verdict on a figure.
 */
export interface Judgement8 {
  figure: Temperature;
  limit: Temperature;
  margin: TemperatureDifference;
  uncertainty: TemperatureDifference;
  verdict: Verdict;
}
/**
 * A figure and where it comes from.
 */
export interface SourcedThermalConductivity {
  figure: ThermalConductivity;
  source: SourceId;
}
/**
 * What [`insulation`] asks for.
 */
export interface InsulationInput {
  airSpeed?: VelocityEntry;
  altitude?: AltitudeEntry;
  barometer?: AbsolutePressureEntry;
  conductivity?: ThermalConductivityEntry;
  dewPoint?: TemperatureEntry;
  dewPointMargin?: TemperatureDifferenceEntry;
  dryBulb?: TemperatureEntry;
  emissivity?: RatioEntry;
  humidityUncertainty?: RatioEntry;
  lineTemperature?: TemperatureEntry;
  relativeHumidity?: RatioEntry;
  surfaceCoefficient?: HeatTransferCoefficientEntry;
  thermometerUncertainty?: TemperatureDifferenceEntry;
  thickness?: LengthEntry;
  tube?: LengthEntry;
  wetBulb?: TemperatureEntry;
}
/**
 * How a job stands.
 */
export interface Assessment {
  /**
   * The pressure after release: of the stages release and charge, record.
   */
  afterRelease?: AfterRelease | null;
  beforeRelease: BeforeRelease;
  /**
   * What has to be in the van.
   */
  bring: BringItem[];
  /**
   * The charge: of the stages plan, release and charge, record.
   */
  charge?: ChargeAnswer | null;
  circuit: Circuit;
  /**
   * The joints in the order of work.
   */
  joints: JointAssessment[];
  /**
   * The first stage that is not done.
   */
  next?: Stage | null;
  /**
   * How the lines keep to the plate: of the stages plan, record.
   */
  plateLimits?: PlanLimits | null;
  /**
   * Clock of the pressure hold.
   */
  pressureClock?: HoldClock | null;
  /**
   * Where the readings of the pressure hold stand in the document.
   */
  pressureHoldReadings: number[];
  /**
   * What cannot be read, or does not serve, by where it stands in the document.
   */
  problems: Problem[];
  /**
   * Clock of the pump.
   */
  pumpClock?: HoldClock | null;
  /**
   * The readings of the pressure gauge as recorded: of the stage record.
   */
  recordedPressures: RecordedPressure[];
  /**
   * The readings of the vacuum gauge as recorded: of the stage record.
   */
  recordedVacuums: RecordedVacuum[];
  /**
   * The room: of the stages plan, record.
   */
  roomLimit?: RoomLimitAnswer | null;
  /**
   * The running unit: of the stages run check, record.
   */
  running?: RunningAnswer | null;
  /**
   * The stages in the order of work.
   */
  stages: StageAssessment[];
  /**
   * The pressure hold: of the stages pressure test, record.
   */
  standingTest?: StandingTestAnswer | null;
  /**
   * Clock of the vacuum hold.
   */
  vacuumClock?: HoldClock | null;
  /**
   * The vacuum hold: of the stages evacuate, record.
   */
  vacuumHold?: VacuumHoldAnswer | null;
  /**
   * Where the readings of the vacuum hold stand in the document.
   */
  vacuumHoldReadings: number[];
}
/**
 * The pressure after release against what the refrigerant has at the temperature around.
 */
export interface AfterRelease {
  ambientTemperature: Temperature;
  expected: Band6;
  /**
   * What it does show.
   */
  pressure?: Judgement | null;
  temperatureUncertainty: TemperatureDifference;
}
/**
 * Two limits, both inside the band; the lower one is never above the upper one.
 */
export interface Band6 {
  high: GaugePressure;
  low: GaugePressure;
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
 * What must be shown before the valves are opened.
 */
export interface BeforeRelease {
  /**
   * The reading of the vacuum hold with which it passes, if it does.
   */
  drySince?: Moment | null;
  /**
   * Whether the charge is more than a room allows.
   */
  isAboveRoomLimit: boolean;
  /**
   * Joints that leak, are out of band or were not looked at under pressure; caps come after the release.
   */
  jointsNotProven: number;
  /**
   * The reading of the pressure hold that proves the circuit tight, if one does.
   */
  tightSince?: Moment | null;
}
/**
 * A thing to bring.
 */
export interface BringItem {
  /**
   * Figures of the plan.
   */
  figures: Fact[];
  /**
   * Its key: what is packed is recorded by it.
   */
  id: string;
  matter: BringMatter;
  /**
   * Oils that go with the refrigerant.
   */
  oils: OilFamily[];
  /**
   * Whether it is in the van.
   */
  packed: boolean;
}
/**
 * A figure that a stage is known by.
 */
export interface Fact {
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
   * The same for its uncertainty.
   */
  uncertainty?: number | null;
}
/**
 * What is known of the way from unit to unit.
 */
export interface Circuit {
  /**
   * Outside diameter of the thicker line.
   */
  gasLine?: Length | null;
  /**
   * Which unit stands higher.
   */
  higherUnit?: HigherUnit | null;
  /**
   * Length of the lines, one way.
   */
  length?: Length | null;
  /**
   * Height of one unit above the other.
   */
  lift?: Length | null;
  /**
   * Outside diameter of the thinner line.
   */
  liquidLine?: Length | null;
}
/**
 * A joint as it stands.
 */
export interface JointAssessment {
  /**
   * What to enter as the order of a joint that is to come right after it; the last one needs none.
   */
  after?: JointOrder | null;
  /**
   * What to aim at, at the nut.
   */
  aim?: Torque | null;
  /**
   * Band of its cone.
   */
  cone?: Band | null;
  /**
   * Which of several there, from 1.
   */
  count?: number | null;
  /**
   * What to enter as its order to do it one joint earlier.
   */
  earlier?: JointOrder | null;
  /**
   * Its id.
   */
  id: string;
  kind: JointKind;
  /**
   * What to enter as its order to do it one joint later.
   */
  later?: JointOrder | null;
  /**
   * What the look for leaks showed.
   */
  leakLook?: LeakLook | null;
  line: JointLine;
  /**
   * When it was looked at.
   */
  lookedAt?: Moment | null;
  /**
   * When it was flared or brazed, tightened, looked at.
   */
  madeAt?: Moment | null;
  /**
   * Its cone as measured.
   */
  measuredCone?: MeasuredCone | null;
  /**
   * A name of its own.
   */
  name?: string | null;
  /**
   * Its number in the order of work, from 1; those taken out have none.
   */
  number?: number | null;
  /**
   * Its nut across flats.
   */
  nutAcrossFlats?: Length | null;
  /**
   * Whether oil is on it.
   */
  oiled: boolean;
  /**
   * What is still to be done.
   */
  open: JointStep[];
  place: JointPlace;
  /**
   * How often it was made anew.
   */
  remade: number;
  /**
   * What to set on the wrench: with the adapter if it is on; absent as long as its lever cannot be told.
   */
  setting?: Torque | null;
  state: JointState;
  /**
   * Its torque at the nut, with the wrench's uncertainty.
   */
  tightened?: Judgement3 | null;
  /**
   * When it was tightened.
   */
  tightenedAt?: Moment | null;
  /**
   * Band of its torque, at the nut.
   */
  torque?: Band3 | null;
  /**
   * Outside diameter of its tube.
   */
  tube?: Length | null;
  /**
   * Whether the offset adapter is on the wrench: as recorded, else if there is one.
   */
  withAdapter: boolean;
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
 * Two limits, both inside the band; the lower one is never above the upper one.
 */
export interface Band3 {
  high: Torque;
  low: Torque;
}
/**
 * How the lines keep to what the plate allows; absent where the plate or the line is not entered.
 */
export interface PlanLimits {
  /**
   * What the tube of the gas line bears, against the design pressure.
   */
  gasLine?: Judgement | null;
  /**
   * Length against the longest allowed.
   */
  length?: Judgement2 | null;
  /**
   * Lift against the largest allowed.
   */
  lift?: Judgement2 | null;
  /**
   * What the tube of the liquid line bears, against the design pressure.
   */
  liquidLine?: Judgement | null;
}
/**
 * A clock that runs from a moment on.
 */
export interface HoldClock {
  /**
   * Why these times are doubtful, if they are.
   */
  doubt?: ClockDoubt | null;
  /**
   * What the clock will show when it is over; nothing once it is.
   */
  due?: Moment | null;
  /**
   * How long it is to last, if that is known.
   */
  lasts?: Time | null;
  passed: Time;
  /**
   * How much of that is still to come; zero if it is over.
   */
  remaining?: Time | null;
  started: Moment;
}
/**
 * A reading of the pressure gauge as recorded.
 */
export interface RecordedPressure {
  /**
   * Temperature of the air around it.
   */
  ambientTemperature?: Temperature | null;
  /**
   * Pressure of the air.
   */
  barometer?: AbsolutePressure | null;
  /**
   * What the gauge showed.
   */
  gaugePressure?: GaugePressure | null;
  /**
   * Whether the hold begins here.
   */
  holdBegins: boolean;
  /**
   * When, if that can be read.
   */
  moment?: RecordedMoment | null;
  /**
   * Temperature of the tube.
   */
  temperature?: Temperature | null;
}
/**
 * When a reading was taken.
 */
export interface RecordedMoment {
  at: Moment;
  /**
   * Why the time since the reading before is doubtful, if it is.
   */
  doubt?: ClockDoubt | null;
  since: Time;
}
/**
 * A reading of the vacuum gauge as recorded.
 */
export interface RecordedVacuum {
  /**
   * When, if that can be read.
   */
  moment?: RecordedMoment | null;
  /**
   * What the gauge showed, above vacuum.
   */
  pressure?: AbsolutePressure | null;
  /**
   * Whether the pump was valved off.
   */
  valvedOff: boolean;
}
/**
 * What [`room_limit`] finds.
 */
export interface RoomLimitAnswer {
  /**
   * Caps by the class; absent where a concentration governs.
   */
  caps?: ChargeCaps | null;
  /**
   * How the charge stands to that; no more is in band.
   */
  charge?: Judgement7 | null;
  /**
   * How the charge stands to the caps.
   */
  chargeStanding?: ChargeStanding | null;
  /**
   * Concentration limit taken; absent if neither the table nor the input has one and the rule needs none.
   */
  concentrationLimit?: SourcedDensity | null;
  /**
   * Place in `rooms`, counted from 0, of the one that allows least.
   */
  governingRoom?: number | null;
  /**
   * What that room allows.
   */
  largestCharge?: Mass | null;
  /**
   * Lower flammability limit taken; absent if it does not burn.
   */
  lowerFlammabilityLimit?: SourcedDensity | null;
  /**
   * What must be known beside the figures.
   */
  notices: RoomNotice[];
  /**
   * The rooms in the order in which they were entered.
   */
  rooms: RoomAllowance[];
  rule: RoomRule;
  safetyClass: SourcedSafetyClass;
  /**
   * Smallest room for the charge at each usual mounting; empty where the charge needs no room or may be in none.
   */
  smallestRooms: SmallestRoom[];
  /**
   * Smallest volume of a room for the charge, where a concentration governs.
   */
  smallestVolume?: Volume | null;
  /**
   * The edition it is taken from.
   */
  sources: SourceId[];
  /**
   * The working, that of the room that allows least.
   */
  working: Step[];
}
/**
 * Charges at which the rule for a flammable refrigerant changes, the factor of its class included.
 */
export interface ChargeCaps {
  cap: Mass;
  noRoomLimit: Mass;
  withMeasures: Mass;
}
/**
 * A figure and where it comes from.
 */
export interface SourcedDensity {
  figure: Density;
  source: SourceId;
}
/**
 * What a room allows.
 */
export interface RoomAllowance {
  area: Area;
  /**
   * How the charge stands to what the room allows; no more is in band.
   */
  charge?: Judgement7 | null;
  /**
   * Concentration limit times volume; absent without a height or a limit. It governs only where `governor` says so.
   */
  concentrationCharge?: Mass | null;
  /**
   * Charge by the formula for flammable refrigerants, before the caps; absent where a concentration governs.
   */
  formulaCharge?: Mass | null;
  governor: Governor;
  largestCharge: Mass;
  /**
   * What it is called.
   */
  name?: string | null;
  /**
   * From the floor to where refrigerant would come out.
   */
  releaseHeight?: Length | null;
  /**
   * Smallest floor area for the charge, at this height of release or this height of room; absent where the charge needs no room
   * or may be in none.
   */
  smallestArea?: Area | null;
  /**
   * Volume, if its height was entered.
   */
  volume?: Volume | null;
}
/**
 * A figure and where it comes from.
 */
export interface SourcedSafetyClass {
  figure: SafetyClass;
  source: SourceId;
}
/**
 * Smallest room at a mounting.
 */
export interface SmallestRoom {
  area: Area;
  mounting: Mounting;
  releaseHeight: Length;
}
/**
 * What [`running`] finds. What was not measured is absent, or says why it is open.
 */
export interface RunningAnswer {
  accuracy: Accuracy;
  /**
   * Airflow against the least at which a charge can be judged, 300 cfm for a ton of the plate's capacity; cooling only.
   */
  airflow?: Judgement9 | null;
  ambient: Ambient;
  /**
   * What the indoor coil does to the air.
   */
  capacity?: Capacity | null;
  /**
   * What can hurt where these readings are taken.
   */
  cautions: RunningCaution[];
  /**
   * Discharge pressure, or else liquid pressure, over suction pressure, both absolute.
   */
  compressionRatio?: Ratio | null;
  /**
   * Liquid side: pressure and condensing temperature (bubble).
   */
  condensing?: SideAnswer | null;
  condensingDifference: Check;
  /**
   * Suction side: pressure and evaporating temperature (dew).
   */
  evaporating?: SideAnswer | null;
  evaporatingDifference: Check;
  /**
   * Fields that would complete what was begun.
   */
  missing: Field[];
  mode: RunningMode;
  /**
   * What else has to be known.
   */
  notices: RunningNotice[];
  /**
   * What the deviations usually mean; absent where that cannot be said.
   */
  pattern?: Pattern | null;
  subcooling: Check;
  superheat: Check;
  temperatureSplit: Check;
  /**
   * Out of band if anything judged is; in band if superheat is, subcooling is (needless with a fixed orifice), and nothing else judged is not; absent if nothing was judged.
   */
  verdict?: Verdict | null;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * How far each instrument may be off: what was entered, or else what is taken.
 */
export interface Accuracy {
  airflow: Ratio;
  liquidGauge: PressureDifference;
  relativeHumidity: Ratio;
  suctionGauge: PressureDifference;
  thermometer: TemperatureDifference;
}
/**
 * A verdict on a figure.
 */
export interface Judgement9 {
  figure: VolumeFlow;
  limit: VolumeFlow;
  margin: VolumeFlow;
  uncertainty: VolumeFlow;
  verdict: Verdict;
}
/**
 * What the indoor coil takes out of the air in cooling, or gives to it in heating.
 */
export interface Capacity {
  dryAirFlow: MassFlow;
  /**
   * Heat that changes its moisture; absent in heating and where a humidity is missing.
   */
  latent?: UncertainPower | null;
  /**
   * Total over the plate's capacity. The plate's holds at the conditions of its rating, not at these.
   */
  ofPlate?: UncertainRatio | null;
  sensible: UncertainPower;
  /**
   * Sensible over total heat in cooling; absent where the total may be nothing.
   */
  sensibleHeatRatio?: Ratio | null;
  /**
   * Whether a humidity was missing and the air was taken as dry for the sensible heat, which changes it by less than 1 %.
   */
  takenAsDry: boolean;
  /**
   * Both together; in heating the sensible heat.
   */
  total?: UncertainPower | null;
}
/**
 * A figure and how far it may be off.
 */
export interface UncertainPower {
  figure: Power;
  uncertainty: Power;
}
/**
 * A figure and how far it may be off.
 */
export interface UncertainRatio {
  figure: Ratio;
  uncertainty: Ratio;
}
/**
 * Pressure of one side and where the refrigerant boils or condenses there.
 */
export interface SideAnswer {
  pressure: AbsolutePressure;
  temperature: Temperature;
  uncertainty: TemperatureDifference;
}
/**
 * A figure that was found, what it should be, and the verdict.
 */
export interface Check {
  /**
   * Where it surely stands; absent if that cannot be told.
   */
  deviation?: Deviation | null;
  /**
   * The figure, absent if a reading is missing.
   */
  figure?: TemperatureDifference | null;
  /**
   * How it stands to that; its uncertainty includes that of the target.
   */
  judgement?: Judgement6 | null;
  /**
   * What most of that comes from: a finer one of these would decide what cannot be told.
   */
  largestError?: ErrorSource | null;
  /**
   * Why there is no verdict.
   */
  open?: WhyOpen | null;
  /**
   * What it should be.
   */
  target?: Target | null;
  /**
   * How far it may be off, by instruments and refrigerant data.
   */
  uncertainty?: TemperatureDifference | null;
}
/**
 * A verdict on a figure.
 */
export interface Judgement6 {
  figure: TemperatureDifference;
  limit: TemperatureDifference;
  margin: TemperatureDifference;
  uncertainty: TemperatureDifference;
  verdict: Verdict;
}
/**
 * What a figure should be.
 */
export interface Target {
  band: Band5;
  basis: TargetBasis;
  source: SourceId;
  uncertainty: TemperatureDifference;
}
/**
 * Two limits, both inside the band; the lower one is never above the upper one.
 */
export interface Band5 {
  high: TemperatureDifference;
  low: TemperatureDifference;
}
/**
 * What the sure deviations usually mean.
 */
export interface Pattern {
  airflow: IndoorAirflow;
  /**
   * Causes, the best fit first; none if nothing is surely out of band or nothing fits.
   */
  causes: RankedCause[];
  /**
   * How many figures, a measured airflow included, are out of band by more than they may be off.
   */
  deviations: number;
  source: SourceId;
  /**
   * Figures not known yet that would tell the best fits apart.
   */
  wouldDecide: RunningFigure[];
}
/**
 * A cause and how well it fits.
 */
export interface RankedCause {
  cause: UsualCause;
  /**
   * How many of the sure deviations it explains.
   */
  explains: number;
  nextCheck: NextCheck;
}
/**
 * A stage as it stands.
 */
export interface StageAssessment {
  /**
   * The rules that were broken in it.
   */
  alarms: Alarm[];
  /**
   * What is known.
   */
  facts: Fact[];
  /**
   * What is open.
   */
  open: OpenItem[];
  stage: Stage;
  state: StageState;
}
/**
 * A rule that was broken.
 */
export interface Alarm {
  /**
   * Why, if somebody answers for it.
   */
  overridden?: Override | null;
  rule: OrderRule;
  stage: Stage;
}
/**
 * Why a rule was broken.
 */
export interface Override {
  /**
   * When.
   */
  at?: Moment | null;
  /**
   * Who says so.
   */
  by: string;
  /**
   * Why.
   */
  reason: string;
}
/**
 * Something that is open.
 */
export interface OpenItem {
  /**
   * How many.
   */
  count?: number | null;
  /**
   * The field of the document, if it is one.
   */
  field?: Field | null;
  matter: OpenMatter;
}
/**
 * What [`standing_test`] finds.
 */
export interface StandingTestAnswer {
  ambient: Ambient;
  /**
   * How to carry out the test, if a rule, a design pressure or the plate's test pressure was entered.
   */
  guidance?: PressureTestGuidance | null;
  /**
   * What the readings come to, once two that count are there.
   */
  hold?: HoldFigures | null;
  /**
   * How long a hold of two readings with these instruments must last to show the leak to see, once
   * there is a reading.
   */
  holdOfTwoReadings?: Time | null;
  /**
   * Instruments as entered or assumed, once a pressure is known.
   */
  instruments?: Instruments | null;
  /**
   * Readings that do not count towards the loss, and why.
   */
  leftOut: LeftOut[];
  /**
   * Nitrogen for the test pressure; needs `volume` and guidance.
   */
  nitrogen?: NitrogenNeed | null;
  /**
   * Readings for a plot, more than 48 gathered over slices of time.
   */
  points: HoldPoint[];
  /**
   * How the highest reading that counts stands to the pressure that the rule wants; needs guidance and a
   * reading.
   */
  reached?: Judgement | null;
  reason: HoldReason;
  verdict: HoldVerdict;
  /**
   * What must not be missed besides.
   */
  warnings: HoldWarning[];
  /**
   * The working.
   */
  working: Step[];
}
/**
 * How to carry out the test.
 */
export interface PressureTestGuidance {
  hold: Time;
  rating: RatingCheck;
  /**
   * Rating of the lowest-rated part less the pressure that the rule wants; negative if the rule wants too much.
   */
  ratingMargin?: PressureDifference | null;
  rule: PressureTestRule;
  source: SourceId;
  /**
   * The stages, in order, the last one at the test pressure.
   */
  stages: PressureStage[];
  stepsSource: SourceId;
  testPressure: GaugePressure;
  wantedTestPressure: GaugePressure;
}
/**
 * A stage on the way to the test pressure.
 */
export interface PressureStage {
  action: StageAction;
  gaugePressure: GaugePressure;
}
/**
 * What the readings that count come to.
 */
export interface HoldFigures {
  difference: PressureDifference;
  differenceUncertainty: PressureDifference;
  duration: Time;
  expectedGaugePressure: GaugePressure;
  /**
   * Place in `readings` of the first reading that counts, from 0.
   */
  firstPlace: number;
  holdToSee: Time;
  /**
   * Place of the last one.
   */
  lastPlace: number;
  /**
   * The measured loss as a leak; needs `volume`.
   */
  leak?: LeakSize | null;
  leakToSee: PressureRate;
  leastDetectable: PressureRate;
  /**
   * The least loss that such a hold shows, as a leak.
   */
  leastDetectableLeak?: LeakSize | null;
  longer: Time;
  margin: PressureRate;
  measuredGaugePressure: GaugePressure;
  pressureLossRate: PressureRate;
  pressureLossRateUncertainty: PressureRate;
  upperLimit: PressureRate;
  /**
   * The upper limit as a leak.
   */
  upperLimitLeak?: LeakSize | null;
}
/**
 * A leak as gas and as refrigerant.
 */
export interface LeakSize {
  nitrogen: LeakRate;
  /**
   * Refrigerant that the same leak would lose at its dew pressure at 25 °C, if it is laminar flow
   * through a fine channel; needs `refrigerant`.
   */
  refrigerant?: YearlyLoss | null;
}
/**
 * How far gauge and thermometer may be off, as entered or as assumed.
 */
export interface Instruments {
  gaugeResolution: PressureDifference;
  gaugeUncertainty: PressureDifference;
  thermometerUncertainty: TemperatureDifference;
}
/**
 * A reading that is left out.
 */
export interface LeftOut {
  /**
   * Its place in `readings`, counted from 0 as in the field of a problem.
   */
  place: number;
  reason: LeftOutReason;
}
/**
 * Nitrogen that a test takes.
 */
export interface NitrogenNeed {
  assumedTemperature: Temperature;
  /**
   * The cylinder's pressure afterwards, against the test pressure, below which it cannot fill.
   */
  cylinder?: Judgement | null;
  freeGas: Volume;
  mass: Mass;
}
/**
 * A point of the plot: a reading, or the mean of many.
 */
export interface HoldPoint {
  expectedGaugePressure: GaugePressure;
  gaugePressure: GaugePressure;
  /**
   * Whether they are further apart than that.
   */
  isBeyond: boolean;
  /**
   * Why it is left out, if it is.
   */
  leftOut?: LeftOutReason | null;
  time: Time;
  uncertainty: PressureDifference;
}
/**
 * What [`vacuum_hold`](super::vacuum_hold) finds. Uncertainties are two standard uncertainties.
 */
export interface VacuumHoldAnswer {
  /**
   * Whether it was assumed.
   */
  ambientAssumed: boolean;
  ambientTemperature: Temperature;
  /**
   * The same for a plot.
   */
  curve: ExpectedReading[];
  dryPressure: AbsolutePressure;
  /**
   * What the gauge will show 10, 30 and 60 minutes after the first reading, whatever the cause; none where no law is known to hold.
   */
  expected: ExpectedReading[];
  /**
   * The three laws, each fitted by least squares; without those that only negative pressures would fit, none from fewer than four readings.
   */
  fits: Fit[];
  /**
   * Scatter of the readings, one standard deviation, as a part of their level.
   */
  gaugeNoise?: Ratio | null;
  gaugeResolution: PressureDifference;
  held: Time;
  /**
   * How much longer to hold before the cause can be told; absent if it is told, or if time will not tell.
   */
  holdLonger?: Time | null;
  latest: Level;
  /**
   * The even rise, if it is a leak or as likely as not.
   */
  leak?: LeakFound | null;
  leakAllowed: Ratio;
  /**
   * Probability of each cause; absent where no law is known to hold.
   */
  likelihoods?: Likelihoods | null;
  margin: Ratio;
  needed: Ratio;
  pass: PassCheck;
  /**
   * The plateau that the rise levels off at, if that is as likely as not.
   */
  plateau?: Level | null;
  /**
   * The readings beside that curve: as read, or means over equal spans of time if there are more than 96; none without `curvePoints`.
   */
  plotted: GaugeReading[];
  probability: Ratio;
  /**
   * Why it cannot be told.
   */
  reason?: VacuumReason | null;
  saturationPressure: AbsolutePressure;
  verdict: VacuumVerdict;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * A reading to expect.
 */
export interface ExpectedReading {
  pressure: AbsolutePressure;
  time: Time;
  uncertainty: PressureDifference;
}
/**
 * A law fitted by least squares to the readings.
 */
export interface Fit {
  deviation: Ratio;
  law: Shape;
  /**
   * Pressure that it levels off at; with a leak, that which outgassing adds to the start.
   */
  plateau?: AbsolutePressure | null;
  /**
   * How far this may be wrong.
   */
  plateauUncertainty?: PressureDifference | null;
  probability: Ratio;
  /**
   * Even rise.
   */
  rate?: PressureRate | null;
  /**
   * How far this may be wrong.
   */
  rateUncertainty?: PressureRate | null;
  start: AbsolutePressure;
  /**
   * Time constant of the levelling off.
   */
  timeConstant?: Time | null;
  /**
   * How far this may be wrong.
   */
  timeConstantUncertainty?: Time | null;
}
/**
 * A level, and what water it would take to hold it.
 */
export interface Level {
  pressure: AbsolutePressure;
  surface: Surface;
  uncertainty: PressureDifference;
  /**
   * Temperature at which water boils or ice turns to vapour at this pressure; absent under a quarter micron.
   */
  waterTemperature?: Temperature | null;
}
/**
 * A leak.
 */
export interface LeakFound {
  /**
   * Air that comes in; absent without the volume.
   */
  gas?: LeakRate | null;
  rate: PressureRate;
  uncertainty: PressureRate;
}
/**
 * Probability of each cause, given the readings.
 */
export interface Likelihoods {
  dryAndTight: Ratio;
  leak: Ratio;
  moisture: Ratio;
  other: Ratio;
}
/**
 * Whether a hold passes by its rule.
 */
export interface PassCheck {
  /**
   * Pressure to expect at the end of the rule's time, while it is still to come and a law is known to hold.
   */
  expected?: Judgement10 | null;
  pressure: Judgement10;
  remaining: Time;
  /**
   * Rise till then against the rule, where it asks for one.
   */
  rise?: Judgement11 | null;
  rule: PassRule;
  source: SourceId;
  /**
   * Pressure at the start against the rule, where it asks for one.
   */
  start?: Judgement10 | null;
  time: Time;
  verdict: Verdict;
}
/**
 * A verdict on a figure.
 */
export interface Judgement10 {
  figure: AbsolutePressure;
  limit: AbsolutePressure;
  margin: PressureDifference;
  uncertainty: PressureDifference;
  verdict: Verdict;
}
/**
 * A verdict on a figure.
 */
export interface Judgement11 {
  figure: PressureDifference;
  limit: PressureDifference;
  margin: PressureDifference;
  uncertainty: PressureDifference;
  verdict: Verdict;
}
/**
 * A reading, or the mean of several near each other.
 */
export interface GaugeReading {
  pressure: AbsolutePressure;
  time: Time;
}
/**
 * What [`assess`] asks for.
 */
export interface AssessInput {
  job?: JobInput;
  now?: MomentEntry;
  stage?: StageEntry;
}
/**
 * A job.
 */
export interface JobInput {
  altitude?: AltitudeEntry;
  barometer?: AbsolutePressureEntry;
  /**
   * How the device's clock was set during the job.
   *
   * @maxItems 20000
   */
  clockChanges?: ClockChangeInput[];
  created?: MomentEntry;
  customer?: TextEntry;
  edited?: MomentEntry;
  evacuation?: EvacuationInput;
  id?: TextEntry;
  instruments?: InstrumentsInput;
  /**
   * What was recorded of the joints, and joints that the plan does not have.
   *
   * @maxItems 20000
   */
  joints?: JointInput[];
  lines?: LinesInput;
  name?: TextEntry;
  /**
   * Notes.
   *
   * @maxItems 20000
   */
  notes?: NoteInput[];
  /**
   * What was done against the order of work, and why.
   *
   * @maxItems 20000
   */
  overrides?: OverrideInput[];
  /**
   * Things of the bring list that are in the van, by their key.
   *
   * @maxItems 20000
   */
  packed?: PackedInput[];
  /**
   * Photos, which are kept beside the document.
   *
   * @maxItems 20000
   */
  photos?: PhotoInput[];
  plate?: PlateInput;
  practice?: YesOrNoEntry;
  pressureTest?: PressureTestInput;
  release?: ReleaseInput;
  roomRule?: RoomRuleEntry;
  /**
   * Rooms that the circuit could leak into.
   *
   * @maxItems 20000
   */
  rooms?: JobRoomInput[];
  runCheck?: RunCheckInput;
  /**
   * Names under the record.
   *
   * @maxItems 20000
   */
  signOffs?: SignOffInput[];
  site?: TextEntry;
  technician?: TextEntry;
  version?: CountEntry;
}
/**
 * The device's clock was set while the job was open: no time passed between the two.
 */
export interface ClockChangeInput {
  after?: MomentEntry;
  before?: MomentEntry;
  id?: TextEntry;
  mayHaveSlept?: YesOrNoEntry;
}
/**
 * The evacuation.
 */
export interface EvacuationInput {
  coresOut?: YesOrNoEntry;
  hold?: VacuumHoldInput;
  pumpStarted?: MomentEntry;
  /**
   * The readings.
   *
   * @maxItems 20000
   */
  readings?: VacuumGaugeReadingInput[];
}
/**
 * What [`vacuum_hold`] asks for.
 */
export interface VacuumHoldInput {
  ambientTemperature?: TemperatureEntry;
  curvePoints?: CountEntry;
  curveUntil?: TimeEntry;
  dryPressure?: AbsolutePressureEntry;
  gaugeNoise?: RatioEntry;
  gaugeResolution?: PressureDifferenceEntry;
  gaugeUncertainty?: PressureDifferenceEntry;
  passPressure?: AbsolutePressureEntry;
  passRule?: PassRuleEntry;
  passTime?: TimeEntry;
  pumpEndPressure?: AbsolutePressureEntry;
  /**
   * Readings of the vacuum gauge after the pump was valved off, in order of time.
   *
   * @maxItems 20000
   */
  readings?: VacuumReadingInput[];
  volume?: VolumeEntry;
}
/**
 * One reading.
 */
export interface VacuumReadingInput {
  pressure?: AbsolutePressureEntry;
  time?: TimeEntry;
}
/**
 * A reading of the vacuum gauge.
 */
export interface VacuumGaugeReadingInput {
  at?: MomentEntry;
  id?: TextEntry;
  pressure?: AbsolutePressureEntry;
  valvedOff?: YesOrNoEntry;
}
/**
 * The instruments used.
 */
export interface InstrumentsInput {
  caliper?: CaliperInput;
  gauge?: GaugeInput;
  scale?: ScaleInput;
  thermometer?: ThermometerInput;
  vacuumGauge?: GaugeInput;
  wrench?: WrenchInput;
}
/**
 * A caliper.
 */
export interface CaliperInput {
  calibrated?: MomentEntry;
  name?: TextEntry;
  uncertainty?: LengthEntry;
}
/**
 * A gauge.
 */
export interface GaugeInput {
  calibrated?: MomentEntry;
  name?: TextEntry;
  resolution?: PressureDifferenceEntry;
  uncertainty?: PressureDifferenceEntry;
}
/**
 * A scale.
 */
export interface ScaleInput {
  calibrated?: MomentEntry;
  name?: TextEntry;
  resolution?: MassEntry;
  uncertainty?: MassEntry;
}
/**
 * A thermometer.
 */
export interface ThermometerInput {
  calibrated?: MomentEntry;
  name?: TextEntry;
  resolution?: TemperatureDifferenceEntry;
  uncertainty?: TemperatureDifferenceEntry;
}
/**
 * A torque wrench and its offset adapter.
 */
export interface WrenchInput {
  adapterAngle?: AngleEntry;
  adapterLength?: LengthEntry;
  calibrated?: MomentEntry;
  name?: TextEntry;
  wrenchAccuracy?: RatioEntry;
  wrenchLength?: LengthEntry;
  wrenchRange?: TorqueBandEntry;
}
/**
 * What is recorded of a joint: one of the plan by its id, or one of its own.
 */
export interface JointInput {
  id?: TextEntry;
  kind?: JointKindEntry;
  leakLook?: LeakLookEntry;
  line?: JointLineEntry;
  looked?: MomentEntry;
  made?: MomentEntry;
  measuredCone?: LengthEntry;
  name?: TextEntry;
  note?: TextEntry;
  oiled?: YesOrNoEntry;
  order?: JointOrderEntry;
  plateTorque?: TorqueBandEntry;
  /**
   * Earlier attempts.
   *
   * @maxItems 20000
   */
  remade?: RemadeInput[];
  removed?: YesOrNoEntry;
  scaleTorque?: TorqueEntry;
  tightened?: MomentEntry;
  tube?: LengthEntry;
  withAdapter?: YesOrNoEntry;
}
/**
 * An earlier attempt at a joint, as it was recorded.
 */
export interface RemadeInput {
  at?: MomentEntry;
  id?: TextEntry;
  leakLook?: LeakLookEntry;
  measuredCone?: LengthEntry;
  reason?: TextEntry;
  scaleTorque?: TorqueEntry;
}
/**
 * The two lines and how they run.
 */
export interface LinesInput {
  /**
   * What takes refrigerant of its own: filters, receivers.
   *
   * @maxItems 20000
   */
  accessories?: JobAccessoryInput[];
  gasLine?: JobLineInput;
  higherUnit?: HigherUnitEntry;
  length?: LengthEntry;
  lift?: LengthEntry;
  liquidLine?: JobLineInput;
}
/**
 * What takes refrigerant of its own.
 */
export interface JobAccessoryInput {
  id?: TextEntry;
  mass?: MassEntry;
  name?: TextEntry;
}
/**
 * One of the two lines.
 */
export interface JobLineInput {
  brazedCouplings?: CountEntry;
  /**
   * Ports of the indoor unit, where they are not one of the line's own size.
   *
   * @maxItems 20000
   */
  indoorPorts?: UnitPortInput[];
  /**
   * Ports of the outdoor unit, where they are not one of the line's own size.
   *
   * @maxItems 20000
   */
  outdoorPorts?: UnitPortInput[];
  tube?: LengthEntry;
  tubeSeries?: TubeSeriesEntry;
  unions?: CountEntry;
  wall?: LengthEntry;
}
/**
 * A port of a unit. One port of another size than the line takes an adapter; several are joined into the line.
 */
export interface UnitPortInput {
  id?: TextEntry;
  tube?: LengthEntry;
}
/**
 * A note.
 */
export interface NoteInput {
  at?: MomentEntry;
  id?: TextEntry;
  stage?: StageEntry;
  text?: TextEntry;
}
/**
 * Why a rule was broken, said by somebody.
 */
export interface OverrideInput {
  at?: MomentEntry;
  by?: TextEntry;
  id?: TextEntry;
  reason?: TextEntry;
  rule?: OrderRuleEntry;
}
/**
 * A thing of the bring list that is in the van.
 */
export interface PackedInput {
  id?: TextEntry;
  packed?: YesOrNoEntry;
}
/**
 * A photo.
 */
export interface PhotoInput {
  at?: MomentEntry;
  caption?: TextEntry;
  id?: TextEntry;
  stage?: StageEntry;
}
/**
 * What the equipment's plate and instructions say.
 */
export interface PlateInput {
  arrives?: ArrivalEntry;
  designPressure?: GaugePressureEntry;
  equipment?: TextEntry;
  longestLength?: LengthEntry;
  longestLift?: LengthEntry;
  lowestRating?: GaugePressureEntry;
  plateAdder?: MassPerLengthEntry;
  plateCharge?: MassEntry;
  plateReduction?: MassPerLengthEntry;
  plateTestPressure?: GaugePressureEntry;
  prechargedLength?: LengthEntry;
  refrigerant?: RefrigerantEntry;
}
/**
 * The pressure test.
 */
export interface PressureTestInput {
  /**
   * The readings.
   *
   * @maxItems 20000
   */
  readings?: GaugeReadingInput[];
  test?: StandingTestInput;
}
/**
 * A reading of the pressure gauge.
 */
export interface GaugeReadingInput {
  ambientTemperature?: TemperatureEntry;
  at?: MomentEntry;
  barometer?: AbsolutePressureEntry;
  gaugePressure?: GaugePressureEntry;
  holdBegins?: YesOrNoEntry;
  id?: TextEntry;
  temperature?: TemperatureEntry;
}
/**
 * What [`standing_test`] asks for. Nothing is required: what is entered is answered.
 */
export interface StandingTestInput {
  altitude?: AltitudeEntry;
  barometer?: AbsolutePressureEntry;
  cylinderPressure?: GaugePressureEntry;
  cylinderVolume?: VolumeEntry;
  designPressure?: GaugePressureEntry;
  gaugeResolution?: PressureDifferenceEntry;
  gaugeUncertainty?: PressureDifferenceEntry;
  leakToSee?: PressureRateEntry;
  lowestRating?: GaugePressureEntry;
  plateTestPressure?: GaugePressureEntry;
  /**
   * Readings of the hold, in order of time, the first one after filling.
   *
   * @maxItems 20000
   */
  readings?: HoldReadingInput[];
  refrigerant?: RefrigerantEntry;
  testRule?: PressureTestRuleEntry;
  thermometerUncertainty?: TemperatureDifferenceEntry;
  volume?: VolumeEntry;
}
/**
 * One reading of a pressure hold.
 */
export interface HoldReadingInput {
  ambientTemperature?: TemperatureEntry;
  barometer?: AbsolutePressureEntry;
  gaugePressure?: GaugePressureEntry;
  temperature?: TemperatureEntry;
  time?: TimeEntry;
}
/**
 * Release and charge.
 */
export interface ReleaseInput {
  ambientTemperature?: TemperatureEntry;
  charge?: ChargeInput;
  gasValveOpened?: MomentEntry;
  gaugePressure?: GaugePressureEntry;
  liquidValveOpened?: MomentEntry;
}
/**
 * A room that the circuit could leak into.
 */
export interface JobRoomInput {
  area?: AreaEntry;
  height?: LengthEntry;
  id?: TextEntry;
  mounting?: MountingEntry;
  name?: TextEntry;
  releaseHeight?: LengthEntry;
}
/**
 * The check of the running unit.
 */
export interface RunCheckInput {
  at?: MomentEntry;
  readings?: RunningInput;
}
/**
 * What [`running`] asks for: as much as was measured; each part of the answer needs its own few fields.
 */
export interface RunningInput {
  airflow?: VolumeFlowEntry;
  airflowChecked?: YesOrNoEntry;
  airflowUncertainty?: RatioEntry;
  altitude?: AltitudeEntry;
  barometer?: AbsolutePressureEntry;
  condensingDifferenceBand?: TemperatureDifferenceBandEntry;
  dischargeGaugePressure?: GaugePressureEntry;
  evaporatingDifferenceBand?: TemperatureDifferenceBandEntry;
  humidityUncertainty?: RatioEntry;
  liquidGaugePressure?: GaugePressureEntry;
  liquidGaugeUncertainty?: PressureDifferenceEntry;
  liquidLineTemperature?: TemperatureEntry;
  meteringDevice?: MeteringDeviceEntry;
  mode?: RunningModeEntry;
  outdoorDryBulb?: TemperatureEntry;
  plateCapacity?: PowerEntry;
  plateSubcooling?: TemperatureDifferenceBandEntry;
  plateSuperheat?: TemperatureDifferenceBandEntry;
  refrigerant?: RefrigerantEntry;
  returnDryBulb?: TemperatureEntry;
  returnRelativeHumidity?: RatioEntry;
  returnWetBulb?: TemperatureEntry;
  runningTime?: TimeEntry;
  suctionGaugePressure?: GaugePressureEntry;
  suctionGaugeUncertainty?: PressureDifferenceEntry;
  suctionLineTemperature?: TemperatureEntry;
  supplyDryBulb?: TemperatureEntry;
  supplyRelativeHumidity?: RatioEntry;
  supplyWetBulb?: TemperatureEntry;
  targetSplit?: TemperatureDifferenceBandEntry;
  thermometerUncertainty?: TemperatureDifferenceEntry;
}
/**
 * A name under the record.
 */
export interface SignOffInput {
  at?: MomentEntry;
  id?: TextEntry;
  name?: TextEntry;
  role?: TextEntry;
}
/**
 * What [`line_set`](super::line_set) finds.
 */
export interface LineSetAnswer {
  /**
   * What flows in cooling; absent if `cooling` was not entered.
   */
  cooling?: Duty | null;
  /**
   * What flows in heating; absent if `heating` was not entered.
   */
  heating?: Duty | null;
  limits: PlateLimits;
  /**
   * The liquid line's tube; absent if it was not entered.
   */
  liquidLine?: RefrigerantLine | null;
  refrigerant: Refrigerant;
  /**
   * Height of the outdoor unit above the indoor one, negative below it; absent without a lift and the
   * higher unit.
   */
  rise?: Length | null;
  /**
   * Where the refrigerant's properties come from.
   */
  sources: SourceId[];
  /**
   * The gas line's tube; absent if it was not entered.
   */
  suctionLine?: RefrigerantLine | null;
}
/**
 * What flows in one way of running, at full capacity.
 */
export interface Duty {
  capacity: Power;
  /**
   * Capacity with the suction line's friction over that without, at constant displacement. Absent
   * in heating, where the suction line stays inside the outdoor unit.
   */
  capacityRatio?: Ratio | null;
  /**
   * Superheat taken for the discharge gas, and whether it was entered; absent in cooling.
   */
  dischargeSuperheat?: SourcedTemperatureDifference | null;
  effect: SpecificEnthalpy;
  /**
   * Subcooling left at the expansion device, at the end of the liquid line: at least 0 is in band.
   * Absent where the static head or the line's friction is not known, or the data do not reach.
   */
  flashMargin?: Judgement6 | null;
  gas: Vapour;
  /**
   * Flow in the liquid line; absent without that line.
   */
  liquidLine?: LineFlow | null;
  liquidTemperature: Temperature;
  massFlow: MassFlow;
  /**
   * Whether oil climbs with the gas; absent where the gas line does not rise, or it is not known.
   */
  oilReturn?: OilReturn | null;
  /**
   * Pressure that the liquid loses by climbing, negative where it gains by falling; absent without a
   * lift and the higher unit.
   */
  staticHead?: PressureDifference | null;
  /**
   * Flow in the gas line: suction gas in cooling, discharge gas in heating; absent without that line.
   */
  suctionLine?: LineFlow | null;
  /**
   * The working, besides that of each line.
   */
  working: Step[];
}
/**
 * A figure and where it comes from.
 */
export interface SourcedTemperatureDifference {
  figure: TemperatureDifference;
  source: SourceId;
}
/**
 * A state of superheated vapour.
 */
export interface Vapour {
  density: Density;
  dewTemperature: Temperature;
  enthalpy: SpecificEnthalpy;
  pressure: AbsolutePressure;
  superheat: TemperatureDifference;
  temperature: Temperature;
}
/**
 * Flow in a line.
 */
export interface LineFlow {
  density: Density;
  /**
   * Fall of pressure by friction; absent without a length.
   */
  frictionDrop?: PressureDifference | null;
  /**
   * How the velocity stands to what is recommended for suction gas, 4.5 to 20 m/s; absent for liquid and
   * in heating.
   */
  recommendedVelocity?: Judgement5 | null;
  regime: Regime;
  /**
   * Reynolds number.
   */
  reynolds: number;
  /**
   * The same as kelvins of saturation temperature; absent without a length, or where the data do not reach.
   */
  saturationDrop?: TemperatureDifference | null;
  velocity: Velocity;
  viscosity: DynamicViscosity;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * A verdict on a figure.
 */
export interface Judgement5 {
  figure: Velocity;
  limit: Velocity;
  margin: Velocity;
  uncertainty: Velocity;
  verdict: Verdict;
}
/**
 * Oil in a riser of the gas line.
 */
export interface OilReturn {
  atFullCapacity: Judgement5;
  /**
   * Velocity at the least capacity; absent if none was entered.
   */
  atLeastCapacity?: Judgement5 | null;
  leastCapacity: Power;
  leastMassFlow: MassFlow;
  leastVelocity: Velocity;
  oilDensity: SourcedDensity;
}
/**
 * How the lines stand to the plate's limits: below the limit is in band. Each is absent unless both the
 * figure and the limit were entered. What was measured is taken as exact.
 */
export interface PlateLimits {
  /**
   * Length of the longer line, without fittings.
   */
  length?: Judgement2 | null;
  /**
   * Lift.
   */
  lift?: Judgement2 | null;
  /**
   * Length of the longer line against what the factory charge is enough for; beyond it, refrigerant is added.
   */
  prechargedLength?: Judgement2 | null;
}
/**
 * The tube of a line.
 */
export interface RefrigerantLine {
  bore: Length;
  /**
   * Straight tube and fittings together; absent without a length.
   */
  equivalentLength?: Length | null;
  fittingsLength: Length;
  /**
   * Its length without fittings, as entered.
   */
  length?: Length | null;
  /**
   * Name of the size; absent if it is in no table or a bore was entered.
   */
  name?: string | null;
  /**
   * Outside diameter; absent if a bore was entered.
   */
  outsideDiameter?: Length | null;
  /**
   * The ports joined into it; absent if there are none.
   */
  ports?: JoinedPorts | null;
  /**
   * What the tube bears, against the design pressure if one was entered; absent if a bore was entered.
   */
  rating?: Rating | null;
  /**
   * The working.
   */
  working: Step[];
}
/**
 * Smaller tubes joined into one line.
 */
export interface JoinedPorts {
  area: Area;
  lineArea: Area;
  ratio: Judgement4;
}
/**
 * A verdict on a figure.
 */
export interface Judgement4 {
  figure: Ratio;
  limit: Ratio;
  margin: Ratio;
  uncertainty: Ratio;
  verdict: Verdict;
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
 * What [`line_set`](super::line_set) asks for. At least one of `cooling` and `heating` is required.
 */
export interface LineSetInput {
  cooling?: CoolingDutyInput;
  designPressure?: GaugePressureEntry;
  heating?: HeatingDutyInput;
  higherUnit?: HigherUnitEntry;
  leastCapacity?: RatioEntry;
  lift?: LengthEntry;
  liquidLine?: RefrigerantLineInput;
  longestLength?: LengthEntry;
  longestLift?: LengthEntry;
  oilDensity?: DensityEntry;
  prechargedLength?: LengthEntry;
  refrigerant?: RefrigerantEntry;
  suctionLine?: RefrigerantLineInput;
  tubeTemperature?: TemperatureEntry;
}
/**
 * The unit cooling.
 */
export interface CoolingDutyInput {
  capacity?: PowerEntry;
  condensingTemperature?: TemperatureEntry;
  evaporatingTemperature?: TemperatureEntry;
  subcooling?: TemperatureDifferenceEntry;
  superheat?: TemperatureDifferenceEntry;
}
/**
 * The unit heating.
 */
export interface HeatingDutyInput {
  capacity?: PowerEntry;
  condensingTemperature?: TemperatureEntry;
  dischargeSuperheat?: TemperatureDifferenceEntry;
  subcooling?: TemperatureDifferenceEntry;
}
/**
 * One of the two lines. Exactly one of `tube` and `bore` is required.
 */
export interface RefrigerantLineInput {
  bore?: LengthEntry;
  elbows45?: CountEntry;
  elbows90?: CountEntry;
  length?: LengthEntry;
  /**
   * The tubes of a unit's smaller ports that are joined into this line, one entry a port.
   *
   * @maxItems 20000
   */
  ports?: PortTubeInput[];
  teeBranches?: CountEntry;
  teeRuns?: CountEntry;
  tube?: LengthEntry;
  tubeSeries?: TubeSeriesEntry;
  wall?: LengthEntry;
}
/**
 * The tube of a port. Exactly one of `tube` and `bore` is required.
 */
export interface PortTubeInput {
  bore?: LengthEntry;
  tube?: LengthEntry;
  tubeSeries?: TubeSeriesEntry;
  wall?: LengthEntry;
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
 * What [`room_limit`] asks for.
 */
export interface RoomLimitInput {
  charge?: MassEntry;
  chargeUncertainty?: MassEntry;
  concentrationLimit?: DensityEntry;
  lowerFlammabilityLimit?: DensityEntry;
  refrigerant?: RefrigerantEntry;
  /**
   * Rooms that the circuit could leak into, each of which must bear the whole charge; at least one unless `charge` is entered.
   *
   * @maxItems 20000
   */
  rooms?: OccupiedRoomInput[];
  rule?: RoomRuleEntry;
  safetyClass?: SafetyClassEntry;
}
/**
 * A room that people are in.
 */
export interface OccupiedRoomInput {
  area?: AreaEntry;
  height?: LengthEntry;
  mounting?: MountingEntry;
  name?: TextEntry;
  releaseHeight?: LengthEntry;
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
export interface SourcedFlareClass {
  figure: FlareClass;
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
  accuracy: Ratio;
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
