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
        let fineness = match text.as_bytes().get(SECOND.len() - 1) {
            None => Fineness::Day,
            Some(b'Z') => Fineness::Second,
            Some(_) => Fineness::Millisecond,
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
        let mut text = Moment::at(self.minute as f64 * 60.0 + f64::from(self.second))?.to_string();
        match self.fineness {
            Fineness::Day => text.truncate(DAY.len()),
            Fineness::Second => {}
            Fineness::Millisecond => {
                text.truncate(SECOND.len() - 1);
                // The one before the places keeps their zeros.
                let part = (1000 + self.millisecond).to_string();
                text.push('.');
                text.push_str(part.get(1..).unwrap_or_default());
                text.push('Z');
            }
        }
        if self.clock > 0 {
            text.push_str("[_clock=");
            text.push_str(&self.clock.to_string());
            text.push(']');
        }
        Some(text)
    }
}
