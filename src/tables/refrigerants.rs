//! Refrigerants met on split systems: what they are made of and how they are handled. Their
//! properties over temperature and pressure are laws: `physics::saturation`, `physics::vapour`.

use serde::Serialize;

use super::SourceId;
use super::flare::FlareClass;
use super::refrigerant_rows::row;
use super::substances::{ClimateReport, Substance};
use crate::quantity::choice;
use crate::quantity::{Density, Ratio, TemperatureDifference};

choice! {
    /// A refrigerant, by its designation in ASHRAE Standard 34 and ISO 817.
    Refrigerant {
        /// R-22.
        R22 = "R-22",
        /// R-32.
        R32 = "R-32",
        /// R-134a.
        R134a = "R-134a",
        /// R-290.
        R290 = "R-290",
        /// R-404A.
        R404A = "R-404A",
        /// R-407C.
        R407C = "R-407C",
        /// R-410A.
        R410A = "R-410A",
        /// R-448A.
        R448A = "R-448A",
        /// R-449A.
        R449A = "R-449A",
        /// R-452B.
        R452B = "R-452B",
        /// R-454B.
        R454B = "R-454B",
        /// R-507A.
        R507A = "R-507A",
        /// R-513A.
        R513A = "R-513A",
        /// R-600a.
        R600a = "R-600a",
        /// R-717.
        R717 = "R-717",
        /// R-744.
        R744 = "R-744",
        /// R-1234yf.
        R1234yf = "R-1234yf",
        /// R-1234ze(E).
        R1234zeE = "R-1234ze(E)",
    }
}

choice! {
    /// Safety class: A lower, B higher toxicity; 1 no flame propagation, 2L slowly burning, 3 highly flammable.
    SafetyClass {
        /// Lower toxicity, no flame propagation.
        A1 = "A1",
        /// Lower toxicity, burns slowly.
        A2L = "A2L",
        /// Lower toxicity, highly flammable.
        A3 = "A3",
        /// Higher toxicity, burns slowly.
        B2L = "B2L",
    }
}

choice! {
    /// A family of compressor oils.
    OilFamily {
        /// Mineral oil.
        Mineral = "mineral",
        /// Alkylbenzene.
        Alkylbenzene = "alkylbenzene",
        /// Polyolester.
        Polyolester = "polyolester",
        /// Polyalkylene glycol.
        PolyalkyleneGlycol = "polyalkylene-glycol",
    }
}

choice! {
    /// Where viscosities come from.
    ViscosityBasis {
        /// The library's own, within about 5 %.
        Library = "viscosity-of-the-library",
        /// Mixed from those of the pure components: liquid by mole fractions of the logarithms
        /// (Arrhenius), within about 10 %, cold up to 22 %; vapour by Wilke (1950), within about 9 %.
        Mixed = "viscosity-mixed-from-components",
    }
}

/// A figure and where it comes from.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "terminal", schemars(rename = "Sourced{T}"))]
pub struct Sourced<T> {
    /// The figure.
    pub figure: T,
    /// Its source.
    pub source: SourceId,
}

impl<T> Sourced<T> {
    /// The figure that was entered, or else the usual one of the trade, which has no source.
    pub fn entered_or(entered: Option<T>, usual: T) -> Self {
        match entered {
            Some(figure) => Self {
                figure,
                source: SourceId::PlateFigure,
            },
            None => Self {
                figure: usual,
                source: SourceId::CommonPractice,
            },
        }
    }
}

/// A component of a blend and its part of the mass.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "camelCase")]
pub struct Component {
    /// The pure substance.
    pub substance: Substance,
    /// Its part of the mass.
    pub mass_fraction: Ratio,
}

/// How far bubble and dew data may be from the truth, besides the fit.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct SaturationUncertainty {
    /// Of a saturation temperature.
    pub temperature: TemperatureDifference,
    /// Of a saturation pressure, relative.
    pub pressure: Ratio,
}

impl Refrigerant {
    /// What it is made of, by mass.
    pub fn composition(self) -> Sourced<Vec<Component>> {
        let components = row(self).components;
        let source = if components.len() == 1 {
            SourceId::PureSubstance
        } else {
            SourceId::CoolPropComposition
        };
        let figure = components
            .iter()
            .map(|(substance, percent)| Component {
                substance: *substance,
                mass_fraction: Ratio::of_one(percent / 100.0),
            })
            .collect();
        Sourced { figure, source }
    }

    /// Its safety class.
    pub fn safety_class(self) -> Sourced<SafetyClass> {
        Sourced {
            figure: row(self).safety,
            source: SourceId::Ashrae34,
        }
    }

