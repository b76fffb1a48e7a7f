//! What is expected: each bit's chance from several contexts at once, weighed by how well they told before.

use super::slots::{Slot, Slots, mixed};

/// Most contexts of one decision.
pub(super) const CONTEXTS: usize = 9;
/// Grades of how often a context was met.
const GRADES: usize = 16;

#[derive(Clone)]
pub(super) struct Model {
    slots: Slots,
    /// For each kind of decision, context and grade: how much more is given to it than at first.
    weights: Vec<i32>,
    stretched: Vec<i16>,
    /// Of the decision at hand.
    inputs: Vec<Input>,
    chance: i32,
}

#[derive(Clone, Copy)]
struct Input {
    place: usize,
    slot: Slot,
    weight: usize,
    stretched: i32,
}

/// Kinds of decisions, each with weights of its own.
pub(super) const KINDS: usize = 11;
/// What all contexts of a decision are given at first, of 65 536.
const FIRST_WEIGHTS: i32 = 90_000;
const LEARNING: i32 = 25;
/// Far beyond what any document comes to: hostile ones must not get out of the numbers.
const LARGEST_WEIGHT: i32 = 1 << 20;

impl Model {
    pub fn new() -> Self {
        Self {
            slots: Slots::new(),
            weights: vec![0; KINDS * CONTEXTS * GRADES],
            stretched: stretched(),
            inputs: Vec::with_capacity(CONTEXTS),
            chance: 0,
        }
    }

    /// The chance of a one, of 65 536, at a step of a decision of this kind.
    pub fn chance(&mut self, kind: usize, contexts: &[u32], step: u32) -> u16 {
        let first = FIRST_WEIGHTS / contexts.len().max(1) as i32;
        let mut sum = 0_i64;
        self.inputs.clear();
        for (number, context) in contexts.iter().enumerate() {
            let (place, slot) = self.slots.find(mixed(*context, step + 1));
            let grade = grade(slot.seen) + if slot.is_sure { 8 } else { 0 };
            let weight = (kind * CONTEXTS + number) * GRADES + grade;
            let stretched = self.stretched.get(usize::from(slot.chance >> 4));
            let stretched = stretched.map_or(0, |stretched| i32::from(*stretched));
            self.inputs.push(Input {
                place,
                slot,
                weight,
                stretched,
            });
            let given = first + self.weights.get(weight).copied().unwrap_or(0);
            sum += i64::from(given) * i64::from(stretched);
        }
        self.chance = squashed((sum >> 16) as i32);
        self.chance as u16
    }

    /// What it was in truth.
    pub fn learn(&mut self, bit: bool) {
        let error = (if bit { 65_535 } else { 0 }) - self.chance;
        for input in &self.inputs {
            if let Some(weight) = self.weights.get_mut(input.weight) {
                let step = (input.stretched * error / 16 * LEARNING) >> 14;
                *weight = (*weight + step).clamp(-LARGEST_WEIGHT, LARGEST_WEIGHT);
            }
            self.slots.learn(input.place, input.slot, bit);
        }
    }
}

fn grade(seen: u8) -> usize {
    match seen {
        0 => 0,
        1 => 1,
        2 => 2,
        3..=4 => 3,
        5..=8 => 4,
        9..=16 => 5,
        17..=32 => 6,
        _ => 7,
    }
}

/// 65 536 / (1 + exp(-x)) for x from -8 to 8 in steps of a half.
const LOGISTIC: [i32; 33] = [
    22, 36, 60, 98, 162, 267, 439, 720, 1_179, 1_921, 3_108, 4_971, 7_812, 11_955, 17_625, 24_743,
    32_768, 40_793, 47_911, 53_581, 57_724, 60_565, 62_428, 63_615, 64_357, 64_816, 65_097, 65_269,
    65_374, 65_438, 65_476, 65_500, 65_514,
];

/// The chance whose logarithm of odds is `odds` of 256.
fn squashed(odds: i32) -> i32 {
    let odds = odds.clamp(-2047, 2047) + 2048;
    let (knot, rest) = ((odds >> 7) as usize, odds & 127);
    let at = |knot: usize| LOGISTIC.get(knot).copied().unwrap_or(0);
    (at(knot) * (128 - rest) + at(knot + 1) * rest) >> 7
}

/// The other way round, for chances of 4096.
fn stretched() -> Vec<i16> {
    let mut odds = -2047;
    let of_chance = |chance: i32| {
        while odds < 2047 && squashed(odds) < chance * 16 + 8 {
            odds += 1;
        }
        odds as i16
    };
    (0..4096).map(of_chance).collect()
}
