//! Both sides of the refrigerant circuit: saturation at what the gauges show, and what lies above or below it.

use serde::Serialize;

use super::measured::{ErrorSource, Measured, Read};
use super::readings::{Accuracy, Readings};
use crate::calc::ambient::{Entered, gauge_step};
use crate::calc::problem::{Field, Misfit, Problem};
use crate::calc::reading::Reading;
use crate::calc::saturation_point::temperature_step;
use crate::calc::working::{Step, Working};
use crate::physics::saturation::{self, Line};
use crate::quantity::{
    AbsolutePressure, GaugePressure, PressureDifference, Quantity, Ratio, Temperature,
    TemperatureDifference,
};
use crate::tables::SourceId;
use crate::tables::refrigerants::Refrigerant;

/// Pressure of one side and where the refrigerant boils or condenses there.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct SideAnswer {
    /// Pressure above vacuum.
    pub pressure: AbsolutePressure,
    /// Evaporating temperature, on the dew line; or condensing temperature, on the bubble line.
    pub temperature: Temperature,
    /// How far that may be off, by gauge and refrigerant data.
    pub uncertainty: TemperatureDifference,
}

/// One side of the circuit.
#[derive(Clone, Debug)]
pub(super) struct Side {
    refrigerant: Refrigerant,
    line: Line,
    gauge: GaugePressure,
    pub pressure: AbsolutePressure,
    pub saturation: Temperature,
    gauge_error: PressureDifference,
}

impl Side {
    fn find(
        refrigerant: Refrigerant,
        line: Line,
        entered: &Entered,
        gauge_error: PressureDifference,
    ) -> Result<Self, Problem> {
        let saturation = saturation::temperature(refrigerant, line, entered.absolute)
            .map_err(|beyond| entered.origin.refused(beyond, "refrigerant"))?;
        Ok(Self {
            refrigerant,
            line,
            gauge: entered.gauge,
            pressure: entered.absolute,
            saturation,
            gauge_error,
        })
    }

    /// How far `other` lies above the dew line, or below the bubble line.
    pub fn beyond(&self, other: Read) -> Option<Measured> {
        let (line, refrigerant) = (self.line, self.refrigerant);
        let source = match line {
            Line::Dew => ErrorSource::SuctionGauge,
            Line::Bubble => ErrorSource::LiquidGauge,
        };
        let pressure = Read {
            si: self.pressure.si(),
            error: self.gauge_error.si(),
            source,
        };
        let law = |numbers: &[f64]| {
            let [pressure, other] = *numbers else {
                return None;
            };
            let pressure = AbsolutePressure::pascals(pressure);
            let saturation = saturation::temperature(refrigerant, line, pressure)
                .ok()?
                .si();
            Some(match line {
                Line::Dew => other - saturation,
                Line::Bubble => saturation - other,
            })
        };
        let data = refrigerant.saturation_uncertainty().figure.temperature;
        let found = Measured::by(&[pressure, other], &law)?;
        Some(found.and(ErrorSource::RefrigerantData, data.si()))
    }

    pub fn answer(&self) -> SideAnswer {
        let exact = Read {
            si: self.saturation.si(),
            error: 0.0,
            source: ErrorSource::RefrigerantData,
        };
        let uncertainty = self.beyond(exact).map_or(0.0, |found| found.uncertainty());
        SideAnswer {
            pressure: self.pressure,
            temperature: self.saturation,
            uncertainty: TemperatureDifference::kelvins(uncertainty),
        }
    }

    /// The steps to the saturation temperature.
    fn steps(&self, air: AbsolutePressure) -> [Step; 2] {
        [
            gauge_step(self.gauge, air),
            temperature_step(self.refrigerant, self.line, self.pressure, self.saturation),
        ]
    }

    /// The step that finds what lies above the dew line or below the bubble line.
    fn difference_step(&self, other: Temperature, found: &Measured) -> Step {
        let figure = TemperatureDifference::kelvins(found.figure);
        match self.line {
            Line::Dew => Step::of("step-superheat", "{Δt} = {t} − {t″}")
                .with("t", "figure-suction-line-temperature", other)
                .with("t″", "figure-dew-temperature", self.saturation)
                .gives("Δt", "figure-superheat", figure),
            Line::Bubble => Step::of("step-subcooling", "{Δt} = {t′} − {t}")
                .with("t′", "figure-bubble-temperature", self.saturation)
                .with("t", "figure-liquid-line-temperature", other)
                .gives("Δt", "figure-subcooling", figure),
        }
    }

