//! The walk through a document, the same for writing and reading: what is known is written, what is not is read.

use super::coder::Coder;
use super::memory::{Memory, Place};
use super::model::CONTEXTS;
use super::problem::Stop;
use super::slots::mixed;
use super::{DEEPEST, LinkBound, MOST_BYTES, MOST_PARTS, PHOTOS};
use crate::quantity::Arrived;

/// Decisions that the model weighs apart.
#[derive(Clone, Copy)]
pub(super) enum Decision {
    Kind,
    Name,
    More,
    Letter,
    Number,
    Moment,
    Difference,
    Spelling,
    Again,
    Places,
}

/// What a value is, as it is coded.
#[derive(Clone, Copy)]
pub(super) enum Kind {
    Nothing,
    False,
    True,
    Number,
    List,
    Object,
    /// A text, by its letters.
    Text,
    /// One that stood there before.
    Again,
    /// A figure like the one before.
    Figure,
    Moment,
    /// Letters that nobody can foresee.
    Letters,
}

const KINDS: [Kind; 11] = [
    Kind::Nothing,
    Kind::False,
    Kind::True,
    Kind::Number,
    Kind::List,
    Kind::Object,
    Kind::Text,
    Kind::Again,
    Kind::Figure,
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
const FAR_BITS: u32 = 16;

pub(super) struct Walk<'a> {
    pub(super) coder: Coder<'a>,
    pub(super) memory: Memory,
    parts: usize,
    bytes: usize,
    depth: usize,
}

impl<'a> Walk<'a> {
    pub fn new(coder: Coder<'a>, memory: Memory) -> Self {
        Self {
            coder,
            memory,
            parts: 0,
            bytes: 0,
            depth: 0,
        }
    }

    pub fn finish(self) -> Vec<u8> {
        self.coder.finish()
    }

    /// The document: writes the one that is known, or reads one.
    pub fn document(&mut self, known: Option<&Arrived>) -> Result<Arrived, Stop> {
        self.part()?;
        self.object(known, Place::DOCUMENT)
    }

    /// Counts a value, and how deep it lies.
    fn part(&mut self) -> Result<(), Stop> {
        self.parts += 1;
        if self.parts > MOST_PARTS {
            return Err(Stop::Beyond(LinkBound::Parts));
        }
        if self.depth > DEEPEST {
            return Err(Stop::Beyond(LinkBound::Depth));
        }
        Ok(())
    }

    /// Counts bytes of texts and names.
    pub(super) fn bytes(&mut self, bytes: usize) -> Result<(), Stop> {
        self.bytes += bytes;
        if self.bytes > MOST_BYTES {
            return Err(Stop::Beyond(LinkBound::Bytes));
        }
        Ok(())
    }

    /// Codes a number of so many bits, each as the model expects it, the highest first.
    pub(super) fn number(
        &mut self,
        decision: Decision,
        contexts: &[u32],
        bits: u32,
        wanted: u32,
    ) -> Result<u32, Stop> {
        let mut own = [0; CONTEXTS];
        for ((own, context), number) in own.iter_mut().zip(contexts).zip(1..) {
            *own = mixed(*context, decision as u32 * CONTEXTS as u32 + number);
        }
        let own = own.get(..contexts.len()).unwrap_or_default();
        let mut path = 1;
        for place in (0..bits).rev() {
            let chance = self.memory.model.chance(decision as usize, own, path);
            let bit = self.coder.bit(chance, wanted >> place & 1 == 1)?;
            self.memory.model.learn(bit);
            path = path << 1 | u32::from(bit);
        }
        Ok(path - (1 << bits))
    }

    pub(super) fn flag(
        &mut self,
        decision: Decision,
        contexts: &[u32],
        wanted: bool,
    ) -> Result<bool, Stop> {
        Ok(self.number(decision, contexts, 1, wanted.into())? == 1)
    }

