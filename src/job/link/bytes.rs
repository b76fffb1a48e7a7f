//! The head of every version's link: version, checksum.

use super::{LINK_VERSION, LinkProblem};

/// Bytes before the content.
const HEAD: usize = 5;

/// Content with the head before it.
pub(super) fn framed(content: &[u8]) -> Vec<u8> {
    let mut bytes = Vec::with_capacity(HEAD + content.len());
    bytes.push(LINK_VERSION);
    bytes.extend(checksum(LINK_VERSION, content).to_be_bytes());
    bytes.extend(content);
    bytes
}

/// The content, if it is whole and of this version.
pub(super) fn content(mut bytes: Vec<u8>) -> Result<Vec<u8>, LinkProblem> {
    let version = bytes.first().copied();
    let is_whole = bytes.len() >= HEAD && {
        let content = bytes.split_off(HEAD);
        let sum = checksum(version.unwrap_or(0), &content).to_be_bytes();
        let is_whole = bytes.get(1..) == Some(&sum);
        bytes = content;
        is_whole
    };
    match version {
        Some(LINK_VERSION) if is_whole => Ok(bytes),
        Some(LINK_VERSION) => Err(LinkProblem::Damaged),
        Some(found) if is_whole && found > LINK_VERSION => Err(LinkProblem::NewerVersion {
            found,
            known: LINK_VERSION,
        }),
        _ => Err(LinkProblem::NotALink),
    }
}

/// CRC-32 of ITU-T V.42 (polynomial 0x04C11DB7, reflected).
fn checksum(version: u8, content: &[u8]) -> u32 {
    let mut sum = u32::MAX;
    for byte in [version].iter().chain(content) {
        sum ^= u32::from(*byte);
        for _ in 0..8 {
            sum = sum >> 1 ^ (0xEDB8_8320 & (sum & 1).wrapping_neg());
        }
    }
    !sum
}

#[cfg(test)]
mod tests {
    /// The check value of the catalogue of parametrised CRC algorithms: CBF43926 for "123456789".
    #[test]
    fn the_checksum_is_the_standard_one() {
        assert_eq!(super::checksum(b'1', b"23456789"), 0xCBF4_3926);
    }
}
