//! The bibliography: every number that is shown points here.

use serde::Serialize;

/// What kind of thing a source is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum SourceKind {
    /// A standard.
    Standard,
    /// A handbook or textbook.
    Handbook,
    /// A public agency: law, code, technical manual.
    PublicAgency,
    /// A general-purpose reference library and the published equations in it.
    ReferenceLibrary,
    /// What the trade does, with no source.
    CommonPractice,
}

/// How a figure came from its source into our tables.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Standing {
    /// Seen in the source itself.
    Read,
    /// Seen in another text that quotes the source.
    SecondHand,
    /// Recalled, not checked against the source.
    FromMemory,
    /// Computed from what is named.
    Derived,
    /// There is no source.
    NoSource,
}

/// One entry of the bibliography.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
pub struct Source {
    /// What figures point at it with.
    pub id: SourceId,
    /// What kind of thing it is.
    pub kind: SourceKind,
    /// How its figures came into our tables.
    pub standing: Standing,
    /// Publisher, number, edition, title, in the source's language.
    pub title: &'static str,
    /// Clause, table, page or figure.
    pub place: &'static str,
}

macro_rules! bibliography {
    ($($id:ident $name:literal $kind:ident $standing:ident $title:literal, $place:literal;)*) => {
        /// Points at an entry of the bibliography.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
        #[cfg_attr(feature = "terminal", derive(schemars::JsonSchema))]
        pub enum SourceId {
            $(#[doc = $title] #[serde(rename = $name)] $id),*
        }

        /// The whole bibliography.
        pub const SOURCES: &[Source] = &[$(Source {
            id: SourceId::$id,
            kind: SourceKind::$kind,
            standing: Standing::$standing,
            title: $title,
            place: $place,
        }),*];
    };
}

bibliography! {
    CommonPractice "common-practice" CommonPractice NoSource
        "Common practice of the trade", "";
    Nist811 "nist-sp-811" PublicAgency Read
        "NIST Special Publication 811 (2008), Guide for the Use of the International System of Units", "appendix B.8";
    Icao7488 "icao-doc-7488" Standard FromMemory
        "ICAO Doc 7488 (1993), Manual of the ICAO Standard Atmosphere; ISO 2533:1975", "constants of the lowest layer";
    AstmB280 "astm-b280" Standard SecondHand
        "ASTM B280, Seamless Copper Tube for Air Conditioning and Refrigeration Field Service", "dimensions of coils, as tabulated by an engineering reference site";
    AstmB280Tolerance "astm-b280-tolerance" Standard Derived
        "ASTM B280, tolerances of diameter and wall", "those that reproduce the rated pressures of the Copper Tube Handbook";
    En12735 "en-12735-1" Standard FromMemory
        "EN 12735-1, Copper and copper alloys: seamless round tubes for air conditioning and refrigeration, part 1", "dimensions and tolerances of metric coils";
    CopperTubeHandbookStress "copper-tube-handbook-3c" Handbook Read
        "Copper Development Association, Copper Tube Handbook", "table 3c, annealed copper";
    CopperTubeHandbookRating "copper-tube-handbook-rating" Handbook Read
        "Copper Development Association, Copper Tube Handbook", "rated internal pressure, in the form of ASME B31";
    CopperDensity "copper-density" Handbook FromMemory
        "Density of copper C12200, 8.94 g/cm³ (0.323 lb/in³), Copper Development Association", "alloy data sheet; reproduces the printed masses of ASTM B280";
    JisB8607 "jis-b-8607" Standard FromMemory
        "JIS B 8607, Flare type and brazing type fittings for refrigerants", "class 1 and class 2";
    En378Part2 "en-378-2" Standard FromMemory
        "EN 378-2 and ISO 5149-2, Refrigerating systems and heat pumps, part 2", "tightening torque of flare nuts";
    SaeJ513 "sae-j513" Standard SecondHand
        "SAE J513, Refrigeration tube fittings", "threads; the pitch is derived from the threads an inch";
    RealDecreto552 "real-decreto-552-2019" PublicAgency Read
        "Real Decreto 552/2019, Reglamento de seguridad para instalaciones frigoríficas", "IF-06, 3.2.3.2";
    ArmyAviationTools "army-tm-1-1500-204-23-9" PublicAgency Read
        "US Army TM 1-1500-204-23-9, Aviation unit maintenance: tools and ground support equipment", "figure 8-16";
    NavyHandTools "navedtra-14315" PublicAgency Read
        "US Navy NAVEDTRA 14315, Aviation structural mechanic", "figure 3-44";
    Iso6789 "iso-6789" Standard FromMemory
        "ISO 6789-1, Assembly tools for screws and nuts: hand torque tools", "accuracy ± 4 % above 10 N·m, ± 6 % below, tested from 20 % of the largest torque";
    PlateFigure "plate" CommonPractice Read
        "The equipment's own plate or instructions, as entered", "";
}

impl SourceId {
    /// The entry it points at.
    pub fn source(self) -> Option<&'static Source> {
        SOURCES.iter().find(|source| source.id == self)
    }
}
