//! How much refrigerant may be in a circuit that could leak into a room, and how large the room must be.

mod basis;
mod room;

use serde::Serialize;

use super::input::input;
use super::nested::Entries;
use super::problem::{Field, Problems};
use super::reading::{Reading, optional};
use super::verdict::Judgement;
use super::working::Working;
use crate::quantity::{Area, Density, Entry, Length, Mass, Volume, choice};
use crate::tables::SourceId;
use crate::tables::refrigerants::{Refrigerant, SafetyClass, Sourced};
use basis::{Basis, exceeds};
pub use basis::{ChargeCaps, ChargeStanding};
use room::Room;
pub use room::{Governor, Mounting, RoomAllowance};

input! {
    /// What [`room_limit`] asks for.
    pub struct RoomLimitInput {
        /// Refrigerant: "R-32"; required unless `safetyClass` is entered for one that is not in the list.
        pub refrigerant: Entry<Refrigerant>,
        /// Safety class of a refrigerant that is not in the list; its limits are then required too.
        pub safety_class: Entry<SafetyClass>,
        /// Lower flammability limit (LFL) from the data sheet, instead of the table's: "0.307 kg/m³".
        pub lower_flammability_limit: Entry<Density>,
        /// Refrigerant concentration limit (RCL) or practical limit that holds at the place, instead of the table's: "420 g/m³".
        pub concentration_limit: Entry<Density>,
        /// Which rule the limit follows; `room-formula` if nothing is entered. Local code decides which one holds.
        pub rule: Entry<RoomRule>,
        /// All of the refrigerant in the circuit: "1.6 kg"; required unless there are rooms.
        pub charge: Entry<Mass>,
        /// How far off the charge may be; ±10 g if nothing is entered.
        pub charge_uncertainty: Entry<Mass>,
        /// Rooms that the circuit could leak into, each of which must bear the whole charge; at least one unless `charge` is entered.
        pub rooms: Entries<OccupiedRoomInput>,
    }
}

input! {
    /// A room that people are in.
    pub struct OccupiedRoomInput {
        /// What it is called.
        pub name: Entry<String>,
        /// Floor area, required: "21 m²".
        pub area: Entry<Area>,
        /// From floor to ceiling: "2.4 m"; required where a concentration governs: class A1, or the rule `concentration-limit`.
        pub height: Entry<Length>,
        /// How the indoor unit is mounted; for a flammable refrigerant exactly one of this and `releaseHeight`.
        pub mounting: Entry<Mounting>,
        /// From the floor to where refrigerant would come out, 0.6 to 2.2 m.
        pub release_height: Entry<Length>,
    }
}

choice! {
    /// Which rule a limit follows.
    RoomRule {
        /// Flammable classes: the formula with release height and floor area and its caps. Class A1: concentration limit times volume.
        /// Real Decreto 552/2019, IF-04; the same form in EN 378-1 and IEC 60335-2-40. Comfort cooling and heating, no additional measures.
        RoomFormula = "room-formula",
        /// Concentration limit times volume for every class: RCL of ASHRAE 34, table 1103.1 of the International Mechanical Code.
        ConcentrationLimit = "concentration-limit",
    }
}

choice! {
    /// What must be known beside the figures.
    RoomNotice {
        /// The edition of the code that holds at the place decides, not this figure.
        LocalCodeDecides = "local-code-decides",
        /// The LFL is not the table's but the one entered.
        FlammabilityLimitEntered = "flammability-limit-entered",
        /// The concentration limit is not the table's but the one entered.
        ConcentrationLimitEntered = "concentration-limit-entered",
        /// In some room the charge is more than the concentration limit would allow, which other codes go by.
        AboveConcentrationLimit = "above-concentration-limit",
        /// The charge is above the cap: only with the additional measures that the code names, such as ventilation, shut-off or alarm.
        MeasuresNeeded = "measures-needed",
        /// The charge is above every cap: not in a room that people are in.
        AboveEveryCap = "above-every-cap",
    }
}

