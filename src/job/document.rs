//! The job document: everything that is entered once and that every stage sees. It is an input like that of
//! any calculation, so that a text as typed stays in it until it can be read.

use crate::calc::charge::{AccessoryInput, Arrival, ChargeInput};
use crate::calc::line_set::HigherUnit;
use crate::calc::room_limit::{Mounting, RoomRule};
use crate::calc::running::RunningInput;
use crate::calc::standing_test::StandingTestInput;
use crate::calc::vacuum_hold::VacuumHoldInput;
use crate::calc::{Count, Entries, Part, input};
use crate::quantity::{
    AbsolutePressure, Altitude, Area, Entry, GaugePressure, Length, Mass, MassPerLength, Moment,
    Temperature, choice,
};
use crate::tables::refrigerants::Refrigerant;
use crate::tables::tube::TubeSeries;

use super::instruments::InstrumentsInput;
use super::joint::JointInput;
use super::order::OverrideInput;

/// The version of the document that is written. Version 1 is the first.
pub const DOCUMENT_VERSION: u16 = 1;

input! {
    /// A job.
    pub struct JobInput {
        /// Version of this document: 1.
        pub version: Entry<Count>,
        /// A short text that no other job has.
        pub id: Entry<String>,
        /// What the job is called.
        pub name: Entry<String>,
        /// Where it is.
        pub site: Entry<String>,
        /// Who does the work.
        pub technician: Entry<String>,
        /// Who it is done for.
        pub customer: Entry<String>,
        /// When it was begun.
        pub created: Entry<Moment>,
        /// When it was changed last.
        pub edited: Entry<Moment>,
        /// Whether it is a job to practise on.
        pub practice: Entry<bool>,
        /// What the equipment's plate and instructions say.
        pub plate: Part<PlateInput>,
        /// The two lines and how they run.
        pub lines: Part<LinesInput>,
        /// Rooms that the circuit could leak into.
        pub rooms: Entries<JobRoomInput>,
        /// Which rule the rooms' limit follows.
        pub room_rule: Entry<RoomRule>,
        /// Altitude above sea level.
        pub altitude: Entry<Altitude>,
        /// Pressure of the air as a barometer at the place shows it, instead of the altitude.
        pub barometer: Entry<AbsolutePressure>,
        /// The instruments used.
        pub instruments: Part<InstrumentsInput>,
        /// What was recorded of the joints, and joints that the plan does not have.
        pub joints: Entries<JointInput>,
        /// The pressure test.
        pub pressure_test: Part<PressureTestInput>,
        /// The evacuation.
        pub evacuation: Part<EvacuationInput>,
        /// Release and charge.
        pub release: Part<ReleaseInput>,
        /// The check of the running unit.
        pub run_check: Part<RunCheckInput>,
        /// Things of the bring list that are in the van, by their key.
        pub packed: Entries<PackedInput>,
        /// What was done against the order of work, and why.
        pub overrides: Entries<OverrideInput>,
        /// Notes.
        pub notes: Entries<NoteInput>,
        /// Photos, which are kept beside the document.
        pub photos: Entries<PhotoInput>,
        /// Names under the record.
        pub sign_offs: Entries<SignOffInput>,
        /// How the device's clock was set during the job.
        pub clock_changes: Entries<ClockChangeInput>,
    }
}

input! {
    /// What the equipment's plate and instructions say.
    pub struct PlateInput {
        /// What the equipment calls itself.
        pub equipment: Entry<String>,
        /// Refrigerant: "R-32".
        pub refrigerant: Entry<Refrigerant>,
        /// Factory charge.
        pub plate_charge: Entry<Mass>,
        /// How the equipment arrives.
        pub arrives: Entry<Arrival>,
        /// Length of line, one way, that the factory charge serves.
        pub precharged_length: Entry<Length>,
        /// Charge for each length of line beyond that.
        pub plate_adder: Entry<MassPerLength>,
        /// What is taken out for each length short of it.
        pub plate_reduction: Entry<MassPerLength>,
        /// Longest line allowed, one way.
        pub longest_length: Entry<Length>,
        /// Largest lift allowed.
        pub longest_lift: Entry<Length>,
        /// Design pressure PS.
        pub design_pressure: Entry<GaugePressure>,
        /// Test pressure by the plate.
        pub plate_test_pressure: Entry<GaugePressure>,
        /// Rating of the lowest-rated part that the test pressure reaches.
        pub lowest_rating: Entry<GaugePressure>,
    }
}

