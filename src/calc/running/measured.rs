//! A figure from several readings, and how far each instrument may throw it off.

use crate::quantity::choice;

choice! {
    /// What a figure's error comes from.
    ErrorSource {
        /// The gauge on the suction side.
        SuctionGauge = "suction-gauge",
        /// The gauge on the liquid or discharge side.
        LiquidGauge = "liquid-gauge",
        /// The thermometer on the suction line.
        SuctionThermometer = "suction-thermometer",
        /// The thermometer on the liquid line.
        LiquidThermometer = "liquid-thermometer",
        /// The thermometers in the air, dry and wet.
        AirThermometers = "air-thermometers",
        /// The hygrometer.
        Hygrometer = "hygrometer",
        /// The measured airflow.
        Airflow = "airflow-measurement",
        /// How well the refrigerant's own data are known.
        RefrigerantData = "refrigerant-data",
    }
}

/// One reading: its SI number, how far that may be off, and whose fault that is.
#[derive(Clone, Copy, Debug)]
pub(super) struct Read {
    pub si: f64,
    pub error: f64,
    pub source: ErrorSource,
}

/// A figure in SI, and what each source may add to it or take from it.
#[derive(Clone, Debug)]
pub(super) struct Measured {
    pub figure: f64,
    pub shares: Vec<(ErrorSource, f64)>,
}

impl Measured {
    /// The figure that `law` makes of the readings, and how far it moves when each is off by its error;
    /// `None` where the law has no answer. Where it has none on one side, the other side counts.
    pub fn by(readings: &[Read], law: &dyn Fn(&[f64]) -> Option<f64>) -> Option<Self> {
        let mut at: Vec<f64> = readings.iter().map(|read| read.si).collect();
        let figure = law(&at)?;
        let mut shares = Vec::with_capacity(readings.len() + 1);
        for (place, read) in readings.iter().enumerate() {
            let mut moved = |error: f64| {
                if let Some(number) = at.get_mut(place) {
                    *number = read.si + error;
                }
                law(&at)
            };
            let sides = [moved(read.error), moved(-read.error)];
            moved(0.0);
            let steps = sides.iter().flatten().map(|side| (side - figure).abs());
            let found = sides.iter().flatten().count().max(1);
            shares.push((read.source, steps.sum::<f64>() / found as f64));
        }
        Some(Self { figure, shares })
    }

    /// The same with one more source of error, in the figure's unit.
    pub fn and(mut self, source: ErrorSource, error: f64) -> Self {
        self.shares.push((source, error));
        self
    }

    /// How far the figure may be off: the root of the sum of the squares, for errors that do not
    /// depend on each other.
    pub fn uncertainty(&self) -> f64 {
        let squares = self.shares.iter().map(|(_, share)| share * share);
        squares.sum::<f64>().sqrt()
    }

    /// Where most of that comes from.
    pub fn largest(&self) -> Option<ErrorSource> {
        let mut shares = self.shares.iter();
        let first = shares.next()?;
        let largest = shares.fold(
            first,
            |most, share| if share.1 > most.1 { share } else { most },
        );
        Some(largest.0)
    }
}
