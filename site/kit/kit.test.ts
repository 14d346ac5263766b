import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crateKit } from './crate-kit.ts';
import { kitOf, merged, withBack, withChanged, without, withPart } from './change.ts';
import { fileOf, largestFile, readFile } from './file.ts';
import { kindNames, planOf } from './kinds.ts';
import { emptyKit, type Kit, type KitPart, type NewPart } from './part.ts';
import { readKit } from './schema.ts';
import { usualName } from './words-of-part.ts';
import { currentVersion, upgraded } from './upgrade.ts';
import first from './first-version.json' with { type: 'json' };
import second from './second-version.json' with { type: 'json' };

const ring: NewPart = { kind: 'ring', name: 'Long ring', extension: 36, contacts: 'yes' };
const lens: NewPart = {
  kind: 'lens',
  name: 'My 50',
  'focal-length': 50,
  'max-aperture': 1.8,
  'focus-magnification': 0.15,
  focusing: 'whole',
  iris: 'camera',
};
const doubler: NewPart = {
  kind: 'converter',
  name: 'Doubler',
  'converter-factor': 2,
  'converter-length': 40,
  contacts: 'yes',
  'focal-length': 80,
  'principal-separation': -3,
  'front-principal-depth': 8,
};
const tubeLens: NewPart = { kind: 'tube-lens', name: 'Tube lens', 'tube-focal-length': 200 };
const tubed: NewPart = {
  kind: 'finite-objective',
  name: 'Old ten',
  'objective-magnification': 10,
  'numerical-aperture': 0.25,
  'working-distance': 6.5,
  'tube-length': 160,
};
const changed = (part: NewPart, changes: object) => ({
  ...kitOf(part),
  parts: [{ ...kitOf(part).parts[0]!, ...changes }],
});
const messageOf = (data: unknown) => {
  const reading = readKit(data);
  return reading.kind === 'refused' ? reading.message.replaceAll('\u202f', ' ') : '';
};

