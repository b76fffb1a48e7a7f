// The service worker: keeps one closed list of files, all of one version, and answers from it alone.
// Its name and place never change; a new version waits until the person asks for it.

const worker = self as unknown as ServiceWorkerGlobalScope;

/** Pages at other places of the same origin have caches too: the scope keeps them apart. */
const cachePrefix = `coldwright ${worker.registration.scope} `;
const cacheName = cachePrefix + VERSION;

/** The page itself; every address below it that is no kept file opens it, whatever its query. */
const page = new URL("./", worker.registration.scope).href;
const kept = new Map(Object.entries(KEPT).map(([file, integrity]) => [new URL(file, page).href, integrity]));

worker.addEventListener("install", (event) => {
  event.waitUntil(keepAll());
});

worker.addEventListener("activate", (event) => {
  event.waitUntil(deleteOtherVersions());
});

worker.addEventListener("message", (event) => {
  if (event.data === "take-over") void worker.skipWaiting();
});

worker.addEventListener("fetch", (event) => {
  const address = keptAddress(event.request);
  if (address !== undefined) event.respondWith(answer(address, event.request));
});

/**
 * All files or none: a version that is not whole is not installed. The browser checks each against its hash, so that a
 * host's error page, a file of another version or one cut short is not taken for it.
 */
async function keepAll(): Promise<void> {
  try {
    const cache = await caches.open(cacheName);
    const requests = [...kept].map(([file, integrity]) => new Request(file, { cache: "reload", redirect: "error", integrity }));
    await cache.addAll(requests);
    await cache.put(page, await pageFromPhone(cache));
  } catch (problem) {
    await caches.delete(cacheName);
    throw problem;
  }
}

/** The page as it starts from this phone: with the whole core, which is as soon there as a part of it. */
async function pageFromPhone(cache: Cache): Promise<Response> {
  const fromHost = await cache.match(page);
  if (fromHost === undefined) throw new Error("the page is not kept");
  const text = REPLACED.reduce((filled, [there, here]) => filled.replaceAll(there, here), await fromHost.text());
  const headers = new Headers(fromHost.headers);
  // They speak of the bytes as they were sent.
  for (const name of ["Content-Encoding", "Content-Length"]) headers.delete(name);
  return new Response(text, { headers });
}

async function deleteOtherVersions(): Promise<void> {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(cachePrefix) && name !== cacheName);
  await Promise.all(old.map((name) => caches.delete(name)));
}

/** The kept file that a request asks for; nothing for requests that are none of ours. */
function keptAddress(request: Request): string | undefined {
  if (request.method !== "GET") return undefined;
  const address = request.url.replace(/[?#].*$/, "");
  if (kept.has(address)) return address;
  const opensPage = request.mode === "navigate" && (address === page || address === `${page}index.html`);
  return opensPage ? page : undefined;
}

/** From the cache; from the network only if the browser has thrown the cache away. */
async function answer(address: string, request: Request): Promise<Response> {
  return (await caches.match(address, { cacheName })) ?? fetch(request);
}
