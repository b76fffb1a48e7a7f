//! Bytes as letters that every address and message leaves alone: base64url of RFC 4648, section 5, unpadded.

const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

pub(super) fn text_of(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len() / 3 * 4 + 4);
    let (mut bits, mut count) = (0_u32, 0);
    // A last byte of nothing fills up the last letter.
    for byte in bytes.iter().chain(&[0]) {
        bits = bits << 8 | u32::from(*byte);
        count += 8;
        while count >= 6 {
            count -= 6;
            let letter = LETTERS.get((bits >> count & 63) as usize);
            text.extend(letter.map(|letter| char::from(*letter)));
        }
    }
    text.truncate((bytes.len() * 4).div_ceil(3));
    text
}

/// The bytes of a text; nothing if it is of other letters. Bits that make no whole byte are left out: what
/// [`text_of`] makes of the bytes is then another text.
pub(super) fn bytes_of(text: &str) -> Option<Vec<u8>> {
    let mut bytes = Vec::with_capacity(text.len() / 4 * 3 + 3);
    let (mut bits, mut count) = (0_u32, 0);
    for letter in text.bytes() {
        bits = bits << 6 | LETTERS.iter().position(|own| *own == letter)? as u32;
        count += 6;
        if count >= 8 {
            count -= 8;
            bytes.push((bits >> count) as u8);
        }
    }
    Some(bytes)
}
