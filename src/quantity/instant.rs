//! Moments as a device's clock showed them, in universal time, so that no time zone and no summer time
//! moves them.

use super::{Enter, Flaw, Time};

/// A moment, and which setting of the device's clock it was read from.
///
/// Written as RFC 3339 and RFC 9557 have it: `2026-11-25T20:34:21.500Z`, and after the clock was set anew
/// for the second time `2026-11-25T20:34:21.500Z[_clock=2]`. A date alone is its midnight.
///
/// ```
/// use coldwright::quantity::{Enter, Moment};
/// let read = Moment::from_text("2026-11-25T20:34:21Z", None).unwrap();
/// assert_eq!(read.since_epoch(), 1_795_638_861.0);
/// assert_eq!(read.to_string(), "2026-11-25T20:34:21Z");
/// assert_eq!(Moment::from_text("2026-11-25T21:34:21+01:00", None), Ok(read));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Milliseconds since 1970 began in universal time.
    milliseconds: i64,
    clock: u16,
}

/// The years 1970 to 9999.
const MOST_MILLISECONDS: i64 = 253_402_300_799_999;
const MILLISECONDS_OF_DAY: i64 = 86_400_000;

impl Moment {
    /// A moment by its seconds since 1970 began in universal time, on the clock's first setting; nothing
    /// outside the years 1970 to 9999.
    pub fn at(seconds: f64) -> Option<Self> {
        let milliseconds = libm::round(seconds * 1000.0);
        (0.0..=MOST_MILLISECONDS as f64)
            .contains(&milliseconds)
            .then_some(Self {
                milliseconds: milliseconds as i64,
                clock: 0,
            })
    }

    /// What the clock shows so much later, as long as nobody sets it.
    pub fn later(self, time: Time) -> Option<Self> {
        let later = Self::at(self.since_epoch() + time.in_seconds())?;
        Some(Self {
            clock: self.clock,
            ..later
        })
    }

    /// Seconds since 1970 began.
    pub fn since_epoch(self) -> f64 {
        self.milliseconds as f64 / 1000.0
    }

    /// How often the device's clock had been set anew before.
    pub const fn clock(self) -> u16 {
        self.clock
    }
}

impl core::fmt::Display for Moment {
    fn fmt(&self, formatter: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        let (year, month, day) = date_of(self.milliseconds / MILLISECONDS_OF_DAY);
        let rest = self.milliseconds % MILLISECONDS_OF_DAY;
        let (hour, minute) = (rest / 3_600_000, rest / 60_000 % 60);
        let (second, part) = (rest / 1000 % 60, rest % 1000);
        write!(
            formatter,
            "{year:04}-{month:02}-{day:02}T{hour:02}:{minute:02}:{second:02}"
        )?;
        if part > 0 {
            write!(formatter, ".{part:03}")?;
        }
        formatter.write_str("Z")?;
        if self.clock > 0 {
            write!(formatter, "[_clock={}]", self.clock)?;
        }
        Ok(())
    }
}

impl serde::Serialize for Moment {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl Enter for Moment {
    fn from_number(number: f64) -> Result<Self, Flaw> {
        Self::at(number).ok_or_else(unreadable)
    }

    fn from_text(text: &str, _: Option<&str>) -> Result<Self, Flaw> {
        written(text).ok_or_else(unreadable)
    }

    fn example() -> String {
        "2026-11-25T20:34:21Z".into()
    }

    #[cfg(feature = "terminal")]
    fn schema() -> (String, schemars::Schema) {
        let schema = schemars::json_schema!({
            "description": "a moment in universal time (RFC 3339), or seconds since 1970 began",
            "anyOf": [{ "type": "string" }, { "type": "number" }, { "type": "null" }],
        });
        ("MomentEntry".into(), schema)
    }
}

#[cfg(feature = "terminal")]
impl schemars::JsonSchema for Moment {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Moment".into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({ "type": "string", "description": "a moment in universal time (RFC 3339)" })
    }
}

fn unreadable() -> Flaw {
    Flaw::WrongType {
        example: Moment::example(),
    }
}

