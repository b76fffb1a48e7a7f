//! A way of running as it was entered: the states of gas and liquid and the mass flow.

use super::flow::Stream;
use super::input::{CoolingDutyInput, HeatingDutyInput};
use super::{USUAL_DISCHARGE_SUPERHEAT, impossible};
use crate::calc::problem::{Field, Problem};
use crate::calc::reading::{Reading, optional, required};
use crate::calc::refusal::Origin;
use crate::physics::Beyond;
use crate::physics::pipe_flow::Fluid;
use crate::physics::saturation::{self, Line, Phase, into_range};
use crate::physics::vapour::{self, Vapour};
use crate::quantity::{
    MassFlow, Power, QuantityKind, SpecificEnthalpy, Temperature, TemperatureDifference,
};
use crate::tables::refrigerants::{Refrigerant, Sourced};

/// Capacities that are answered for.
pub const CAPACITIES: (Power, Power) = (Power::watts(1.0), Power::watts(1e7));
const NONE: TemperatureDifference = TemperatureDifference::kelvins(0.0);
/// Superheat of suction gas: the data end at 40 K, and friction adds some.
pub const SUPERHEATS: (TemperatureDifference, TemperatureDifference) =
    (NONE, TemperatureDifference::kelvins(30.0));
/// Superheat of discharge gas.
pub const DISCHARGE_SUPERHEATS: (TemperatureDifference, TemperatureDifference) =
    (NONE, TemperatureDifference::kelvins(40.0));
/// Subcooling of the liquid.
pub const SUBCOOLINGS: (TemperatureDifference, TemperatureDifference) =
    (NONE, TemperatureDifference::kelvins(40.0));

/// Which way round a unit runs.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Way {
    Cooling,
    Heating,
}

impl Way {
    /// The field of the input that asks for it.
    pub(super) const fn field(self) -> &'static str {
        match self {
            Self::Cooling => "cooling",
            Self::Heating => "heating",
        }
    }
}

/// What flows in a way of running, before any line is known.
pub(super) struct Running {
    pub way: Way,
    pub capacity: Power,
    pub mass_flow: MassFlow,
    pub liquid: Liquid,
    pub gas: Vapour,
    pub gas_stream: Stream,
    /// In heating, with whether it was entered.
    pub discharge_superheat: Option<Sourced<TemperatureDifference>>,
}

/// Liquid as it leaves the condenser.
pub(super) struct Liquid {
    pub temperature: Temperature,
    pub enthalpy: SpecificEnthalpy,
    pub stream: Stream,
}

impl Liquid {
    /// As liquid on the bubble line at its own temperature: what the higher pressure adds is left out.
    fn leaving(
        refrigerant: Refrigerant,
        condensing: Temperature,
        subcooling: TemperatureDifference,
    ) -> Result<Self, Problem> {
        let by_condensing = Origin::of("condensing_temperature", QuantityKind::Temperature);
        let pressure = saturation::pressure(refrigerant, Line::Bubble, condensing)
            .map_err(|beyond| by_condensing.refused(beyond, "refrigerant"))?;
        let by_liquid = Origin {
            shift: -subcooling.in_kelvins(),
            ..by_condensing
        };
        let temperature = condensing - subcooling;
        let state = || -> Result<Self, Beyond> {
            let fluid = Fluid {
                density: saturation::density(refrigerant, Phase::Liquid, temperature)?,
                viscosity: saturation::viscosity(refrigerant, Phase::Liquid, temperature)?,
            };
            Ok(Self {
                temperature,
                enthalpy: saturation::enthalpy(refrigerant, Phase::Liquid, temperature)?,
                stream: Stream {
                    fluid,
                    pressure,
                    line: Line::Bubble,
                    is_known_at_the_end: false,
                },
            })
        };
        state().map_err(|beyond| by_liquid.refused(beyond, "refrigerant"))
    }
}

