// The whole core in the script itself: only the page that is one file is built with it.

export { default as coreInside } from "../generated/coldwright_bg.wasm";
