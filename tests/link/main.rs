//! A job as a link: nothing is lost, an ordinary job fits a message, and nobody's link does harm.

mod framed;
mod frozen;
mod generated;
mod hostile;
mod lengths;
mod ordinary;
mod random;
mod round_trip;
mod typical;

use coldwright::quantity::Arrived;

/// Whether two trees say the same; the order of an object's members says nothing.
pub fn same(one: &Arrived, other: &Arrived) -> bool {
    match (one, other) {
        (Arrived::List(one), Arrived::List(other)) => {
            one.len() == other.len() && one.iter().zip(other).all(|(one, other)| same(one, other))
        }
        (Arrived::Object(one), Arrived::Object(other)) => {
            one.len() == other.len()
                && one.iter().all(|(name, member)| {
                    other
                        .iter()
                        .any(|(other_name, other)| name == other_name && same(member, other))
                })
        }
        (Arrived::Number(one), Arrived::Number(other)) => one.to_bits() == other.to_bits(),
        _ => one == other,
    }
}
