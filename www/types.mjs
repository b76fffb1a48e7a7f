// Reads the core's catalogue (JSON Schema) and prints it as TypeScript types: no type is written twice.
//   cargo run --bin coldwright -- catalogue | npm run --silent types > src/catalogue.ts
import { text } from "node:stream/consumers";
import { compile } from "json-schema-to-typescript";

const banner = `// Written by \`./build.sh types\` from the core's catalogue: do not edit.`;

/** A comment under which every member that the core always sends stays required and none is invented. */
const options = {
  additionalProperties: false,
  bannerComment: banner,
  format: true,
  style: { printWidth: 120 },
  strictIndexSignatures: true,
  unreachableDefinitions: false,
};

/**
 * A schema may stand beside a reference; the type is the reference's own. Bounds of numbers and
 * lengths of lists say nothing in TypeScript.
 */
function simplified(schema) {
  if (Array.isArray(schema)) return schema.map(simplified);
  if (schema === null || typeof schema !== "object") return schema;
  if ("$ref" in schema) return { $ref: schema.$ref };
  const { minimum, maximum, ...rest } = schema;
  return Object.fromEntries(Object.entries(rest).map(([key, value]) => [key, simplified(value)]));
}

const catalogue = JSON.parse(await text(process.stdin));
process.stdout.write(await compile(simplified(catalogue), "Catalogue", options));
