//! What the model learns before it meets a document: typical jobs, coded as a document is.

use super::LinkProblem;
use super::coder::Coder;
use super::memory::Memory;
use super::tree::Walk;
use crate::quantity::Arrived;

/// The jobs of `typical-jobs.json`, which is checked by the tests. Another file would be another version of the link.
const TYPICAL_JOBS: &[u8] = include_bytes!("typical-jobs.bin");
/// How many they are.
const TYPICAL_COUNT: usize = 4;

/// The memory to begin with.
pub(super) fn memory() -> Memory {
    let mut walk = Walk::new(Coder::reading(TYPICAL_JOBS).learning(), Memory::new());
    for _ in 0..TYPICAL_COUNT {
        // The file is whole: the tests read it.
        let _ = walk.document(None);
    }
    walk.memory
}

/// The bytes that the model learns these jobs from.
///
/// # Errors
/// As for the link of a job.
pub fn learnt_from(jobs: &[Arrived]) -> Result<Vec<u8>, LinkProblem> {
    let mut walk = Walk::new(Coder::writing().learning(), Memory::new());
    for job in jobs {
        walk.document(Some(job))?;
    }
    Ok(walk.finish())
}
