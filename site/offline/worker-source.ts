/** One file of an edition: its address and the digest of its content, as `fetch` takes it. */
export interface EditionFile {
  readonly path: string;
  readonly integrity: string;
  readonly bytes: number;
}

export interface Edition {
  /** Where the workbook is put, with slashes at both ends. */
  readonly base: string;
  /** Changes whenever any file does. */
  readonly name: string;
  readonly files: readonly EditionFile[];
}

/**
 * The service worker's text. It fetches every file of one edition and answers from that copy at once, whatever the network does; a newer
 * edition is fetched beside it and takes over when a page asks for it.
 *
 * Only what is the workbook's own gets into a copy: each file is fetched with its digest and without redirects, so that the log-in page of
 * a hall's network, answering in our place, is refused. A copy is whole or it is not made.
 */
export function workerSource({ base, name, files }: Edition): string {
  return `const prefix = ${JSON.stringify(copyPrefix(base))};
const edition = prefix + ${JSON.stringify(name)};
const base = ${JSON.stringify(base)};
const files = ${JSON.stringify(files.map(({ path, integrity }) => [path, integrity]))};
const bytes = ${files.reduce((sum, file) => sum + file.bytes, 0)};

async function fetchEdition() {
  const copy = await caches.open(edition);
  await Promise.all(files.map(async ([path, integrity]) => {
    const answer = await fetch(path, { cache: 'no-cache', redirect: 'error', integrity });
    if (!answer.ok) throw new Error(path + ' was not answered');
    await copy.put(path, answer);
  }));
}

self.addEventListener('install', (event) => {
  event.waitUntil(fetchEdition().catch(async (error) => {
    await caches.delete(edition);
    throw error;
  }));
});

self.addEventListener('activate', (event) => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) if (name.startsWith(prefix) && name !== edition) await caches.delete(name);
    await self.clients.claim();
  })());
});

self.addEventListener('message', ({ data, ports }) => {
  if (data === 'take-over') self.skipWaiting();
  if (data === 'size') ports[0].postMessage({ files: files.length, bytes });
});

async function kept(path) {
  const copy = await caches.open(edition);
  return copy.match(path, { ignoreVary: true });
}

/** What is not in the copy comes from the network, if it answers before the reader gives up. */
async function unkept(request) {
  try {
    return await fetch(request, request.mode === 'navigate' ? { signal: AbortSignal.timeout(5000) } : undefined);
  } catch {
    const page = request.mode === 'navigate' ? await kept(base + '404.html') : undefined;
    return page ? new Response(page.body, { status: 404, headers: page.headers }) : Response.error();
  }
}

async function answer(request) {
  const { pathname, search } = new URL(request.url);
  const file = await kept(pathname);
  if (file) return file;
  if (request.mode === 'navigate' && !pathname.endsWith('/') && (await kept(pathname + '/')))
    return Response.redirect(pathname + '/' + search, 301);
  return unkept(request);
}

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method === 'GET' && origin === self.location.origin && pathname.startsWith(base)) event.respondWith(answer(request));
});
`;
}

/** How the names of all copies of the workbook at *base* begin. */
export function copyPrefix(base: string): string {
  return `ring-and-ruler ${base} `;
}
