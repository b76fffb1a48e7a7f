//! Moments as they stand in documents: taken apart into numbers where nothing of the text is lost.

use crate::quantity::{Enter, Moment};

/// What of a moment is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Fineness {
    Day = 0,
    Second = 1,
    Millisecond = 2,
}

impl Fineness {
    pub fn of(number: u32) -> Option<Self> {
        [Self::Day, Self::Second, Self::Millisecond]
            .into_iter()
            .find(|fineness| *fineness as u32 == number)
    }
}

/// A moment of universal time as a document has it: `2026-11-10`, `2026-11-25T20:34:21.500Z[_clock=1]`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct WrittenMoment {
    pub fineness: Fineness,
    /// Minutes since 1970 began.
    pub minute: i64,
    pub second: u32,
    pub millisecond: u32,
    pub clock: u16,
}

const DAY: &str = "2026-11-10";
const SECOND: &str = "2026-11-25T20:34:21Z";

impl WrittenMoment {
    /// Nothing if the text is none, or if [`Self::text`] would not give just this text.
    pub fn of(text: &str) -> Option<Self> {
        let moment = Moment::from_text(text, None).ok()?;
        let milliseconds = libm::round(moment.since_epoch() * 1000.0) as i64;
        let fineness = match text.find(['[', 'Z']) {
            _ if text.len() == DAY.len() => Fineness::Day,
            Some(end) if end >= SECOND.len() => Fineness::Millisecond,
            _ => Fineness::Second,
        };
        let written = Self {
            fineness,
            minute: milliseconds / 60_000,
            second: (milliseconds / 1000 % 60) as u32,
            millisecond: (milliseconds % 1000) as u32,
            clock: moment.clock(),
        };
        (written.text().as_deref() == Some(text)).then_some(written)
    }

    /// As a document has it; nothing beyond the years that a moment may have.
    pub fn text(&self) -> Option<String> {
        let whole = Moment::at(self.minute as f64 * 60.0 + f64::from(self.second))?.to_string();
        let mut text = whole.strip_suffix('Z')?.to_owned();
        match self.fineness {
            Fineness::Day => text.truncate(DAY.len()),
            Fineness::Second => text.push('Z'),
            Fineness::Millisecond => text.extend([format!(".{:03}Z", self.millisecond)]),
        }
        if self.clock > 0 {
            text.extend([format!("[_clock={}]", self.clock)]);
        }
        Some(text)
    }
}
