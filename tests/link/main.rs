//! A job as a link: nothing is lost, an ordinary job fits a message, and nobody's link does harm.

mod lengths;
mod ordinary;
mod random;
mod typical;
