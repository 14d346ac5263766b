import { describe, expect, it } from 'vitest';
import { requireKit } from '#core/rig/kit/require-kit.ts';
import { searchSoundKit } from '#core/rig/kit/search-sound-kit.ts';
import { cameraRow, kits } from '#site/state/kits.ts';
import type { OwnParts } from '#site/state/own-parts.svelte.ts';
import { ownCamera as camera } from '#tests/support/own-parts.ts';
import { kitOf } from './change.ts';
import { crateKit } from './crate-kit.ts';
import { emptyKit, type NewPart } from './part.ts';
import { mostChains, searchedParts } from './searched-parts.ts';

const lens: NewPart = {
  kind: 'lens',
  name: 'My 85',
  'focal-length': 85,
  'max-aperture': 1.8,
  'focus-distance': 800,
  focusing: 'whole',
  iris: 'camera',
};
const ring: NewPart = { kind: 'ring', name: 'My 20', extension: 20, contacts: 'no' };

const found = (...parts: readonly NewPart[]) => searchedParts(kitOf(...parts), 1) as OwnParts;
const rowsOf = ({ cameras: [one] }: OwnParts) => [cameraRow(36, 0.02, one), ...one!.rows];

describe('a kit as chains are searched in it', () => {
  it('is what the crate is, to the numbers that its owner would read off it', () => {
    const names = ['90 mm', '50 mm', '28 mm', 'mm ring', 'close-up lens'];
    const bag = crateKit().parts.filter(
      ({ name, kind }) => kind === 'camera' || (names.some((one) => name.includes(one)) && !name.includes('cemented')),
    );
    const mine = found(...bag.filter(({ name }) => !/–|zoom/.test(name)));
    const subject = {
      subjectWidth: 20,
      subjectDepth: 0.05,
      subjectSpeed: 0.01,
      luminance: 512,
      iso: 400,
      wavelength: 0.00055,
      leastFill: 0.7,
      nearestDistance: 30,
      longestExposure: 1,
    };
    const without = kits.bag.rows.filter((row) => row.part !== 'lens' || row.zoom === undefined);
    const [own, theirs] = [rowsOf(mine), [cameraRow(36, 0.02), ...without]].map((rows) => {
      expect(() => requireKit(rows)).not.toThrow();
      return searchSoundKit(rows, subject, Infinity);
    });
    expect(own!.count).toBe(theirs!.count);
    expect(theirs!.suited.length).toBeGreaterThan(10);
    expect(own!.suited.length).toBe(theirs!.suited.length);
    const [best, other] = [own!, theirs!].map((search) => search.judgementOf(search.suited[0]!));
    expect(best!.magnification).toBeCloseTo(other!.magnification, 3);
    // Lengths of barrels are read to a tenth of a millimetre.
    expect(Math.abs(best!.room - other!.room)).toBeLessThan(0.2);
    expect(best!.effectiveFNumber).toBeCloseTo(other!.effectiveFNumber, 2);
  });

  it('says in words why it makes no chain', () => {
    expect(searchedParts(kitOf(lens), 1)).toBe('It has no camera.');
    expect(searchedParts(kitOf(camera), 1)).toBe('No lens in it fits a camera in it.');
    expect(searchedParts(kitOf(camera, { ...lens, mount: 'screw' }), 1)).toBe('No lens in it fits a camera in it.');
    expect(searchedParts(emptyKit, 1)).toBe('It has no camera.');
  });

  it('refuses more chains than a hand can wait for', () => {
    const rings = Array.from({ length: 18 }, (_, at) => ({ ...ring, extension: 10 + at }));
    expect(2 ** 18).toBeGreaterThan(mostChains);
    expect(searchedParts(kitOf(camera, lens, ...rings), 1)).toMatch(/^It makes more chains than/);
  });

  it('leaves rings of another mount out, and keeps a lens of one to be turned round', () => {
    const other = { ...lens, name: 'Old 50', 'focal-length': 50, mount: 'screw', 'register-distance': 45.5 };
    const { rows } = found(camera, lens, other, ring, { ...ring, mount: 'screw' }).cameras[0]!;
    expect(rows.map(({ part }) => part)).toEqual(['lens', 'lens', 'ring']);
    expect(new Set(rows.flatMap((row) => (row.part === 'lens' ? [row.mount] : []))).size).toBe(2);
  });

  it('leaves a lens of another register out of those that fit, without a name for its mount too', () => {
    const { rows, mount } = found(camera, lens, { ...lens, 'focal-length': 50, 'register-distance': 45.5 }).cameras[0]!;
    expect(rows.filter((row) => row.part === 'lens' && row.mount === mount)).toHaveLength(1);
  });

  it('takes the f-number that a lens closes to, or a usual one', () => {
    const [said, unsaid] = [{ ...lens, 'smallest-aperture': 16 }, lens].map((one) => {
      const [row] = found(camera, one).cameras[0]!.rows;
      return row?.part === 'lens' ? row.smallestAperture : undefined;
    });
    expect([said, unsaid]).toEqual([16, 22]);
  });

  it('has every part’s own name, none for a ring that only holds a lens', () => {
    const turning: NewPart = { kind: 'reversing-ring', name: 'Reverse', extension: 5 };
    expect(found(camera, lens, turning).names).toEqual({
      'my-camera-0': 'Mine',
      'my-lens-1': 'My 85',
      'my-reversing-ring-2': '',
    });
  });
});
