//! What the model remembers: for each context how likely a one was in it.

/// How likely a one is in a context, and how often the context was met.
#[derive(Clone, Copy)]
pub(super) struct Slot {
    /// Chance of a one, of 65 536.
    pub chance: u16,
    pub seen: u8,
    /// Whether it was always the same bit.
    pub is_sure: bool,
    /// Tells contexts apart that come to the same place.
    mark: u8,
}

const NEW: Slot = Slot {
    chance: 1 << 15,
    seen: 0,
    is_sure: true,
    mark: 0,
};

/// Steps after which a slot learns no slower.
const SLOWEST: u8 = 30;

#[derive(Clone)]
pub(super) struct Slots(Vec<Slot>);

const SLOT_BITS: u32 = 17;

impl Slots {
    pub fn new() -> Self {
        Self(vec![NEW; 1 << SLOT_BITS])
    }

    /// The place of a context and what is known of it; one that was another context's is emptied.
    pub fn find(&self, context: u32) -> (usize, Slot) {
        let place = (context >> (32 - SLOT_BITS)) as usize;
        let mark = (context & 0xFF) as u8;
        match self.0.get(place) {
            Some(slot) if slot.mark == mark => (place, *slot),
            _ => (place, Slot { mark, ..NEW }),
        }
    }

    /// Puts back what was found, with what came.
    pub fn learn(&mut self, place: usize, mut slot: Slot, bit: bool) {
        slot.is_sure &= slot.seen == 0 || bit == (slot.chance > 1 << 15);
        let target = if bit { 65_535 } else { 0 };
        let step = (target - i32::from(slot.chance)) * 8 / (8 * i32::from(slot.seen) + 11);
        slot.chance = (i32::from(slot.chance) + step) as u16;
        if slot.seen < SLOWEST {
            slot.seen += 1;
        }
        if let Some(known) = self.0.get_mut(place) {
            *known = slot;
        }
    }
}

/// One context out of two numbers, spread over all bits.
pub(super) fn mixed(context: u32, more: u32) -> u32 {
    let mixed = (context ^ more.wrapping_mul(0x9E37_79B1)).wrapping_mul(0x85EB_CA6B);
    mixed ^ mixed >> 15
}
