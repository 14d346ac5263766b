/**
 * Serves the built workbook and prints its address: `node tests/support/serve.ts [--build]`.
 *
 * PORT asks for one port and gets it or an explanation; without it the first free one from 4321 is taken.
 * BASE_PATH is the path under which the workbook was built, as for `astro build`.
 */
import { existsSync } from 'node:fs';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { generate } from 'lean-qr';
import { listen } from './listen.ts';
import { root, run } from './run.ts';
import { normalBase, staticServer } from './static-server.ts';

const usualPort = 4321;
const portsToTry = 20;

function explainAndExit(words: string): never {
  process.stderr.write(`${words}\n`);
  process.exit(1);
}

function requestedPort(): number | undefined {
  const text = process.env.PORT;
  if (text === undefined || text === '') return undefined;
  const port = Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65535) return port;
  return explainAndExit(`PORT is "${text}"; it should be a whole number from 0 (any free port) to 65535.`);
}

async function main(): Promise<void> {
  if (process.argv.includes('--build') && (await run('astro', ['build'])) !== 0) {
    explainAndExit('The workbook was not built, so there is nothing to serve; the messages above say why.');
  }
  const folder = join(root, 'dist');
  if (!existsSync(folder))
    explainAndExit('There is no dist folder yet: "npm start" builds the workbook and serves it.');

  const base = normalBase(process.env.BASE_PATH ?? '/');
  const server = staticServer(folder, base);
  const requested = requestedPort();
  const candidates =
    requested === undefined ? Array.from({ length: portsToTry }, (_, n) => usualPort + n) : [requested];
  for (const candidate of candidates) {
    const port = await listen(server, candidate);
    if (port !== undefined) return announce(port, base);
    if (requested === undefined) process.stdout.write(`Port ${candidate} is taken, trying the next one.\n`);
  }
  explainAndExit(
    requested === undefined
      ? `Ports ${usualPort} to ${usualPort + portsToTry - 1} are all taken; set PORT to a free one.`
      : `Port ${requested} is taken by another program. Stop that one, or set PORT to another number.`,
  );
}

function announce(port: number, base: string): void {
  const lines = ['', `  Ring and Ruler is open at  http://localhost:${port}${base}`];
  const outside = Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => `http://${address}:${port}${base}`);
  for (const address of outside) lines.push(`  on the same network at     ${address}`);
  // For the phones of a room; a file has no use for it.
  if (outside[0] !== undefined && process.stdout.isTTY) lines.push('', codeOf(outside[0]));
  process.stdout.write([...lines, '  Ctrl+C stops it.', '', ''].join('\n'));
}

/** A QR code in black on white, whatever the colours of the terminal. */
function codeOf(address: string): string {
  return generate(address).toString({ on: '\u001b[40m  ', off: '\u001b[107m  ', lf: '\u001b[0m\n' });
}

await main();
