//! What is taken for granted of dry, wet and leaking systems before a reading is seen.
//!
//! The ranges are common practice, no source; the saturation pressure of water, which no moisture
//! can exceed, is physics.

use super::{Cause, MICRON_A_MINUTE};

/// A span of a plateau or of a rate, how likely it is beforehand, and what a system in it suffers from.
#[derive(Clone, Copy, Debug)]
pub(super) struct Span {
    pub low: f64,
    pub high: f64,
    /// Logarithm of probability over width, but for a factor common to all.
    pub log_density: f64,
    pub cause: Cause,
}

impl Span {
    fn of((low, high): (f64, f64), mass: f64, cause: Cause) -> Self {
        Self {
            low,
            high,
            log_density: libm::log(mass / (high - low)),
            cause,
        }
    }
}

/// Share of dry systems that creep evenly; the others level off.
const CREEPING: f64 = 0.5;
/// Share of leaking systems that give off some gas besides, and so rise faster at first.
const OUTGASSING: f64 = 0.25;
/// What makes such leaks as likely as the others.
pub(super) const OUTGASSING_EVENED: f64 = (1.0 - OUTGASSING) / OUTGASSING;
/// Likelihood of moisture over that of the other two: slow moisture looks much like a small leak and
/// is the more frequent of the two.
const MOISTURE: f64 = 1.5;

/// Even rises of systems that do not leak, micron a minute.
const SLOW_RATES: [(f64, f64, f64, Cause); 10] = [
    (-1e6, -200.0, 0.002, Cause::Falling),
    (-200.0, -20.0, 0.005, Cause::Falling),
    (-20.0, -6.0, 0.01, Cause::Falling),
    (-6.0, -2.0, 0.06 * CREEPING, Cause::DryAndTight),
    (-2.0, 0.0, 0.2 * CREEPING, Cause::DryAndTight),
    (0.0, 2.0, 0.32 * CREEPING, Cause::DryAndTight),
    (2.0, 4.0, 0.22 * CREEPING, Cause::DryAndTight),
    (4.0, 7.0, 0.2 * CREEPING, Cause::DryAndTight),
    (7.0, 9.5, 0.02, Cause::SlowRise),
    (9.5, SLOWEST_LEAK, 0.02, Cause::SlowRise),
];

/// Slowest even rise that is called a leak, micron a minute.
const SLOWEST_LEAK: f64 = 12.0;
/// Ratio of the ends of a span of leaks.
const LEAK_RATIO: f64 = 1.4;
/// Spans of leaks; the last ends near 2 600 micron a minute.
const LEAK_SPANS: usize = 16;
/// Spans of leaks that are usual, up to some 500 micron a minute; larger ones show while pumping.
const USUAL_LEAK_SPANS: usize = 11;

/// Even rises: of tight systems, of leaks that give off no gas, and falls.
pub(super) fn rates() -> Vec<Span> {
    let slow = SLOW_RATES.iter().map(|(low, high, mass, cause)| {
        let ends = (low * MICRON_A_MINUTE, high * MICRON_A_MINUTE);
        Span::of(ends, *mass, *cause)
    });
    slow.chain(leaks(1.0 - OUTGASSING)).collect()
}

/// Rates of leaks that give off some gas besides.
pub(super) fn leaks_with_outgassing() -> Vec<Span> {
    leaks(OUTGASSING).collect()
}

fn leaks(share: f64) -> impl Iterator<Item = Span> {
    let weight = |place: usize| match place {
        0 => 0.5,
        LEAK_SPANS => 0.1,
        _ if place < USUAL_LEAK_SPANS => 1.0,
        _ => 0.4,
    };
    let total: f64 = (0..=LEAK_SPANS).map(weight).sum();
    let mut low = SLOWEST_LEAK * MICRON_A_MINUTE;
    (0..=LEAK_SPANS).map(move |place| {
        let high = if place == LEAK_SPANS {
            1e6 * MICRON_A_MINUTE
        } else {
            low * LEAK_RATIO
        };
        let span = Span::of((low, high), share * weight(place) / total, Cause::Leak);
        low = high;
        span
    })
}

/// Spans of plateaus below the dry limit, and of those above.
const DRY_SPANS: usize = 6;
const WET_SPANS: usize = 16;

