import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { listen } from './listen.ts';
import { staticServer } from './static-server.ts';

const folder = mkdtempSync(join(tmpdir(), 'served-'));
const server = staticServer(join(folder, 'dist'), '/optics');
let port = 0;

beforeAll(async () => {
  mkdirSync(join(folder, 'dist', 'glossary'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'not served');
  writeFileSync(join(folder, 'dist', 'index.html'), 'home');
  writeFileSync(join(folder, 'dist', '404.html'), 'not here');
  writeFileSync(join(folder, 'dist', 'glossary', 'index.html'), 'glossary');
  port = (await listen(server, 0)) as number;
});

afterAll(() => {
  server.close();
  rmSync(folder, { recursive: true });
});

/** The first line, the `Location` and the body of the answer to a path that is sent as it stands, not tidied by a client. */
async function answerTo(path: string) {
  const socket = connect(port, 'localhost');
  socket.write(`GET ${path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n`);
  let text = '';
  socket.on('data', (chunk) => (text += String(chunk)));
  await once(socket, 'close');
  const [head = '', body = ''] = text.split('\r\n\r\n');
  return { status: Number(head.split(' ')[1]), location: /^Location: (.*)$/m.exec(head)?.[1]?.trim(), body };
}

describe('the server of the built pages', () => {
  it('answers a folder with its page, under the base path only', async () => {
    expect(await answerTo('/optics/')).toMatchObject({ status: 200, body: expect.stringContaining('home') as string });
    expect(await answerTo('/optics/glossary/')).toMatchObject({ status: 200 });
    expect(await answerTo('/glossary/')).toMatchObject({ status: 404 });
  });

  it('leads to the slash at the end and keeps the query', async () => {
    expect(await answerTo('/optics')).toMatchObject({ status: 301, location: '/optics/' });
    expect(await answerTo('/optics/glossary?f-number=8')).toMatchObject({
      status: 301,
      location: '/optics/glossary/?f-number=8',
    });
  });

  it.each([
    '/optics/nothing',
    '/optics/../secret.txt',
    '/optics/..%2Fsecret.txt',
    '/optics/%ff',
    '//',
    '//optics//',
    '/optics//etc/passwd',
  ])('says in its own page that nothing is at %s', async (path) => {
    expect(await answerTo(path)).toMatchObject({ status: 404, body: expect.stringContaining('not here') as string });
  });
});
