import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { withOwnHashes } from './own-hashes.ts';

const page = (policy: string, body: string) =>
  `<meta http-equiv="content-security-policy" content="default-src 'self'; ${policy}">${body}`;
const hash = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

test('a policy names what stands in the page, and nothing else', () => {
  const body =
    '<script>run()</script><script type="module" src="a.js"></script><script type="application/json">[]</script>';
  const framework =
    "script-src 'self' 'sha256-x=' 'sha256-y+/='; style-src 'self' 'sha256-z='; style-src-attr 'unsafe-inline';";
  expect(withOwnHashes(page(framework, body))).toBe(
    page(`script-src 'self' ${hash('run()')}; style-src 'self'; style-src-attr 'unsafe-inline';`, body),
  );
});

test('a page without a policy stays without', () => {
  expect(withOwnHashes('<script>run()</script>')).toBe('<script>run()</script>');
});
