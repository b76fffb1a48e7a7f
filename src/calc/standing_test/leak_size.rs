//! How much gas a loss of pressure is, and how much refrigerant the same leak would lose.

use serde::Serialize;

use super::readings::HoldReading;
use crate::calc::working::Step;
use crate::physics::saturation::{self, Line, Phase};
use crate::quantity::{
    AbsolutePressure, Density, DynamicViscosity, LeakRate, PressureRate, Quantity,
    STANDARD_ATMOSPHERE, Temperature, Volume, YearlyLoss,
};
use crate::tables::SourceId;
use crate::tables::refrigerants::Refrigerant;

/// A leak as gas and as refrigerant.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct LeakSize {
    /// Nitrogen through the leak at the pressure of the hold; needs `volume`.
    pub nitrogen: LeakRate,
    /// Refrigerant that the same leak would lose at its dew pressure at 25 °C, if it is laminar flow
    /// through a fine channel; needs `refrigerant`.
    pub refrigerant: Option<YearlyLoss>,
}

/// Temperature at which the refrigerant stands in the circuit. Common practice, no source.
pub const STANDING_TEMPERATURE: Temperature = Temperature::celsius(25.0);

/// Viscosity of nitrogen at 25 °C and 1 bar; at 40 bar it is 2 % more. Source: CoolProp 8.0.0.
const NITROGEN_VISCOSITY: DynamicViscosity = DynamicViscosity::pascal_seconds(17.8e-6);

/// How the refrigerant passes a leak, and the nitrogen.
#[derive(Clone, Copy)]
pub(super) struct Passage {
    volume: Volume,
    held: AbsolutePressure,
    refrigerant: Option<Standing>,
}

/// Vapour of a refrigerant as it stands.
#[derive(Clone, Copy)]
struct Standing {
    pressure: AbsolutePressure,
    density: Density,
    viscosity: DynamicViscosity,
}

impl Standing {
    fn of(refrigerant: Refrigerant) -> Option<Self> {
        let at = STANDING_TEMPERATURE;
        Some(Self {
            pressure: saturation::pressure(refrigerant, Line::Dew, at).ok()?,
            density: saturation::density(refrigerant, Phase::Vapour, at).ok()?,
            viscosity: saturation::viscosity(refrigerant, Phase::Vapour, at).ok()?,
        })
    }

    /// Mass for a unit of nitrogen's throughput at `held`, kg/(Pa m³).
    fn mass_per_throughput(&self, held: AbsolutePressure) -> f64 {
        let driving = |pressure: AbsolutePressure| {
            let outside = STANDARD_ATMOSPHERE.si();
            (pressure.si() - outside) * (pressure.si() + outside)
        };
        let ratio = (driving(self.pressure) / driving(held)).max(0.0);
        ratio * (NITROGEN_VISCOSITY / self.viscosity) * self.density.si() / self.pressure.si()
    }
}

impl Passage {
    pub fn of(volume: Volume, first: &HoldReading, refrigerant: Option<Refrigerant>) -> Self {
        // Against the standard air, whatever the air of the place: the channel knows only how far above it is.
        let held = first.gauge.to_absolute(STANDARD_ATMOSPHERE);
        Self {
            volume,
            held,
            refrigerant: refrigerant.and_then(Standing::of),
        }
    }

    /// The leak that makes this loss of pressure; none for a gain.
    pub fn size(&self, loss: PressureRate) -> LeakSize {
        let throughput = loss.si().max(0.0) * self.volume.si();
        let refrigerant = self.refrigerant.map(|standing| {
            YearlyLoss::from_si(throughput * standing.mass_per_throughput(self.held))
        });
        LeakSize {
            nitrogen: LeakRate::from_si(throughput),
            refrigerant,
        }
    }

    /// The steps that find it.
    pub fn steps(&self, loss: PressureRate) -> impl Iterator<Item = Step> {
        let size = self.size(loss);
        let throughput = Step::of("step-leak-throughput", "{Q} = {V}·{ṗ}")
            .with("V", "figure-volume", self.volume)
            .with("ṗ", "figure-pressure-loss-rate", loss)
            .gives("Q", "figure-nitrogen-throughput", size.nitrogen);
        let yearly = self
            .refrigerant
            .zip(size.refrigerant)
            .map(|(standing, yearly)| {
                Step::of(
                    "step-refrigerant-loss",
                    "{ṁ} = {Q}·({pₛ}² − {pₐ}²) / ({p₁}² − {pₐ}²)·{ηₙ}/{ηᵣ}·{ρ}/{pₛ}",
                )
                .with("Q", "figure-nitrogen-throughput", size.nitrogen)
                .with("pₛ", "figure-dew-pressure", standing.pressure)
                .with("pₐ", "figure-air-pressure", STANDARD_ATMOSPHERE)
                .with("p₁", "figure-absolute-pressure", self.held)
                .with("ηₙ", "figure-nitrogen-viscosity", NITROGEN_VISCOSITY)
                .with("ηᵣ", "figure-viscosity", standing.viscosity)
                .with("ρ", "figure-density", standing.density)
                .from(SourceId::PoiseuilleLeak)
                .from(SourceId::NitrogenViscosity)
                .gives("ṁ", "figure-refrigerant-loss", yearly)
            });
        core::iter::once(throughput).chain(yearly)
    }
}
