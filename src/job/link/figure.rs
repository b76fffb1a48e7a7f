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
        let is_in_number = |letter: char| letter.is_ascii_digit() || "-.,".contains(letter);
        let end = text
            .find(|letter| !is_in_number(letter))
            .unwrap_or(text.len());
        let (number, unit) = text.split_at_checked(end)?;
        let mark = number.find(['.', ',']);
        let places = mark.map_or(0, |mark| number.len() - mark - 1);
        let digits: String = number
            .chars()
            .filter(|letter| !".,".contains(*letter))
            .collect();
        if digits.len() > MOST_DIGITS as usize + 1 || places > MOST_PLACES as usize {
            return None;
        }
        let figure = Self {
            number: digits.parse().ok()?,
            places: places as u32,
            is_comma: number.contains(','),
            unit: unit.into(),
        };
        (figure.text().as_deref() == Some(text)).then_some(figure)
    }

    /// Nothing if it has too many digits.
    pub fn text(&self) -> Option<String> {
        let one = 10_u64.pow(self.places);
        let size = self.number.unsigned_abs();
        if size >= 10_u64.pow(MOST_DIGITS) {
            return None;
        }
        let sign = if self.number < 0 { "-" } else { "" };
        let (whole, unit) = (size / one, &self.unit);
        if self.places == 0 {
            return Some(format!("{sign}{whole}{unit}"));
        }
        let mark = if self.is_comma { ',' } else { '.' };
        let (rest, places) = (size % one, self.places as usize);
        Some(format!("{sign}{whole}{mark}{rest:0places$}{unit}"))
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
