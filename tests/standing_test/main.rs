//! The pressure hold: on simulated holds of known truth, by laws, and on awkward readings.

mod awkward;
mod laws;
mod rates;
mod simulated;
