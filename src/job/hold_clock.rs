//! The clock of a hold: when it began, how long it has lasted, when it is due.

use serde::Serialize;

use super::clock::{Clock, ClockDoubt};
use crate::quantity::{Entry, Moment, Time};

/// A clock that runs from a moment on.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct HoldClock {
    /// When it began.
    pub started: Moment,
    /// How long it has been.
    pub passed: Time,
    /// How long it is to last, if that is known.
    pub lasts: Option<Time>,
    /// How much of that is still to come; zero if it is over.
    pub remaining: Option<Time>,
    /// What the clock will show when it is over; nothing once it is.
    pub due: Option<Moment>,
    /// Why these times are doubtful, if they are.
    pub doubt: Option<ClockDoubt>,
}

impl HoldClock {
    /// From `started` until `now`. What a reading in between says of the clock counts too: `doubt`.
    pub(super) fn of(
        clock: &Clock,
        started: Moment,
        now: Moment,
        lasts: Option<Time>,
        doubt: Option<ClockDoubt>,
    ) -> Self {
        let passed = clock.between(started, now);
        let remaining = lasts.map(|lasts| {
            let left = lasts.in_seconds() - passed.time.in_seconds();
            Time::seconds(left.max(0.0))
        });
        let to_come = remaining.filter(|left| *left > Time::seconds(0.0));
        Self {
            started,
            passed: passed.time,
            lasts,
            remaining,
            due: to_come.and_then(|left| now.later(left)),
            doubt: passed.doubt.or(doubt),
        }
    }
}

/// Times since the first of some moments, as a calculation asks for them.
pub(super) struct Times<'a> {
    pub clock: &'a Clock,
    pub first: Option<Moment>,
    pub last: Option<Moment>,
    pub doubt: Option<ClockDoubt>,
}

impl<'a> Times<'a> {
    pub fn of(clock: &'a Clock) -> Self {
        Self {
            clock,
            first: None,
            last: None,
            doubt: None,
        }
    }

    /// Why the time from the first moment until `now` is doubtful: a clock that shows less than at the last one
    /// was set back.
    pub fn doubt_at(&self, now: Moment) -> Option<ClockDoubt> {
        let since_last = self
            .last
            .and_then(|last| self.clock.between(last, now).doubt);
        self.doubt.or(since_last)
    }

    /// The time of the next moment.
    pub fn next(&mut self, at: &Entry<Moment>) -> Entry<Time> {
        let at = match at {
            Entry::Absent => return Entry::Absent,
            Entry::Flawed(flaw) => return Entry::Flawed(flaw.clone()),
            Entry::Read(at) => *at,
        };
        let first = *self.first.get_or_insert(at);
        let before = self.last.replace(at).unwrap_or(at);
        self.doubt = self.doubt.or(self.clock.between(before, at).doubt);
        self.clock.between(first, at).time.into()
    }
}
