// What the build puts in: see build.mjs.

/** Whether the page is built to be worked on: then no service worker holds on to old files. */
declare const DEVELOPMENT: boolean;

/** Whether the page is one file with everything inside, opened without a server: then no service worker keeps it. */
declare const ONE_FILE: boolean;

/** Where the page is published, if it is to name that in links instead of where it is; else empty. */
declare const PUBLIC_ADDRESS: string;

/** Addresses of the core's modules, relative to the page: what answers the first screen, and the whole. */
declare const FIRST_MODULE: string;
declare const WHOLE_MODULE: string;

/**
 * In the service worker only: the hash of everything; the files to keep by their address relative to the page, each with
 * the hash of its content; and what the page that is kept names in place of what it names on the host.
 */
declare const VERSION: string;
declare const KEPT: Readonly<Record<string, string>>;
declare const REPLACED: readonly (readonly [string, string])[];

/** A locale's messages, read at build time so that the phone need not parse them: see bundle.mjs. */
declare module "*.ftl" {
  import type { Message } from "@fluent/bundle/esm/ast.js";
  export const patterns: readonly Message["value"][];
}

/** Their ids, in the same order. */
declare module "*.ftl?ids" {
  export const ids: readonly string[];
}

/** The content of a module. */
declare module "*.wasm" {
  const content: Uint8Array<ArrayBuffer>;
  export default content;
}

/** The text of a style sheet with its imports. */
declare module "*.css" {
  const text: string;
  export default text;
}
