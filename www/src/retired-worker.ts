// Takes the place of the service worker if the page must ever be withdrawn from all phones: deletes
// what earlier versions kept, and itself. `npm run build:retired` builds a page with it.

const worker = self as unknown as ServiceWorkerGlobalScope;

worker.addEventListener("install", () => {
  void worker.skipWaiting();
});

worker.addEventListener("activate", (event) => {
  event.waitUntil(retire());
});

async function retire(): Promise<void> {
  const prefix = `coldwright ${worker.registration.scope} `;
  const names = (await caches.keys()).filter((name) => name.startsWith(prefix));
  await Promise.all(names.map((name) => caches.delete(name)));
  await worker.registration.unregister();
}
