//! The core as the page has it, run inside WebAssembly: in Node and in a browser.
#![cfg(all(target_arch = "wasm32", feature = "page"))]

mod door;
mod javascript;
mod link;