impl Running {
    /// Cooling, as it was entered.
    pub(super) fn cooling(
        reading: &mut Reading,
        refrigerant: Option<Refrigerant>,
        input: &CoolingDutyInput,
    ) -> Option<Self> {
        let capacity = required!(reading, input.capacity, CAPACITIES);
        let evaporating = required!(reading, input.evaporating_temperature);
        let condensing = required!(reading, input.condensing_temperature);
        let superheat = required!(reading, input.superheat, SUPERHEATS);
        let subcooling = required!(reading, input.subcooling, SUBCOOLINGS);
        let refrigerant = refrigerant.filter(|_| reading.is_sound())?;

        let liquid = Liquid::leaving(refrigerant, condensing?, subcooling?);
        let liquid = reading.accept(liquid)?;
        let by_evaporating = Origin::of("evaporating_temperature", QuantityKind::Temperature);
        let gas = vapour::superheated(refrigerant, evaporating?, superheat?)
            .and_then(|gas| Ok((gas, gas_stream(refrigerant, &gas, Way::Cooling)?)))
            .map_err(|beyond| by_evaporating.refused(beyond, "refrigerant"));
        let (gas, gas_stream) = reading.accept(gas)?;
        if gas.pressure >= liquid.stream.pressure {
            let way = Way::Cooling;
            reading.problem(impossible(
                by_evaporating.field,
                way,
                "condensing_temperature",
            ));
            return None;
        }
        Some(Self::of(
            Way::Cooling,
            capacity?,
            liquid,
            (gas, gas_stream),
            None,
        ))
    }

    /// Heating, as it was entered.
    pub(super) fn heating(
        reading: &mut Reading,
        refrigerant: Option<Refrigerant>,
        input: &HeatingDutyInput,
    ) -> Option<Self> {
        let capacity = required!(reading, input.capacity, CAPACITIES);
        let condensing = required!(reading, input.condensing_temperature);
        let subcooling = required!(reading, input.subcooling, SUBCOOLINGS);
        let entered = optional!(reading, input.discharge_superheat);
        let field = Field::named("discharge_superheat");
        reading.within(field, entered, DISCHARGE_SUPERHEATS);
        let superheat = Sourced::entered_or(entered, USUAL_DISCHARGE_SUPERHEAT);
        let refrigerant = refrigerant.filter(|_| reading.is_sound())?;

        let liquid = Liquid::leaving(refrigerant, condensing?, subcooling?);
        let liquid = reading.accept(liquid)?;
        // Between the bubble and the dew line stands the pressure, and that is what is refused.
        let by_condensing = Origin::of("condensing_temperature", QuantityKind::AbsolutePressure);
        let gas = saturation::temperature(refrigerant, Line::Dew, liquid.stream.pressure)
            .and_then(|dew| {
                let dew = into_range(refrigerant, dew);
                let gas = vapour::superheated(refrigerant, dew, superheat.figure)?;
                Ok((gas, gas_stream(refrigerant, &gas, Way::Heating)?))
            })
            .map_err(|beyond| by_condensing.refused(beyond, "refrigerant"));
        let gas = reading.accept(gas)?;
        Some(Self::of(
            Way::Heating,
            capacity?,
            liquid,
            gas,
            Some(superheat),
        ))
    }

    fn of(
        way: Way,
        capacity: Power,
        liquid: Liquid,
        (gas, gas_stream): (Vapour, Stream),
        discharge_superheat: Option<Sourced<TemperatureDifference>>,
    ) -> Self {
        Self {
            way,
            capacity,
            mass_flow: capacity / (gas.enthalpy - liquid.enthalpy),
            liquid,
            gas,
            gas_stream,
            discharge_superheat,
        }
    }

    /// Heat that a kilogram takes up or gives off.
    pub(super) fn effect(&self) -> SpecificEnthalpy {
        self.gas.enthalpy - self.liquid.enthalpy
    }
}

/// Gas in its line: it leaves the evaporator in this state, or arrives so at the condenser.
fn gas_stream(refrigerant: Refrigerant, gas: &Vapour, way: Way) -> Result<Stream, Beyond> {
    Ok(Stream {
        fluid: Fluid {
            density: gas.density,
            viscosity: vapour::viscosity(refrigerant, gas)?,
        },
        pressure: gas.pressure,
        line: Line::Dew,
        is_known_at_the_end: way == Way::Heating,
    })
}