    fn value(&mut self, known: Option<&Arrived>, place: Place) -> Result<Arrived, Stop> {
        self.depth += 1;
        self.part()?;
        let kind = self.kind(known, place)?;
        let known_text = match known {
            Some(Arrived::Text(text)) => Some(text.as_str()),
            _ => None,
        };
        let text = match kind {
            Kind::Text => self.text(known_text, place)?,
            Kind::Again => self.again(known_text, place)?,
            Kind::Figure => self.figure(known_text, place)?,
            Kind::Moment => self.moment(known_text, place)?,
            Kind::Letters => self.letters(known_text, place)?,
            _ => String::new(),
        };
        let value = match kind {
            Kind::Nothing => Arrived::Nothing,
            Kind::False => Arrived::Truth(false),
            Kind::True => Arrived::Truth(true),
            Kind::Number => self.float(known, place)?,
            Kind::List => self.list(known, place)?,
            Kind::Object => self.object(known, place)?,
            _ => Arrived::Text(text),
        };
        self.depth -= 1;
        Ok(value)
    }

    fn kind(&mut self, known: Option<&Arrived>, place: Place) -> Result<Kind, Stop> {
        let wanted = match known {
            None => Kind::Nothing,
            Some(known) => self.kind_of(known, place)?,
        };
        let kinds = self.memory.at(place).map_or(0, |place| place.kinds);
        let (own, last) = (place.own(), kinds & 15);
        let contexts = [
            own,
            mixed(own, last),
            mixed(own, kinds & 0xFFF),
            mixed(place.named(), last),
        ];
        let found = self.number(Decision::Kind, &contexts, KIND_BITS, wanted as u32)?;
        self.memory
            .change(place, |place| place.kinds = kinds << 4 | found);
        KINDS.get(found as usize).copied().ok_or(Stop::Damaged)
    }

    /// What a value is coded as.
    fn kind_of(&self, value: &Arrived, place: Place) -> Result<Kind, Stop> {
        Ok(match value {
            Arrived::Nothing => Kind::Nothing,
            Arrived::Truth(false) => Kind::False,
            Arrived::Truth(true) => Kind::True,
            Arrived::Number(number) if number.is_finite() => Kind::Number,
            Arrived::Number(_) | Arrived::Other => return Err(Stop::NotADocument),
            Arrived::Text(text) => self.kind_of_text(text, place),
            Arrived::List(_) => Kind::List,
            Arrived::Object(_) => Kind::Object,
        })
    }

    fn list(&mut self, known: Option<&Arrived>, place: Place) -> Result<Arrived, Stop> {
        let known = match known {
            Some(Arrived::List(items)) => Some(items),
            _ => None,
        };
        let mut items = Vec::new();
        loop {
            let next = known.and_then(|known| known.get(items.len()));
            let count = items.len().min(40) as u32;
            let contexts = [place.own(), mixed(place.own(), count + 1), place.named()];
            if !self.flag(Decision::More, &contexts, next.is_some())? {
                return Ok(Arrived::List(items));
            }
            items.push(self.value(next, place)?);
        }
    }

    fn object(&mut self, known: Option<&Arrived>, place: Place) -> Result<Arrived, Stop> {
        let mut left = match known {
            Some(Arrived::Object(members)) => self.last_first(members, place),
            _ => Vec::new(),
        };
        let mut members: Vec<(String, Arrived)> = Vec::new();
        let mut names: Vec<usize> = Vec::new();
        loop {
            let next = left.pop();
            let Some(name) = self.name(next.map(|next| next.0.as_str()), place, &names)? else {
                return Ok(Arrived::Object(members));
            };
            let inner = self.memory.inside(place, name);
            let value = self.value(next.map(|next| &next.1), inner)?;
            let text = self.memory.names.at(name).unwrap_or_default().to_owned();
            self.bytes(text.len())?;
            members.push((text, value));
            names.push(name);
        }
    }

