//! The walk through a document, the same for writing and reading: what is known is written, what is not is read.

use super::coder::Coder;
use super::memory::Memory;
use super::model::CONTEXTS;
use super::slots::mixed;
use super::{DEEPEST, LinkBound, LinkProblem, MOST_BYTES, MOST_PARTS};
use crate::quantity::Arrived;

/// Kinds of decisions that the model weighs apart.
#[derive(Clone, Copy)]
pub(super) enum Decision {
    Kind = 0,
    Name = 1,
    More = 2,
    Letter = 3,
    Number = 4,
    Moment = 5,
    Difference = 6,
    Spelling = 7,
}

/// What a value is, as it is coded.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    Nothing = 0,
    False = 1,
    True = 2,
    Text = 3,
    Number = 4,
    List = 5,
    Object = 6,
    Moment = 7,
    Letters = 8,
}

const KINDS: [Kind; 9] = [
    Kind::Nothing,
    Kind::False,
    Kind::True,
    Kind::Text,
    Kind::Number,
    Kind::List,
    Kind::Object,
    Kind::Moment,
    Kind::Letters,
];
const KIND_BITS: u32 = 4;

/// How a member's name is coded: none, one that is new, one far back by its number, or one near by its place.
const NO_NAME: u32 = 0;
const NEW_NAME: u32 = 1;
const FAR_NAME: u32 = 2;
const FIRST_NEAR: u32 = 3;
const NAME_BITS: u32 = 8;
const NEAR_NAMES: usize = (1 << NAME_BITS) - FIRST_NEAR as usize;
const FAR_BITS: u32 = 15;

/// Where a value stands.
#[derive(Clone, Copy)]
pub(super) struct Place {
    /// The name's place of the field, or of the list that it is an item of.
    pub field: usize,
    /// That of the object around.
    pub owner: usize,
    depth: usize,
}

pub(super) struct Walk<'a> {
    pub(super) coder: Coder<'a>,
    pub(super) memory: Memory,
    parts: usize,
    bytes: usize,
}

impl<'a> Walk<'a> {
    pub fn new(coder: Coder<'a>, memory: Memory) -> Self {
        Self {
            coder,
            memory,
            parts: 0,
            bytes: 0,
        }
    }

    pub fn finish(self) -> Vec<u8> {
        self.coder.finish()
    }

    /// The document: writes the one that is known, or reads one.
    pub fn document(&mut self, known: Option<&Arrived>) -> Result<Arrived, LinkProblem> {
        let place = Place {
            field: usize::MAX,
            owner: usize::MAX,
            depth: 0,
        };
        self.part(0)?;
        self.object(known, place)
    }

    /// Counts a value, and how deep it lies.
    fn part(&mut self, depth: usize) -> Result<(), LinkProblem> {
        self.parts += 1;
        let beyond = |bound, most| Err(LinkProblem::BeyondBounds { bound, most });
        if self.parts > MOST_PARTS {
            return beyond(LinkBound::Parts, MOST_PARTS);
        }
        if depth > DEEPEST {
            return beyond(LinkBound::Depth, DEEPEST);
        }
        Ok(())
    }

    /// Counts a byte of a text.
    pub(super) fn byte(&mut self) -> Result<(), LinkProblem> {
        self.bytes += 1;
        if self.bytes > MOST_BYTES {
            return Err(LinkProblem::BeyondBounds {
                bound: LinkBound::Bytes,
                most: MOST_BYTES,
            });
        }
        Ok(())
    }

    pub(super) fn number(
        &mut self,
        decision: Decision,
        contexts: [u32; CONTEXTS],
        bits: u32,
        wanted: u32,
    ) -> Result<u32, LinkProblem> {
        let contexts = numbered(decision, contexts);
        self.memory.number(
            &mut self.coder,
            (decision as usize, &contexts),
            bits,
            wanted,
        )
    }

    pub(super) fn flag(
        &mut self,
        decision: Decision,
        contexts: [u32; CONTEXTS],
        wanted: bool,
    ) -> Result<bool, LinkProblem> {
        Ok(self.number(decision, contexts, 1, wanted.into())? == 1)
    }

