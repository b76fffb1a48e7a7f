//! The parts of a job document, empty ones in place of those that are not there.

use super::document::{
    EvacuationInput, JobInput, JobLineInput, LinesInput, PlateInput, PressureTestInput,
    ReleaseInput, RunCheckInput,
};
use super::instruments::{
    CaliperInput, GaugeInput, InstrumentsInput, ScaleInput, ThermometerInput, WrenchInput,
};
use crate::calc::charge::ChargeInput;
use crate::calc::running::RunningInput;
use crate::calc::standing_test::StandingTestInput;
use crate::calc::vacuum_hold::VacuumHoldInput;
use crate::calc::{Field, Part, Reading};

macro_rules! parts {
    ($job:ident; $($field:ident: $type:ty = $from:ident . $member:ident in $path:literal;)*) => {
        /// Empty parts.
        #[derive(Default)]
        pub(super) struct Blank { $($field: $type),* }

        /// The parts of a job.
        #[allow(dead_code, reason = "some are taken for the sake of those within")]
        #[derive(Clone, Copy)]
        pub(super) struct Parts<'a> {
            pub job: &'a JobInput,
            $(pub $field: &'a $type),*
        }

        impl<'a> Parts<'a> {
            /// The parts; what is wrong with one as such, or foreign in it, is a problem.
            pub fn of($job: &'a JobInput, blank: &'a Blank, reading: &mut Reading) -> Self {
                $(let $field = take(reading, $path, &$from.$member, &blank.$field);)*
                Self { job: $job, $($field),* }
            }
        }
    };
}

fn take<'a, T>(
    reading: &mut Reading,
    path: &'static str,
    part: &'a Part<T>,
    blank: &'a T,
) -> &'a T {
    reading.part(Field::named(path), part, |_, _| Some(()));
    part.given().unwrap_or(blank)
}

parts! {
    job;
    plate: PlateInput = job.plate in "plate";
    lines: LinesInput = job.lines in "lines";
    gas_line: JobLineInput = lines.gas_line in "lines.gasLine";
    liquid_line: JobLineInput = lines.liquid_line in "lines.liquidLine";
    instruments: InstrumentsInput = job.instruments in "instruments";
    gauge: GaugeInput = instruments.gauge in "instruments.gauge";
    thermometer: ThermometerInput = instruments.thermometer in "instruments.thermometer";
    vacuum_gauge: GaugeInput = instruments.vacuum_gauge in "instruments.vacuumGauge";
    scale: ScaleInput = instruments.scale in "instruments.scale";
    wrench: WrenchInput = instruments.wrench in "instruments.wrench";
    caliper: CaliperInput = instruments.caliper in "instruments.caliper";
    pressure_test: PressureTestInput = job.pressure_test in "pressureTest";
    test: StandingTestInput = pressure_test.test in "pressureTest.test";
    evacuation: EvacuationInput = job.evacuation in "evacuation";
    hold: VacuumHoldInput = evacuation.hold in "evacuation.hold";
    release: ReleaseInput = job.release in "release";
    charge: ChargeInput = release.charge in "release.charge";
    run_check: RunCheckInput = job.run_check in "runCheck";
    running: RunningInput = run_check.readings in "runCheck.readings";
}
