//! Refrigerants and nitrogen as Chebyshev expansions of a reference library's equations of state.
//!
//! The files of the fluids are written by `tests/reference/fluids/generate.py`; the README beside it
//! says how they are fitted, certified and how far they can be trusted. Temperatures enter as
//! theta = sqrt(1 - T/Tc), pressures as phi = sqrt(ceiling - ln p), both mapped to -1..1. In these
//! variables saturation curves are smooth up to the critical point and few numbers do.

pub(crate) mod nitrogen;
mod r1234yf;
mod r1234zee;
mod r134a;
mod r22;
mod r290;
mod r32;
mod r404a;
mod r407c;
mod r410a;
mod r448a;
mod r449a;
mod r452b;
mod r454b;
mod r507a;
mod r513a;
mod r600a;
mod r717;
mod r744;

use super::refrigerants::Refrigerant;

/// A closed range.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Range {
    pub low: f64,
    pub high: f64,
}

/// How a variable maps to -1..1.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Scale {
    centre: f64,
    factor: f64,
}

impl Scale {
    /// The low end becomes -1, the high end 1.
    pub const fn over(low: f64, high: f64) -> Self {
        Self {
            centre: 0.5 * (low + high),
            factor: 2.0 / (high - low),
        }
    }

    /// -1 at the low end, 1 at the high end.
    pub const fn scaled(&self, number: f64) -> f64 {
        (number - self.centre) * self.factor
    }
}

/// One refrigerant. SI units; `ln` marks the logarithm of the number in SI.
pub(crate) struct Expansions {
    /// kg/mol.
    pub molar_mass: f64,
    pub critical_temperature: f64,
    pub critical_pressure: f64,
    pub critical_density: f64,
    /// Temperatures that every expansion holds for, both ends included.
    pub temperature: Range,
    /// theta over that range; the low end is the hot one.
    pub theta: Scale,
    pub bubble_pressure: Range,
    pub dew_pressure: Range,
    pub log_pressure_ceiling: f64,
    pub bubble_phi: Scale,
    pub dew_phi: Scale,
    /// Over theta.
    pub ln_bubble_pressure: &'static [f32],
    /// Over phi of the bubble line.
    pub bubble_temperature: &'static [f32],
    /// Over theta.
    pub ln_dew_pressure: &'static [f32],
    /// Over phi of the dew line.
    pub dew_temperature: &'static [f32],
    /// Over theta, as all that follow.
    pub liquid_density: &'static [f32],
    pub ln_vapour_density: &'static [f32],
    /// 200 kJ/kg for saturated liquid at 0 °C.
    pub liquid_enthalpy: &'static [f32],
    pub vapour_enthalpy: &'static [f32],
    /// Isobaric heat capacity times theta squared, which takes out its rise towards critical.
    pub liquid_heat_capacity: &'static [f32],
    pub vapour_heat_capacity: &'static [f32],
    pub ln_liquid_viscosity: &'static [f32],
    pub ln_vapour_viscosity: &'static [f32],
    /// Times (Tc - T_dew) theta: the kelvins that the start of superheat is stretched by.
    pub superheat_onset: f64,
    /// (v / v_dew - 1) over the part of the superheat: one row a degree in it, coefficients over theta.
    pub superheated_volume: &'static [&'static [f32]],
    /// (h - h_dew) over the same part.
    pub superheated_enthalpy: &'static [&'static [f32]],
}

/// Superheat in K at which the superheat expansions end.
pub(crate) const LARGEST_SUPERHEAT: f64 = 40.0;

/// The expansions of a refrigerant.
pub(crate) const fn expansions(refrigerant: Refrigerant) -> &'static Expansions {
    match refrigerant {
        Refrigerant::R22 => &r22::R22,
        Refrigerant::R32 => &r32::R32,
        Refrigerant::R134a => &r134a::R134A,
        Refrigerant::R290 => &r290::R290,
        Refrigerant::R404A => &r404a::R404A,
        Refrigerant::R407C => &r407c::R407C,
        Refrigerant::R410A => &r410a::R410A,
        Refrigerant::R448A => &r448a::R448A,
        Refrigerant::R449A => &r449a::R449A,
        Refrigerant::R452B => &r452b::R452B,
        Refrigerant::R454B => &r454b::R454B,
        Refrigerant::R507A => &r507a::R507A,
        Refrigerant::R513A => &r513a::R513A,
        Refrigerant::R600a => &r600a::R600A,
        Refrigerant::R717 => &r717::R717,
        Refrigerant::R744 => &r744::R744,
        Refrigerant::R1234yf => &r1234yf::R1234YF,
        Refrigerant::R1234zeE => &r1234zee::R1234ZEE,
    }
}
