import fc from 'fast-check';
import jsQR from 'jsqr';
import { generate } from 'lean-qr/nano';
import { describe, expect, it } from 'vitest';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { crateKit } from './crate-kit.ts';
import { kitOf } from './change.ts';
import { hashOf, readHash } from './link.ts';
import { emptyKit, type Kit, type NewPart } from './part.ts';
import { qrCode } from './qr.ts';
import { readKit } from './schema.ts';
import first from './first-version.json' with { type: 'json' };
import second from './second-version.json' with { type: 'json' };

const page = 'https://workbook.example/club/workbook/kit/';
const kitIn = (data: unknown) => (readKit(data) as { kit: Kit }).kit;
const hashOfText = async (text: string) => {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return `#kit=${Buffer.from(await new Response(stream).arrayBuffer()).toString('base64url')}`;
};

/** A bag of 40 parts, no two of them alike: everything that the forms ask first is filled in. */
function fortyParts(): Kit {
  const next = chanceFrom(40);
  const words = ['near', 'far', 'old', 'grey', 'long', 'brass', 'small', 'plain', 'blue', 'late'];
  const name = (what: string) => `${words[Math.floor(10 * next())]} ${words[Math.floor(10 * next())]} ${what}`;
  const size = (least: number, most: number) => Number((least + (most - least) * next()).toPrecision(3));
  const lens = (): NewPart => ({
    kind: 'lens',
    name: name('lens'),
    'focal-length': size(20, 200),
    'max-aperture': size(1.4, 5.6),
    'smallest-aperture': 22,
    'focus-distance': size(900, 1500),
    'focus-magnification': size(0.1, 0.5),
    focusing: 'whole',
    thread: Math.round(size(49, 77)),
    iris: 'camera',
    'barrel-length': size(30, 120),
  });
  const ring = (): NewPart => ({ kind: 'ring', name: name('ring'), extension: size(5, 70), contacts: 'yes' });
  const camera = (): NewPart => ({
    kind: 'camera',
    name: name('camera'),
    'sensor-width': size(20, 40),
    'sensor-height': size(15, 24),
    'register-distance': size(18, 47),
    'pixels-across': Math.round(size(4000, 9000)),
  });
  const light = (): NewPart => ({ kind: 'light', name: name('diffuser'), 'source-size': size(50, 600) });
  const many = [camera, lens, lens, ring, light, lens, ring, lens];
  return kitOf(...Array.from({ length: 40 }, (_, at) => many[at % many.length]!()));
}

/** The text that another library reads off the code as it would be drawn, four pixels to a square. */
function seen(address: string): string | undefined {
  const code = generate(address);
  const side = 4 * (code.size + 8);
  const pixels = new Uint8ClampedArray(4 * side * side).fill(255);
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      if (code.get((x >> 2) - 4, (y >> 2) - 4)) pixels.fill(0, 4 * (y * side + x), 4 * (y * side + x) + 3);
    }
  }
  return jsQR(pixels, side, side)?.data;
}

describe('a link', () => {
  it.each([
    ['the crate', crateKit()],
    ['forty parts', fortyParts()],
    ['nothing', emptyKit],
    ['one part of every kind', kitIn(first)],
    ['what came with the second version', kitIn(second)],
  ])('carries %s and gives it back, ids numbered anew', async (_, kit) => {
    const reading = await readHash(await hashOf(kit));
    expect(reading).toMatchObject({ kind: 'kit' });
    const without = ({ parts }: Kit) => parts.map((part) => ({ ...part, id: '' }));
    expect(without((reading as { kit: Kit }).kit)).toEqual(without(kit));
  });

  it('made by the first edition is read in every later one', async () => {
    const kept =
      '#kit=VZCxasNAEER_JWz9InZ1d7LdOkZ1cHtcYRMpERxSkKwE_3044RRuZ968YqIRFTlOH3fBNdQe72lUFa1UA3K93Kexu0kiGtIO_e0uxGCVQyufsGqPNfhQFhZQ_AEtonHNmeAIWGW8PgLvn5w1ch7GT8Fq7KlxyLHLefpdBK9Y0ET0yHtel5d-WmfBY4Q6EQNymtZr7mahLnRhG-Tc_XTz0m3oBu6Qt2n9_gcPibhH2odNK8MptZb5AWnzZfnafilnGI5daUyR09D362Z2G22GnC9DFuzxnKmm9Ac';
    expect((await readHash(kept)) as { kit: Kit }).toMatchObject({ kind: 'kit' });
    expect(((await readHash(kept)) as { kit: Kit }).kit.parts.map((part) => ({ ...part, id: '' }))).toEqual(
      first.parts.map((part) => ({ ...part, id: '' })),
    );
  });

  it('needs no letter that an address would change', async () => {
    const hash = await hashOf(crateKit());
    expect(new URL(hash, page).hash).toBe(hash);
    expect(hash).toMatch(/^#kit=[\w-]+$/);
  });

  it('is no business of this page where it speaks of something else', async () => {
    expect(await readHash('')).toBeUndefined();
    expect(await readHash('#main')).toBeUndefined();
  });
});

describe('a link that is no kit is refused in words:', () => {
  it.each([
    ['cut short', async () => (await hashOf(crateKit())).slice(0, 200)],
    ['letters at random', async () => '#kit=%%%'],
    ['nothing behind the mark', async () => '#kit='],
    ['packed text that is no list', async () => hashOfText('{"__proto__":{"x":1}}')],
    ['rows that are none', async () => hashOfText('[1,5]')],
    ['a kind that is not there', async () => hashOfText('[1,[99,"x"]]')],
    ['more cells than fields', async () => hashOfText('[1,[2,"Ring",12,0,"m",7]]')],
    ['a ring of no thickness', async () => hashOfText('[1,[2,"Ring",0,0]]')],
    ['a later form', async () => hashOfText('[2]')],
    ['a great deal of nothing, packed small', async () => hashOfText(`[1,"${' '.repeat(3_000_000)}"]`)],
    [
      'ten thousand parts',
      async () => hashOfText(JSON.stringify([1, ...Array.from({ length: 10_000 }, () => [2, 'r', 12, 0])])),
    ],
    ['deep nesting', async () => hashOfText(`[1,${'['.repeat(90_000)}${']'.repeat(90_000)}]`)],
  ])('%s', async (_, hash) => {
    expect(await readHash(await hash())).toEqual({ kind: 'refused', message: expect.stringMatching(/\.$/) });
  });

  it('whatever it is', async () => {
    await fc.assert(
      fc.asyncProperty(fc.oneof(fc.string(), fc.base64String()), async (text) => {
        expect((await readHash(`#kit=${text}`))!.kind).toBe('refused');
      }),
    );
  });
});

describe('a QR code', () => {
  it.each([
    ['the crate', crateKit()],
    ['forty parts', fortyParts()],
  ])('of %s is read by another library as the link it was made of', async (_, kit) => {
    const address = page + (await hashOf(kit));
    expect(qrCode(address)!.size).toBe(generate(address).size);
    expect(seen(address)).toBe(address);
  });

  it('is drawn as dark squares, each where the code has one', () => {
    const { size, path } = qrCode(page)!;
    expect(size).toBeGreaterThanOrEqual(21);
    expect(path).toMatch(/^M/);
  });

  it('holds as much as the largest code holds, and is not made of more', () => {
    // Version 40-L of ISO/IEC 18004 holds 2953 bytes, less what says which alphabet they are of.
    expect(qrCode('x'.repeat(2940))!.size).toBe(177);
    expect(qrCode('x'.repeat(2954))).toBeUndefined();
  });
});
