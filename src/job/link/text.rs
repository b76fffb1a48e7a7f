//! Texts: as one that stood there before, as a figure, a moment or random letters, or letter by letter as typed.

use super::figure::Figure;
use super::memory::Place;
use super::moment::{Fineness, WrittenMoment};
use super::problem::Stop;
use super::slots::mixed;
use super::tree::{Decision, Kind, Walk};

/// Letters of the ids that the page makes up, and how many an id has.
const ID_LETTERS: &[u8; 32] = b"abcdefghijkmnpqrstuvwxyz23456789";
const ID_LENGTHS: [usize; 2] = [5, 12];

/// Texts of a place that are known again.
const TEXT_BITS: u32 = 8;
const MOST_TEXTS: usize = 1 << TEXT_BITS;

/// Bits of the largest difference: of two figures, 10^9 apart before three places more.
const LONGEST_DIFFERENCE: u32 = 42;

/// Ends a text; no byte of one.
const END: u8 = 0xFF;

impl Walk<'_> {
    /// How a text is coded best.
    pub(super) fn kind_of_text(&self, text: &str, place: Place) -> Kind {
        let is_letter = |letter| ID_LETTERS.contains(&letter);
        if ID_LENGTHS.contains(&text.len()) && text.bytes().all(is_letter) {
            Kind::Letters
        } else if WrittenMoment::of(text).is_some() {
            Kind::Moment
        } else if self.figure_like_last(text, place).is_some() {
            Kind::Figure
        } else if self.text_before(text, place).is_some() {
            Kind::Again
        } else {
            Kind::Text
        }
    }

    fn text_before(&self, text: &str, place: Place) -> Option<usize> {
        let texts = &self.memory.at(place)?.texts;
        texts.iter().position(|known| known == text)
    }

    /// A figure of the unit of the place's last one, with the document's decimal mark.
    fn figure_like_last(&self, text: &str, place: Place) -> Option<Figure> {
        let last = self.memory.at(place)?.figure.as_ref()?;
        let figure = Figure::of(text)?;
        let is_marked_alike = figure.places == 0 || figure.is_comma == self.memory.is_comma;
        (figure.unit == last.unit && is_marked_alike).then_some(figure)
    }

    /// Keeps in mind what figure a text is, if it is one.
    fn note_figure(&mut self, text: &str, place: Place) {
        if let Some(figure) = Figure::of(text) {
            if figure.places > 0 {
                self.memory.is_comma = figure.is_comma;
            }
            self.memory
                .change(place, |place| place.figure = Some(figure));
        }
    }

    /// A text, letter by letter.
    pub(super) fn text(&mut self, known: Option<&str>, place: Place) -> Result<String, Stop> {
        let text = self.spell(Decision::Letter, known, place.own())?;
        self.note_figure(&text, place);
        self.memory.change(place, |place| {
            if place.texts.len() < MOST_TEXTS {
                place.last = place.texts.len() as u32;
                place.texts.push(text.clone());
            }
        });
        Ok(text)
    }

    /// A text that stood there before, as what lies between it and the last one: lists come in the same order again.
    pub(super) fn again(&mut self, known: Option<&str>, place: Place) -> Result<String, Stop> {
        let known = known.and_then(|known| self.text_before(known, place));
        let memory = self.memory.at(place);
        let (last, step) = memory.map_or((0, 0), |place| (place.last, place.step));
        let wrapped = |number: u32| number % MOST_TEXTS as u32;
        let wanted = wrapped((known.unwrap_or(0) as u32).wrapping_sub(last));
        let own = place.own();
        let contexts = [
            own,
            mixed(own, last + 1),
            mixed(mixed(own, 1), step),
            mixed(mixed(own, last + 1), step),
        ];
        let step = self.number(Decision::Again, &contexts, TEXT_BITS, wanted)?;
        let last = wrapped(last + step);
        self.memory
            .change(place, |place| (place.last, place.step) = (last, step));
        let found = self
            .memory
            .at(place)
            .and_then(|place| place.texts.get(last as usize));
        let text = found.cloned().ok_or(Stop::Damaged)?;
        self.note_figure(&text, place);
        self.bytes(text.len())?;
        Ok(text)
    }

    /// A figure, as its difference from the place's last one.
    pub(super) fn figure(&mut self, known: Option<&str>, place: Place) -> Result<String, Stop> {
        let known = known.and_then(|known| self.figure_like_last(known, place));
        let last = self.memory.at(place).and_then(|place| place.figure.clone());
        let last = last.ok_or(Stop::Damaged)?;
        let places = known.as_ref().map_or(0, |known| known.places);
        let contexts = [
            place.own(),
            mixed(place.own(), last.places + 1),
            last.places,
        ];
        let places = self.number(Decision::Places, &contexts, 2, places)?;
        let from = last.at_places(places);
        let wanted = known.map_or(0, |known| known.number - from);
        let figure = Figure {
            number: from + self.difference(wanted, place)?,
            places,
            is_comma: self.memory.is_comma,
            unit: last.unit,
        };
        let text = figure.text().ok_or(Stop::Damaged)?;
        self.memory
            .change(place, |place| place.figure = Some(figure));
        self.bytes(text.len())?;
        Ok(text)
    }

    /// A text letter by letter, in a context of where it stands.
    pub(super) fn spell(
        &mut self,
        decision: Decision,
        known: Option<&str>,
        own: u32,
    ) -> Result<String, Stop> {
        let mut letters: Vec<u8> = Vec::new();
        let (mut all, mut word) = (own, 0);
        loop {
            self.bytes(1)?;
            let wanted = known.and_then(|known| known.as_bytes().get(letters.len()).copied());
            let back = |count| letters.iter().nth_back(count).copied().map_or(0, u32::from);
            let two = mixed(back(1) << 8 | back(0), 1);
            let three = mixed(two, back(2));
            let contexts = [
                0,
                back(0),
                mixed(own, back(0)),
                two,
                three,
                mixed(three, back(3)),
                all,
                mixed(word, back(0)),
            ];
            let wanted = wanted.unwrap_or(END).into();
            let found = self.number(decision, &contexts, 8, wanted)? as u8;
            if found == END {
                break;
            }
            all = mixed(all, u32::from(found) + 1);
            let is_in_word = found.is_ascii_alphanumeric() || !found.is_ascii();
            word = if is_in_word {
                mixed(word, u32::from(found))
            } else {
                0
            };
            letters.push(found);
        }
        String::from_utf8(letters).map_err(|_| Stop::Damaged)
    }

    /// Letters that nobody can foresee.
    pub(super) fn letters(&mut self, known: Option<&str>, place: Place) -> Result<String, Stop> {
        let [short, long] = ID_LENGTHS;
        let is_long = known.is_some_and(|known| known.len() == long);
        let is_long = self.flag(Decision::Moment, &[place.own()], is_long)?;
        let mut text = String::new();
        for at in 0..if is_long { long } else { short } {
            let letter = known.and_then(|known| known.as_bytes().get(at));
            let number = letter.and_then(|letter| ID_LETTERS.iter().position(|own| own == letter));
            let found = self.coder.unforeseen(5, number.unwrap_or(0) as u32)?;
            text.extend(
                ID_LETTERS
                    .get(found as usize)
                    .map(|letter| char::from(*letter)),
            );
        }
        self.bytes(text.len())?;
        Ok(text)
    }

    /// A moment, as what lies between it and the place's last one.
    pub(super) fn moment(&mut self, known: Option<&str>, place: Place) -> Result<String, Stop> {
        let known = known.and_then(WrittenMoment::of);
        let contexts = |which: u32| {
            [
                mixed(place.own(), which),
                mixed(place.named(), which),
                which,
            ]
        };
        let fineness = known.map_or(Fineness::Day, |known| known.fineness);
        let fineness = self.number(Decision::Moment, &contexts(1), 2, fineness as u32)?;
        let fineness = Fineness::of(fineness).ok_or(Stop::Damaged)?;
        let last = self.memory.at(place).and_then(|place| place.minute);
        let last = last.unwrap_or(self.memory.minute);
        let unit = if fineness == Fineness::Day { 1440 } else { 1 };
        let wanted = known.map_or(0, |known| known.minute / unit - last / unit);
        let mut found = WrittenMoment {
            fineness,
            minute: (last / unit + self.difference(wanted, place)?) * unit,
            second: 0,
            millisecond: 0,
            clock: 0,
        };
        if fineness != Fineness::Day {
            let second = known.map_or(0, |known| known.second);
            if self.flag(Decision::Moment, &contexts(2), second > 0)? {
                found.second = self.coder.unforeseen(6, second)?;
            }
        }
        if fineness == Fineness::Millisecond {
            let millisecond = known.map_or(0, |known| known.millisecond);
            if self.flag(Decision::Moment, &contexts(3), millisecond > 0)? {
                found.millisecond = self.coder.unforeseen(10, millisecond)?;
            }
        }
        let clock = known.map_or(0, |known| u32::from(known.clock));
        if self.flag(Decision::Moment, &contexts(4), clock > 0)? {
            found.clock = self.coder.unforeseen(16, clock)? as u16;
        }
        self.memory.minute = found.minute;
        self.memory
            .change(place, |place| place.minute = Some(found.minute));
        let text = found.text().ok_or(Stop::Damaged)?;
        self.bytes(text.len())?;
        Ok(text)
    }

    /// A whole number: its sign and how many bits it has, then these.
    fn difference(&mut self, wanted: i64, place: Place) -> Result<i64, Stop> {
        let size = wanted.unsigned_abs();
        let length = 64 - size.leading_zeros();
        let signed = length + if wanted < 0 { 64 } else { 0 };
        let last = self.memory.at(place).map_or(0, |place| place.differences);
        let own = place.own();
        let contexts = [
            own,
            mixed(own, (last & 0xFF) + 1),
            mixed(own, (last & 0xFFFF) + 512),
            mixed(place.named(), last & 0xFF),
            0,
        ];
        let signed = self.number(Decision::Difference, &contexts, 7, signed)?;
        self.memory
            .change(place, |place| place.differences = last << 8 | signed);
        let (length, is_negative) = (signed % 64, signed >= 64);
        if length > LONGEST_DIFFERENCE {
            return Err(Stop::Damaged);
        }
        let Some(bits) = length.checked_sub(1) else {
            return Ok(0);
        };
        // The highest one is told by the length.
        let upper = self
            .coder
            .even(bits.saturating_sub(16), (size >> 16) as u32)?;
        let lower = self.coder.even(bits.min(16), size as u32)?;
        let size = 1_i64 << bits | i64::from(upper) << 16 | i64::from(lower);
        Ok(if is_negative { -size } else { size })
    }
}
