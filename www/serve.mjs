// Serves a directory as a plain host would: `node serve.mjs DIRECTORY [--port N] [--base /path/]`.
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs, promisify } from "node:util";
import { brotliCompress } from "node:zlib";

/** Nothing from elsewhere, nothing inline. Also in the page itself, for hosts that send no headers. */
export const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** Of the page that is one file: its own script, told by its hash, and nothing else at all. */
export const oneFilePolicy = (hashOfScript) =>
  ["default-src 'none'", `script-src '${hashOfScript}' 'wasm-unsafe-eval'`, "img-src data: blob:", "base-uri 'none'", "form-action 'none'"].join("; ");

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
};

const compress = promisify(brotliCompress);
/** By hash of the content, since the same files are asked for again and again: the module takes a second and a half each time. */
const packed = new Map();
const mostPacked = 200;

function pack(content) {
  const hash = createHash("sha256").update(content).digest("hex");
  if (packed.size >= mostPacked) packed.clear();
  if (!packed.has(hash)) packed.set(hash, compress(content));
  return packed.get(hash);
}

const isCompressible = (type) => !type.startsWith("image/png");

/** Serves until `close` is called, which also cuts the connections; `port` 0 takes a free one. */
export async function serve(directory, { port = 0, base = "/" } = {}) {
  const server = createServer((request, response) => {
    answer(directory, base, request, response).catch(() => response.writeHead(500).end());
  });
  await new Promise((ready, failed) => {
    server.once("error", failed);
    server.listen(port, "127.0.0.1", ready);
  });
  const close = () =>
    new Promise((closed) => {
      server.close(closed);
      server.closeAllConnections();
    });
  return { address: `http://localhost:${server.address().port}${base}`, close };
}

async function answer(directory, base, request, response) {
  const { pathname } = new URL(request.url, "http://localhost");
  if (!["GET", "HEAD"].includes(request.method)) return response.writeHead(405).end();
  if (!pathname.startsWith(base)) return response.writeHead(404).end();
  const asked = normalize(decodeURIComponent(pathname.slice(base.length)));
  if (asked.startsWith("..")) return response.writeHead(404).end();
  const name = asked === "." || asked === "" ? "index.html" : asked;
  const content = await readFile(join(directory, name)).catch(() => undefined);
  if (content === undefined) return response.writeHead(404).end();
  const type = types[extname(name)] ?? "application/octet-stream";
  const isPacked = isCompressible(type) && /\bbr\b/.test(request.headers["accept-encoding"] ?? "");
  response.writeHead(200, {
    "Content-Type": type,
    "Content-Security-Policy": contentSecurityPolicy,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cache-Control": /-[0-9A-Za-z]{8,10}\.\w+$/.test(name) ? "max-age=31536000, immutable" : "no-cache",
    ...(isPacked && { "Content-Encoding": "br", Vary: "Accept-Encoding" }),
  });
  response.end(isPacked ? await pack(content) : content);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { port: { type: "string", default: "8080" }, base: { type: "string", default: "/" } },
  });
  const { address } = await serve(positionals[0] ?? "dist", { port: Number(values.port), base: values.base });
  console.log(`Coldwright is at ${address}  (end with Ctrl+C)`);
}
