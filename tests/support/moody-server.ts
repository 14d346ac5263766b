import { createServer, type Server } from 'node:http';
import { staticServer } from './static-server.ts';

/** How a network may behave: as it should, never answering, or answering everything with a log-in page of its own. */
export type Mood = 'well' | 'silent' | 'log-in page' | 'sends elsewhere';

const page = '<!doctype html><title>Log in</title><h1>Welcome to the hall</h1>';

/** A server of the pages built into *folder* for *base* whose mood the test sets. Not closed by itself: {@link MoodyServer.stop}. */
export interface MoodyServer {
  readonly server: Server;
  mood: Mood;
  /** The one address that is answered well in every mood. */
  spared?: string;
  /** Serves another folder from now on: a newer edition. */
  serve(folder: string): void;
  stop(): void;
}

export function moodyServer(folder: string, base: string): MoodyServer {
  let pages = staticServer(folder, base);
  const server = createServer((request, response) => {
    const mood = request.url === moody.spared ? 'well' : moody.mood;
    if (mood === 'silent') return;
    if (mood === 'log-in page') {
      response.writeHead(200, { 'Content-Type': 'text/html' }).end(page);
      return;
    }
    if (mood === 'sends elsewhere' && request.url !== '/log-in') {
      response.writeHead(302, { Location: '/log-in' }).end();
      return;
    }
    pages.emit('request', request, response);
  });
  const moody: MoodyServer = {
    server,
    mood: 'well',
    serve(other) {
      pages = staticServer(other, base);
    },
    stop() {
      server.closeAllConnections();
      server.close();
    },
  };
  return moody;
}