describe('a kit', () => {
  it('reads back from its file as it was', () => {
    const kit = kitOf(ring, lens, { ...lens, 'focal-length': { value: 51.3, error: 0.4 } });
    expect(readFile(fileOf(kit))).toEqual({ kind: 'kit', kit });
  });

  it('is what the club’s crate is, too', () => {
    const kit = crateKit();
    expect(readKit(kit)).toEqual({ kind: 'kit', kit });
    expect(new Set(kit.parts.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(9);
  });

  it('of the first version is read in every later one', () => {
    const reading = readKit(first);
    expect(reading).toMatchObject({ kind: 'kit' });
    const { parts } = (reading as { kit: Kit }).kit;
    expect(parts.map(({ kind }) => kind)).toEqual(kindNames.slice(0, 12));
    expect(parts).toEqual(first.parts);
    expect(parts[1]).toMatchObject({
      'focal-length': { value: 51.3, error: 0.4 },
      'focus-distance': 450,
      focusing: 'whole',
    });
  });

  it('of the second version is read in every later one', () => {
    const reading = readKit(second);
    expect(reading).toMatchObject({ kind: 'kit', kit: { version: currentVersion, parts: second.parts } });
    expect(second.parts.map(({ kind }) => kind)).toEqual(['converter', 'tube-lens', 'finite-objective']);
  });

  it('is brought up to date one version at a time', () => {
    const steps = {
      1: (old: object) => ({ ...old, trail: ['one'] }),
      2: (old: object) => ({ ...old, trail: [...(old as { trail: string[] }).trail, 'two'] }),
    };
    expect(upgraded({ version: 1 }, 1, steps, 3)).toEqual({ version: 3, trail: ['one', 'two'] });
    expect(upgraded({ version: 2, trail: [] }, 2, steps, 3)).toEqual({ version: 3, trail: ['two'] });
  });
});

describe('what cannot be is refused, with the field and what it takes:', () => {
  it.each([
    [
      'a ring without thickness',
      changed(ring, { extension: 0 }),
      /Part 1, “Long ring”: “Length” takes a length from 0\.1 mm to 400 mm/,
    ],
    ['a ring of a negative length', changed(ring, { extension: -12 }), /“Length” takes/],
    [
      'a negative register',
      changed(
        { kind: 'camera', name: 'A', 'sensor-width': 36, 'sensor-height': 24, 'register-distance': 44 },
        { 'register-distance': -44 },
      ),
      /“Register” takes a length from 5 mm to 120 mm/,
    ],
    ['no focal length', changed(lens, { 'focal-length': undefined }), /“Focal length” is missing. It takes/],
    ['a number in words', changed(lens, { 'focal-length': '50' }), /“Focal length” takes/],
    ['an unknown field', changed(lens, { 'focal-lenght': 50 }), /says “focal-lenght”, which a lens does not have/],
    ['an unknown kind', changed(lens, { kind: 'telescope' }), /its kind is “telescope”. There are: camera, lens/],
    ['no name', changed(lens, { name: '' }), /its name takes 1 to 80 letters/],
    ['a part without a name', changed(lens, { name: undefined }), /: it has no name/],
    ['a part without an id', changed(lens, { id: undefined }), /^Part 1, “[^”]+”: it has no id/],
    ['an id of other letters', changed(lens, { id: 'A b' }), /its id takes up to 40 of/],
    [
      'a part without what is needed',
      changed(ring, { extension: undefined }),
      /“Length” is missing\. It takes a length/,
    ],
    ['a name of two lines', changed(lens, { name: 'a\nb' }), /its name/],
    ['a name that turns the line round', changed(lens, { name: 'a\u202eb' }), /its name/],
    [
      'a lens that does not say how close it comes',
      changed(lens, { 'focus-magnification': undefined }),
      /“Greatest magnification” or “Nearest focus distance” is needed/,
    ],
    [
      'a rim behind its own flange',
      changed(lens, { 'principal-separation': 0, 'front-principal-depth': -90 }),
      /There is no such lens: the front principal depth would be −90 mm, and has to be at least −45 mm, or the rim/,
    ],
    [
      'a distance nearer than any',
      changed(lens, { 'focus-magnification': undefined, 'focus-distance': 120, 'principal-separation': 0 }),
      /the focus distance would be 120 mm, and has to be at least 200 mm, the nearest/,
    ],
    [
      'bellows that do not move',
      changed({ kind: 'bellows', name: 'B', shortest: 40, longest: 40 }, {}),
      /“Longest” has to be more/,
    ],
    [
      'a smallest opening that is wider than the widest',
      changed(lens, { 'smallest-aperture': 1.4 }),
      /“Smallest opening”/,
    ],
    ['a later version', { ...kitOf(ring), version: currentVersion + 1 }, /later edition/],
    [
      'a converter whose planes are half known',
      changed(doubler, { 'front-principal-depth': undefined }),
      /“h, front metal ring to H” is needed, too/,
    ],
    [
      'a converter whose planes give another factor than is engraved',
      changed(doubler, { 'focal-length': 5, 'principal-separation': 5, 'front-principal-depth': 10 }),
      /enlarges 8\.89×, and 2× is engraved.* its focal length is about 70 mm/,
    ],
    [
      'a converter whose plane is farther back than its end',
      changed(doubler, { 'front-principal-depth': 300 }),
      /“h” takes at most the converter’s length, 40 mm/,
    ],
    [
      'a converter whose planes are farther apart than it is long',
      changed(doubler, { 'principal-separation': 40 }),
      /“HH′” has to be less than its length, 40 mm/,
    ],
    [
      'a converter for pictures that no lens forms',
      changed(doubler, { 'principal-separation': 0, 'front-principal-depth': -40 }),
      /No lens forms its picture/,
    ],
    [
      'a converter that is said to gather light',
      changed(doubler, { 'focal-length': -80 }),
      /“Focal length, without its minus” takes/,
    ],
    [
      'a tube lens of no focal length',
      changed(tubeLens, { 'tube-focal-length': 0 }),
      /“Focal length” takes a length from 50 mm to 500 mm/,
    ],
    [
      'an objective for a tube without its length',
      changed(tubed, { 'tube-length': undefined }),
      /“Tube length” is missing. It takes a length from 100 mm to 250 mm/,
    ],
    ['an objective that needs oil', changed(tubed, { 'numerical-aperture': 1.3 }), /“NA” takes/],
    ['no version', { ...kitOf(ring), version: '1' }, /which version/],
    ['something else', { parts: [] }, /no kit/],
    ['a list', [], /no kit/],
    ['nothing', null, /no kit/],
    [
      'two parts of one id',
      { ...emptyKit, parts: [...kitOf(ring).parts, ...kitOf(ring).parts] },
      /another part’s already/,
    ],
    ['more than a kit says', { ...kitOf(ring), owner: 'x' }, /“owner”/],
  ])('%s', (_, data, words) => {
    expect(messageOf(data)).toMatch(words);
  });
});

describe('a hostile file is refused and touches nothing:', () => {
  it.each([
    ['ten megabytes', 'a'.repeat(10_000_000), /larger than any kit/],
    ['deep nesting', '['.repeat(200_000), /not JSON/],
    ['deep nesting that is closed', `${'['.repeat(100_000)}${']'.repeat(100_000)}`, /./],
    [
      'deep nesting in a part',
      fileOf(kitOf(ring)).replace('36', `${'['.repeat(5000)}${']'.repeat(5000)}`),
      /“Length” takes/,
    ],
    [
      'a prototype in a part',
      fileOf(kitOf(ring)).replace('"extension"', '"__proto__": { "extension": 36 }, "extension"'),
      /“__proto__”/,
    ],
    [
      'a prototype beside the parts',
      fileOf(kitOf(ring)).replace('"version"', '"__proto__": {}, "version"'),
      /“__proto__”/,
    ],
    ['a constructor for a kind', fileOf(kitOf(ring)).replace('"ring"', '"constructor"'), /its kind is/],
    [
      'ten thousand parts',
      JSON.stringify({ ...emptyKit, parts: Array.from({ length: 10_000 }, () => ({})) }),
      /10000 parts/,
    ],
    ['a number beyond all numbers', fileOf(kitOf(ring)).replace('36', '1e999'), /“Length” takes/],
    ['nothing', '', /not JSON/],
  ])('%s', (_, text, words) => {
    const reading = readFile(text);
    expect(reading.kind).toBe('refused');
    expect((reading as { message: string }).message).toMatch(words);
    expect(({} as Record<string, unknown>)['extension']).toBeUndefined();
  });

  it('whatever it is', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.json(),
          fc.jsonValue().map((value) => JSON.stringify({ ...emptyKit, parts: [value] })),
        ),
        (text) => {
          const reading = readFile(text);
          if (reading.kind === 'kit') expect(reading.kit.parts).toEqual([]);
          else expect(reading.message).toMatch(/\.$/);
        },
      ),
    );
  });

  it('is never so large as the most parts of a kit', () => {
    const long = 'x'.repeat(80);
    const full: Record<string, unknown> = { name: long, mount: long };
    for (const { key, reads } of planOf('lens').fields) {
      if (reads.by === 'quantity')
        full[key] = reads.withError ? { value: 1.23456789012, error: 1.23456789012 } : 1.23456789012;
    }
    const parts = Array.from(
      { length: 300 },
      (_, index) => ({ ...full, id: `lens-${index + 1}`, kind: 'lens' }) as unknown as KitPart,
    );
    expect(fileOf({ ...emptyKit, parts }).length).toBeLessThan(largestFile);
  });
});

