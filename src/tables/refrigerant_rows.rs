//! Constants of the refrigerants, row by row.

use super::SourceId::{
    self, Ashrae34, En378Part1, EquationUncertainty, MechanicalCode, MixtureUncertainty,
    RealDecreto552Refrigerants,
};
use super::flare::FlareClass::{self, Class1, Class2};
use super::refrigerants::OilFamily::{
    self, Alkylbenzene, Mineral, PolyalkyleneGlycol, Polyolester,
};
use super::refrigerants::Refrigerant;
use super::refrigerants::SafetyClass::{self, A1, A2L, A3, B2L};
use super::substances::Substance;

/// Constants of one refrigerant, as printed.
pub(super) struct Row {
    /// Mass fractions in percent.
    pub components: &'static [(Substance, f64)],
    pub safety: SafetyClass,
    /// Lower flammability limit, kg/m³.
    pub flammability: Option<(f64, SourceId)>,
    /// Refrigerant concentration limit, g/m³.
    pub concentration: (f64, SourceId),
    pub oils: &'static [OilFamily],
    pub flare: Option<FlareClass>,
    pub uncertainty: Uncertainty,
}

/// How far bubble and dew data may be off: kelvin, percent of pressure.
pub(super) type Uncertainty = (f64, f64, SourceId);

/// Pure fluids with reference equations.
const PURE: Uncertainty = (0.05, 0.2, EquationUncertainty);
/// Lemmon (2003).
const PSEUDO_PURE: Uncertainty = (0.2, 0.5, EquationUncertainty);
/// Mixtures with fitted pair parameters.
const MIXTURE: Uncertainty = (0.4, 1.0, MixtureUncertainty);

const ESTER: &[OilFamily] = &[Polyolester];
const HYDROCARBON: &[OilFamily] = &[Mineral, Alkylbenzene, Polyolester];

