//! The macros that every quantity type is made with.

/// Defines a quantity: a newtype over its SI number, its constructor and accessor in the SI unit,
/// its units and the range that an entry may have.
macro_rules! quantity {
    (
        $(#[$doc:meta])*
        $name:ident: $si:literal, $make:ident, $get:ident, range $low:expr, $high:expr, units $units:expr
    ) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd, serde::Serialize)]
        #[serde(transparent)]
        pub struct $name(f64);

        impl $name {
            #[doc = concat!("From a number in ", $si, ".")]
            pub const fn $make(number: f64) -> Self {
                Self(number)
            }

            #[doc = concat!("As a number in ", $si, ".")]
            pub const fn $get(self) -> f64 {
                self.0
            }
        }

        impl $crate::quantity::Quantity for $name {
            const KIND: $crate::quantity::QuantityKind = $crate::quantity::QuantityKind::$name;
            const SI_SYMBOL: &'static str = $si;
            const UNITS: &'static [$crate::quantity::Unit] = $units;
            const RANGE: (f64, f64) = ($low, $high);

            fn from_si(si: f64) -> Self {
                Self(si)
            }

            fn si(self) -> f64 {
                self.0
            }
        }

        #[cfg(feature = "terminal")]
        impl schemars::JsonSchema for $name {
            fn schema_name() -> std::borrow::Cow<'static, str> {
                stringify!($name).into()
            }

            fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
                $crate::quantity::answer_schema::<Self>()
            }
        }
    };
}

/// Sums, differences and multiples of a quantity whose zero means "none".
macro_rules! linear {
    ($name:ident) => {
        impl core::ops::Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }
        impl core::ops::Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }
        impl core::ops::Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }
        impl core::ops::Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self {
                Self(self.0 / divisor)
            }
        }
        impl core::ops::Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 {
                self.0 / other.0
            }
        }
    };
}

/// `first * second = product`, in both orders.
macro_rules! product {
    ($first:ident * $second:ident = $product:ident) => {
        impl core::ops::Mul<$second> for $first {
            type Output = $product;
            fn mul(self, other: $second) -> $product {
                <$product as $crate::quantity::Quantity>::from_si(
                    $crate::quantity::Quantity::si(self) * $crate::quantity::Quantity::si(other),
                )
            }
        }
        product!(@swap $first, $second, $product);
    };
    (@swap $first:ident, $second:ident, $product:ident) => {
        impl core::ops::Div<$first> for $product {
            type Output = $second;
            fn div(self, other: $first) -> $second {
                <$second as $crate::quantity::Quantity>::from_si(
                    $crate::quantity::Quantity::si(self) / $crate::quantity::Quantity::si(other),
                )
            }
        }
    };
}

pub(super) use {linear, product, quantity};