describe('a change', () => {
  const kit = kitOf(ring, ring, lens);

  it('gives every part an id of its own', () => {
    expect(kit.parts.map(({ id }) => id)).toEqual(['ring-1', 'ring-2', 'lens-1']);
    expect(withPart(without(kit, 'ring-1'), ring).parts.map(({ id }) => id)).toEqual(['ring-2', 'lens-1', 'ring-1']);
  });

  it('is undone where it was', () => {
    expect(withBack(without(kit, 'ring-2'), kit.parts[1]!, 1)).toEqual(kit);
  });

  it('of a part that another tab removed adds it anew', () => {
    expect(
      withChanged(without(kit, 'lens-1'), { ...kit.parts[2]!, name: 'Other' }).parts.map(({ name }) => name),
    ).toEqual(['Long ring', 'Long ring', 'Other']);
  });

  it('that merges takes what is alike for the same, as often as it is there', () => {
    expect(merged(kit, kit)).toEqual(kit);
    expect(merged(kitOf(ring), kit).parts.map(({ name }) => name)).toEqual(['Long ring', 'Long ring', 'My 50']);
    expect(merged(kit, kitOf(lens, { ...lens, 'focal-length': 51 })).parts).toHaveLength(4);
  });
});

it('calls a flash by its guide number where its owner gives it no name', () => {
  expect(usualName({ kind: 'flash', name: '', 'guide-number': 18 })).toBe('flash, GN 18');
  expect(usualName({ kind: 'flash', name: '', 'guide-number': 5.49 })).toBe('flash, GN 5.49');
});
