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
    Ashrae34 "ashrae-34" Standard FromMemory
        "ANSI/ASHRAE Standard 34, Designation and Safety Classification of Refrigerants", "tables 4-1 and 4-2";
    MechanicalCode "imc-1103.1" PublicAgency Read
        "International Mechanical Code, as adopted", "table 1103.1";
    RealDecreto552Refrigerants "real-decreto-552-2019-refrigerants" PublicAgency Read
        "Real Decreto 552/2019, Reglamento de seguridad para instalaciones frigoríficas", "IF-02";
    En378Part1 "en-378-1" Standard FromMemory
        "EN 378-1 and ISO 817, refrigerants", "annex E; editions differ in the last digit";
    PureSubstance "pure-substance" Standard Derived
        "One substance, all of its mass", "";
    ClimateReports "ipcc-ar4-ar5-ar6" PublicAgency Read
        "IPCC assessment reports 4, 5 and 6, through the data package globalwarmingpotentials", "100 years";
    ClimateReportsRecalled "ipcc-recalled" PublicAgency FromMemory
        "IPCC assessment reports 4, 5 and 6; Regulation (EU) 517/2014 where report 4 has no figure", "100 years";
    CoolProp "coolprop-8.0.0" ReferenceLibrary Read
        "CoolProp 8.0.0; Bell, Wronski, Quoilin and Lemort, Ind. Eng. Chem. Res. 53 (2014) 2498", "states that the expansions are fitted to";
    CoolPropComposition "coolprop-composition" ReferenceLibrary Read
        "CoolProp 8.0.0, predefined mixtures, the mass fractions of ANSI/ASHRAE Standard 34", "";
    EquationUncertainty "equation-of-state" ReferenceLibrary FromMemory
        "Uncertainty stated by the authors of the equation of state, rounded up", "";
    MixtureUncertainty "mixture-model" ReferenceLibrary Derived
        "Claim for R-32/R-1234yf pairs (Bell 2022) and the shift of R-454B between CoolProp 7.2 and 8.0.0", "";
    Kamei1995 "kamei-1995" ReferenceLibrary SecondHand
        "Kamei, Beyerlein and Jacobsen, Int. J. Thermophys. 16 (1995)", "R-22, by CoolProp";
    TillnerRothYokozeki1997 "tillner-roth-yokozeki-1997" ReferenceLibrary SecondHand
        "Tillner-Roth and Yokozeki, J. Phys. Chem. Ref. Data 26 (1997)", "R-32, by CoolProp";
    TillnerRothBaehr1994 "tillner-roth-baehr-1994" ReferenceLibrary SecondHand
        "Tillner-Roth and Baehr, J. Phys. Chem. Ref. Data 23 (1994)", "R-134a, by CoolProp";
    Lemmon2009 "lemmon-2009" ReferenceLibrary SecondHand
        "Lemmon, McLinden and Wagner, J. Chem. Eng. Data 54 (2009)", "R-290, by CoolProp";
    Lemmon2003 "lemmon-2003" ReferenceLibrary SecondHand
        "Lemmon, Int. J. Thermophys. 24 (2003)", "R-404A, R-407C, R-410A, R-507A as pseudo-pure fluids, by CoolProp";
    Buecker2006 "buecker-wagner-2006" ReferenceLibrary SecondHand
        "Bücker and Wagner, J. Phys. Chem. Ref. Data 35 (2006)", "R-600a, by CoolProp";
    Gao2023 "gao-2023" ReferenceLibrary SecondHand
        "Gao, Wu, Bell, Harvey and Lemmon, J. Phys. Chem. Ref. Data 52 (2023)", "R-717, by CoolProp";
    SpanWagner1996 "span-wagner-1996" ReferenceLibrary SecondHand
        "Span and Wagner, J. Phys. Chem. Ref. Data 25 (1996)", "R-744, by CoolProp";
    LemmonAkasaka2022 "lemmon-akasaka-2022" ReferenceLibrary SecondHand
        "Lemmon and Akasaka, Int. J. Thermophys. 43 (2022)", "R-1234yf, by CoolProp";
    TholLemmon2016 "thol-lemmon-2016" ReferenceLibrary SecondHand
        "Thol and Lemmon, Int. J. Thermophys. 37 (2016)", "R-1234ze(E), by CoolProp";
    BellMixtures "bell-2022-2023-2025" ReferenceLibrary SecondHand
        "Bell, mixture models of hydrofluoroolefin blends (2022, 2023, 2025)", "binary parameters, by CoolProp";
    LemmonJacobsen2004 "lemmon-jacobsen-2004" ReferenceLibrary SecondHand
        "Lemmon and Jacobsen, J. Phys. Chem. Ref. Data 33 (2004)", "binary parameters of R-32, R-125, R-134a, R-143a, by CoolProp";
    Span2000 "span-2000" ReferenceLibrary SecondHand
        "Span, Lemmon, Jacobsen, Wagner and Yokozeki, J. Phys. Chem. Ref. Data 29 (2000) 1361", "nitrogen, by CoolProp";
    IapwsR7 "iapws-r7-97" Standard SecondHand
        "IAPWS R7-97 (2012), Industrial Formulation 1997 for Water and Steam", "equations 30 and 31, through the library iapws; below 0 °C extrapolated";
    IapwsR14 "iapws-r14-08" Standard SecondHand
        "IAPWS R14-08 (2011), Melting and Sublimation Curves of Ordinary Water", "equation 6, through the library iapws";
    HylandWexler1983 "hyland-wexler-1983" ReferenceLibrary SecondHand
        "Hyland and Wexler, ASHRAE Transactions 89 (1983) 500", "saturation over ice and water, by ASHRAE Fundamentals";
    AshraeFundamentals "ashrae-fundamentals-2017" Handbook SecondHand
        "ASHRAE Handbook, Fundamentals (2017), chapter 1, Psychrometrics", "equations 5, 6, 20, 26, 30, 33, 35, through the library PsychroLib";
    Colebrook1939 "colebrook-1939" ReferenceLibrary SecondHand
        "Colebrook, J. Inst. Civ. Eng. 11 (1939) 133", "friction of turbulent flow";
    Moody1944 "moody-1944" ReferenceLibrary FromMemory
        "Moody, Trans. ASME 66 (1944) 671", "roughness of drawn tubing";
    FittingLengths "fitting-equivalent-lengths" Handbook FromMemory
        "Handbooks of pipe flow, equivalent lengths of fittings in bores", "turbulent flow";
    PlateFigure "plate" CommonPractice Read
        "The equipment's own plate or instructions, as entered", "";
    GasVelocities "ashrae-refrigeration-2010-1" Handbook Read
        "ASHRAE Handbook, Refrigeration (2010), chapter 1, Halocarbon Refrigeration Systems", "table 1, recommended gas line velocities";
    OilRiser "jacobs-1976" ReferenceLibrary FromMemory
        "Jacobs, Scheideman, Kazem and Macken, ASHRAE Transactions 82 (1976); flooding form of Wallis (1969)", "oil carried up a riser by refrigerant vapour";
    FrictionUncertainty "white-fluid-mechanics" Handbook FromMemory
        "White, Fluid Mechanics", "friction factors of the Moody chart hold within 15 %";
    GuidelineK "ari-guideline-k" Standard SecondHand
        "ARI Guideline K (2004), Containers for Recovered Non-flammable Fluorocarbon Refrigerants", "filling; 80 % of the water capacity, in the edition of 2004 times the specific gravity at 77 °F; through a trade journal";
    UnModelRegulations "un-p200" PublicAgency Read
        "UN Recommendations on the Transport of Dangerous Goods, Model Regulations (2011)", "packing instruction P200 (3)(c): low pressure liquefied gases";
    TransportOfCylinders "49-cfr-173.304" PublicAgency SecondHand
        "49 CFR 173.304, Filling of cylinders with liquefied compressed gases", "(b): not full of liquid up to 55 °C (131 °F)";
    WaterPound "water-at-60-f" PublicAgency Read
        "Washington Administrative Code 296-307-40029, Filling densities", "a pound of water is 27.737 in³ at 60 °F";
    RealDecreto552Rooms "real-decreto-552-2019-rooms" PublicAgency Read
        "Real Decreto 552/2019, Reglamento de seguridad para instalaciones frigoríficas", "IF-04; the same form in EN 378-1 and IEC 60335-2-40";
    AstmC534 "astm-c534" Standard FromMemory
        "ASTM C534, Preformed Flexible Elastomeric Cellular Thermal Insulation in Sheet and Tubular Form", "thermal conductivity at most 0.28 Btu·in/(h·ft²·°F) at 75 °F";
    ChurchillChu1975 "churchill-chu-1975" ReferenceLibrary SecondHand
        "Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975) 1049", "natural convection from a horizontal cylinder, through the library ht";
    ChurchillBernstein1977 "churchill-bernstein-1977" ReferenceLibrary SecondHand
        "Churchill and Bernstein, J. Heat Transfer 99 (1977) 300", "forced convection to a cylinder in crossflow, through the library ht";
    UsStandardAtmosphere "us-standard-atmosphere-1976" PublicAgency FromMemory
        "U.S. Standard Atmosphere (1976), NOAA, NASA, USAF", "equations 51 and 53: viscosity and conductivity of air";
    Title24 "title-24-2008-ra3.2" PublicAgency Read
        "California Title 24 (2008), Residential Appendices, RA3.2, Refrigerant charge of split systems", "RA3.2.1 and RA3.2.2: accuracy of instruments, tolerances, validity, least airflow";
    Ashrae37 "ashrae-37" Standard FromMemory
        "ANSI/ASHRAE Standard 37, Methods of testing for rating unitary air conditioning and heat pump equipment", "indoor air enthalpy method; condensate left out";
    VacuumConductance "vacuum-conductance" Handbook SecondHand
        "Handbooks of vacuum technique, conductance of long round tubes for air at 20 °C", "viscous 135·d⁴·p/l, molecular 12.1·d³/l in cm, mbar, L/s; as given by an engineering reference site";
    Knudsen1909 "knudsen-1909" ReferenceLibrary FromMemory
        "Knudsen, Ann. Phys. 28 (1909) 75", "between viscous and molecular flow";
    EvacuationTime "evacuation-time" Handbook Read
        "engineeringtoolbox.com, Vacuum: evacuation time", "t = V/S·ln(p₀/p₁), of which this is the integral";
    VacuumPurging "vacuum-purging" Handbook SecondHand
        "Crowl and Louvar, Chemical Process Safety: inerting by vacuum purging", "y = y₀·(p_low/p_high)ⁿ, as given by teaching texts";
    ValveCoreResistance "valve-core-resistance" CommonPractice NoSource
        "A valve core, pressed open, resists as a tube of 2 mm bore and 10 mm length", "an estimate; enter another where one is known";
    DampSystem "damp-system" CommonPractice NoSource
        "A damp system holds a teaspoon of water, 5 g", "an estimate; enter the mass where it is known";
    EvacuationPractice "evacuation-practice" CommonPractice NoSource
        "Evacuation as the trade does it", "milestones, usual ultimate pressure, triple evacuation";
    WaterConductivity "water-conductivity" Handbook FromMemory
        "Thermal conductivity of water, 0.6 W/(m·K)", "";
    UfgsEvacuation "ufgs-15182-evacuation" PublicAgency Read
        "Unified Facilities Guide Specification 15182, Refrigerant Piping", "3.3.3";
    RealDecreto552Evacuation "real-decreto-552-2019-evacuation" PublicAgency Read
        "Real Decreto 552/2019, Reglamento de seguridad para instalaciones frigoríficas", "IF-09, 1.6.3";
    Jeffreys1939 "jeffreys-1939" Handbook FromMemory
        "Jeffreys, Theory of Probability (1939)", "weighing of laws by the probability of the readings";
    VacuumTechnology "vacuum-technology" Handbook FromMemory
        "Jousten, Handbook of Vacuum Technology", "pressure rise method";
    RealDecreto552Tests "real-decreto-552-2019-if-09" PublicAgency Read
        "Real Decreto 552/2019, Reglamento de seguridad para instalaciones frigoríficas; carries EN 378-2 into law", "IF-09, strength test";
    UfgsPressureTest "ufgs-15182-pressure-test" PublicAgency Read
        "UFGS 15182 and 15652A, Unified Facilities Guide Specifications, Refrigerant Piping", "field tests";
    GuideUncertainty "jcgm-100" Standard FromMemory
        "JCGM 100:2008, Guide to the expression of uncertainty in measurement", "4.3.7, rectangular distribution; 5.1.2, combined uncertainty";
    PoiseuilleLeak "poiseuille-leak" Handbook FromMemory
        "Handbooks of vacuum and leak technology: laminar flow of a gas through a capillary", "throughput by the difference of the squared pressures over the viscosity";
    NitrogenViscosity "nitrogen-viscosity" ReferenceLibrary Read
        "CoolProp 8.0.0; Lemmon and Jacobsen, Int. J. Thermophys. 25 (2004) 21", "nitrogen, 25 °C, 1 bar";
}

impl SourceId {
    /// The entry it points at.
    pub fn source(self) -> Option<&'static Source> {
        SOURCES.iter().find(|source| source.id == self)
    }
}
