import { createReadStream } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.woff2': 'font/woff2',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.avif': 'image/avif',
  '.ico': 'image/x-icon',
};

/** What is already compressed gains nothing from gzip. */
const compressible = /^(text|application\/(json|manifest|xml|wasm)|image\/svg)/;

/** `lessons` and `/lessons` become `/lessons/`; nothing becomes `/`. */
export function normalBase(base: string): string {
  const inner = base.replace(/^\/+|\/+$/g, '');
  return inner === '' ? '/' : `/${inner}/`;
}

/**
 * A web server for a folder of built pages, as any static host would serve them under *base*: `index.html` for a folder,
 * `404.html` for what is not there, a redirect to the slash at the end, gzip for text.
 */
export function staticServer(folder: string, base: string): Server {
  const root = resolve(folder);
  return createServer((request, response) => {
    answer(root, normalBase(base), request, response).catch((error: unknown) => {
      // A reader who leaves while a page is being sent is no fault; anything else is.
      if (response.headersSent) response.destroy();
      else response.writeHead(500, { 'Content-Type': 'text/plain' }).end(String(error));
    });
  });
}

async function answer(root: string, base: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { Allow: 'GET, HEAD' }).end();
    return;
  }
  const [pathname = '/', query] = (request.url ?? '/').split('?', 2);
  const inside = pathname.startsWith(base) ? pathname.slice(base.length) : undefined;
  const wanted = inside === undefined ? undefined : pathOf(root, inside);
  const kind = wanted === undefined ? undefined : await kindOf(wanted);

  if (`${pathname}/` === base || (kind === 'folder' && !pathname.endsWith('/'))) {
    response.writeHead(301, { Location: `${pathname}/${query === undefined ? '' : `?${query}`}` }).end();
  } else if (wanted !== undefined && kind === 'folder' && (await kindOf(join(wanted, 'index.html'))) === 'file') {
    await send(join(wanted, 'index.html'), 200, request, response);
  } else if (wanted !== undefined && kind === 'file') {
    await send(wanted, 200, request, response);
  } else if ((await kindOf(join(root, '404.html'))) === 'file') {
    await send(join(root, '404.html'), 404, request, response);
  } else {
    response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' }).end(`Nothing at ${pathname}\n`);
  }
}

/** The file that a path names, or nothing when it is garbled or climbs out of the folder. */
function pathOf(root: string, inside: string): string | undefined {
  try {
    const path = resolve(root, decodeURIComponent(inside));
    return path === root || path.startsWith(root + sep) ? path : undefined;
  } catch {
    return undefined;
  }
}

async function kindOf(path: string): Promise<'file' | 'folder' | undefined> {
  try {
    const found = await stat(path);
    return found.isDirectory() ? 'folder' : 'file';
  } catch {
    return undefined;
  }
}

const packed = new Map<string, { readonly written: number; readonly bytes: Promise<Buffer> }>();

/** A file at gzip size, packed once as long as it stays what it is. */
async function packedOf(file: string): Promise<Buffer> {
  const { mtimeMs: written } = await stat(file);
  const known = packed.get(file);
  if (known?.written === written) return known.bytes;
  const bytes = readFile(file).then((text) => promisify(gzip)(text, { level: 9 }));
  packed.set(file, { written, bytes });
  return bytes;
}

async function send(file: string, status: number, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const type = types[extname(file).toLowerCase()] ?? 'application/octet-stream';
  const isPacked = compressible.test(type) && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
  response.writeHead(status, {
    'Content-Type': type,
    'X-Content-Type-Options': 'nosniff',
    // Names under _astro carry a hash of their content, everything else may change with the next build.
    'Cache-Control': file.includes(`${sep}_astro${sep}`) ? 'public, max-age=31536000, immutable' : 'no-cache',
    Vary: 'Accept-Encoding',
    ...(isPacked && { 'Content-Encoding': 'gzip' }),
  });
  if (request.method === 'HEAD') response.end();
  else if (isPacked) response.end(await packedOf(file));
  else await pipeline(createReadStream(file), response);
}
