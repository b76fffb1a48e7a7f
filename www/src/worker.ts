// The service worker: keeps one closed list of files, all of one version, and answers from it alone.
// Its name and place never change; a new version waits until the person asks for it.

const worker = self as unknown as ServiceWorkerGlobalScope;

/** Pages at other places of the same origin have caches too: the scope keeps them apart. */
const cachePrefix = `coldwright ${worker.registration.scope} `;
const cacheName = cachePrefix + VERSION;

/** The page itself; every address below it that is no listed file opens it, whatever its query. */
const page = new URL("./", worker.registration.scope).href;
const listed = new Set(FILES.map((file) => new URL(file, page).href));

worker.addEventListener("install", (event) => {
  event.waitUntil(fetchAll());
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

/** All files or none: a version that is not whole is not installed. */
async function fetchAll(): Promise<void> {
  const cache = await caches.open(cacheName);
  await cache.addAll([...listed].map((file) => new Request(file, { cache: "reload" })));
}

async function deleteOtherVersions(): Promise<void> {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(cachePrefix) && name !== cacheName);
  await Promise.all(old.map((name) => caches.delete(name)));
}

/** The listed file that a request asks for; nothing for requests that are none of ours. */
function keptAddress(request: Request): string | undefined {
  if (request.method !== "GET") return undefined;
  const address = request.url.replace(/[?#].*$/, "");
  if (listed.has(address)) return address;
  const opensPage = request.mode === "navigate" && (address === page || address === `${page}index.html`);
  return opensPage ? page : undefined;
}

/** From the cache; from the network only if the browser has thrown the cache away. */
async function answer(address: string, request: Request): Promise<Response> {
  return (await caches.match(address, { cacheName })) ?? fetch(request);
}
