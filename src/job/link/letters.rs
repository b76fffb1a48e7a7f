//! Bytes as letters that every address and message leaves alone: base64url of RFC 4648, section 5, unpadded.

const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

pub(super) fn text_of(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len().div_ceil(3) * 4);
    for three in bytes.chunks(3) {
        let mut bits = 0_u32;
        for place in 0..3 {
            bits = bits << 8 | u32::from(three.get(place).copied().unwrap_or(0));
        }
        for place in 0..=three.len() {
            let six = bits >> (18 - 6 * place) & 63;
            text.extend(LETTERS.get(six as usize).map(|letter| char::from(*letter)));
        }
    }
    text
}

/// The bytes of a text; nothing if it is of other letters, or not what [`text_of`] makes of any bytes.
pub(super) fn bytes_of(text: &str) -> Option<Vec<u8>> {
    let mut bytes = Vec::with_capacity(text.len() / 4 * 3 + 2);
    for four in text.as_bytes().chunks(4) {
        let mut bits = 0_u32;
        for place in 0..4 {
            bits = bits << 6
                | four
                    .get(place)
                    .map_or(Some(0), |letter| six_bits(*letter))?;
        }
        let [_, three @ ..] = bits.to_be_bytes();
        let (whole, rest) = three.split_at_checked(four.len() - 1)?;
        if rest.iter().any(|byte| *byte != 0) || whole.is_empty() {
            return None;
        }
        bytes.extend(whole);
    }
    Some(bytes)
}

fn six_bits(letter: u8) -> Option<u32> {
    let place = LETTERS.iter().position(|own| *own == letter)?;
    u32::try_from(place).ok()
}
