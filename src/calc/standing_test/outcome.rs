//! The verdict on a hold.

use super::left_out::Sorted;
use super::loss::{BEYOND_CHANCE, Loss};
use super::readings::HoldReading;
use crate::quantity::choice;

choice! {
    /// What a hold shows.
    HoldVerdict {
        /// What may be lost is less than the leak to see, beyond chance.
        Tight = "tight",
        /// Gas is lost, beyond chance.
        LosingGas = "losing-gas",
        /// The readings show neither.
        CannotTell = "cannot-tell",
        /// There are not two readings at different times yet.
        Open = "open",
    }
}

choice! {
    /// Why the verdict is what it is.
    HoldReason {
        /// A loss as large as the leak to see would have shown, and none did.
        LossRuledOut = "loss-ruled-out",
        /// The loss is larger than instruments and scatter explain.
        LossBeyondUncertainty = "loss-beyond-uncertainty",
        /// More than a fifth of the gas is gone.
        LargeLoss = "large-loss",
        /// Fewer than two readings at different times, or fewer than two that count.
        TooFewReadings = "too-few-readings",
        /// Too short a hold, or too coarse instruments: even without any loss a leak of the size to see could hide.
        TooShortToTell = "too-short-to-tell",
        /// Some loss shows, not beyond chance; with it a leak of the size to see cannot be ruled out.
        NearLeakToSee = "near-leak-to-see",
        /// A loss shows, but one that has ended explains it as well as a leak: gas let out at one moment, as when
        /// a hose is connected, or nitrogen that was still settling after filling.
        MayHaveEnded = "loss-may-have-ended",
        /// A sudden loss came so near the end that nobody knows how it goes on.
        FellNearEnd = "fell-near-end",
        /// The pressure rose more than temperature and uncertainty explain: something is wrong with the readings.
        PressureRose = "pressure-rose",
        /// The pressure stood below the test pressure: what holds there may leak at it.
        TestPressureNotReached = "test-pressure-not-reached",
    }
}

/// The verdict and why, for a leak of `leak_to_see`, Pa/s.
pub(super) fn judge(
    readings: &[HoldReading],
    sorted: &Sorted,
    loss: Option<&Loss>,
    leak_to_see: f64,
) -> (HoldVerdict, HoldReason) {
    use HoldReason as Why;
    use HoldVerdict::{CannotTell, LosingGas, Tight};
    let Some(loss) = loss else {
        return (without_loss(readings), Why::TooFewReadings);
    };
    let chance = BEYOND_CHANCE * loss.uncertainty;
    if loss.is_large {
        (LosingGas, Why::LargeLoss)
    } else if loss.rate > chance && loss.may_have_ended {
        (CannotTell, Why::MayHaveEnded)
    } else if loss.rate > chance {
        (LosingGas, Why::LossBeyondUncertainty)
    } else if loss.rate < -chance {
        (CannotTell, Why::PressureRose)
    } else if sorted.fell_at_end {
        (CannotTell, Why::FellNearEnd)
    } else if chance > leak_to_see {
        (CannotTell, Why::TooShortToTell)
    } else if loss.upper_limit() > leak_to_see {
        (CannotTell, Why::NearLeakToSee)
    } else {
        (Tight, Why::LossRuledOut)
    }
}

/// With readings at different times the verdict is no longer open, only out of reach.
fn without_loss(readings: &[HoldReading]) -> HoldVerdict {
    match (readings.first(), readings.last()) {
        (Some(first), Some(last)) if last.time > first.time => HoldVerdict::CannotTell,
        _ => HoldVerdict::Open,
    }
}
