//! How long a pump takes to empty a volume, dry or with water standing in it.

use super::beyond::{Argument, Beyond};
use super::root::turning_point;
use super::vacuum_line::VacuumLine;
use super::water::{latent_heat, saturation_pressure};
use crate::quantity::{
    AbsolutePressure, Length, Mass, MassFlow, Power, Quantity, Temperature, Time, Volume,
};

/// Specific gas constant of water vapour, J/(kg·K): molar gas constant over molar mass, IAPWS R6-95.
const WATER_VAPOUR: f64 = 8.314_462_618 / 18.015_268e-3;

/// A volume being emptied.
#[derive(Clone, Copy, Debug)]
pub struct Evacuation<'line> {
    line: &'line VacuumLine,
    volume: f64,
    start: f64,
    water: Option<Drying>,
}

/// Water that evaporates at one temperature into the volume.
#[derive(Clone, Copy, Debug)]
struct Drying {
    /// Saturation pressure.
    vapour: f64,
    /// The pressure at which the last of it is gone.
    dry: f64,
    /// By how much the other gas thins until then: the logarithm.
    thinning: f64,
}

impl<'line> Evacuation<'line> {
    /// An evacuation from the pressure `start`, with water of a mass and temperature standing in the volume.
    ///
    /// # Method
    /// Gas at one temperature in one volume: `V·dp/dt = −Q(p)`. With `x = ln(p − p_ult)` the time is the
    /// integral of `V` times the resistance of line and pump, which is nearly constant.
    ///
    /// While water stands, its vapour keeps the saturation pressure `p_w` and only the other gas gets
    /// less, `V·dp_g/dt = −Q(p)·p_g/p`, and for each e-fold of it the pump removes the vapour that fills the
    /// volume once. The pressure so creeps towards `p_w` and stays there until the water is gone.
    ///
    /// # Errors
    /// [`Beyond`] if the temperature is, or if the water would boil at the start.
    pub fn new(
        line: &'line VacuumLine,
        volume: Volume,
        start: AbsolutePressure,
        water: Option<(Mass, Temperature)>,
    ) -> Result<Self, Beyond> {
        let (volume, start) = (volume.in_cubic_metres(), start.in_pascals());
        let drying = |(mass, temperature): (Mass, Temperature)| {
            let vapour = saturation_pressure(temperature)?.in_pascals();
            if vapour >= start {
                return Err(Beyond::Contradiction {
                    first: Argument::Pressure,
                    second: Argument::Temperature,
                });
            }
            let filling = vapour * volume / (WATER_VAPOUR * temperature.in_kelvins());
            let thinning = mass.in_kilograms() / filling;
            let dry = vapour + (start - vapour) * libm::exp(-thinning);
            Ok(Drying {
                vapour,
                dry,
                thinning,
            })
        };
        Ok(Self {
            line,
            volume,
            start,
            water: water.map(drying).transpose()?,
        })
    }

    /// Time until the pressure has fallen to `target`; nothing if it never does.
    ///
    /// # Examples
    /// ```
    /// use coldwright::physics::evacuation::Evacuation;
    /// use coldwright::physics::vacuum_line::VacuumLine;
    /// use coldwright::quantity::{AbsolutePressure, Volume, VolumeFlow};
    /// let pump = VacuumLine {
    ///     speed: VolumeFlow::cubic_metres_per_second(0.1),
    ///     ultimate: AbsolutePressure::pascals(0.0),
    ///     paths: Vec::new(),
    ///     turbulent: false,
    /// };
    /// let start = AbsolutePressure::pascals(100_000.0);
    /// let evacuation = Evacuation::new(&pump, Volume::cubic_metres(1.0), start, None).unwrap();
    /// let time = evacuation.time_to(AbsolutePressure::pascals(1000.0)).unwrap();
    /// assert!((time.in_seconds() - 46.05).abs() < 0.005);
    /// ```
    ///
    /// # References
    /// Figure in the example: engineeringtoolbox.com, vacuum-evacuation-time-d_844.
    pub fn time_to(&self, target: AbsolutePressure) -> Option<Time> {
        let target = target.in_pascals();
        if target >= self.start {
            return Some(Time::seconds(0.0));
        }
        if target <= self.line.ultimate.in_pascals() {
            return None;
        }
        self.after((self.start, 0.0), target).map(Time::seconds)
    }

    /// Pressures and their times from the start to `target`, for a curve: evenly spaced as logarithms, and
    /// where water begins and ends to hold the pressure. They end where the pressure no longer falls.
    pub fn course(&self, target: AbsolutePressure, steps: u16) -> Vec<(Time, AbsolutePressure)> {
        let lowest = target.in_pascals();
        let step = libm::log(lowest / self.start) / f64::from(steps);
        let spaced =
            (1..=steps).map(|place| (self.start * libm::exp(step * f64::from(place))).max(lowest));
        let (knee, dry) = self.water.map_or((self.start, self.start), |water| {
            (water.dry.max(water.vapour * NEAR_SATURATION), water.dry)
        });
        let held = self.water.map_or([None, None], |_| [Some(knee), Some(dry)]);
        let falling = (spaced.clone().filter(|pressure| *pressure > knee))
            .chain(held.into_iter().flatten())
            .chain(spaced.filter(|pressure| *pressure < dry));
        let mut latest = (self.start, 0.0);
        let mut course = vec![(Time::seconds(0.0), AbsolutePressure::pascals(self.start))];
        for pressure in falling.filter(|pressure| *pressure >= lowest) {
            let Some(seconds) = self.after(latest, pressure) else {
                break;
            };
            latest = (pressure, seconds);
            course.push((Time::seconds(seconds), AbsolutePressure::pascals(pressure)));
        }
        course
    }

