import { describe, expect, test } from 'vitest';
import { isQuantityId, quantityIds, type QuantityId, type QuantityName } from '#core/quantity/vocabulary.ts';
import type { Formula } from '#core/quantity/formula.ts';
import { marksCss } from './marks-css.ts';
import { markOf } from './marks.ts';

const bare = (name: QuantityName) => name.slice(name.lastIndexOf('.') + 1) as QuantityId;

/** Height and width of a frame are two sides of one thing and wear one mark. */
const isOtherSide = (id: QuantityId, ids: readonly QuantityId[]) =>
  ids.some((other) => other !== id && other === id.replace('-height', '-width'));

/** Pairs among *names* that share both hue and line style. */
function clashes(names: readonly QuantityName[]): string[] {
  const all = [...new Set(names.map(bare))];
  const ids = all.filter((id) => !isOtherSide(id, all));
  const looks = new Map<string, QuantityId>();
  return ids.flatMap((id) => {
    const look = Object.values(markOf(id)).join(' ');
    const first = looks.get(look);
    looks.set(look, id);
    return first === undefined ? [] : [`${first} and ${id}`];
  });
}

/** What one figure may show together. */
const company: Readonly<Record<string, readonly QuantityId[]>> = {
  'a camera seen from the side': [
    'focal-length',
    'extension',
    'subject-distance',
    'image-distance',
    'focus-distance',
    'working-distance',
    'register-distance',
    'front-principal-depth',
    'principal-separation',
    'magnification',
    'focus-magnification',
    'f-number',
    'effective-f-number',
    'entrance-pupil',
    'pupil-magnification',
    'light-loss',
    'sensor-width',
    'image-width',
    'field-width',
    'subject-width',
  ],
  'a picture on two sensors': [
    'sensor-width',
    'image-width',
    'pixel-pitch',
    'field-width',
    'subject-width',
    'magnification',
    'crop-factor',
    'pixels-per-millimetre',
  ],
  'the slab that is sharp': [
    'near-limit',
    'far-limit',
    'depth-of-field',
    'depth-of-field-close-up',
    'hyperfocal-distance',
    'subject-distance',
    'working-distance',
    'focal-length',
    'entrance-pupil',
    'f-number',
    'effective-f-number',
    'pupil-magnification',
    'magnification',
    'circle-of-confusion',
    'defocus-blur',
  ],
  'blur against f-number': [
    'f-number',
    'effective-f-number',
    'best-f-number',
    'circle-of-confusion',
    'defocus-blur',
    'airy-diameter',
    'magnification',
    'pixel-pitch',
    'depth-of-field',
    'wave-depth',
  ],
  'the image of a point, and its contrast': [
    'airy-diameter',
    'image-radius',
    'pixel-pitch',
    'wavelength',
    'f-number',
    'effective-f-number',
    'magnification',
    'pupil-magnification',
    'contrast',
    'spatial-frequency',
    'cutoff-frequency',
    'nyquist-frequency',
    'defocus-aberration',
    'spherical-aberration',
  ],
  'a stack of frames': [
    'frame-step',
    'frame-count',
    'overlap',
    'depth-of-field',
    'magnification',
    'edge-shift',
    'scale-change',
    'subject-depth',
  ],
  'ways of spending a stop': [
    'f-number',
    'effective-f-number',
    'exposure-time',
    'iso',
    'exposure-value',
    'light-loss',
    'magnification',
    'illuminance',
    'luminance',
    'ambient-share',
    'guide-number',
    'flash-power',
    'flash-distance',
    'flash-duration',
    'sync-speed',
  ],
  'what moves': [
    'shake-rate',
    'sideways-speed',
    'subject-speed',
    'sway',
    'stabilisation',
    'motion-blur',
    'exposure-time',
    'magnification',
    'depth-of-field',
    'keeper-share',
    'keeper-frames',
  ],
  'a light and its shadow': [
    'source-size',
    'source-angle',
    'penumbra',
    'edge-height',
    'ball-radius',
    'catchlight-width',
    'flash-distance',
  ],
  'a film of soap': ['film-thickness', 'refractive-index', 'incidence-angle', 'reflectance', 'wavelength'],
};

describe('quantities that one figure may show together never share both hue and line style', () => {
  test.each(Object.entries(company))('%s', (_, ids) => {
    expect(clashes(ids)).toEqual([]);
  });
});

const files = import.meta.glob<Record<string, unknown>>('/core/*/*.formula.ts', { eager: true });
const formulas = Object.values(files)
  .flatMap((file) => Object.values(file))
  .filter((value): value is Formula => typeof value === 'object' && value !== null && 'tex' in value);

test.each(formulas.map((formula) => [formula.tex, formula] as const))(
  '%s has no two letters of one hue and line style',
  (_, { gives, from }) => {
    expect(clashes([gives, ...from])).toEqual([]);
  },
);

test('the formulas are found', () => {
  expect(formulas.length).toBeGreaterThan(0);
});

test('a part of a chain keeps the mark of its quantity', () => {
  expect(markOf('reversed-lens.focal-length')).toEqual(markOf('focal-length'));
});

describe('marks.css', () => {
  const rules = [...marksCss().matchAll(/\[data-quantity\$='([^']+)'\] \{\n {2}--mark: ([^;]+);/g)];

  test.each(quantityIds.flatMap((id) => [id, `main-lens.${id}` as const]))('colours %s as markOf does', (name) => {
    const last = rules.filter(([, ending = '?']) => name.endsWith(ending)).at(-1);
    expect(isQuantityId(last?.[1] ?? '')).toBe(true);
    expect(last?.[2]).toBe(markOf(name).colour);
  });

  test('is what marks-css.ts writes', async () => {
    await expect(marksCss()).toMatchFileSnapshot('./marks.css');
  });
});
