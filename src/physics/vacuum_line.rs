//! A vacuum pump at the end of hoses that run side by side: what is left of its speed at the system.

use super::vacuum_flow::Hose;
use crate::quantity::{AbsolutePressure, VolumeFlow};

/// Hoses that are alike and run side by side from the system to the pump.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Path {
    /// What stands at the system's end of each: a narrow part, as a tube of its own.
    pub narrow: Option<Hose>,
    /// The hose.
    pub hose: Hose,
    /// How many there are, at least 1.
    pub count: u16,
}

/// A pump and what connects it to the system; with no path it stands right at the system.
#[derive(Clone, Debug, PartialEq)]
pub struct VacuumLine {
    /// Speed of the pump far above its ultimate pressure, more than zero.
    pub speed: VolumeFlow,
    /// Pressure at which the pump moves nothing any more.
    pub ultimate: AbsolutePressure,
    /// The paths from the system to the pump.
    pub paths: Vec<Path>,
    /// Whether turbulent and choked flow, roughly estimated, hold gas back too.
    pub turbulent: bool,
}

/// How gas flows through a line.
#[derive(Clone, Debug, PartialEq)]
pub struct LineFlow {
    /// Pressure at the inlet of the pump.
    pub inlet: AbsolutePressure,
    /// Speed that is left at the system: throughput over its pressure.
    pub effective_speed: VolumeFlow,
    /// The paths, in their order.
    pub paths: Vec<PathFlow>,
}

/// How gas flows through one path.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PathFlow {
    /// Conductance of the path, of all its hoses together.
    pub conductance: VolumeFlow,
    /// Part of the whole throughput that takes this path.
    pub throughput_part: f64,
    /// Part of the path's fall of pressure that lies in its narrow part.
    pub narrow_part: f64,
    /// Pressure between the narrow part and the hose.
    pub between: AbsolutePressure,
}

/// Accuracy to which the resistance settles, relative.
const SETTLED: f64 = 1e-8;
/// Rounds after which it has settled: each at least halves what is wrong.
const MOST_ROUNDS: usize = 48;

impl VacuumLine {
    /// How gas flows at this pressure in the system, which is not below the ultimate pressure.
    ///
    /// # Method
    /// Throughput `Q = C(p̄)·(p − pᵢ) = S·(pᵢ − p_ult)`: the same through hoses, at their mean pressure,
    /// and pump, whose speed falls as `S·(1 − p_ult/pᵢ)`. The conductances found with the pressures
    /// along the line give better pressures, until nothing changes.
    ///
    /// # Valid for
    /// What [`vacuum_flow::conductance`](super::vacuum_flow::conductance) is: laminar flow of air at 20 °C.
    ///
    /// # Examples
    /// ```
    /// use coldwright::physics::vacuum_flow::Hose;
    /// use coldwright::physics::vacuum_line::{Path, VacuumLine};
    /// use coldwright::quantity::{AbsolutePressure, Length, VolumeFlow};
    /// let hose = Hose::new(Length::millimetres(5.0), Length::metres(1.5)).unwrap();
    /// let line = VacuumLine {
    ///     speed: VolumeFlow::cubic_metres_per_second(2e-3),
    ///     ultimate: AbsolutePressure::pascals(0.0),
    ///     paths: vec![Path { narrow: None, hose, count: 1 }],
    ///     turbulent: false,
    /// };
    /// let flow = line.flow(AbsolutePressure::pascals(66.66));
    /// // The hose leaves little of the pump's 2 L/s.
    /// assert!((flow.effective_speed.in_cubic_metres_per_second() * 1e3 - 0.027).abs() < 5e-4);
    /// ```
    pub fn flow(&self, pressure: AbsolutePressure) -> LineFlow {
        let pressure = pressure.in_pascals();
        let settled = self.settle(pressure);
        let over = pressure - self.ultimate.in_pascals();
        let pascals = AbsolutePressure::pascals;
        LineFlow {
            inlet: pascals(settled.inlet),
            effective_speed: VolumeFlow::cubic_metres_per_second(
                over / settled.resistance / pressure,
            ),
            paths: settled
                .paths
                .iter()
                .map(|path| PathFlow {
                    conductance: VolumeFlow::cubic_metres_per_second(path.conductance),
                    throughput_part: path.conductance * settled.hoses,
                    narrow_part: path.narrow_part,
                    between: pascals(path.between),
                })
                .collect(),
        }
    }

    /// Throughput at a pressure in the system, Pa·m³/s.
    pub(super) fn throughput(&self, pressure: f64) -> f64 {
        (pressure - self.ultimate.in_pascals()) / self.resistance(pressure)
    }

    /// Resistance of line and pump together, s/m³: pressure above the ultimate one over throughput.
    pub(super) fn resistance(&self, pressure: f64) -> f64 {
        self.settle(pressure).resistance
    }

    fn settle(&self, pressure: f64) -> Settled {
        let ultimate = self.ultimate.in_pascals();
        let pump = 1.0 / self.speed.in_cubic_metres_per_second();
        let start = SettledPath {
            conductance: 0.0,
            narrow_part: 0.0,
            between: pressure,
        };
        let mut settled = Settled {
            inlet: ultimate,
            resistance: pump,
            hoses: 0.0,
            paths: vec![start; self.paths.len()],
        };
        for _ in 0..MOST_ROUNDS {
            let mut conductance = 0.0;
            for (path, state) in self.paths.iter().zip(&mut settled.paths) {
                state.conduct(path, pressure, settled.inlet, self.turbulent);
                conductance += state.conductance;
            }
            settled.hoses = if self.paths.is_empty() {
                0.0
            } else {
                1.0 / conductance
            };
            let before = settled.resistance;
            settled.resistance = pump + settled.hoses;
            settled.inlet = ultimate + (pressure - ultimate) * (pump / settled.resistance);
            for state in &mut settled.paths {
                // The pressure found anew lies beyond the right one: go half the way.
                let found = pressure - (pressure - settled.inlet) * state.narrow_part;
                state.between = 0.5 * (state.between + found);
            }
            if (settled.resistance - before).abs() <= SETTLED * before {
                break;
            }
        }
        settled
    }
}

struct Settled {
    inlet: f64,
    /// Of hoses and pump.
    resistance: f64,
    /// Resistance of the hoses alone.
    hoses: f64,
    paths: Vec<SettledPath>,
}

#[derive(Clone)]
struct SettledPath {
    conductance: f64,
    narrow_part: f64,
    between: f64,
}

impl SettledPath {
    fn conduct(&mut self, path: &Path, pressure: f64, inlet: f64, turbulent: bool) {
        let conductance = |hose: Hose, upper: f64, lower: f64| {
            let smooth = hose.conductance(0.5 * (upper + lower));
            if turbulent && upper > lower {
                smooth.min(hose.turbulent_conductance(upper, lower))
            } else {
                smooth
            }
        };
        let hose = conductance(path.hose, self.between, inlet);
        let one = path.narrow.map_or(hose, |narrow| {
            let narrow = conductance(narrow, pressure, self.between);
            self.narrow_part = hose / (hose + narrow);
            self.narrow_part * narrow
        });
        self.conductance = one * f64::from(path.count);
    }
}
