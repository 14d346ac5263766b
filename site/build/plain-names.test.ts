import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { convert } from 'fontverter';
import { expect, test } from 'vitest';
import { withPlainNames } from './plain-names.ts';

const file = createRequire(import.meta.url).resolve('katex/dist/fonts/KaTeX_Size4-Regular.woff2');

/** What a font holds, by the tags of its tables. */
function tablesOf(font: Buffer): Map<string, Buffer> {
  const records = Array.from({ length: font.readUInt16BE(4) }, (_, index) => 12 + 16 * index);
  return new Map(
    records.map((at) => {
      const start = font.readUInt32BE(at + 8);
      return [font.toString('latin1', at, at + 4), font.subarray(start, start + font.readUInt32BE(at + 12))];
    }),
  );
}

test('a font loses its names and nothing else', async () => {
  const whole = await convert(readFileSync(file), 'truetype');
  const [before, after] = [tablesOf(whole), tablesOf(withPlainNames(whole, 'Size'))];
  expect([...after.keys()]).toEqual([...before.keys()]);
  expect(before.get('name')!.toString('latin1')).toContain('K\0a\0T\0e\0X');
  for (const [tag, table] of before) if (tag !== 'name') expect(after.get(tag)!.equals(table), tag).toBe(true);
  const names = after.get('name')!;
  expect(names.length).toBeLessThan(70);
  expect(names.subarray(names.readUInt16BE(4)).toString('utf16le')).toBe(
    Buffer.from('\0S\0i\0z\0e').toString('utf16le'),
  );
});

test('is packed and unpacked as before', async () => {
  const bare = withPlainNames(await convert(readFileSync(file), 'truetype'), 'Size');
  const again = tablesOf(await convert(await convert(bare, 'woff2'), 'truetype'));
  expect(again.get('name')!.equals(tablesOf(bare).get('name')!)).toBe(true);
  expect([...again.keys()].sort()).toEqual([...tablesOf(bare).keys()].sort());
});