    fn value(&mut self, known: Option<&Arrived>, place: Place) -> Result<Arrived, LinkProblem> {
        self.part(place.depth)?;
        let kind = self.kind(known, place)?;
        Ok(match kind {
            Kind::Nothing => Arrived::Nothing,
            Kind::False => Arrived::Truth(false),
            Kind::True => Arrived::Truth(true),
            Kind::Number => self.float(known, place)?,
            Kind::List => self.list(known, place)?,
            Kind::Object => self.object(known, place)?,
            Kind::Text | Kind::Moment | Kind::Letters => {
                let known = match known {
                    Some(Arrived::Text(text)) => Some(text.as_str()),
                    _ => None,
                };
                let text = match kind {
                    Kind::Moment => self.moment(known, place)?,
                    Kind::Letters => self.letters(known, place)?,
                    _ => self.text(known, place)?,
                };
                Arrived::Text(text)
            }
        })
    }

    fn kind(&mut self, known: Option<&Arrived>, place: Place) -> Result<Kind, LinkProblem> {
        let wanted = match known {
            None => Kind::Nothing,
            Some(known) => kind_of(known).ok_or(LinkProblem::NotADocument)?,
        };
        let [field, owner] = [place.field as u32, place.owner as u32];
        let both = mixed(field, owner);
        let contexts = [field, both, mixed(both, 7), 0, 0, 0];
        let found = self.number(Decision::Kind, contexts, KIND_BITS, wanted as u32)?;
        KINDS
            .get(found as usize)
            .copied()
            .ok_or(LinkProblem::Damaged)
    }

    fn list(&mut self, known: Option<&Arrived>, place: Place) -> Result<Arrived, LinkProblem> {
        let known = match known {
            Some(Arrived::List(items)) => Some(items),
            _ => None,
        };
        let mut items = Vec::new();
        loop {
            let next = known.and_then(|known| known.get(items.len()));
            let count = items.len().min(40) as u32;
            let field = place.field as u32;
            let contexts = [field, mixed(field, count + 1), 0, 0, 0, 0];
            if !self.flag(Decision::More, contexts, next.is_some())? {
                return Ok(Arrived::List(items));
            }
            let place = Place {
                depth: place.depth + 1,
                ..place
            };
            items.push(self.value(next, place)?);
        }
    }

    fn object(&mut self, known: Option<&Arrived>, place: Place) -> Result<Arrived, LinkProblem> {
        let known = match known {
            Some(Arrived::Object(members)) => Some(members),
            _ => None,
        };
        let mut members: Vec<(String, Arrived)> = Vec::new();
        let mut last = None;
        let mut before = None;
        loop {
            let next = known.and_then(|known| self.next_member(known, last));
            let name = next.map(|(name, _)| name.as_str());
            let Some(field) = self.name(name, place, (last, before))? else {
                return match known {
                    Some(known) if known.len() != members.len() => Err(LinkProblem::NotADocument),
                    _ => Ok(Arrived::Object(members)),
                };
            };
            (before, last) = (last, Some(field));
            let inner = Place {
                field,
                owner: place.field,
                depth: place.depth + 1,
            };
            let value = self.value(next.map(|(_, value)| value), inner)?;
            let name = self.memory.names.at(field).unwrap_or_default();
            members.push((name.into(), value));
        }
    }