    /// The step that finds how far that may be off.
    fn error_step(&self, found: &Measured, accuracy: &Accuracy) -> Step {
        let symbols = [
            ("u_p", "figure-gauge-share"),
            ("u_t", "figure-thermometer-share"),
            ("u_s", "figure-data-share"),
        ];
        let step = Step::of(
            "step-difference-uncertainty",
            "{u} = √({u_p}² + {u_t}² + {u_s}²)",
        );
        let shares = symbols.iter().zip(&found.shares);
        let step = shares.fold(step, |step, ((symbol, meaning), (_, share))| {
            step.with(symbol, meaning, TemperatureDifference::kelvins(*share))
        });
        let uncertainty = TemperatureDifference::kelvins(found.uncertainty());
        let step = if accuracy == &Accuracy::USUAL {
            step.from(SourceId::Title24)
        } else {
            step
        };
        step.from(self.refrigerant.saturation_uncertainty().source)
            .gives("u", "figure-uncertainty", uncertainty)
    }
}

/// Both sides, as far as they were measured.
#[derive(Clone, Debug, Default)]
pub(super) struct Circuit {
    pub suction: Option<Side>,
    pub liquid: Option<Side>,
    pub superheat: Option<Measured>,
    pub subcooling: Option<Measured>,
    pub compression_ratio: Option<Ratio>,
    pub working: Working,
}

impl Circuit {
    /// Saturation at both sides; what cannot be is told to `reading`.
    pub fn find(readings: &Readings, reading: &mut Reading) -> Self {
        let Some(refrigerant) = readings.refrigerant else {
            return Self::default();
        };
        let accuracy = readings.accuracy;
        let mut side = |entered: &Option<Entered>, line, error| {
            let side = Side::find(refrigerant, line, entered.as_ref()?, error);
            reading.accept(side)
        };
        let suction = side(&readings.suction, Line::Dew, accuracy.suction_gauge);
        let liquid = side(&readings.liquid, Line::Bubble, accuracy.liquid_gauge);
        let high = readings
            .discharge
            .or(liquid.as_ref().map(|side| side.pressure));
        if let (Some(suction), Some(entered), Some(high)) = (&suction, &readings.liquid, high)
            && (entered.absolute < suction.pressure || high < suction.pressure)
        {
            let with = Field::named("suction_gauge_pressure");
            let field = entered.origin.field.clone();
            reading.problem(Problem::misfit(field, Misfit::Impossible { with }));
        }
        let beyond = |side: &Option<Side>, temperature: Option<Temperature>, source| {
            side.as_ref()?
                .beyond(accuracy.thermometer(temperature?, source))
        };
        let mut circuit = Self {
            superheat: beyond(
                &suction,
                readings.suction_line,
                ErrorSource::SuctionThermometer,
            ),
            subcooling: beyond(
                &liquid,
                readings.liquid_line,
                ErrorSource::LiquidThermometer,
            ),
            compression_ratio: suction.as_ref().zip(high).map(|(suction, high)| {
                Ratio::of_one(high.in_pascals() / suction.pressure.in_pascals())
            }),
            suction,
            liquid,
            working: Working::new(),
        };
        circuit.working = circuit.steps(readings, high);
        circuit
    }

    fn steps(&self, readings: &Readings, high: Option<AbsolutePressure>) -> Working {
        let mut steps = Working::new();
        let sides = [
            (&self.suction, readings.suction_line, &self.superheat),
            (&self.liquid, readings.liquid_line, &self.subcooling),
        ];
        for (side, other, found) in sides {
            let Some(side) = side else {
                continue;
            };
            steps.extend(side.steps(readings.air.pressure));
            if let (Some(other), Some(found)) = (other, found) {
                steps.push(side.difference_step(other, found));
                steps.push(side.error_step(found, &readings.accuracy));
            }
        }
        if let (Some(ratio), Some(high), Some(suction)) =
            (self.compression_ratio, high, &self.suction)
        {
            steps.push(
                Step::of("step-compression-ratio", "{π} = {p₂} / {p₁}, absolute")
                    .with("p₂", "figure-high-pressure", high)
                    .with("p₁", "figure-suction-pressure", suction.pressure)
                    .gives("π", "figure-compression-ratio", ratio),
            );
        }
        steps
    }
}
