//! What is taken for granted of dry, wet and leaking systems before a reading is seen.
//!
//! The ranges are common practice, no source; the saturation pressure of water, which no moisture
//! can exceed, is physics.

use super::{Cause, MICRON, MICRON_A_MINUTE};

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
    (FASTEST_FALL, -200.0, 0.002, Cause::Falling),
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

/// Fastest fall, and rise, that is thought of, micron a minute.
const FASTEST_FALL: f64 = -1e6;
/// Slowest even rise that is called a leak, micron a minute.
const SLOWEST_LEAK: f64 = 12.0;
/// Ratio of the ends of a span of leaks.
const LEAK_RATIO: f64 = 1.4;
/// Spans of leaks; the last ends near 2 600 micron a minute.
const LEAK_SPANS: usize = 16;
/// Spans of leaks that are usual, up to some 500 micron a minute; larger ones show while pumping.
const USUAL_LEAK_SPANS: usize = 11;
/// Sum of the weights of all spans of leaks.
const ALL_LEAK_WEIGHTS: f64 = 0.5 + 10.0 + 5.0 * 0.4 + 0.1;

/// Even rises: of tight systems, of leaks that give off no gas, and falls.
pub(super) fn rates() -> Vec<Span> {
    let mut spans = leaks(1.0 - OUTGASSING);
    for (low, high, mass, cause) in SLOW_RATES {
        let ends = (low * MICRON_A_MINUTE, high * MICRON_A_MINUTE);
        spans.push(Span::of(ends, mass, cause));
    }
    spans
}

/// Rates of leaks that give off some gas besides.
pub(super) fn leaks_with_outgassing() -> Vec<Span> {
    leaks(OUTGASSING)
}

fn leaks(share: f64) -> Vec<Span> {
    let mut spans = Vec::with_capacity(2 * LEAK_SPANS);
    let mut low = SLOWEST_LEAK * MICRON_A_MINUTE;
    for place in 0..=LEAK_SPANS {
        let (weight, high) = match place {
            0 => (0.5, low * LEAK_RATIO),
            LEAK_SPANS => (0.1, -FASTEST_FALL * MICRON_A_MINUTE),
            _ if place < USUAL_LEAK_SPANS => (1.0, low * LEAK_RATIO),
            _ => (0.4, low * LEAK_RATIO),
        };
        let mass = share * weight / ALL_LEAK_WEIGHTS;
        spans.push(Span::of((low, high), mass, Cause::Leak));
        low = high;
    }
    spans
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
        for place in 0..DRY_SPANS {
            let low = start + width * place as f64;
            spans.push(Span::of((low, low + width), mass, Cause::DryAndTight));
        }
    }
    let lowest = dry_limit.max(start);
    if highest > lowest {
        // Even in the fourth root of the pressure.
        let root = |pressure: f64| pressure.sqrt().sqrt();
        let (first, step) = (
            root(lowest),
            (root(highest) - root(lowest)) / WET_SPANS as f64,
        );
        let edge = |place: usize| {
            let square = first + step * place as f64;
            let square = square * square;
            square * square
        };
        for place in 0..WET_SPANS {
            let ends = (edge(place), edge(place + 1));
            spans.push(Span::of(ends, MOISTURE / WET_SPANS as f64, Cause::Moisture));
        }
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
    /// Whether its middle has been tried.
    pub is_tried: bool,
}

impl Cell {
    /// The middle, by ratio.
    pub fn middle(&self) -> f64 {
        (self.low * self.high).sqrt()
    }
}

/// Time constants in equal ratios.
pub(super) fn time_constants() -> Vec<Cell> {
    let (mut low, longest) = TIME_CONSTANTS;
    let ratio = libm::exp(libm::log(longest / low) / TRIED as f64);
    let mut cells = Vec::with_capacity(2 * TRIED);
    for _ in 0..TRIED {
        let high = low * ratio;
        let usual = low >= USUAL_TIME_CONSTANTS.0 && high <= USUAL_TIME_CONSTANTS.1;
        cells.push(Cell {
            low,
            high,
            mass: if usual { 1.0 } else { UNUSUAL } / TRIED as f64,
            is_tried: false,
        });
        low = high;
    }
    cells
}

/// Parts that a cell is divided into.
const PARTS: usize = 4;

/// Divides the cells around a time constant; what they reached from and to.
pub(super) fn divide(cells: &mut Vec<Cell>, around: f64) -> (f64, f64) {
    let mut near = (around, around);
    for cell in cells.iter() {
        if cell.low <= around && around < cell.high {
            // The cells beside it too, which are about as wide.
            let ratio = cell.high / cell.low;
            near = (0.999 * cell.low / ratio, 1.001 * cell.high * ratio);
        }
    }
    let (mut from, mut to) = (around, around);
    for place in (0..cells.len()).rev() {
        let cell = match cells.get(place) {
            Some(cell) if cell.low >= near.0 && cell.high <= near.1 => *cell,
            _ => continue,
        };
        cells.swap_remove(place);
        from = cell.low.min(from);
        to = cell.high.max(to);
        let ratio = (cell.high / cell.low).sqrt().sqrt();
        let mut low = cell.low;
        for _ in 0..PARTS {
            cells.push(Cell {
                low,
                high: low * ratio,
                mass: cell.mass / PARTS as f64,
                is_tried: false,
            });
            low *= ratio;
        }
    }
    (from, to)
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
    let mut added = Vec::with_capacity(SMALL_STEPS + LARGE_STEPS);
    let step = SMALL_OUTGASSING * MICRON / SMALL_STEPS as f64;
    for place in 0..SMALL_STEPS {
        added.push((
            step * (place as f64 + 0.5),
            (1.0 - LARGE) / SMALL_STEPS as f64,
        ));
    }
    let mut large = SMALL_OUTGASSING * MICRON * LARGE_RATIO.sqrt();
    for _ in 0..LARGE_STEPS {
        added.push((large, LARGE / LARGE_STEPS as f64));
        large *= LARGE_RATIO;
    }
    added
}