    /// The member that comes after the one of this name's place: known names by their places, then new ones by
    /// their letters.
    fn next_member<'k>(
        &self,
        members: &'k [(String, Arrived)],
        last: Option<usize>,
    ) -> Option<&'k (String, Arrived)> {
        let rank = |name: &str| self.memory.names.place_of(name).unwrap_or(usize::MAX);
        let ranked = members.iter().map(|member| (rank(&member.0), member));
        let left = ranked.filter(|(rank, _)| last.is_none_or(|last| *rank > last));
        left.min_by(|(one, (name, _)), (other, (other_name, _))| {
            one.cmp(other).then_with(|| name.cmp(other_name))
        })
        .map(|(_, member)| member)
    }

    /// Codes a member's name, or that there is none; gives its place.
    fn name(
        &mut self,
        known: Option<&str>,
        place: Place,
        (last, before): (Option<usize>, Option<usize>),
    ) -> Result<Option<usize>, LinkProblem> {
        let known_place = known.and_then(|name| self.memory.names.place_of(name));
        let wanted = match (known, known_place) {
            (None, _) => NO_NAME,
            (_, None) => NEW_NAME,
            (_, Some(place)) if place < NEAR_NAMES => place as u32 + FIRST_NEAR,
            _ => FAR_NAME,
        };
        let owner = place.field as u32;
        let [last_name, before_name] =
            [last, before].map(|name| name.map_or(0, |name| name as u32 + 1));
        let two = mixed(owner, last_name);
        let contexts = [two, mixed(two, before_name), last_name, owner, 0, 0];
        let found = self.number(Decision::Name, contexts, NAME_BITS, wanted)?;
        let field = match found {
            NO_NAME => return Ok(None),
            NEW_NAME => return self.new_name(known).map(Some),
            FAR_NAME => {
                let far = known_place.map_or(0, |place| place - NEAR_NAMES) as u32;
                self.coder.even(FAR_BITS, far)? as usize + NEAR_NAMES
            }
            near => (near - FIRST_NEAR) as usize,
        };
        let is_next = last.is_none_or(|last| field > last);
        match self.memory.names.at(field) {
            Some(_) if is_next => Ok(Some(field)),
            _ => Err(LinkProblem::Damaged),
        }
    }

    fn new_name(&mut self, known: Option<&str>) -> Result<usize, LinkProblem> {
        let name = self.spelt(known)?;
        // Names that the page's store takes for the prototype or for an item.
        if name == "__proto__" || name.starts_with('#') {
            return Err(LinkProblem::NotADocument);
        }
        if self.memory.names.place_of(&name).is_some() {
            return Err(LinkProblem::Damaged);
        }
        Ok(self.memory.names.add(&name))
    }

    fn float(&mut self, known: Option<&Arrived>, place: Place) -> Result<Arrived, LinkProblem> {
        let known = match known {
            Some(Arrived::Number(number)) => number.to_bits(),
            _ => 0,
        };
        let field = place.field as u32;
        let mut bits = 0_u64;
        for byte in 0..8_u32 {
            let wanted = (known >> (56 - 8 * byte) & 0xFF) as u32;
            let last = (bits & 0xFF) as u32;
            let at = mixed(byte + 1, last);
            let contexts = [
                at,
                mixed(at, field),
                mixed(field, bits as u32),
                mixed(byte, 99),
                0,
                0,
            ];
            let found = self.number(Decision::Number, contexts, 8, wanted)?;
            bits = bits << 8 | u64::from(found);
        }
        let number = f64::from_bits(bits);
        if number.is_finite() {
            Ok(Arrived::Number(number))
        } else {
            Err(LinkProblem::Damaged)
        }
    }
}

/// Contexts of one decision are no other's.
fn numbered(decision: Decision, contexts: [u32; CONTEXTS]) -> [u32; CONTEXTS] {
    let mut number = decision as u32 * CONTEXTS as u32;
    contexts.map(|context| {
        number += 1;
        mixed(context, number)
    })
}

/// What a value is coded as; nothing for what no document holds.
fn kind_of(value: &Arrived) -> Option<Kind> {
    Some(match value {
        Arrived::Nothing => Kind::Nothing,
        Arrived::Truth(false) => Kind::False,
        Arrived::Truth(true) => Kind::True,
        Arrived::Number(number) if number.is_finite() => Kind::Number,
        Arrived::Number(_) | Arrived::Other => return None,
        Arrived::Text(text) => super::text::kind_of(text),
        Arrived::List(_) => Kind::List,
        Arrived::Object(_) => Kind::Object,
    })
}
