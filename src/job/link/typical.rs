//! What the model learns before it meets a document.

use super::memory::Memory;

/// The memory to begin with.
pub(super) fn memory() -> Memory {
    Memory::new()
}