    /// Members in the order in which they are written, the last one first: known names as they were met, then new
    /// ones by their letters.
    fn last_first<'k>(
        &self,
        members: &'k [(String, Arrived)],
        place: Place,
    ) -> Vec<&'k (String, Arrived)> {
        let rank = |name: &str| self.memory.names.place_of(name).unwrap_or(usize::MAX);
        let mut ordered: Vec<(usize, &(String, Arrived))> = Vec::new();
        for member in members {
            let name = member.0.as_str();
            if place.is_document() && name == PHOTOS {
                continue;
            }
            let key = (rank(name), name);
            let before = ordered.partition_point(|(rank, other)| (*rank, other.0.as_str()) > key);
            ordered.insert(before, (key.0, member));
        }
        ordered.into_iter().map(|(_, member)| member).collect()
    }

    /// Codes the name of the member after those, or that there is none; gives its place among the names.
    fn name(
        &mut self,
        known: Option<&str>,
        place: Place,
        names: &[usize],
    ) -> Result<Option<usize>, Stop> {
        let known_place = known.and_then(|name| self.memory.names.place_of(name));
        let wanted = match (known, known_place) {
            (None, _) => NO_NAME,
            (_, None) => NEW_NAME,
            (_, Some(place)) if place < NEAR_NAMES => place as u32 + FIRST_NEAR,
            _ => FAR_NAME,
        };
        let back = |count| {
            names
                .iter()
                .nth_back(count)
                .map_or(0, |name| *name as u32 + 1)
        };
        let after = self.memory.inside(place, back(0) as usize + MOST_PARTS);
        let next = self.memory.at(after).map_or(0, |after| after.next);
        let last = mixed(place.own(), back(0));
        let contexts = [
            last,
            mixed(last, back(1)),
            mixed(place.named(), back(0)),
            mixed(last, next & 0xFF),
            mixed(mixed(last, next), back(1)),
        ];
        let found = self.number(Decision::Name, &contexts, NAME_BITS, wanted)?;
        self.memory
            .change(after, |after| after.next = next << 8 | found);
        let name = match found {
            NO_NAME => return Ok(None),
            NEW_NAME => self.new_name(known)?,
            FAR_NAME => {
                let far = known_place.map_or(0, |place| place - NEAR_NAMES);
                self.coder.even(FAR_BITS, far as u32)? as usize + NEAR_NAMES
            }
            near => (near - FIRST_NEAR) as usize,
        };
        // A name stands once in an object.
        if names.contains(&name) || self.memory.names.at(name).is_none() {
            return Err(Stop::Damaged);
        }
        Ok(Some(name))
    }

    fn new_name(&mut self, known: Option<&str>) -> Result<usize, Stop> {
        let name = self.spell(Decision::Spelling, known, 0)?;
        // Names that the page's store takes for the prototype or for an item.
        if name == "__proto__" || name.starts_with('#') {
            return Err(Stop::NotADocument);
        }
        self.memory.names.add(&name).ok_or(Stop::Damaged)
    }

    fn float(&mut self, known: Option<&Arrived>, place: Place) -> Result<Arrived, Stop> {
        let known = match known {
            Some(Arrived::Number(number)) => number.to_bits(),
            _ => 0,
        };
        let mut bits = 0_u64;
        for byte in 0..8_u32 {
            let wanted = (known >> (56 - 8 * byte) & 0xFF) as u32;
            let at = mixed(byte + 1, (bits & 0xFF) as u32);
            let contexts = [
                at,
                mixed(place.named(), at),
                mixed(place.own(), bits as u32),
            ];
            let found = self.number(Decision::Number, &contexts, 8, wanted)?;
            bits = bits << 8 | u64::from(found);
        }
        let number = f64::from_bits(bits);
        if number.is_finite() {
            Ok(Arrived::Number(number))
        } else {
            Err(Stop::Damaged)
        }
    }
}
