//! What a unit is: a symbol, the spellings people use, its size, the step of the usual instrument.

/// The family of units a person works in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum System {
    /// Metre, kilogram, degree Celsius and what derives from them.
    Metric,
    /// Inch, pound, degree Fahrenheit: the customary units of the United States.
    Customary,
}

/// One unit of one quantity.
#[derive(Clone, Copy, Debug)]
pub struct Unit {
    /// The symbol as it is shown, for example `N·m`.
    pub symbol: &'static str,
    /// Further spellings, in the form that [`normalised`] leaves. The symbol itself need not be listed.
    pub spellings: &'static [&'static str],
    /// SI units in one of this unit.
    pub scale: f64,
    /// SI value at the unit's zero; not 0 for degrees Celsius and Fahrenheit only.
    pub zero: f64,
    /// The step that the usual instrument shows, in this unit.
    pub step: f64,
    /// The step of a printed table, in this unit.
    pub table_step: f64,
    /// The family the unit belongs to.
    pub system: System,
}

impl Unit {
    /// The SI number for `number` of this unit.
    pub fn to_si(&self, number: f64) -> f64 {
        self.zero + number * self.scale
    }

    /// How many of this unit an SI number is.
    pub fn from_si(&self, si: f64) -> f64 {
        (si - self.zero) / self.scale
    }

    /// Whether its numbers are SI numbers.
    pub fn is_si(&self) -> bool {
        self.to_si(0.0).abs() <= 0.0 && (self.scale - 1.0).abs() <= 0.0
    }

    /// Whether `spelled`, already normalised, means this unit.
    pub fn is_spelled(&self, spelled: &str) -> bool {
        self.spellings.contains(&spelled) || normalised(self.symbol) == spelled
    }
}

/// A unit of a proportional scale of the metric system.
pub(super) const fn metric(
    symbol: &'static str,
    spellings: &'static [&'static str],
    scale: f64,
    step: f64,
    table_step: f64,
) -> Unit {
    Unit {
        symbol,
        spellings,
        scale,
        zero: 0.0,
        step,
        table_step,
        system: System::Metric,
    }
}

/// A unit of a proportional scale of the customary system.
pub(super) const fn customary(
    symbol: &'static str,
    spellings: &'static [&'static str],
    scale: f64,
    step: f64,
    table_step: f64,
) -> Unit {
    Unit {
        symbol,
        spellings,
        scale,
        zero: 0.0,
        step,
        table_step,
        system: System::Customary,
    }
}

/// A unit's spelling without what people vary: case, blanks, the joining dot or hyphen, brackets,
/// raised digits, the look-alikes of the degree, micro and prime signs.
///
/// ```
/// use coldwright::quantity::normalised;
/// assert_eq!(normalised("Ft.-Lbf"), "ftlbf");
/// assert_eq!(normalised("kgf/cm²"), "kgf/cm2");
/// assert_eq!(normalised("bar (g)"), "barg");
/// ```
pub fn normalised(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for character in text.chars().map(|letter| letter.to_ascii_lowercase()) {
        match character {
            '·' | '⋅' | '∙' | '•' | '*' | '-' | '‑' | '.' | '(' | ')' | '_' => {}
            blank if blank.is_whitespace() => {}
            '²' => plain.push('2'),
            '³' => plain.push('3'),
            'µ' | 'μ' => plain.push('u'),
            '”' | '″' | '“' => plain.push('"'),
            '’' | '′' | '‘' => plain.push('\''),
            'º' | '˚' => plain.push('°'),
            other => plain.push(other),
        }
    }
    plain
}
