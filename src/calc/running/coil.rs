//! What the air takes up or gives off at the indoor coil, and whether there is enough of it.

use serde::Serialize;

use super::RunningMode;
use super::measured::{ErrorSource, Measured, Read};
use super::readings::Accuracy;
use super::stream::{DRY, Stream};
use crate::calc::verdict::{Judgement, judge_at_least};
use crate::calc::working::{Step, Working};
use crate::physics::moist_air::{Known, enthalpy, state};
use crate::quantity::factors::{CUBIC_METRE_PER_CUBIC_FOOT, WATT_PER_TON_OF_REFRIGERATION};
use crate::quantity::{
    AbsolutePressure, MassFlow, Power, Quantity, Ratio, Temperature, VolumeFlow,
};
use crate::tables::SourceId;

/// A figure and how far it may be off.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "terminal", schemars(rename = "Uncertain{Q}"))]
pub struct Uncertain<Q> {
    /// The figure.
    pub figure: Q,
    /// How far it may be off, either way.
    pub uncertainty: Q,
}

impl<Q: Quantity> Uncertain<Q> {
    fn of(measured: &Measured) -> Self {
        Self {
            figure: Q::from_si(measured.figure),
            uncertainty: Q::from_si(measured.uncertainty()),
        }
    }
}

/// What the indoor coil takes out of the air in cooling, or gives to it in heating.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Capacity {
    /// Mass of dry air over the coil in a time, at the return air's density.
    pub dry_air_flow: MassFlow,
    /// Heat that changes the air's temperature.
    pub sensible: Uncertain<Power>,
    /// Heat that changes its moisture; absent in heating and where a humidity is missing.
    pub latent: Option<Uncertain<Power>>,
    /// Both together; in heating the sensible heat.
    pub total: Option<Uncertain<Power>>,
    /// Sensible over total heat; absent where the total may be nothing.
    pub sensible_heat_ratio: Option<Ratio>,
    /// Total over the plate's capacity. The plate's holds at the conditions of its rating, not at these.
    pub of_plate: Option<Uncertain<Ratio>>,
    /// Whether a humidity was missing and the air was taken as dry for the sensible heat, which changes it by less than 1 %.
    pub taken_as_dry: bool,
}

/// The indoor coil and what passes it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Coil {
    pub mode: RunningMode,
    pub entering: Stream,
    pub leaving: Stream,
    pub airflow: Option<VolumeFlow>,
    pub plate: Option<Power>,
    pub pressure: AbsolutePressure,
}

/// What passes the coil, made of the five readings: both dry bulbs, both humidities, airflow.
struct Passing {
    flow: f64,
    sensible: f64,
    total: Option<f64>,
}

impl Coil {
    /// Sensible and total heat in cooling from the numbers of the readings, W; negated in heating.
    fn passing(&self, numbers: &[f64]) -> Option<Passing> {
        let [entering, leaving, wet_in, wet_out, airflow] = *numbers else {
            return None;
        };
        let dry = |celsius| {
            state(
                Known::DryBulb(Temperature::from_si(celsius)),
                DRY,
                self.pressure,
            )
            .ok()
        };
        let before = match self.entering.humidity {
            Some(_) => self.entering.state_of(entering, wet_in, self.pressure)?,
            None => dry(entering)?,
        };
        let humidity = before.humidity_ratio.si();
        let flow = airflow * before.density.si() / (1.0 + humidity);
        let after = match self.leaving.humidity {
            Some(_) if self.mode == RunningMode::Cooling => {
                Some(self.leaving.state_of(leaving, wet_out, self.pressure)?)
            }
            _ => None,
        };
        let moisture = after.map_or(before.humidity_ratio, |after| after.humidity_ratio);
        let [warm, cold] = [entering, leaving].map(|t| enthalpy(Temperature::from_si(t), moisture));
        let sensible = flow * (warm - cold).si();
        let both = after.filter(|_| self.entering.humidity.is_some());
        Some(Passing {
            flow,
            sensible,
            total: both.map(|after| flow * (before.enthalpy - after.enthalpy).si()),
        })
    }

    fn reads(&self, accuracy: &Accuracy) -> Option<[Read; 5]> {
        let nothing = Read {
            si: 0.0,
            error: 0.0,
            source: ErrorSource::Hygrometer,
        };
        let humid = |stream: Stream| {
            stream
                .reads(accuracy)
                .map_or(nothing, |[_, humidity]| humidity)
        };
        let airflow = self.airflow?.si();
        Some([
            accuracy.air(self.entering.dry_bulb?),
            accuracy.air(self.leaving.dry_bulb?),
            humid(self.entering),
            humid(self.leaving),
            Read {
                si: airflow,
                error: airflow * accuracy.airflow.si(),
                source: ErrorSource::Airflow,
            },
        ])
    }

