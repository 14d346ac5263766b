/**
 * The service worker's text: it fetches every page and file of this edition once, answers from that copy, and
 * drops older editions. Pages are asked for afresh when there is a network, so that a new edition shows at once.
 */
export function workerSource(paths: readonly string[], edition: string): string {
  return `const edition = ${JSON.stringify(`ring-and-ruler-${edition}`)};
const paths = ${JSON.stringify(paths)};

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(edition).then((cache) => cache.addAll(paths)).then(() => self.skipWaiting()));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name.startsWith('ring-and-ruler-') && name !== edition).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

const kept = (request) => caches.match(request, { ignoreSearch: true, ignoreVary: true });

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  const answer =
    request.mode === 'navigate'
      ? fetch(request).catch(() => kept(request).then((page) => page ?? Response.error()))
      : kept(request).then((file) => file ?? fetch(request));
  event.respondWith(answer);
});
`;
}