/// Plateaus, Pa: evenly likely from the start up to the dry limit, above it nearly evenly by ratio
/// up to the highest that water can bring about.
pub(super) fn plateaus(start: f64, dry_limit: f64, highest: f64) -> Vec<Span> {
    let mut spans = Vec::with_capacity(DRY_SPANS + WET_SPANS);
    let width = (dry_limit - start) / DRY_SPANS as f64;
    if width > 0.0 {
        let mass = (1.0 - CREEPING) / DRY_SPANS as f64;
        spans.extend((0..DRY_SPANS).map(|place| {
            let low = start + width * place as f64;
            Span::of((low, low + width), mass, Cause::DryAndTight)
        }));
    }
    let lowest = dry_limit.max(start);
    if highest > lowest {
        let edge = |place: usize| {
            let part = place as f64 / WET_SPANS as f64;
            lowest * libm::pow(highest / lowest, part)
        };
        let root = |pressure: f64| pressure.sqrt().sqrt();
        let all = root(highest) - root(lowest);
        spans.extend((0..WET_SPANS).map(|place| {
            let (low, high) = (edge(place), edge(place + 1));
            let mass = MOISTURE * (root(high) - root(low)) / all;
            Span::of((low, high), mass, Cause::Moisture)
        }));
    }
    spans
}

/// Shortest and longest time constant, s.
const TIME_CONSTANTS: (f64, f64) = (60.0, 3600.0);
/// Time constants between which a plateau is usual, s; others are a third as likely.
const USUAL_TIME_CONSTANTS: (f64, f64) = (120.0, 2700.0);
const UNUSUAL: f64 = 0.3;
/// Time constants that are tried.
const TRIED: usize = 40;
/// Every how many of these are tried together with a leak.
pub(super) const WITH_LEAK: usize = 4;

/// A span of time constants, s, and how likely it is beforehand.
#[derive(Clone, Copy, Debug)]
pub(super) struct Cell {
    low: f64,
    high: f64,
    pub mass: f64,
}

impl Cell {
    /// The middle, by ratio.
    pub fn middle(&self) -> f64 {
        (self.low * self.high).sqrt()
    }

    /// Whether a time constant lies in it.
    pub fn holds(&self, constant: f64) -> bool {
        self.low <= constant && constant < self.high
    }
}

/// Time constants in equal ratios.
pub(super) fn time_constants() -> Vec<Cell> {
    let (shortest, longest) = TIME_CONSTANTS;
    let edge = |place: usize| shortest * libm::pow(longest / shortest, place as f64 / TRIED as f64);
    let mut cells: Vec<Cell> = (0..TRIED)
        .map(|place| {
            let (low, high) = (edge(place), edge(place + 1));
            let usual = low >= USUAL_TIME_CONSTANTS.0 && high <= USUAL_TIME_CONSTANTS.1;
            let mass = if usual { 1.0 } else { UNUSUAL };
            Cell { low, high, mass }
        })
        .collect();
    let total: f64 = cells.iter().map(|cell| cell.mass).sum();
    for cell in &mut cells {
        cell.mass /= total;
    }
    cells
}

/// Parts that a cell is divided into.
const PARTS: usize = 4;

/// The cells away from a time constant, and those around it divided.
pub(super) fn refined(cells: Vec<Cell>, around: f64) -> (Vec<Cell>, Vec<Cell>) {
    let own = cells.iter().find(|cell| cell.holds(around)).copied();
    let near = |cell: &Cell| {
        // Its neighbours too, whose ends touch its own but for rounding.
        own.is_some_and(|own| cell.high >= 0.999 * own.low && cell.low <= 1.001 * own.high)
    };
    let (coarse, kept): (Vec<Cell>, Vec<Cell>) = cells.into_iter().partition(near);
    let divided = coarse.into_iter().flat_map(|cell| {
        let edge = move |place: usize| {
            cell.low * libm::pow(cell.high / cell.low, place as f64 / PARTS as f64)
        };
        (0..PARTS).map(move |place| Cell {
            low: edge(place),
            high: edge(place + 1),
            mass: cell.mass / PARTS as f64,
        })
    });
    (kept, divided.collect())
}

/// Outgassing that a leaking system may show besides, micron: even steps up to this much, …
const SMALL_OUTGASSING: f64 = 600.0;
const SMALL_STEPS: usize = 12;
/// … and with this probability more, in steps of this ratio.
const LARGE: f64 = 0.1;
const LARGE_STEPS: usize = 8;
const LARGE_RATIO: f64 = 1.35;

/// Pressures that outgassing may add beside a leak, Pa, with their probability beforehand.
pub(super) fn outgassing() -> Vec<(f64, f64)> {
    let small = (0..SMALL_STEPS).map(|place| {
        let step = SMALL_OUTGASSING / SMALL_STEPS as f64;
        (
            step * (place as f64 + 0.5),
            (1.0 - LARGE) / SMALL_STEPS as f64,
        )
    });
    let large = (0..LARGE_STEPS).map(|place| {
        let ratio = libm::pow(LARGE_RATIO, place as f64 + 0.5);
        (SMALL_OUTGASSING * ratio, LARGE / LARGE_STEPS as f64)
    });
    let in_pascals = |(micron, mass)| (micron * super::MICRON, mass);
    small.chain(large).map(in_pascals).collect()
}