    /// Seconds from the start to the pressure `to`, knowing those to a higher one; `to` lies above the
    /// ultimate pressure.
    fn after(&self, (from, seconds): (f64, f64), to: f64) -> Option<f64> {
        Some(match self.water {
            Some(water) if to > water.dry => seconds + self.fall(from, to, water.vapour),
            Some(water) if from > water.dry => {
                self.dry_after()?.in_seconds() + self.fall(water.dry, to, 0.0)
            }
            _ => seconds + self.fall(from, to, 0.0),
        })
    }

    /// Time until no water stands in the volume; nothing if the pump does not get it out.
    pub fn dry_after(&self) -> Option<Time> {
        let Some(water) = self.water else {
            return Some(Time::seconds(0.0));
        };
        let ultimate = self.line.ultimate.in_pascals();
        if water.dry <= ultimate || self.start <= ultimate {
            return None;
        }
        if water.vapour <= ultimate {
            return Some(Time::seconds(self.fall(
                self.start,
                water.dry,
                water.vapour,
            )));
        }
        // So near the saturation pressure the pace no longer changes.
        let near = water.vapour + STEADY * (water.vapour - ultimate);
        if water.dry >= near {
            let seconds = self.fall(self.start, water.dry, water.vapour);
            return Some(Time::seconds(seconds));
        }
        let near = near.min(self.start);
        let left = water.thinning - libm::log((self.start - water.vapour) / (near - water.vapour));
        let pace = self.volume * water.vapour / self.line.throughput(water.vapour);
        let seconds = self.fall(self.start, near, water.vapour) + left * pace;
        Some(Time::seconds(seconds))
    }

    /// Seconds from one pressure to another above vapour of a constant pressure, both above it and
    /// above the ultimate pressure.
    fn fall(&self, from: f64, to: f64, vapour: f64) -> f64 {
        let ultimate = self.line.ultimate.in_pascals();
        let floor = vapour.max(ultimate);
        let (top, bottom) = (libm::log(from - floor), libm::log(to - floor));
        let panels = libm::ceil(top - bottom).max(1.0);
        let half = 0.5 * (top - bottom) / panels;
        let mut sum = 0.0;
        for panel in 0..panels as usize {
            let middle = top - (2.0 * panel as f64 + 1.0) * half;
            for (place, weight) in GAUSS {
                let over = libm::exp(middle + place * half);
                let pressure = floor + over;
                let pace =
                    pressure / (over + (floor - ultimate)) * over / (over + (floor - vapour));
                sum += weight * pace * self.line.resistance(pressure);
            }
        }
        sum * half * self.volume
    }
}

/// Pressure over saturation pressure at which a gauge can be said to have come to a stand.
const NEAR_SATURATION: f64 = 1.01;
/// Where, relative to its distance from the ultimate pressure, the pressure stands at saturation.
const STEADY: f64 = 1e-6;

/// Places and weights of Gauss and Legendre's rule of three points.
const GAUSS: [(f64, f64); 3] = [
    (-0.774_596_669_241_483_4, 5.0 / 9.0),
    (0.0, 8.0 / 9.0),
    (0.774_596_669_241_483_4, 5.0 / 9.0),
];

/// Mass of water that a line takes away for a time while it boils at this temperature, and the heat
/// that it needs for that. Both zero where the pump does not reach the saturation pressure.
pub fn boiling(line: &VacuumLine, temperature: Temperature) -> Result<(MassFlow, Power), Beyond> {
    let vapour = saturation_pressure(temperature)?.in_pascals();
    let throughput = line.throughput(vapour).max(0.0);
    let mass_flow = throughput / (WATER_VAPOUR * temperature.in_kelvins());
    let heat = mass_flow * latent_heat(temperature).si();
    Ok((
        MassFlow::kilograms_per_second(mass_flow),
        Power::watts(heat),
    ))
}

/// Conductivity of water for heat, W/(m·K): 0.56 at 0 °C, 0.61 at 25 °C. From memory.
const WATER_CONDUCTIVITY: f64 = 0.6;
/// Density of water, kg/m³.
const WATER_DENSITY: f64 = 1000.0;
/// Coldest that boiling water is taken to get.
const COLDEST: f64 = 200.0;

/// The temperature that water takes while a pump makes it boil, if heat reaches it only through its
/// own depth from a wall that keeps its temperature.
///
/// # Method
/// Heat through half the depth, the mean while it boils away, equals the heat of evaporation:
/// `2·λ·A/h·(T_wall − T) = ṁ(T)·L` with `A = m/(ρ·h)`.
///
/// # Valid for
/// Walls from 200 K up. Ice conducts better than water; water's figure is kept, for ice touches the wall badly.
pub fn boiling_temperature(
    line: &VacuumLine,
    mass: Mass,
    depth: Length,
    wall: Temperature,
) -> Temperature {
    let (mass, depth, wall) = (mass.in_kilograms(), depth.in_metres(), wall.in_kelvins());
    let coupling = 2.0 * WATER_CONDUCTIVITY * mass / (WATER_DENSITY * depth * depth);
    Temperature::kelvins(turning_point(COLDEST, wall, |kelvins| {
        let heat = boiling(line, Temperature::kelvins(kelvins));
        heat.is_ok_and(|(_, heat)| coupling * (wall - kelvins) > heat.in_watts())
    }))
}
