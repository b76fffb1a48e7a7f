// What the build puts in: see build.mjs.

/** Whether the page is built to be worked on: then no service worker holds on to old files. */
declare const DEVELOPMENT: boolean;

/** Addresses of the core's modules, relative to the page: what answers the first screen, and the whole. */
declare const FIRST_MODULE: string;
declare const WHOLE_MODULE: string;

/** In the service worker only: the hash of all listed files, and their addresses relative to the page. */
declare const VERSION: string;
declare const FILES: readonly string[];

/** A locale's messages, read at build time so that the phone need not parse them: see bundle.mjs. */
declare module "*.ftl" {
  import type { Message } from "@fluent/bundle/esm/ast.js";
  export const patterns: readonly Message["value"][];
}

/** Their ids, in the same order. */
declare module "*.ftl?ids" {
  export const ids: readonly string[];
}

/** The text of a style sheet with its imports. */
declare module "*.css" {
  const text: string;
  export default text;
}
