//! How often a tight system is called leaking, and how often a leak of twice the stated least detectable is found.

use coldwright::calc::standing_test::HoldVerdict;

use crate::simulated::{Dice, Scene};

/// Holds of each kind; the debug build is slow.
const HOLDS: usize = if cfg!(debug_assertions) { 500 } else { 10_000 };

/// Out of all holds of a kind.
#[derive(Default)]
struct Tally {
    called_losing: usize,
    called_tight: usize,
    leaks: usize,
    found: usize,
}

impl Tally {
    fn of(dice: &mut Dice, roll: impl Fn(&mut Dice) -> Scene) -> Self {
        let mut tally = Self::default();
        for _ in 0..HOLDS {
            let scene = roll(dice);
            let answer = scene.answer(dice, 0.0);
            tally.called_losing += usize::from(answer.verdict == HoldVerdict::LosingGas);
            tally.called_tight += usize::from(answer.verdict == HoldVerdict::Tight);
            let Some(hold) = answer.hold else {
                continue;
            };
            let loss = 2.0 * hold.least_detectable.in_pascals_per_second();
            tally.leaks += 1;
            let leaking = scene.answer(dice, loss);
            tally.found += usize::from(leaking.verdict == HoldVerdict::LosingGas);
        }
        tally
    }

    fn print(&self, what: &str) {
        let percent = |part: usize, whole: usize| 100.0 * part as f64 / whole as f64;
        println!(
            "{what}: of {HOLDS} tight holds {:.2} % called losing gas, {:.1} % called tight; \
             of {} leaks of twice the least detectable {:.2} % found",
            percent(self.called_losing, HOLDS),
            percent(self.called_tight, HOLDS),
            self.leaks,
            percent(self.found, self.leaks),
        );
    }

    fn assert_rates(&self) {
        assert!(
            self.leaks * 100 >= HOLDS * 99,
            "nearly every hold states what it could see"
        );
        assert!(self.called_losing * 100 <= HOLDS, "false alarms");
        assert!(self.found * 100 >= self.leaks * 99, "leaks found");
    }
}

#[track_caller]
fn holds(what: &str, seed: u64, roll: impl Fn(&mut Dice) -> Scene) -> Tally {
    let tally = Tally::of(&mut Dice(seed), roll);
    tally.print(what);
    tally.assert_rates();
    tally
}

#[test]
fn plain_holds() {
    holds("plain", 1, Scene::plain);
}

#[test]
fn vented_cores_do_not_fool_it() {
    holds("vented", 2, |dice| Scene::with_mishap(dice, Scene::vented));
}

#[test]
fn warm_nitrogen_does_not_fool_it() {
    holds("warm-up", 3, |dice| {
        Scene::with_mishap(dice, Scene::warm_up)
    });
}

#[test]
fn nitrogen_that_lags_does_not_fool_it() {
    holds("lagging", 4, |dice| Scene::with_mishap(dice, Scene::lags));
}

#[test]
fn two_readings_are_enough_for_a_day() {
    let tally = holds("two readings over a day or two", 5, |dice| {
        let mut scene = Scene::plain(dice);
        scene.count = 2;
        scene.hours = 24.0 * if scene.hours < 12.0 { 1.0 } else { 2.0 };
        scene
    });
    assert!(
        tally.called_tight * 10 >= HOLDS * 7,
        "most tight holds are told"
    );
}

#[test]
fn logged_nights_mostly_get_a_verdict() {
    let tally = holds("25 readings over 12 to 48 h", 6, |dice| {
        let mut scene = Scene::plain(dice);
        scene.count = 25;
        scene.hours = scene.hours.max(12.0);
        scene
    });
    assert!(
        tally.called_tight * 10 >= HOLDS * 7,
        "most tight holds are told"
    );
}