/// What [`room_limit`] finds.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct RoomLimitAnswer {
    /// The rule that the figures follow.
    pub rule: RoomRule,
    /// The edition it is taken from.
    pub sources: &'static [SourceId],
    /// Safety class.
    pub safety_class: Sourced<SafetyClass>,
    /// Lower flammability limit taken; absent if it does not burn.
    pub lower_flammability_limit: Option<Sourced<Density>>,
    /// Concentration limit taken; absent if neither the table nor the input has one and the rule needs none.
    pub concentration_limit: Option<Sourced<Density>>,
    /// Caps by the class; absent where a concentration governs.
    pub caps: Option<ChargeCaps>,
    /// How the charge stands to the caps.
    pub charge_standing: Option<ChargeStanding>,
    /// The rooms in the order in which they were entered.
    pub rooms: Vec<RoomAllowance>,
    /// Place in `rooms`, counted from 0, of the one that allows least.
    pub governing_room: Option<usize>,
    /// What that room allows.
    pub largest_charge: Option<Mass>,
    /// How the charge stands to that; no more is in band.
    pub charge: Option<Judgement<Mass, Mass>>,
    /// Smallest room for the charge at each usual mounting; empty where the charge needs no room or may be in none.
    pub smallest_rooms: Vec<SmallestRoom>,
    /// Smallest volume of a room for the charge, where a concentration governs.
    pub smallest_volume: Option<Volume>,
    /// What must be known beside the figures.
    pub notices: Vec<RoomNotice>,
    /// The working, that of the room that allows least.
    pub working: Working,
}

/// Smallest room at a mounting.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct SmallestRoom {
    /// The mounting.
    pub mounting: Mounting,
    /// From the floor to where refrigerant would come out.
    pub release_height: Length,
    /// Smallest floor area.
    pub area: Area,
}

/// A charging scale in order. Common practice.
const USUAL_SCALE: Mass = Mass::grams(10.0);
/// Charges that are answered for.
const CHARGES: (Mass, Mass) = (Mass::grams(1.0), Mass::kilograms(1000.0));
/// Uncertain scales that are answered for.
const SCALES: (Mass, Mass) = (Mass::grams(0.0), Mass::kilograms(10.0));

/// How much refrigerant may be in a circuit that could leak into these rooms, and is this charge too much?
///
/// # Method
/// Flammable classes: up to `m₁` no room limit; above it `m_max = 2.5·LFL^(5/4)·h₀·√A`, never more than
/// the cap `m₂`; `m₁ = 4·LFL`, `m₂ = 26·LFL`, `m₃ = 130·LFL`, all three × 1.5 for class 2L. `h₀` is 0.6 m for
/// a unit on the floor, 1.0 in a window, 1.8 on a wall, 2.2 at the ceiling. Class A1, and every class under
/// the rule `concentration-limit`: limit times volume. Of several rooms the one that allows least governs,
/// since all of the charge could leak into it.
///
/// # Valid for
/// Comfort cooling and heating above ground, without additional measures; refrigerants heavier than air
/// of class A1, A2L and A3; rooms of 0.5 to 10 000 m², heights of release 0.6 to 2.2 m.
///
/// # Errors
/// Missing or contradictory facts: no figure is assumed. Class B2L and R-717, to which the formula does not apply.
///
/// # Examples
/// ```
/// use coldwright::calc::room_limit::{Mounting, OccupiedRoomInput, RoomLimitInput, room_limit};
/// use coldwright::quantity::{Area, Mass};
/// use coldwright::tables::refrigerants::Refrigerant;
/// let room = OccupiedRoomInput {
///     area: Area::square_metres(75.0).into(),
///     mounting: Mounting::Ceiling.into(),
///     ..OccupiedRoomInput::default()
/// };
/// let answer = room_limit(&RoomLimitInput {
///     refrigerant: Refrigerant::R32.into(),
///     charge: Mass::kilograms(8.5).into(),
///     rooms: vec![room].into(),
///     ..RoomLimitInput::default()
/// }).unwrap();
/// // The example of the decree prints 10.85 kg, a slip: its own formula gives 10.88.
/// assert!((answer.largest_charge.unwrap().in_kilograms() - 10.88).abs() < 0.005);
/// ```
///
/// # References
/// Real Decreto 552/2019, IF-04; the same form in EN 378-1 and IEC 60335-2-40. ASHRAE 34 and International
/// Mechanical Code, table 1103.1, for concentration limits.
pub fn room_limit(input: &RoomLimitInput) -> Result<RoomLimitAnswer, Problems> {
    let mut reading = Reading::default();
    let basis = Basis::read(input, &mut reading);
    let charge = optional!(reading, input.charge, CHARGES);
    let uncertainty = optional!(reading, input.charge_uncertainty, SCALES);
    let fewest = usize::from(matches!(input.charge, Entry::Absent));
    let rooms = reading.list(
        Field::named("rooms"),
        &input.rooms,
        fewest,
        |reading, room| Room::read(room, basis.as_ref(), reading),
    );
    reading.sound()?;
    let (Some(basis), Some(rooms)) = (basis, rooms) else {
        return Err(reading.take());
    };
    let charge = charge.map(|charge| (charge, uncertainty.unwrap_or(USUAL_SCALE)));
    Ok(answer(&basis, &rooms, charge))
}

