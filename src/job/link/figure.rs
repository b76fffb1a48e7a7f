//! Figures as people type them: a number with its decimal places, and what stands behind it.

/// A figure taken apart: `-12,50 bar` is -1250 of two places, with a comma, and ` bar` behind it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Figure {
    /// The number without its decimal mark.
    pub number: i64,
    pub places: u32,
    pub is_comma: bool,
    pub unit: String,
}

/// More digits are no figure of an instrument.
const MOST_DIGITS: u32 = 9;
/// Most places behind the decimal mark.
pub(super) const MOST_PLACES: u32 = 3;

impl Figure {
    /// Nothing if the text is none, or if [`Self::text`] would not give just this text.
    pub fn of(text: &str) -> Option<Self> {
        let mut figure = Self::default();
        let (mut is_marked, mut is_negative) = (false, false);
        let mut end = 0;
        for letter in text.bytes() {
            match letter {
                b'-' if end == 0 => is_negative = true,
                b'.' | b',' if !is_marked => {
                    is_marked = true;
                    figure.is_comma = letter == b',';
                }
                b'0'..=b'9' if end <= MOST_DIGITS as usize + 2 => {
                    figure.number = 10 * figure.number + i64::from(letter - b'0');
                    figure.places += u32::from(is_marked);
                }
                _ => break,
            }
            end += 1;
        }
        if is_negative {
            figure.number = -figure.number;
        }
        if figure.places > MOST_PLACES {
            return None;
        }
        figure.unit = text.get(end..)?.into();
        (figure.text().as_deref() == Some(text)).then_some(figure)
    }

    /// Nothing if it has too many digits.
    pub fn text(&self) -> Option<String> {
        let one = 10_u64.pow(self.places);
        let size = self.number.unsigned_abs();
        if size >= 10_u64.pow(MOST_DIGITS) {
            return None;
        }
        let mut text = String::new();
        if self.number < 0 {
            text.push('-');
        }
        text.push_str(&(size / one).to_string());
        if self.places > 0 {
            text.push(if self.is_comma { ',' } else { '.' });
            // The one before the places keeps their zeros.
            let rest = (one + size % one).to_string();
            text.push_str(rest.get(1..).unwrap_or_default());
        }
        text.push_str(&self.unit);
        Some(text)
    }

    /// The number as it would be with so many places.
    pub fn at_places(&self, places: u32) -> i64 {
        match places.checked_sub(self.places) {
            Some(more) => self
                .number
                .saturating_mul(10_i64.pow(more.min(MOST_PLACES))),
            None => self.number / 10_i64.pow(self.places - places),
        }
    }
}