input! {
    /// The two lines and how they run.
    pub struct LinesInput {
        /// Length of the lines, one way, without fittings.
        pub length: Entry<Length>,
        /// Height of one unit above the other.
        pub lift: Entry<Length>,
        /// Which unit stands higher.
        pub higher_unit: Entry<HigherUnit>,
        /// The thicker line.
        pub gas_line: Part<JobLineInput>,
        /// The thinner line.
        pub liquid_line: Part<JobLineInput>,
        /// What takes refrigerant of its own: filters, receivers.
        pub accessories: Entries<JobAccessoryInput>,
    }
}

input! {
    /// One of the two lines.
    pub struct JobLineInput {
        /// Outside diameter: a size such as "5/8" or "16 mm".
        pub tube: Entry<Length>,
        /// Series of sizes to look in.
        pub tube_series: Entry<TubeSeries>,
        /// Wall, where it is not the table's.
        pub wall: Entry<Length>,
        /// Flare unions along the line, each two joints; none if nothing is entered.
        pub unions: Entry<Count>,
        /// Brazed couplings along the line; none if nothing is entered.
        pub brazed_couplings: Entry<Count>,
        /// Ports of the indoor unit, where they are not one of the line's own size.
        pub indoor_ports: Entries<UnitPortInput>,
        /// Ports of the outdoor unit, where they are not one of the line's own size.
        pub outdoor_ports: Entries<UnitPortInput>,
    }
}

input! {
    /// A port of a unit. One port of another size than the line takes an adapter; several are joined into the line.
    pub struct UnitPortInput {
        /// A short text that no other port of this end has.
        pub id: Entry<String>,
        /// Tube that the port takes: "1/2".
        pub tube: Entry<Length>,
    }
}

input! {
    /// What takes refrigerant of its own.
    pub struct JobAccessoryInput {
        /// A short text that no other accessory has.
        pub id: Entry<String>,
        /// What it is.
        pub name: Entry<String>,
        /// Refrigerant that it takes.
        pub mass: Entry<Mass>,
    }
}

impl JobAccessoryInput {
    /// As the charge asks for it.
    pub(super) fn as_asked(&self) -> AccessoryInput {
        AccessoryInput {
            name: self.name.clone(),
            mass: self.mass.clone(),
            ..AccessoryInput::default()
        }
    }
}

input! {
    /// A room that the circuit could leak into.
    pub struct JobRoomInput {
        /// A short text that no other room has.
        pub id: Entry<String>,
        /// What it is called.
        pub name: Entry<String>,
        /// Floor area.
        pub area: Entry<Area>,
        /// From floor to ceiling.
        pub height: Entry<Length>,
        /// How the indoor unit is mounted.
        pub mounting: Entry<Mounting>,
        /// From the floor to where refrigerant would come out, instead of the mounting.
        pub release_height: Entry<Length>,
    }
}

input! {
    /// The pressure test.
    pub struct PressureTestInput {
        /// Rule, leak to see, volume and cylinder, as the calculation asks for them. What the plate and the
        /// instruments say comes from there.
        pub test: Part<StandingTestInput>,
        /// The readings.
        pub readings: Entries<GaugeReadingInput>,
    }
}

input! {
    /// A reading of the pressure gauge.
    pub struct GaugeReadingInput {
        /// A short text that no other reading has.
        pub id: Entry<String>,
        /// When it was read.
        pub at: Entry<Moment>,
        /// What the gauge showed.
        pub gauge_pressure: Entry<GaugePressure>,
        /// Temperature of the tube under test.
        pub temperature: Entry<Temperature>,
        /// Temperature of the air around the tube.
        pub ambient_temperature: Entry<Temperature>,
        /// Pressure of the air at this reading.
        pub barometer: Entry<AbsolutePressure>,
        /// Whether the hold begins here: gas was let in or out, or a joint was made anew, since the reading
        /// before. Of several such readings the last one holds.
        pub hold_begins: Entry<bool>,
    }
}