/// A charge and how far off it may be.
type Charge = (Mass, Mass);

fn answer(basis: &Basis, rooms: &[Room], charge: Option<Charge>) -> RoomLimitAnswer {
    let allowances: Vec<_> = rooms
        .iter()
        .map(|room| room.allowance(basis, charge))
        .collect();
    let least = allowances
        .iter()
        .zip(rooms)
        .enumerate()
        .reduce(|least, next| {
            if next.1.0.largest_charge < least.1.0.largest_charge {
                next
            } else {
                least
            }
        });
    let standing = charge.map(|(charge, _)| basis.standing(charge));
    let mut working = basis.steps();
    if let Some((_, (allowance, room))) = least {
        working.extend(room.steps(basis, allowance, charge));
    }
    let charge_alone = charge.map(|(charge, _)| charge);
    let (governing_room, largest_charge, judgement) = match least {
        Some((place, (allowance, _))) => (
            Some(place),
            Some(allowance.largest_charge),
            allowance.charge,
        ),
        None => (None, None, None),
    };
    let notices = notices(basis, &allowances, charge_alone);
    RoomLimitAnswer {
        rule: basis.rule,
        sources: basis.sources(),
        safety_class: basis.class,
        lower_flammability_limit: basis.flammability(),
        concentration_limit: basis.concentration,
        caps: basis.caps(),
        charge_standing: standing,
        governing_room,
        largest_charge,
        charge: judgement,
        smallest_rooms: smallest_rooms(basis, charge_alone),
        smallest_volume: charge_alone.and_then(|charge| basis.smallest_volume(charge)),
        notices,
        working,
        rooms: allowances,
    }
}

fn smallest_rooms(basis: &Basis, charge: Option<Mass>) -> Vec<SmallestRoom> {
    let smallest = |mounting: &Mounting| {
        let release_height = mounting.release_height();
        let area = basis.smallest_area(charge?, release_height)?;
        Some(SmallestRoom {
            mounting: *mounting,
            release_height,
            area,
        })
    };
    Mounting::ALL.iter().filter_map(smallest).collect()
}

fn notices(basis: &Basis, rooms: &[RoomAllowance], charge: Option<Mass>) -> Vec<RoomNotice> {
    let entered = |limit: Option<Sourced<Density>>| {
        limit.is_some_and(|limit| limit.source == SourceId::PlateFigure)
    };
    let above = |limit: Option<Mass>| {
        charge
            .zip(limit)
            .is_some_and(|(charge, limit)| exceeds(charge, limit))
    };
    let caps = basis.caps();
    let above_cap = above(caps.map(|caps| caps.cap));
    let above_every = above(caps.map(|caps| caps.with_measures));
    let above_concentration =
        caps.is_some() && rooms.iter().any(|room| above(room.concentration_charge));
    [
        (RoomNotice::LocalCodeDecides, true),
        (
            RoomNotice::FlammabilityLimitEntered,
            entered(basis.flammability()),
        ),
        (
            RoomNotice::ConcentrationLimitEntered,
            entered(basis.concentration),
        ),
        (RoomNotice::AboveConcentrationLimit, above_concentration),
        (RoomNotice::MeasuresNeeded, above_cap && !above_every),
        (RoomNotice::AboveEveryCap, above_every),
    ]
    .into_iter()
    .filter(|(_, holds)| *holds)
    .map(|(notice, _)| notice)
    .collect()
}