fn written(text: &str) -> Option<Moment> {
    let (text, clock) = match text.strip_suffix(']') {
        Some(text) => {
            let (text, clock) = text.split_once("[_clock=")?;
            (text, digits(clock)?)
        }
        None => (text, 0),
    };
    let (date, time) = text.split_once('T').unwrap_or((text, "00:00:00Z"));
    let milliseconds = day_of(date)? * MILLISECONDS_OF_DAY + time_of(time)?;
    (0..=MOST_MILLISECONDS)
        .contains(&milliseconds)
        .then_some(Moment {
            milliseconds,
            clock: u16::try_from(clock).ok()?,
        })
}

/// At most nine digits and nothing else.
fn digits(text: &str) -> Option<i64> {
    let is_number = (1..=9).contains(&text.len()) && text.bytes().all(|byte| byte.is_ascii_digit());
    is_number.then(|| number_of(text.bytes()))
}

/// The number that digits write.
fn number_of(digits: impl Iterator<Item = u8>) -> i64 {
    digits.fold(0, |number, digit| number * 10 + i64::from(digit - b'0'))
}

fn within(text: &str, low: i64, high: i64) -> Option<i64> {
    digits(text).filter(|number| (low..=high).contains(number))
}

/// Milliseconds since midnight in universal time: `20:34:21.5Z`, `21:34:21+01:00`.
fn time_of(text: &str) -> Option<i64> {
    let (text, offset) = match text.strip_suffix('Z') {
        Some(text) => (text, 0),
        None => {
            let sign = text.rfind(['+', '-'])?;
            let (text, offset) = text.split_at_checked(sign)?;
            let (hours, minutes) = offset.get(1..)?.split_once(':')?;
            let minutes = 60 * within(hours, 0, 23)? + within(minutes, 0, 59)?;
            (
                text,
                if offset.starts_with('-') {
                    -minutes
                } else {
                    minutes
                },
            )
        }
    };
    let mut parts = text.splitn(3, ':');
    let hour = within(parts.next()?, 0, 23)?;
    let minute = within(parts.next()?, 0, 59)?;
    let seconds = parts.next().unwrap_or("0");
    let (second, part) = seconds.split_once('.').unwrap_or((seconds, "0"));
    let (second, part) = (within(second, 0, 59)?, thousandths(part)?);
    Some(((hour * 60 + minute - offset) * 60 + second) * 1000 + part)
}

fn thousandths(part: &str) -> Option<i64> {
    digits(part)?;
    Some(number_of(part.bytes().chain(*b"00").take(3)))
}

/// Days since 1970 began: Hinnant's rule for the proleptic Gregorian calendar, years counted from March.
fn day_of(date: &str) -> Option<i64> {
    let mut parts = date.splitn(3, '-');
    let year = within(parts.next()?, 1970, 9999)?;
    let month = within(parts.next()?, 1, 12)?;
    let day = within(parts.next()?, 1, 31)?;
    let from_march = if month > 2 { month - 3 } else { month + 9 };
    let year = if month > 2 { year } else { year - 1 };
    let of_era = year % 400;
    let of_year = (153 * from_march + 2) / 5 + day - 1;
    let days = year / 400 * 146_097 + of_era * 365 + of_era / 4 - of_era / 100 + of_year - 719_468;
    // The 31st of June is no day.
    (date_of(days).2 == day).then_some(days)
}

/// Year, month and day, from days since 1970 began: the same rule backwards.
fn date_of(days: i64) -> (i64, i64, i64) {
    let days = days + 719_468;
    let (era, of_era) = (days / 146_097, days % 146_097);
    let year = (of_era - of_era / 1460 + of_era / 36_524 - of_era / 146_096) / 365;
    let of_year = of_era - (365 * year + year / 4 - year / 100);
    let from_march = (5 * of_year + 2) / 153;
    let day = of_year - (153 * from_march + 2) / 5 + 1;
    let month = if from_march < 10 {
        from_march + 3
    } else {
        from_march - 9
    };
    let year = year + era * 400 + i64::from(month <= 2);
    (year, month, day)
}
