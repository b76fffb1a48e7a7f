//! The head of a link and its letters, written a second time from their description.

const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/// Version, CRC-32 of version and content, content.
pub fn framed(version: u8, content: &[u8]) -> Vec<u8> {
    let mut sum = u32::MAX;
    for byte in [&[version], content].concat() {
        for place in 0..8 {
            let bit = (sum ^ u32::from(byte >> place)) & 1;
            sum = sum >> 1 ^ if bit == 1 { 0xEDB8_8320 } else { 0 };
        }
    }
    [&[version][..], &(!sum).to_be_bytes(), content].concat()
}

/// Base64url without padding, bit by bit.
pub fn text_of(bytes: &[u8]) -> String {
    let bits: Vec<u8> = bytes
        .iter()
        .flat_map(|byte| (0..8).rev().map(move |place| byte >> place & 1))
        .collect();
    bits.chunks(6)
        .map(|six| {
            let number = (0..6).fold(0, |number, place| {
                number << 1 | six.get(place).copied().unwrap_or(0)
            });
            char::from(LETTERS[usize::from(number)])
        })
        .collect()
}

pub fn bytes_of(text: &str) -> Option<Vec<u8>> {
    let mut bits = Vec::new();
    for letter in text.bytes() {
        let number = LETTERS.iter().position(|own| *own == letter)?;
        bits.extend((0..6).rev().map(|place| (number >> place & 1) as u8));
    }
    let whole = bits.chunks_exact(8);
    Some(
        whole
            .map(|byte| byte.iter().fold(0, |number, bit| number << 1 | bit))
            .collect(),
    )
}
