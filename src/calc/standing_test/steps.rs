//! The working of a hold.

use super::hold::{Ends, HoldFigures};
use super::instruments::Instruments;
use super::loss::{BEYOND_CHANCE, Loss};
use crate::calc::ambient::gauge_step;
use crate::calc::working::Step;
use crate::physics::nitrogen::compressibility;
use crate::quantity::{AbsolutePressure, PressureRate, Ratio};
use crate::tables::SourceId;

/// From the first reading to the difference of the last.
pub(super) fn expected(
    ends: &Ends<'_>,
    expected: AbsolutePressure,
    figures: &HoldFigures,
) -> impl Iterator<Item = Step> {
    let factor = |pressure, temperature| {
        Ratio::of_one(compressibility(pressure, temperature).unwrap_or(1.0))
    };
    let filled = ends.first.absolute();
    let real = Step::of("step-real-gas-hold", "{p₂} = {p₁}·{T₂}/{T₁}·{Z₂}/{Z₁}")
        .with("p₁", "figure-first-pressure", filled)
        .with("T₁", "figure-first-temperature", ends.first.temperature)
        .with("T₂", "figure-second-temperature", ends.last.temperature)
        .with(
            "Z₁",
            "figure-compressibility",
            factor(filled, ends.first.temperature),
        )
        .with(
            "Z₂",
            "figure-compressibility",
            factor(expected, ends.last.temperature),
        )
        .from(SourceId::CoolProp)
        .from(SourceId::Span2000)
        .gives("p₂", "figure-expected-pressure", expected);
    let gauge = Step::of("step-absolute-to-gauge", "{pₑ} = {p₂} − {pₐ}")
        .with("p₂", "figure-expected-pressure", expected)
        .with("pₐ", "figure-air-pressure", ends.last.air)
        .gives(
            "pₑ",
            "figure-gauge-pressure",
            figures.expected_gauge_pressure,
        );
    let difference = Step::of("step-hold-difference", "{Δp} = {p} − {pₑ}")
        .with(
            "p",
            "figure-measured-gauge-pressure",
            figures.measured_gauge_pressure,
        )
        .with(
            "pₑ",
            "figure-gauge-pressure",
            figures.expected_gauge_pressure,
        )
        .gives("Δp", "figure-hold-difference", figures.difference);
    [
        gauge_step(ends.first.gauge, ends.first.air),
        real,
        gauge,
        difference,
    ]
    .into_iter()
}

/// From all readings that count to the loss and the least that would have shown.
pub(super) fn loss(
    loss: &Loss,
    instruments: &Instruments,
    figures: &HoldFigures,
) -> impl Iterator<Item = Step> {
    let rate = PressureRate::pascals_per_second;
    let standard = rate(loss.uncertainty);
    let slope = Step::of(
        "step-pressure-loss-rate",
        "{ṗ} = −Σ w·(t − t̄)·p / Σ w·(t − t̄)², {n}, {t}",
    )
    .with("n", "figure-hold-points", Ratio::of_one(loss.count as f64))
    .with("t", "figure-hold-duration", figures.duration)
    .gives("ṗ", "figure-pressure-loss-rate", figures.pressure_loss_rate);
    let uncertainty = Step::of(
        "step-loss-uncertainty",
        "{u}² = Σ a²·({s}·v² − {r}²/12) + u_e² / {t}², v by {r}, {u_g}, {u_T}",
    )
    .with("s", "figure-hold-scatter", Ratio::of_one(loss.scatter))
    .with("r", "figure-gauge-resolution", instruments.gauge_resolution)
    .with(
        "u_g",
        "figure-gauge-uncertainty",
        instruments.gauge_uncertainty,
    )
    .with(
        "u_T",
        "figure-thermometer-uncertainty",
        instruments.thermometer_uncertainty,
    )
    .with("t", "figure-hold-duration", figures.duration)
    .from(SourceId::GuideUncertainty)
    .from(SourceId::CommonPractice)
    .gives("u", "figure-loss-uncertainty", standard);
    let upper = Step::of("step-upper-limit", "{ṗ₁} = max({ṗ}, 0) + {k}·{u}")
        .with("ṗ", "figure-pressure-loss-rate", figures.pressure_loss_rate)
        .with("k", "figure-coverage-factor", Ratio::of_one(BEYOND_CHANCE))
        .with("u", "figure-loss-uncertainty", standard)
        .gives("ṗ₁", "figure-upper-limit", figures.upper_limit);
    let detectable = Step::of("step-least-detectable", "{ṗ₀} = {k}·{u}")
        .with("k", "figure-coverage-factor", Ratio::of_one(loss.shown()))
        .with("u", "figure-loss-uncertainty", standard)
        .gives("ṗ₀", "figure-least-detectable", figures.least_detectable);
    let time = Step::of("step-hold-to-see", "{t₀} = {t}·{ṗ₀}/{ṗₛ}")
        .with("t", "figure-hold-duration", figures.duration)
        .with("ṗ₀", "figure-least-detectable", figures.least_detectable)
        .with("ṗₛ", "figure-leak-to-see", figures.leak_to_see)
        .gives("t₀", "figure-hold-to-see", figures.hold_to_see);
    [slope, uncertainty, upper, detectable, time].into_iter()
}
