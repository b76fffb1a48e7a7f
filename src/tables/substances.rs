//! The pure substances that refrigerants are made of, and what each does to the climate.

use super::SourceId;
use crate::quantity::choice;

choice! {
    /// A pure substance in a refrigerant.
    Substance {
        /// Chlorodifluoromethane.
        R22 = "R-22",
        /// Difluoromethane.
        R32 = "R-32",
        /// Pentafluoroethane.
        R125 = "R-125",
        /// 1,1,1,2-Tetrafluoroethane.
        R134a = "R-134a",
        /// 1,1,1-Trifluoroethane.
        R143a = "R-143a",
        /// Propane.
        R290 = "R-290",
        /// Isobutane.
        R600a = "R-600a",
        /// Ammonia.
        R717 = "R-717",
        /// Carbon dioxide.
        R744 = "R-744",
        /// 2,3,3,3-Tetrafluoropropene.
        R1234yf = "R-1234yf",
        /// trans-1,3,3,3-Tetrafluoropropene.
        R1234zeE = "R-1234ze(E)",
    }
}

choice! {
    /// An assessment report of the IPCC; laws name the edition that they count with.
    ClimateReport {
        /// Fourth, 2007.
        Ar4 = "ar4",
        /// Fifth, 2013.
        Ar5 = "ar5",
        /// Sixth, 2021.
        Ar6 = "ar6",
    }
}

impl Substance {
    /// Warming by a kilogram over 100 years, in kilograms of carbon dioxide, and where the figure is from.
    ///
    /// Report 5 says "less than 1" for R-1234yf and R-1234ze(E); 1 stands for it.
    ///
    /// ```
    /// use coldwright::tables::substances::{ClimateReport, Substance};
    /// assert_eq!(Substance::R32.warming_potential(ClimateReport::Ar4).0, 675.0);
    /// ```
    pub const fn warming_potential(self, report: ClimateReport) -> (f64, SourceId) {
        use SourceId::{ClimateReports, ClimateReportsRecalled};
        let ([ar4, ar5, ar6], source) = match self {
            Self::R22 => ([1810.0, 1760.0, 1960.0], ClimateReports),
            Self::R32 => ([675.0, 677.0, 771.0], ClimateReports),
            Self::R125 => ([3500.0, 3170.0, 3740.0], ClimateReports),
            Self::R134a => ([1430.0, 1300.0, 1530.0], ClimateReports),
            Self::R143a => ([4470.0, 4800.0, 5810.0], ClimateReports),
            Self::R290 => ([3.3, 3.0, 0.02], ClimateReportsRecalled),
            Self::R600a => ([3.0, 3.0, 0.006], ClimateReportsRecalled),
            Self::R717 => ([0.0, 0.0, 0.0], ClimateReportsRecalled),
            Self::R744 => ([1.0, 1.0, 1.0], ClimateReportsRecalled),
            Self::R1234yf => ([4.0, 1.0, 0.501], ClimateReportsRecalled),
            Self::R1234zeE => ([7.0, 1.0, 1.37], ClimateReportsRecalled),
        };
        let potential = match report {
            ClimateReport::Ar4 => ar4,
            ClimateReport::Ar5 => ar5,
            ClimateReport::Ar6 => ar6,
        };
        (potential, source)
    }
}
