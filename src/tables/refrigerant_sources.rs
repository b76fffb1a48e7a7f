//! Where the facts about refrigerants come from.

use serde::Serialize;

use super::{SourceKind, Standing};

macro_rules! refrigerant_sources {
    ($($id:ident $name:literal $kind:ident $standing:ident $title:literal, $place:literal;)*) => {
        /// Points at the source of a fact about a refrigerant.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
        #[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
        pub enum RefrigerantSource {
            $(#[doc = $title] #[serde(rename = $name)] $id),*
        }

        impl RefrigerantSource {
            /// Every source.
            pub const ALL: &'static [Self] = &[$(Self::$id),*];

            /// What kind of thing it is.
            pub const fn kind(self) -> SourceKind {
                match self { $(Self::$id => SourceKind::$kind),* }
            }

            /// How its figures came into the table.
            pub const fn standing(self) -> Standing {
                match self { $(Self::$id => Standing::$standing),* }
            }

            /// Publisher, number, edition, title.
            pub const fn title(self) -> &'static str {
                match self { $(Self::$id => $title),* }
            }

            /// Clause, table, page.
            pub const fn place(self) -> &'static str {
                match self { $(Self::$id => $place),* }
            }
        }
    };
}

refrigerant_sources! {
    LibraryComposition "coolprop-composition" ReferenceLibrary Read
        "CoolProp 8.0.0, predefined mixtures, the mass fractions of ANSI/ASHRAE Standard 34", "";
    PureSubstance "pure-substance" Standard Derived
        "One substance, all of its mass", "";
    Ashrae34 "ashrae-34" Standard FromMemory
        "ANSI/ASHRAE Standard 34, Designation and Safety Classification of Refrigerants", "tables 4-1 and 4-2";
    MechanicalCode "imc-1103.1" PublicAgency Read
        "International Mechanical Code, as adopted", "table 1103.1";
    RealDecreto552 "real-decreto-552-2019-refrigerants" PublicAgency Read
        "Real Decreto 552/2019, Reglamento de seguridad para instalaciones frigoríficas", "IF-02";
    RefrigerantStandard "en-378-1" Standard FromMemory
        "EN 378-1 and ISO 817, refrigerants", "annex E; editions differ in the last digit";
    ClimateReports "ipcc-ar4-ar5-ar6" PublicAgency Read
        "IPCC assessment reports 4, 5 and 6, through the data package globalwarmingpotentials", "100 years";
    ClimateReportsRecalled "ipcc-recalled" PublicAgency FromMemory
        "IPCC assessment reports 4, 5 and 6; Regulation (EU) 517/2014 where report 4 has no figure", "100 years";
    TradePractice "common-practice-refrigerants" CommonPractice NoSource
        "Common practice of the trade", "";
    FlareStandard "jis-b-8607-class" Standard FromMemory
        "JIS B 8607, Flare type and brazing type fittings for refrigerants", "scope of class 1 and class 2";
    EquationOfState "equation-of-state" ReferenceLibrary FromMemory
        "Uncertainty stated by the authors of the equation of state, rounded up", "";
    MixtureModel "mixture-model" ReferenceLibrary Derived
        "Claim for R-32/R-1234yf pairs (Bell 2022) and the shift of R-454B between CoolProp 7.2 and 8.0.0", "";
}
