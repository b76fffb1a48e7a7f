//! The working of a hold.

use super::answer::{LeakFound, Level};
use super::finding::Finding;
use super::law::Fit;
use super::{Hold, Shape};
use crate::calc::water_saturation::{pressure_step, temperature_step};
use crate::calc::working::{Step, Unfinished, Working};
use crate::quantity::{AbsolutePressure, Ratio, Time};
use crate::tables::SourceId;

impl Hold {
    /// Water's pressure at the ambient temperature, the likelier law at the last reading, its
    /// probability, and what follows from it.
    pub fn working(
        &self,
        finding: &Finding,
        fits: &[Fit],
        plateau: Option<&Level>,
        leak: Option<&LeakFound>,
    ) -> Working {
        let mut steps = vec![pressure_step(self.ambient, self.saturation)];
        let likelier = |one: &&Fit, other: &&Fit| {
            one.probability
                .in_one()
                .total_cmp(&other.probability.in_one())
        };
        if let Some(fit) = fits.iter().max_by(likelier) {
            steps.push(law_step(fit, self.record.held));
            let step = Step::of(
                "step-cause",
                "{P} = L / Σ L, L = ∫ exp(−½·Σ(({p} − p(t)) / u)²) over all p₀, p∞, τ, r; u² = ({s}·p)² + {d}² / 12",
            );
            let scatter = self.noises.iter().copied().fold(0.0, f64::max);
            let resolution = AbsolutePressure::pascals(self.record.resolution);
            steps.push(
                step.with("s", "figure-most-scatter", Ratio::of_one(scatter))
                    .with("d", "figure-gauge-step", resolution)
                    .from(SourceId::Jeffreys1939)
                    .from(SourceId::CommonPractice)
                    .gives(
                        "P",
                        "figure-probability",
                        Ratio::of_one(finding.probability),
                    ),
            );
        }
        if let Some(level) = plateau
            && let Some(temperature) = level.water_temperature
        {
            steps.push(temperature_step(level.pressure, temperature));
        }
        if let (Some(leak), Some(volume)) = (leak, self.volume)
            && let Some(gas) = leak.gas
        {
            let step = Step::of("step-leak-gas", "{Q} = {V}·{r}")
                .with("V", "figure-volume", volume)
                .with("r", "figure-rise-rate", leak.rate)
                .from(SourceId::VacuumTechnology);
            steps.push(step.gives("Q", "figure-leak-rate", gas));
        }
        steps
    }
}

fn law_step(fit: &Fit, held: f64) -> Step {
    let start = |step: Unfinished| step.with("p₀", "figure-start-pressure", fit.start);
    let step = match fit.law {
        Shape::LinearRise => start(Step::of("step-even-rise", "{p} = {p₀} + {r}·{t}")),
        Shape::Plateau => start(Step::of(
            "step-levelling",
            "{p} = {p∞} − ({p∞} − {p₀})·exp(−{t} / {τ})",
        )),
        Shape::PlateauAndLinearRise => start(Step::of(
            "step-levelling-and-rise",
            "{p} = {p∞} − ({p∞} − {p₀})·exp(−{t} / {τ}) + {r}·{t}",
        )),
    };
    let step = match fit.plateau {
        Some(plateau) => step.with("p∞", "figure-plateau", plateau),
        None => step,
    };
    let step = match fit.time_constant {
        Some(constant) => step.with("τ", "figure-time-constant", constant),
        None => step,
    };
    let step = match fit.rate {
        Some(rate) => step.with("r", "figure-rise-rate", rate),
        None => step,
    };
    step.with("t", "figure-time", Time::seconds(held)).gives(
        "p",
        "figure-fitted-pressure",
        fit.at(held),
    )
}
