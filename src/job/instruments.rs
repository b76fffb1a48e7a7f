//! The instruments: what is entered of them, is anything wrong with it, are they calibrated?

use super::clock::Clock;
use super::parts::Parts;
use super::stage::{Draft, OpenMatter};
use crate::calc::torque::{TorqueInput, torque};
use crate::calc::{Field, Part, Reading, input};
use crate::quantity::{
    Angle, Band, Entry, Length, Mass, Moment, PressureDifference, Ratio, TemperatureDifference,
    Time, Torque,
};

input! {
    /// The instruments used.
    pub struct InstrumentsInput {
        /// Pressure gauge.
        pub gauge: Part<GaugeInput>,
        /// Thermometer.
        pub thermometer: Part<ThermometerInput>,
        /// Vacuum gauge.
        pub vacuum_gauge: Part<GaugeInput>,
        /// Scale.
        pub scale: Part<ScaleInput>,
        /// Torque wrench.
        pub wrench: Part<WrenchInput>,
        /// Caliper.
        pub caliper: Part<CaliperInput>,
    }
}

input! {
    /// A gauge.
    pub struct GaugeInput {
        /// What is written on it.
        pub name: Entry<String>,
        /// Smallest step that can be read.
        pub resolution: Entry<PressureDifference>,
        /// How far it may be off.
        pub uncertainty: Entry<PressureDifference>,
        /// When it was calibrated last.
        pub calibrated: Entry<Moment>,
    }
}

input! {
    /// A thermometer.
    pub struct ThermometerInput {
        /// What is written on it.
        pub name: Entry<String>,
        /// Smallest step that can be read.
        pub resolution: Entry<TemperatureDifference>,
        /// How far it may be off.
        pub uncertainty: Entry<TemperatureDifference>,
        /// When it was calibrated last.
        pub calibrated: Entry<Moment>,
    }
}

input! {
    /// A scale.
    pub struct ScaleInput {
        /// What is written on it.
        pub name: Entry<String>,
        /// Smallest step that it shows.
        pub resolution: Entry<Mass>,
        /// How far one reading may be off.
        pub uncertainty: Entry<Mass>,
        /// When it was calibrated last.
        pub calibrated: Entry<Moment>,
    }
}

input! {
    /// A torque wrench and its offset adapter.
    pub struct WrenchInput {
        /// What is written on it.
        pub name: Entry<String>,
        /// Its scale, from the least to the largest torque.
        pub wrench_range: Entry<Band<Torque>>,
        /// Accuracy: "4 %".
        pub wrench_accuracy: Entry<Ratio>,
        /// From the middle of the hand to the centre of the drive.
        pub wrench_length: Entry<Length>,
        /// From the centre of the drive to the centre of the nut, with an offset adapter.
        pub adapter_length: Entry<Length>,
        /// Direction of the adapter.
        pub adapter_angle: Entry<Angle>,
        /// When it was calibrated last.
        pub calibrated: Entry<Moment>,
    }
}

input! {
    /// A caliper.
    pub struct CaliperInput {
        /// What is written on it.
        pub name: Entry<String>,
        /// How far it may be off.
        pub uncertainty: Entry<Length>,
        /// When it was calibrated last.
        pub calibrated: Entry<Moment>,
    }
}

/// Longest time since the last calibration: a year. Common practice, no source.
const LONGEST_SINCE_CALIBRATION: Time = Time::seconds(366.0 * 86_400.0);

/// A tube that every family of torques has, to see what is wrong with the wrench as such.
const ANY_TUBE: Length = Length::inches(0.375);

pub(super) fn take(
    draft: &mut Draft<'_>,
    reading: &mut Reading,
    parts: &Parts<'_>,
    (clock, now): (&Clock, Moment),
) {
    let wrench = torque(&TorqueInput {
        tube: ANY_TUBE.into(),
        adapter_length: parts.wrench.adapter_length.clone(),
        adapter_angle: parts.wrench.adapter_angle.clone(),
        wrench_length: parts.wrench.wrench_length.clone(),
        wrench_range: parts.wrench.wrench_range.clone(),
        wrench_accuracy: parts.wrench.wrench_accuracy.clone(),
        ..TorqueInput::default()
    });
    if let Err(problems) = wrench {
        let field = Field::written("instruments.wrench".into());
        reading.inside(&field, |reading| reading.take_over(problems));
    }
    // What was in order when the job began stays in order in its record.
    let field = Field::written("created".into());
    let used = reading.optional(field, &parts.job.created).unwrap_or(now);
    let uncalibrated = [
        (
            "instruments.gauge",
            &parts.gauge.name,
            &parts.gauge.calibrated,
        ),
        (
            "instruments.thermometer",
            &parts.thermometer.name,
            &parts.thermometer.calibrated,
        ),
        (
            "instruments.vacuumGauge",
            &parts.vacuum_gauge.name,
            &parts.vacuum_gauge.calibrated,
        ),
        (
            "instruments.scale",
            &parts.scale.name,
            &parts.scale.calibrated,
        ),
        (
            "instruments.wrench",
            &parts.wrench.name,
            &parts.wrench.calibrated,
        ),
        (
            "instruments.caliper",
            &parts.caliper.name,
            &parts.caliper.calibrated,
        ),
    ]
    .into_iter()
    .filter(|(path, name, calibrated)| {
        let field = Field::written(format!("{path}.calibrated"));
        let calibrated = reading.optional(field, calibrated);
        let is_due = calibrated.is_none_or(|calibrated| {
            clock.between(calibrated, used).time > LONGEST_SINCE_CALIBRATION
        });
        // An instrument that nobody named is not known to be in use.
        is_due && !matches!(name, Entry::Absent)
    });
    let count = uncalibrated.count();
    draft.open_count(OpenMatter::Calibration, count);
}
