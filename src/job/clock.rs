//! How long ago something was, by a clock that people set.

use serde::Serialize;

use super::document::ClockChangeInput;
use crate::calc::{Entries, Field, Reading, optional};
use crate::quantity::{Moment, Time, choice};

choice! {
    /// Why a time that passed is doubtful.
    ClockDoubt {
        /// The device's clock shows an earlier time than before: it was set back while the job was closed.
        WentBack = "clock-went-back",
        /// The clock jumped ahead while the job was open: it was set, or the device slept.
        JumpedAhead = "clock-jumped-ahead",
    }
}

/// A time that passed.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Passed {
    /// How long, every change of the clock that is known taken out; zero if the clock went back.
    pub time: Time,
    /// Why it is doubtful, if it is.
    pub doubt: Option<ClockDoubt>,
}

#[derive(Clone, Copy, Debug)]
struct Change {
    /// s
    by: f64,
    may_have_slept: bool,
}

/// What is known of the device's clock.
#[derive(Clone, Debug, Default)]
pub struct Clock(Vec<Change>);

impl Clock {
    pub(super) fn take(reading: &mut Reading, changes: &Entries<ClockChangeInput>) -> Self {
        let field = Field::named("clock_changes");
        Self(reading.each(field, changes, |reading, change| {
            let before = optional!(reading, change.before);
            let after = optional!(reading, change.after);
            let may_have_slept = optional!(reading, change.may_have_slept).unwrap_or(false);
            // A change that cannot be read still counts as one: later moments refer to it by number.
            let by = before.zip(after);
            Some(Change {
                by: by.map_or(0.0, |(before, after)| {
                    after.since_epoch() - before.since_epoch()
                }),
                may_have_slept: may_have_slept || by.is_none(),
            })
        }))
    }

    /// How long it was from one moment to another. A change back while nobody watched leaves out the time until
    /// then; one that is missing, since it was undone, is unknown.
    ///
    /// ```
    /// use coldwright::job::{Clock, ClockDoubt};
    /// use coldwright::quantity::{Enter, Moment, Time};
    /// let at = |text| Moment::from_text(text, None).unwrap();
    /// let hold = Clock::default().between(at("2026-10-25T01:30:00+02:00"), at("2026-10-25T02:30:00+01:00"));
    /// assert_eq!((hold.time, hold.doubt), (Time::seconds(7200.0), None));
    /// let back = Clock::default().between(at("2026-10-25T02:00:00Z"), at("2026-10-25T01:00:00Z"));
    /// assert_eq!((back.time, back.doubt), (Time::seconds(0.0), Some(ClockDoubt::WentBack)));
    /// ```
    pub fn between(&self, from: Moment, to: Moment) -> Passed {
        let first = usize::from(from.clock().min(to.clock()));
        let last = usize::from(from.clock().max(to.clock()));
        let changes = self.0.iter().take(last).skip(first);
        let set: f64 = changes.clone().map(|change| change.by).sum();
        let is_backwards = to.clock() < from.clock();
        let set = if is_backwards { -set } else { set };
        let passed = to.since_epoch() - from.since_epoch() - set;
        let is_missing = last > self.0.len();
        let mut unsure = changes.filter(|change| change.may_have_slept);
        let doubt = if passed < 0.0 || unsure.clone().any(|change| change.by < 0.0) {
            Some(ClockDoubt::WentBack)
        } else {
            (is_missing || unsure.next().is_some()).then_some(ClockDoubt::JumpedAhead)
        };
        Passed {
            time: Time::seconds(passed.max(0.0)),
            doubt,
        }
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::indexing_slicing)]
mod tests {
    use super::*;
    use crate::quantity::Enter;

    fn at(text: &str) -> Moment {
        Moment::from_text(text, None).unwrap()
    }

    fn change(before: &str, after: &str, may_have_slept: bool) -> ClockChangeInput {
        ClockChangeInput {
            before: at(before).into(),
            after: at(after).into(),
            may_have_slept: may_have_slept.into(),
            ..ClockChangeInput::default()
        }
    }

    fn clock(changes: Vec<ClockChangeInput>) -> Clock {
        Clock::take(&mut Reading::default(), &changes.into())
    }

    #[test]
    fn a_clock_set_back_while_it_was_watched_is_put_right() {
        let set = clock(vec![change(
            "2026-03-02T10:00:00Z",
            "2026-03-02T09:00:00Z",
            false,
        )]);
        let hold = set.between(
            at("2026-03-02T08:00:00Z"),
            at("2026-03-02T10:00:00Z[_clock=1]"),
        );
        assert_eq!((hold.time, hold.doubt), (Time::seconds(3.0 * 3600.0), None));
    }

    #[test]
    fn a_clock_set_back_unwatched_leaves_at_least_the_time_that_was_watched() {
        let set = clock(vec![change(
            "2026-03-02T10:00:00Z",
            "2026-03-02T09:00:00Z",
            true,
        )]);
        let hold = set.between(
            at("2026-03-02T08:00:00Z"),
            at("2026-03-02T09:30:00Z[_clock=1]"),
        );
        assert_eq!(hold.time, Time::seconds(2.5 * 3600.0));
        assert_eq!(hold.doubt, Some(ClockDoubt::WentBack));
        let ahead = clock(vec![change(
            "2026-03-02T10:00:00Z",
            "2026-03-02T11:00:00Z",
            true,
        )]);
        let hold = ahead.between(
            at("2026-03-02T08:00:00Z"),
            at("2026-03-02T11:30:00Z[_clock=1]"),
        );
        assert_eq!(hold.doubt, Some(ClockDoubt::JumpedAhead));
    }

    #[test]
    fn a_change_that_is_missing_makes_the_time_doubtful() {
        let hold = Clock::default().between(
            at("2026-03-02T08:00:00Z"),
            at("2026-03-02T09:00:00Z[_clock=1]"),
        );
        assert_eq!(hold.doubt, Some(ClockDoubt::JumpedAhead));
    }
}