    /// Lower flammability limit; `None` if it does not burn.
    ///
    /// Editions give R-454B 0.303 and 0.296 kg/m³; the smaller is kept, which allows less charge.
    pub fn lower_flammability_limit(self) -> Option<Sourced<Density>> {
        row(self).flammability.map(|(limit, source)| Sourced {
            figure: Density::kilograms_per_cubic_metre(limit),
            source,
        })
    }

    /// Refrigerant concentration limit: the most that air in an occupied room may hold.
    pub fn concentration_limit(self) -> Sourced<Density> {
        let (grams, source) = row(self).concentration;
        Sourced {
            figure: Density::kilograms_per_cubic_metre(grams / 1000.0),
            source,
        }
    }

    /// Warming by a kilogram over 100 years, in kilograms of carbon dioxide: components by mass fraction.
    ///
    /// ```
    /// use coldwright::tables::refrigerants::Refrigerant;
    /// use coldwright::tables::substances::ClimateReport;
    /// // R-410A, half R-32 and half R-125.
    /// assert_eq!(Refrigerant::R410A.warming_potential(ClimateReport::Ar4).figure, 2087.5);
    /// ```
    pub fn warming_potential(self, report: ClimateReport) -> Sourced<f64> {
        let mut total = 0.0;
        let mut least_certain = SourceId::ClimateReports;
        for (substance, percent) in row(self).components {
            let (potential, source) = substance.warming_potential(report);
            total += potential * percent / 100.0;
            if source != SourceId::ClimateReports {
                least_certain = source;
            }
        }
        Sourced {
            figure: total,
            source: least_certain,
        }
    }

    /// Oils that go with it; the equipment's own outranks them.
    pub fn oils(self) -> Sourced<&'static [OilFamily]> {
        Sourced {
            figure: row(self).oils,
            source: SourceId::CommonPractice,
        }
    }

    /// Whether it leaves the cylinder as liquid, so that its composition stays: zeotropic blends do.
    pub fn charged_as_liquid(self) -> Sourced<bool> {
        let azeotrope = matches!(self, Self::R507A | Self::R513A);
        let figure = row(self).components.len() > 1 && !azeotrope;
        Sourced {
            figure,
            source: SourceId::CommonPractice,
        }
    }

    /// Pressure class of flare joints for it; `None` where it is not run through flared copper tube.
    pub fn flare_class(self) -> Option<Sourced<FlareClass>> {
        row(self).flare.map(|figure| Sourced {
            figure,
            source: SourceId::JisB8607,
        })
    }

    /// Where its properties over temperature and pressure come from: the library and the equations in it.
    pub const fn equations(self) -> &'static [SourceId] {
        use SourceId as S;
        match self {
            Self::R22 => &[S::CoolProp, S::Kamei1995],
            Self::R32 => &[S::CoolProp, S::TillnerRothYokozeki1997],
            Self::R134a => &[S::CoolProp, S::TillnerRothBaehr1994],
            Self::R290 => &[S::CoolProp, S::Lemmon2009],
            Self::R404A | Self::R407C | Self::R410A | Self::R507A => &[S::CoolProp, S::Lemmon2003],
            Self::R448A | Self::R449A | Self::R452B | Self::R454B | Self::R513A => {
                &[S::CoolProp, S::BellMixtures, S::LemmonJacobsen2004]
            }
            Self::R600a => &[S::CoolProp, S::Buecker2006],
            Self::R717 => &[S::CoolProp, S::Gao2023],
            Self::R744 => &[S::CoolProp, S::SpanWagner1996],
            Self::R1234yf => &[S::CoolProp, S::LemmonAkasaka2022],
            Self::R1234zeE => &[S::CoolProp, S::TholLemmon2016],
        }
    }

    /// Where its viscosities come from.
    pub const fn viscosity_basis(self) -> ViscosityBasis {
        match self {
            Self::R448A | Self::R449A | Self::R452B | Self::R454B | Self::R513A => {
                ViscosityBasis::Mixed
            }
            _ => ViscosityBasis::Library,
        }
    }

    /// How far its bubble and dew data may be from the truth.
    pub fn saturation_uncertainty(self) -> Sourced<SaturationUncertainty> {
        let (kelvins, percent, source) = row(self).uncertainty;
        let figure = SaturationUncertainty {
            temperature: TemperatureDifference::kelvins(kelvins),
            pressure: Ratio::of_one(percent / 100.0),
        };
        Sourced { figure, source }
    }
}
