import { once } from 'node:events';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';

/** Starts *server* on *port*; 0 lets the system pick a free one. Resolves to the port in use, or to nothing if it is taken. */
export async function listen(server: Server, port: number, host?: string): Promise<number | undefined> {
  const started = once(server, 'listening');
  server.listen(port, host);
  try {
    await started;
    return (server.address() as AddressInfo).port;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EADDRINUSE') return undefined;
    throw error;
  }
}

/** A port that nothing listens on at the moment. */
export async function freePort(): Promise<number> {
  const server = createServer();
  const port = await listen(server, 0);
  server.close();
  await once(server, 'close');
  return port as number;
}
