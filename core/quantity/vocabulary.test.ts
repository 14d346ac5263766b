import katex from 'katex';
import { describe, expect, it } from 'vitest';
import { camelCase } from './formula.ts';
import { glossary, glossaryEntry, texOf } from './glossary.ts';
import { nameInFull, partIndex, partOf } from './part.ts';
import { unitWorth } from './units.ts';
import { isQuantityId, quantityIds, quantityOf, vocabulary, type QuantityId } from './vocabulary.ts';

/** Every quantity that pages and links may name; links in the wild keep working only while all of them stay. */
const agreed = `
  focal-length f-number effective-f-number max-aperture entrance-pupil pupil-magnification magnification focus-magnification
  extension subject-distance image-distance focus-distance working-distance register-distance principal-separation
  front-principal-depth close-up-power close-up-gap abbe-number converter-factor converter-length numerical-aperture
  objective-magnification tube-focal-length sensor-width sensor-height crop-factor pixel-pitch field-width field-height
  subject-width subject-depth image-width pixels-per-millimetre print-width viewing-distance circle-of-confusion depth-of-field
  depth-of-field-close-up near-limit far-limit wave-depth hyperfocal-distance background-distance background-blur
  background-width wavelength airy-diameter defocus-blur contrast spatial-frequency cutoff-frequency best-f-number light-loss
  exposure-time iso illuminance luminance exposure-value guide-number flash-power flash-distance flash-duration sync-speed
  ambient-share shake-rate stabilisation sway sideways-speed subject-speed motion-blur keeper-share keeper-frames subject-tilt
  overlap frame-step frame-count scale-change edge-shift settling-time recycling-time stack-time time-limit source-size
  source-angle penumbra edge-height ball-radius catchlight-width film-thickness refractive-index incidence-angle reflectance
`
  .trim()
  .split(/\s+/);

const rows = quantityIds.map((id) => ({ id, ...vocabulary[id], ...glossary[id] }));

function isUnique(values: readonly string[]): boolean {
  const given = values.filter((value) => value !== '');
  return new Set(given).size === given.length;
}

describe('the vocabulary', () => {
  it('holds every agreed quantity', () => {
    expect(agreed.filter((id) => !isQuantityId(id))).toEqual([]);
  });

  it('gives one letter one meaning, and one name one quantity', () => {
    expect(isUnique(rows.map(({ symbol }) => symbol))).toBe(true);
    expect(isUnique(rows.map(({ tex }) => tex))).toBe(true);
    expect(isUnique(rows.map(({ name }) => name))).toBe(true);
    expect(isUnique(quantityIds.map(camelCase))).toBe(true);
  });

  it('calls each quantity by its id with spaces, or by the name the trade has for it', () => {
    for (const { id, name } of rows) expect(name, id).toMatch(/^[A-Za-z-]+(,? [a-z-]+)*$/);
    expect(vocabulary['focal-length'].name).toBe('focal length');
    expect(vocabulary['f-number'].name).toBe('f-number');
  });

  it.each(rows)('gives $id a finite range, logarithmic only above zero', ({ least, most, scale }) => {
    expect(least).toBeLessThan(most);
    expect(Number.isFinite(least) && Number.isFinite(most)).toBe(true);
    if (scale === 'log') expect(least).toBeGreaterThan(0);
  });

  it.each(rows)('knows what the unit of $id is worth', ({ base, shown }) => {
    expect(unitWorth(base, shown)).toBeGreaterThan(0);
  });

  it.each(rows)('has a letter for $id both in text and in TeX, or in neither', ({ symbol, tex }) => {
    expect(symbol === '').toBe(tex === '');
  });

  it.each(rows)('has for $id a letter that TeX sets and one line that says what it is', ({ id, meaning }) => {
    expect(() => katex.renderToString(texOf(id), { throwOnError: true, strict: 'error' })).not.toThrow();
    expect(meaning).toMatch(/^[^\n]{3,}[^\s.]$/);
  });
});

describe('names with a part', () => {
  it('mean the same quantity of that part', () => {
    expect(quantityOf('reversed-lens.focal-length')).toBe(vocabulary['focal-length']);
    expect(glossaryEntry('rear-ring.extension')).toBe(glossary.extension);
  });

  it('show in formulas which part is meant, or two letters of one kind would look alike', () => {
    expect(texOf('main-lens.focal-length')).toBe(String.raw`{f}_{\text{main}}`);
    expect(texOf('reversed-lens.effective-f-number')).toBe(String.raw`{N_w}^{\text{reversed}}`);
    expect(texOf('rear-ring.extension')).toBe(String.raw`{e}_{\text{rear ring}}`);
    expect(texOf('main-lens.field-width')).toBe(String.raw`\text{main lens field width}`);
    expect(partOf('reversed-lens.focal-length')).toBe('reversed lens');
    expect(nameInFull('reversed-lens.focal-length')).toBe('focal length of the reversed lens');
    expect(nameInFull('corrected.exposure-time')).toBe('corrected exposure time');
    expect(nameInFull('focal-length')).toBe('focal length');
    expect([partOf('focal-length'), partIndex('focal-length')]).toEqual(['', '']);
    expect([nameInFull('chain.focal-length'), texOf('chain.focal-length')]).toEqual(['focal length of the chain', 'f']);
  });

  it.each(quantityIds)('are set by TeX as well: main-lens.%s', (id) => {
    const tex = texOf(`main-lens.${id}`);
    expect(() => katex.renderToString(tex, { throwOnError: true, strict: 'error' })).not.toThrow();
  });
});

describe('isQuantityId', () => {
  it.each(['', 'constructor', 'toString', '__proto__', 'Focal-length', 'main-lens.focal-length'])(
    'refuses %j',
    (text) => {
      expect(isQuantityId(text)).toBe(false);
    },
  );

  it('accepts every id', () => {
    expect(quantityIds.every((id: QuantityId) => isQuantityId(id))).toBe(true);
  });
});