    /// The capacity by the air, if airflow and both dry bulbs are there.
    pub fn capacity(&self, accuracy: &Accuracy) -> Option<Capacity> {
        let reads = self.reads(accuracy)?;
        let sign = self.sign();
        let by = |pick: &dyn Fn(Passing) -> Option<f64>| {
            Measured::by(&reads, &|numbers| {
                Some(sign * pick(self.passing(numbers)?)?)
            })
        };
        let sensible = by(&|passing| Some(passing.sensible))?;
        let total = match self.mode {
            RunningMode::Cooling => by(&|passing| passing.total),
            RunningMode::Heating => Some(sensible.clone()),
        };
        let latent = by(&|passing| Some(passing.total? - passing.sensible));
        let numbers = reads.map(|read| read.si);
        let of_plate = total
            .as_ref()
            .zip(self.plate)
            .map(|(total, plate)| Uncertain {
                figure: Ratio::of_one(total.figure / plate.si()),
                uncertainty: Ratio::of_one(total.uncertainty() / plate.si()),
            });
        let sure = total
            .as_ref()
            .filter(|total| total.figure > total.uncertainty());
        Some(Capacity {
            dry_air_flow: MassFlow::from_si(self.passing(&numbers)?.flow),
            sensible: Uncertain::of(&sensible),
            latent: latent.as_ref().map(Uncertain::of),
            total: total.as_ref().map(Uncertain::of),
            sensible_heat_ratio: sure.map(|total| Ratio::of_one(sensible.figure / total.figure)),
            of_plate,
            taken_as_dry: self.entering.humidity.is_none(),
        })
    }

    /// Return less supply dry bulb; in heating supply less return.
    pub fn split(&self, accuracy: &Accuracy) -> Option<Measured> {
        let (entering, leaving) = self.entering.dry_bulb.zip(self.leaving.dry_bulb)?;
        let reads = [accuracy.air(entering), accuracy.air(leaving)];
        let sign = self.sign();
        Measured::by(&reads, &|numbers| match *numbers {
            [entering, leaving] => Some(sign * (entering - leaving)),
            _ => None,
        })
    }

    /// The heat that the coil is there for counts as positive.
    fn sign(&self) -> f64 {
        if self.mode == RunningMode::Heating {
            -1.0
        } else {
            1.0
        }
    }

    /// Whether there is air enough for the charge to be judged; cooling only.
    pub fn enough(&self, accuracy: &Accuracy) -> Option<Judgement<VolumeFlow, VolumeFlow>> {
        let (airflow, plate) = self.airflow.zip(self.plate)?;
        let least = plate.si() * LEAST_AIRFLOW;
        let judged = judge_at_least(
            airflow,
            airflow * accuracy.airflow.si(),
            VolumeFlow::from_si(least),
        );
        (self.mode == RunningMode::Cooling).then_some(judged)
    }

    /// The steps to the capacity.
    pub fn steps(&self, capacity: &Capacity) -> Working {
        let (Some(entering), Some(leaving), Some(airflow)) =
            (self.entering.dry_bulb, self.leaving.dry_bulb, self.airflow)
        else {
            return Working::new();
        };
        let mut steps = Working::new();
        let humidity = |stream: Stream| {
            let [dry_bulb, humidity] = stream.numbers()?;
            stream.state_of(dry_bulb, humidity, self.pressure)
        };
        let (before, after) = (humidity(self.entering), humidity(self.leaving));
        let moisture = before.map_or(Ratio::of_one(0.0), |air| air.humidity_ratio);
        steps.push(
            Step::of(
                "step-dry-air-flow",
                "{ṁ} = {V̇}·{p} / (287.042·{t₁}·(1 + 1.607858·{W₁})), {t₁} in K",
            )
            .with("V̇", "figure-airflow", airflow)
            .with("p", "figure-air-pressure", self.pressure)
            .with("t₁", "figure-return-dry-bulb", entering)
            .with("W₁", "figure-return-humidity-ratio", moisture)
            .from(SourceId::AshraeFundamentals)
            .gives("ṁ", "figure-dry-air-flow", capacity.dry_air_flow),
        );
        let cooling = self.mode == RunningMode::Cooling;
        let moisture = after
            .filter(|_| cooling)
            .map_or(moisture, |air| air.humidity_ratio);
        steps.push(
            Step::of(
                "step-sensible-capacity",
                "{Q̇} = {ṁ}·(1006 + 1860·{W})·|{t₁} − {t₂}|",
            )
            .with("ṁ", "figure-dry-air-flow", capacity.dry_air_flow)
            .with("W", "figure-humidity-ratio", moisture)
            .with("t₁", "figure-return-dry-bulb", entering)
            .with("t₂", "figure-supply-dry-bulb", leaving)
            .from(SourceId::AshraeFundamentals)
            .gives("Q̇", "figure-sensible-capacity", capacity.sensible.figure),
        );
        if let (Some(total), Some(before), Some(after), true) =
            (capacity.total, before, after, cooling)
        {
            steps.push(
                Step::of("step-total-capacity", "{Q̇} = {ṁ}·({h₁} − {h₂})")
                    .with("ṁ", "figure-dry-air-flow", capacity.dry_air_flow)
                    .with("h₁", "figure-return-enthalpy", before.enthalpy)
                    .with("h₂", "figure-supply-enthalpy", after.enthalpy)
                    .from(SourceId::Ashrae37)
                    .gives("Q̇", "figure-total-capacity", total.figure),
            );
        }
        steps
    }
}

/// Least airflow for a capacity at which a charge can be judged, m³/s for a watt: 300 ft³/min for a
/// ton of refrigeration. California Title 24 (2008), residential appendix RA3.2.2.7.
const LEAST_AIRFLOW: f64 =
    300.0 * CUBIC_METRE_PER_CUBIC_FOOT / 60.0 / WATT_PER_TON_OF_REFRIGERATION;
