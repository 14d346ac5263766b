import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { ownFifty as lens } from '#tests/support/own-parts.ts';
import { lensOnCamera } from './answers.ts';
import { kitOf } from './change.ts';
import { crateKit } from './crate-kit.ts';
import { partsOf, type Kit, type NewPart } from './part.ts';
import { assumedLetters, isOneNumber, leanWords, rangeWords } from './range-words.ts';

const plain = (text: string) => text.replaceAll('\u202f', ' ');
const camera: NewPart = { kind: 'camera', name: 'A', 'sensor-width': 36, 'sensor-height': 24, 'register-distance': 44 };
const asked = (kit: Kit, extension = 0) =>
  lensOnCamera(partsOf(kit, 'lens')[0]!, partsOf(kit, 'camera')[0]!, extension, kit);
const answersOf = (kit: Kit, extension = 0) => {
  const found = asked(kit, extension);
  if (found.kind === 'none') throw new Error(found.why);
  return found;
};

describe('a lens of which all is known', () => {
  it('has one answer to each question', () => {
    const { spans, lenses } = answersOf(crateKit(), 36);
    // m 0.15 + 36/50; w 50 (1 + 1/m) − 22; N_w 1.8 (1 + m/1.1)
    const m = 0.87;
    for (const [name, value] of [
      ['magnification', m],
      ['field-width', 36 / m],
      ['working-distance', 50 * (1 + 1 / m) - 22],
      ['effective-f-number', 1.8 * (1 + m / 1.1)],
    ] as const) {
      expect(spans[name]!.usual).toEqual(closeTo(value, { relative: 1e-12, because: 'rounding' }));
      expect(isOneNumber(name, spans[name]!)).toBe(true);
    }
    expect(leanWords(lenses)).toBe('');
  });
});

describe('a lens by its marks', () => {
  it('gives ranges, and says what is assumed', () => {
    const { spans, lenses } = answersOf(kitOf(camera, lens), 36);
    expect(isOneNumber('magnification', spans.magnification!)).toBe(true);
    expect(isOneNumber('working-distance', spans['working-distance']!)).toBe(false);
    expect(leanWords(lenses)).toBe('P, h, HH′ and length of this lens are assumed');
    expect(assumedLetters(lenses)).toBe('P, h, HH′, length');
  });

  it('leaves out of the sentence what a ruler has told', () => {
    expect(leanWords(answersOf(kitOf(camera, { ...lens, 'barrel-length': 24 })).lenses)).toBe(
      'P, h and HH′ of this lens are assumed',
    );
  });

  it('names what was measured with an error', () => {
    const known = {
      ...lens,
      'focal-length': { value: 51.3, error: 0.4 },
      'pupil-magnification': 1,
      'principal-separation': 0,
      'front-principal-depth': 20,
    };
    expect(leanWords(answersOf(kitOf(camera, known)).lenses)).toBe('f was measured, with an error');
  });
});

describe('a range in words', () => {
  it.each([
    ['working-distance', 78.4, 96.2, '78.4 to 96.2 mm'],
    ['working-distance', 780, 1200, '780 mm to 1.2 m'],
    ['magnification', 0.5, 0.62, '0.5 to 0.62'],
    ['effective-f-number', 4, 5.7, 'f/4 to f/5.7'],
    ['working-distance', 78.41, 78.412, '78.4 mm'],
    ['working-distance', -12.5, 109, 'up to 109 mm or inside the lens'],
    ['working-distance', -12.5, -3, 'inside the lens'],
    ['working-distance', -12.5, 0, 'inside the lens'],
    ['working-distance', -3.11, -3.11, 'inside the lens'],
    ['working-distance', 0, 12, '0 to 12 mm'],
    ['principal-separation', -3, 12, '−3 to 12 mm'],
  ] as const)('%s from %d to %d is %s', (name, least, most, words) => {
    expect(plain(rangeWords(name, { least, most })).replace('×', '')).toBe(words);
  });
});

describe('a lens that cannot stand on the camera', () => {
  it('says so', () => {
    expect(asked(kitOf(camera, { ...lens, mount: 'another' }))).toMatchObject({
      kind: 'none',
      why: expect.stringMatching(/register is not known/),
    });
    expect(asked(kitOf(camera, { ...lens, mount: 'another', 'register-distance': 30 }))).toMatchObject({
      kind: 'none',
      why: expect.stringMatching(/another mount/),
    });
  });
});