input! {
    /// The evacuation.
    pub struct EvacuationInput {
        /// When the pump began to draw.
        pub pump_started: Entry<Moment>,
        /// Whether the valve cores are out.
        pub cores_out: Entry<bool>,
        /// Ambient, rule and limits, as the calculation asks for them. What the instruments say comes from there.
        pub hold: Part<VacuumHoldInput>,
        /// The readings.
        pub readings: Entries<VacuumGaugeReadingInput>,
    }
}

input! {
    /// A reading of the vacuum gauge.
    pub struct VacuumGaugeReadingInput {
        /// A short text that no other reading has.
        pub id: Entry<String>,
        /// When it was read.
        pub at: Entry<Moment>,
        /// What it showed, above vacuum.
        pub pressure: Entry<AbsolutePressure>,
        /// Whether the pump was valved off. The readings of the hold are the last ones without a break.
        pub valved_off: Entry<bool>,
    }
}

input! {
    /// Release and charge.
    pub struct ReleaseInput {
        /// When the liquid valve was opened.
        pub liquid_valve_opened: Entry<Moment>,
        /// When the gas valve was opened.
        pub gas_valve_opened: Entry<Moment>,
        /// What the gauge showed once both were open and the unit had stood.
        pub gauge_pressure: Entry<GaugePressure>,
        /// Temperature of the air around the units at that time.
        pub ambient_temperature: Entry<Temperature>,
        /// Cylinders and hose, as the calculation asks for them. What the plate, the lines and the scale say
        /// comes from there.
        pub charge: Part<ChargeInput>,
    }
}

input! {
    /// The check of the running unit.
    pub struct RunCheckInput {
        /// When it was read.
        pub at: Entry<Moment>,
        /// What was read, as the calculation asks for it. What the plate says comes from there.
        pub readings: Part<RunningInput>,
    }
}

input! {
    /// A thing of the bring list that is in the van.
    pub struct PackedInput {
        /// Its key in the bring list.
        pub id: Entry<String>,
        /// Whether it is.
        pub packed: Entry<bool>,
    }
}

choice! {
    /// The stages of a job, in the order of work.
    Stage {
        /// What is to be done, and with what.
        Plan = "plan",
        /// The cones.
        Flare = "flare",
        /// The nuts.
        Tighten = "tighten",
        /// The nitrogen hold and the look at each joint.
        PressureTest = "pressure-test",
        /// The pump and the vacuum hold.
        Evacuate = "evacuate",
        /// The valves, the charge.
        ReleaseAndCharge = "release-and-charge",
        /// The running unit.
        RunCheck = "run-check",
        /// What was done, and by whom.
        Record = "record",
    }
}

input! {
    /// A note.
    pub struct NoteInput {
        /// A short text that no other note has.
        pub id: Entry<String>,
        /// Stage that it belongs to.
        pub stage: Entry<Stage>,
        /// When it was written.
        pub at: Entry<Moment>,
        /// What it says.
        pub text: Entry<String>,
    }
}

input! {
    /// A photo.
    pub struct PhotoInput {
        /// The name that it is kept under.
        pub id: Entry<String>,
        /// Stage that it belongs to.
        pub stage: Entry<Stage>,
        /// When it was taken.
        pub at: Entry<Moment>,
        /// What it shows.
        pub caption: Entry<String>,
    }
}

input! {
    /// A name under the record.
    pub struct SignOffInput {
        /// A short text that no other sign-off has.
        pub id: Entry<String>,
        /// Who.
        pub name: Entry<String>,
        /// As what.
        pub role: Entry<String>,
        /// When.
        pub at: Entry<Moment>,
    }
}

input! {
    /// The device's clock was set while the job was open: no time passed between the two.
    pub struct ClockChangeInput {
        /// A short text that no other change has.
        pub id: Entry<String>,
        /// What the clock showed last.
        pub before: Entry<Moment>,
        /// What it showed then.
        pub after: Entry<Moment>,
        /// Whether the device may have slept instead.
        pub may_have_slept: Entry<bool>,
    }
}
