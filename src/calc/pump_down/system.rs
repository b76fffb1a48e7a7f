//! The system, its hoses and its pump, ready to be reckoned with and to be altered.

use super::input::ValveCore;
use crate::calc::ambient::Ambient;
use crate::physics::Beyond;
use crate::physics::evacuation::{Evacuation, boiling_temperature};
use crate::physics::vacuum_flow::Hose;
use crate::physics::vacuum_line::{Path, VacuumLine};
use crate::quantity::{AbsolutePressure, Length, Mass, Temperature, Time, Volume, VolumeFlow};

/// A hose, or several alike.
#[derive(Clone, Copy)]
pub(super) struct Hoses {
    pub bore: Length,
    pub length: Length,
    pub core: ValveCore,
    pub count: u16,
}

/// Water in the system.
#[derive(Clone, Copy)]
pub(super) struct Water {
    pub mass: Mass,
    /// Whether the mass is that of a damp system.
    pub is_assumed: bool,
    pub depth: Option<Length>,
}

/// What is emptied, through what, by what. Cloned and altered for each change that is weighed.
#[derive(Clone)]
pub(super) struct System {
    pub air: Ambient,
    pub start: AbsolutePressure,
    pub volume: Volume,
    pub speed: VolumeFlow,
    pub ultimate: AbsolutePressure,
    pub hoses: Vec<Hoses>,
    /// Bore and length of the tube that stands for a valve core.
    pub core: (Length, Length),
    pub water: Option<Water>,
    pub ambient_temperature: Temperature,
}

impl System {
    /// Pump and hoses, ready to flow through.
    ///
    /// # Errors
    /// Bores and lengths that were not found to be valid when they were read.
    pub fn line(&self) -> Result<VacuumLine, Beyond> {
        let core = Hose::new(self.core.0, self.core.1)?;
        let path = |hose: &Hoses| {
            Ok(Path {
                narrow: (hose.core == ValveCore::In).then_some(core),
                hose: Hose::new(hose.bore, hose.length)?,
                count: hose.count,
            })
        };
        Ok(VacuumLine {
            speed: self.speed,
            ultimate: self.ultimate,
            paths: self.hoses.iter().map(path).collect::<Result<_, _>>()?,
            turbulent: false,
        })
    }

    /// Temperature of the water while it boils through this line, at a depth or as a film.
    pub fn water_temperature(
        &self,
        line: &VacuumLine,
        mass: Mass,
        depth: Option<Length>,
    ) -> Temperature {
        depth.map_or(self.ambient_temperature, |depth| {
            boiling_temperature(line, mass, depth, self.ambient_temperature)
        })
    }

    /// The evacuation through this line.
    ///
    /// # Errors
    /// Water that would boil at the start.
    pub fn evacuation<'line>(&self, line: &'line VacuumLine) -> Result<Evacuation<'line>, Beyond> {
        let water = self.water.map(|water| {
            (
                water.mass,
                self.water_temperature(line, water.mass, water.depth),
            )
        });
        Evacuation::new(line, self.volume, self.start, water)
    }

    /// Time to a pressure; nothing if it is never reached.
    pub fn time_to(&self, target: AbsolutePressure) -> Option<Time> {
        self.evacuation(&self.line().ok()?).ok()?.time_to(target)
    }

    /// Whether any valve core is in the way.
    pub fn has_cores(&self) -> bool {
        self.hoses.iter().any(|hose| hose.core == ValveCore::In)
    }
}