/// The row of a refrigerant.
pub(super) const fn row(refrigerant: Refrigerant) -> Row {
    use Substance as S;
    match refrigerant {
        Refrigerant::R22 => Row {
            components: &[(S::R22, 100.0)],
            safety: A1,
            flammability: None,
            concentration: (210.0, MechanicalCode),
            oils: &[Mineral, Alkylbenzene],
            flare: Some(Class1),
            uncertainty: PURE,
        },
        Refrigerant::R32 => Row {
            components: &[(S::R32, 100.0)],
            safety: A2L,
            flammability: Some((0.307, RealDecreto552Refrigerants)),
            concentration: (77.0, MechanicalCode),
            oils: ESTER,
            flare: Some(Class2),
            uncertainty: PURE,
        },
        Refrigerant::R134a => Row {
            components: &[(S::R134a, 100.0)],
            safety: A1,
            flammability: None,
            concentration: (210.0, MechanicalCode),
            oils: ESTER,
            flare: Some(Class1),
            uncertainty: PURE,
        },
        Refrigerant::R290 => Row {
            components: &[(S::R290, 100.0)],
            safety: A3,
            flammability: Some((0.038, RealDecreto552Refrigerants)),
            concentration: (9.5, Ashrae34),
            oils: HYDROCARBON,
            flare: Some(Class1),
            uncertainty: PURE,
        },
        Refrigerant::R404A => Row {
            components: &[(S::R125, 44.0), (S::R143a, 52.0), (S::R134a, 4.0)],
            safety: A1,
            flammability: None,
            concentration: (500.0, Ashrae34),
            oils: ESTER,
            flare: Some(Class1),
            uncertainty: PSEUDO_PURE,
        },
        Refrigerant::R407C => Row {
            components: &[(S::R32, 23.0), (S::R125, 25.0), (S::R134a, 52.0)],
            safety: A1,
            flammability: None,
            concentration: (290.0, Ashrae34),
            oils: ESTER,
            flare: Some(Class1),
            uncertainty: PSEUDO_PURE,
        },
        Refrigerant::R410A => Row {
            components: &[(S::R32, 50.0), (S::R125, 50.0)],
            safety: A1,
            flammability: None,
            concentration: (420.0, Ashrae34),
            oils: ESTER,
            flare: Some(Class2),
            uncertainty: PSEUDO_PURE,
        },
        Refrigerant::R448A => Row {
            components: &[
                (S::R32, 26.0),
                (S::R125, 26.0),
                (S::R1234yf, 20.0),
                (S::R134a, 21.0),
                (S::R1234zeE, 7.0),
            ],
            safety: A1,
            flammability: None,
            concentration: (390.0, Ashrae34),
            oils: ESTER,
            flare: Some(Class1),
            uncertainty: MIXTURE,
        },
        Refrigerant::R449A => Row {
            components: &[
                (S::R32, 24.3),
                (S::R125, 24.7),
                (S::R1234yf, 25.3),
                (S::R134a, 25.7),
            ],
            safety: A1,
            flammability: None,
            concentration: (370.0, Ashrae34),
            oils: ESTER,
            flare: Some(Class1),
            uncertainty: MIXTURE,
        },
        Refrigerant::R452B => Row {
            components: &[(S::R32, 67.0), (S::R125, 7.0), (S::R1234yf, 26.0)],
            safety: A2L,
            flammability: Some((0.309, En378Part1)),
            concentration: (77.0, Ashrae34),
            oils: ESTER,
            flare: Some(Class2),
            uncertainty: MIXTURE,
        },
        Refrigerant::R454B => Row {
            components: &[(S::R32, 68.9), (S::R1234yf, 31.1)],
            safety: A2L,
            flammability: Some((0.296, En378Part1)),
            concentration: (49.0, Ashrae34),
            oils: ESTER,
            flare: Some(Class2),
            uncertainty: MIXTURE,
        },
        Refrigerant::R507A => Row {
            components: &[(S::R125, 50.0), (S::R143a, 50.0)],
            safety: A1,
            flammability: None,
            concentration: (520.0, Ashrae34),
            oils: ESTER,
            flare: Some(Class1),
            uncertainty: PSEUDO_PURE,
        },
        Refrigerant::R513A => Row {
            components: &[(S::R1234yf, 56.0), (S::R134a, 44.0)],
            safety: A1,
            flammability: None,
            concentration: (320.0, Ashrae34),
            oils: ESTER,
            flare: Some(Class1),
            uncertainty: MIXTURE,
        },
        Refrigerant::R600a => Row {
            components: &[(S::R600a, 100.0)],
            safety: A3,
            flammability: Some((0.043, En378Part1)),
            concentration: (9.5, Ashrae34),
            oils: HYDROCARBON,
            flare: Some(Class1),
            uncertainty: PURE,
        },
        Refrigerant::R717 => Row {
            components: &[(S::R717, 100.0)],
            safety: B2L,
            flammability: Some((0.116, En378Part1)),
            concentration: (0.22, Ashrae34),
            oils: &[Mineral],
            flare: None,
            uncertainty: PURE,
        },
        Refrigerant::R744 => Row {
            components: &[(S::R744, 100.0)],
            safety: A1,
            flammability: None,
            concentration: (54.0, Ashrae34),
            oils: &[Polyolester, PolyalkyleneGlycol],
            flare: None,
            uncertainty: PURE,
        },
        Refrigerant::R1234yf => Row {
            components: &[(S::R1234yf, 100.0)],
            safety: A2L,
            flammability: Some((0.289, En378Part1)),
            concentration: (75.0, Ashrae34),
            oils: &[Polyolester, PolyalkyleneGlycol],
            flare: Some(Class1),
            uncertainty: PURE,
        },
        Refrigerant::R1234zeE => Row {
            components: &[(S::R1234zeE, 100.0)],
            safety: A2L,
            flammability: Some((0.303, En378Part1)),
            concentration: (75.0, Ashrae34),
            oils: ESTER,
            flare: Some(Class1),
            uncertainty: PURE,
        },
    }
}
