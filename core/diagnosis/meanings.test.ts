import { describe, expect, it } from 'vitest';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { byWriting, namedBy, speaksOfLight, wholePhrase } from './meanings.ts';
import { numbersIn } from './written-numbers.ts';

const meant = (text: string, had: readonly QuantityName[] = []) =>
  byWriting(numbersIn(text)[0]!, had, speaksOfLight(had));
const firstOf = (text: string, had: readonly QuantityName[] = []) => meant(text, had)[0];

describe('a number by its writing alone', () => {
  it.each<[string, QuantityName]>([
    ['50 mm', 'focal-length'],
    ['30 cm', 'working-distance'],
    ['2 m', 'working-distance'],
    ['5 µm', 'circle-of-confusion'],
    ['550 nm', 'wavelength'],
    ['2 s', 'exposure-time'],
    ['1/125', 'exposure-time'],
    ['3 dpt', 'close-up-power'],
    ['500 lx', 'illuminance'],
    ['30°', 'subject-tilt'],
    ['20 mm/s', 'subject-speed'],
    ['2 stops', 'light-loss'],
    ['40 lp/mm', 'spatial-frequency'],
    ['30 %', 'overlap'],
    ['f/8', 'f-number'],
    ['2:1', 'magnification'],
    ['3x', 'magnification'],
  ])('%s is most likely the %s', (text, quantity) => {
    expect(firstOf(text)).toBe(quantity);
  });

  it('is nothing without a unit, and nothing that is known already', () => {
    expect(meant('50')).toEqual([]);
    expect(firstOf('36 mm', ['focal-length'])).toBe('extension');
    expect(meant('36 mm', ['extension'])).not.toContain('extension');
    expect(firstOf('f/8', ['f-number'])).toBe('effective-f-number');
  });

  it('of a pair is a side of the sensor, or of the field where that is its neighbour', () => {
    const pair = numbersIn('36 × 24 mm');
    expect(byWriting(pair[0]!, [], false)[0]).toBe('sensor-width');
    expect(byWriting(pair[1]!, ['sensor-width'], false)).toEqual(['sensor-height']);
    expect(byWriting(pair[1]!, ['sensor-width', 'field-width'], false)).toEqual(['field-height']);
    expect(byWriting(pair[1]!, ['field-width', 'sensor-width'], false)).toEqual(['sensor-height']);
  });

  it('as it stands engraved on a lens is its widest opening, unless that is known', () => {
    expect(meant('1:2.8')).toEqual(['max-aperture', 'f-number', 'magnification']);
    expect(meant('1:2.8', ['max-aperture', 'f-number'])).toEqual(['magnification']);
    for (const text of ['1:2', '1:4', '2:1', '1:2.85', '11:2.8']) expect(firstOf(text), text).toBe('magnification');
  });

  it('is how far a light is off where a light is spoken of, if it is a length at all', () => {
    expect([speaksOfLight(['guide-number']), speaksOfLight(['source-size']), speaksOfLight(['focal-length'])]).toEqual([
      true,
      true,
      false,
    ]);
    expect(firstOf('300 mm', ['guide-number'])).toBe('flash-distance');
    expect(firstOf('2 m', ['source-size'])).toBe('flash-distance');
    expect(meant('300 mm', ['guide-number', 'flash-distance'])).not.toContain('flash-distance');
    expect(firstOf('5 µm', ['guide-number'])).toBe('circle-of-confusion');
  });
});

describe('a number with words', () => {
  it('is what they name, before or after it, the longer phrase first', () => {
    expect(namedBy('50 mm', 'focal length', '')[0]).toBe('focal-length');
    expect(namedBy('36 mm', '', 'of rings')[0]).toBe('extension');
    expect(namedBy('119 mm', 'free working distance', 'lens')[0]).toBe('working-distance');
    expect(namedBy('119 mm', 'lens', 'free working distance')[0]).toBe('working-distance');
    expect(namedBy('50 mm', 'the lens', '')).toEqual(namedBy('50 mm', 'THE LENS,', ''));
  });

  it('is what its letter says, large or small where there is no other', () => {
    expect(namedBy('0.72', 'm', '')[0]).toBe('magnification');
    expect(namedBy('0.72', 'with m =', '')[0]).toBe('magnification');
    expect(namedBy('0.72', 'M:', '')).toContain('magnification');
    expect(namedBy('8', 'N ', '')[0]).toBe('f-number');
    expect(namedBy('0.72', 'nothing', '')).toEqual([]);
  });

  it('is nothing that cannot be written so', () => {
    expect(namedBy('50 mm', 'magnification', '')).toEqual([]);
    expect(namedBy('f/8', 'lens', '')).not.toContain('focal-length');
  });

  it('is not what is asked of the thing that it is of', () => {
    for (const of of ['of a', 'of my', 'of the', 'of our', 'of an'])
      expect(namedBy('50 mm', `nearest focus ${of}`, 'lens'), of).toEqual(namedBy('50 mm', '', 'lens'));
    expect(namedBy('300 mm', 'nearest focus of', '')).toContain('focus-distance');
  });

  it('says how far a light is, how wide a print, and the index of glass', () => {
    expect(namedBy('300 mm', 'a flash', 'away')[0]).toBe('flash-distance');
    expect(namedBy('300 mm', 'softbox', 'from the subject')[0]).toBe('flash-distance');
    expect(namedBy('300 mm', 'a lamp head', ' off')[0]).toBe('flash-distance');
    expect(namedBy('300 mm', 'a flash', 'wide')[0]).not.toBe('flash-distance');
    expect(namedBy('300 mm', 'a lens', 'away')[0]).not.toBe('flash-distance');
    expect(namedBy('300 mm', 'a print', 'wide')[0]).toBe('print-width');
    expect(namedBy('300 mm', 'printed', 'across')[0]).toBe('print-width');
    expect(namedBy('1.5', 'n =', '')[0]).toBe('refractive-index');
    expect(namedBy('1,33', 'n', '')[0]).toBe('refractive-index');
    expect(namedBy('15', 'n', '')).not.toContain('refractive-index');
    expect(namedBy('3.5', 'n', '')).not.toContain('refractive-index');
  });
});

describe('what is asked', () => {
  it.each<[string, QuantityName | undefined]>([
    ['m', 'magnification'],
    ['N?', 'f-number'],
    ['m =', 'magnification'],
    ['magnification', 'magnification'],
    ['What is the magnification?', 'magnification'],
    ['find my depth of field', 'depth-of-field'],
    ['how close can I get?', 'working-distance'],
    ['How far away am I', 'working-distance'],
    ['how large is it', 'magnification'],
    ['how much will be sharp', 'depth-of-field'],
    ['how many stops do I lose', 'light-loss'],
    ['how many frames are there', 'frame-count'],
    ['angle of view of the lens', 'angle-of-view'],
    ['depth of field for a coin', 'depth-of-field'],
    ['lens', undefined],
    ['rings', undefined],
    ['which lens', 'focal-length'],
    ['a leaf', undefined],
    ['', undefined],
  ])('“%s” asks for the %s', (text, quantity) => {
    expect(wholePhrase(text)[0]).toBe(quantity);
  });
});
