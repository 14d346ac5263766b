import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { readQuantity, type Reading } from './read.ts';
import { quantityOf, type QuantityName } from './vocabulary.ts';

const message = (reading: Reading) => ('message' in reading ? reading.message.replaceAll('\u202f', ' ') : reading.kind);

describe('readQuantity', () => {
  it.each<[text: string, name: QuantityName, value: number]>([
    ['12 mm', 'extension', 12],
    ['1.2cm', 'extension', 12],
    ['0.5 in', 'extension', 12.7],
    ['36 mm.', 'extension', 36],
    ['36 millimetres', 'extension', 36],
    ['1 1/2 in', 'extension', 38.1],
    ['½"', 'extension', 12.7],
    ['12', 'extension', 12],
    ['1,5', 'extension', 1.5],
    ['0.29 m', 'focus-distance', 290],
    ['1 ft', 'focus-distance', 304.8],
    ['−12 mm', 'working-distance', -12],
    ['12 000 mm', 'subject-distance', 12000],
    ['1:2', 'magnification', 0.5],
    ['2:1', 'magnification', 2],
    ['2x', 'magnification', 2],
    ['×2', 'magnification', 2],
    ['50 %', 'magnification', 0.5],
    ['0.5', 'magnification', 0.5],
    ['1.4×', 'converter-factor', 1.4],
    ['1.5x', 'crop-factor', 1.5],
    ['f/11', 'f-number', 11],
    ['F 11', 'f-number', 11],
    ['5,6', 'f-number', 5.6],
    ['1:1.8', 'max-aperture', 1.8],
    ['1:2,8', 'f-number', 2.8],
    ['1/200', 'exposure-time', 1 / 200],
    ['1/200 s', 'exposure-time', 1 / 200],
    ['1/60', 'exposure-time', 1 / 60],
    ['5 ms', 'exposure-time', 0.005],
    ['2"', 'exposure-time', 2],
    ['3 min', 'exposure-time', 180],
    ['1/4', 'flash-power', 0.25],
    ['+3 dpt', 'close-up-power', 3],
    ['+3 D', 'close-up-power', 3],
    ['3', 'close-up-power', 3],
    ['550 nm', 'wavelength', 0.00055],
    ['550', 'wavelength', 0.00055],
    ['0.55 µm', 'wavelength', 0.00055],
    ['30 µm', 'circle-of-confusion', 0.03],
    ['0,03 mm', 'circle-of-confusion', 0.03],
    ['30', 'circle-of-confusion', 0.03],
    ['45 %', 'contrast', 0.45],
    ['45', 'contrast', 0.45],
    ['45°', 'subject-tilt', Math.PI / 4],
    ['90 deg', 'subject-tilt', Math.PI / 2],
    ['50 lp/mm', 'spatial-frequency', 50],
    ['1 stop', 'light-loss', 1],
    ['2 EV', 'light-loss', 2],
    ['12 frames', 'frame-count', 12],
    ['14 m', 'guide-number', 14],
    ['46 ft', 'guide-number', 14.0208],
    ['20 cm/s', 'subject-speed', 200],
    ['28 mm', 'reversed-lens.focal-length', 28],
    ['GN 32', 'guide-number', 32],
    ['gn32 m', 'guide-number', 32],
    ['GN = 105 ft', 'guide-number', 32.004],
    ['guide number 32', 'guide-number', 32],
    ['ISO 100', 'iso', 100],
    ['ISO100', 'iso', 100],
    ['100 ISO', 'iso', 100],
    ['36x24', 'sensor-width', 36],
    ['36x24', 'sensor-height', 24],
    ['24 × 36 mm', 'sensor-width', 36],
    ['2.4 × 3.6 cm', 'sensor-height', 24],
    ['23,5 mm x 15,6 mm', 'sensor-height', 15.6],
    ['life size', 'magnification', 1],
    ['Life-size', 'focus-magnification', 1],
    ['half life size', 'magnification', 0.5],
    ['twice life size', 'magnification', 2],
    ['3x life-size', 'magnification', 3],
    ['1/3 life size', 'magnification', 1 / 3],
    ['m = 1:2', 'magnification', 0.5],
    ['f = 50 mm', 'focal-length', 50],
    ['c = 0.03 mm', 'circle-of-confusion', 0.03],
    ['N = 8', 'f-number', 8],
    ['f/8', 'f-number', 8],
    ['1/250th', 'exposure-time', 1 / 250],
    ['1/250th s', 'exposure-time', 1 / 250],
  ])('reads %j as %s', (text, name, value) => {
    const reading = readQuantity(name, text);
    expect(reading).toEqual({
      kind: 'value',
      value: closeTo(value, { relative: 1e-14, because: 'kept to fifteen figures' }),
    });
  });

  it('reads 550 nm and 1/60 s as the very numbers that a program writes', () => {
    expect(readQuantity('wavelength', '550 nm')).toEqual({ kind: 'value', value: 0.00055 });
    expect(readQuantity('exposure-time', '1/60 s')).toEqual({ kind: 'value', value: 1 / 60 });
  });

  it('keeps f/11 as the mark that was typed, not the value behind it', () => {
    expect(readQuantity('f-number', 'f/11')).toEqual({ kind: 'value', value: 11 });
  });

  it.each(['', ' ', '\u202f\t', '\u200b'])('takes %j for nothing typed', (text) => {
    expect(readQuantity('extension', text)).toEqual({ kind: 'blank' });
  });

  it.each<[text: string, name: QuantityName, what: string]>([
    ['twelve', 'focal-length', '“twelve” cannot be used: it is not a number'],
    ['Infinity', 'focal-length', '“Infinity” cannot be used: it is not a number'],
    ['∞', 'subject-distance', '“∞” cannot be used: it is not a number'],
    ['NaN', 'focal-length', '“NaN” cannot be used: it is not a number'],
    ['0x10', 'focal-length', '“0x10” cannot be used: “x10” is not a unit the page knows'],
    ['1e3', 'focal-length', '“1e3” cannot be used: “e3” is not a unit the page knows'],
    ['12 q', 'focal-length', '“12 q” cannot be used: “q” is not a unit the page knows'],
    ['12 constructor', 'focal-length', '“12 constructor” cannot be used: “constructor” is not a unit the page knows'],
    ['12 s', 'focal-length', '“12 s” cannot be used: it is a time'],
    ['12 dpt', 'focal-length', '“12 dpt” cannot be used: it is a power'],
    ['f/11', 'focal-length', '“f/11” cannot be used: it is an f-number'],
    ['f8', 'focal-length', '“f8” cannot be used: it is an f-number'],
    ['GN 32', 'iso', '“GN 32” cannot be used: it is not a number'],
    ['5th', 'exposure-time', '“5th” cannot be used: “th” is not a unit the page knows'],
    ['36x24', 'image-width', '“36x24” cannot be used: “x24” is not a unit the page knows'],
    ['like life size', 'magnification', '“like life size” cannot be used: it is not a number'],
    ['1:2', 'focal-length', '“1:2” cannot be used: it is a ratio'],
    ['x2', 'focal-length', '“x2” cannot be used: it is a ratio'],
    ['1:2', 'contrast', '“1:2” cannot be used: it is a ratio'],
    ['8 mm', 'f-number', '“8 mm” cannot be used: it is a length'],
    ['1/8', 'f-number', '“1/8” cannot be used: it is a fraction'],
    ['8:1', 'f-number', '“8:1” cannot be used: it is a ratio'],
    ['100 px/mm', 'spatial-frequency', '“100 px/mm” cannot be used: it is a number of pixels per millimetre'],
    ['2.5', 'frame-count', '“2.5” cannot be used: it is not a whole number'],
    ['1/0', 'exposure-time', '“1/0” cannot be used: it is too large to work with'],
    ['1,500', 'exposure-time', '“1,500” cannot be used: it may mean 1500 or 1.5. Write the one you mean'],
    [
      '1.500,5',
      'illuminance',
      '“1.500,5” cannot be used: it has more than one point or comma. Write thousands without any',
    ],
  ])('cannot read %j as %s, and says why', (text, name, what) => {
    const reading = readQuantity(name, text);
    expect(reading.kind).toBe('unreadable');
    expect(message(reading)).toContain(`${what}. `);
    expect(message(reading).toLowerCase()).toContain(`${quantityOf(name).name.toLowerCase()} takes a`);
  });

  it('says in full what was wrong and what is accepted', () => {
    expect(message(readQuantity('focal-length', '12 s'))).toBe(
      '“12 s” cannot be used: it is a time. Focal length takes a length from 4 mm to 800 mm, for example 50 mm or 2 in.',
    );
  });

  it('says on which side of the range something is, and writes f-number small at a sentence’s start', () => {
    expect(message(readQuantity('focal-length', '1 mm'))).toContain('“1 mm” is less than the page allows.');
    expect(message(readQuantity('f-number', 'f/90'))).toContain(
      '“f/90” is more than the page allows. The f-number takes',
    );
  });

  it('gives what is accepted apart, too', () => {
    const reading = readQuantity('f-number', 'wide open');
    expect(reading).toMatchObject({ expected: 'an f-number from f/0.95 to f/64, for example f/8' });
  });

  it('quotes foreign text only in part, and never half a character', () => {
    const words = message(readQuantity('focal-length', '𝔞'.repeat(1000)));
    expect(words).toContain(`“${'𝔞'.repeat(24)}…”`);
    expect(words.length).toBeLessThan(250);
  });
});

describe('what is out of range', () => {
  it('is named with its value and the range that would be accepted', () => {
    const reading = readQuantity('focal-length', '1.2 m');
    expect(reading).toMatchObject({ kind: 'out-of-range', value: 1200 });
    expect(message(reading)).toContain('“1.2 m” is more than the page allows. Focal length takes a length from 4 mm');
  });

  it('follows the range that is asked for', () => {
    expect(readQuantity('extension', '50', { least: 0, most: 36 }).kind).toBe('out-of-range');
    expect(readQuantity('extension', '500', { least: 0, most: 600 }).kind).toBe('value');
  });

  it('is taken for the end of the range where it prints like it', () => {
    const range = { least: 1, most: 43.2666 };
    expect(readQuantity('sensor-width', '43.3 mm', range)).toEqual({ kind: 'value', value: 43.2666 });
    expect(readQuantity('sensor-width', '43.4 mm', range).kind).toBe('out-of-range');
  });
});

describe('a number as books, barrels and cameras print it', () => {
  it.each<[text: string, name: QuantityName, meant: string]>([
    ['0.03', 'circle-of-confusion', '30 µm'],
    ['0,02', 'circle-of-confusion', '20 µm'],
    ['0.0043', 'pixel-pitch', '4.3 µm'],
    ['0.55', 'wavelength', '550 nm'],
    ['0.00055', 'wavelength', '550 nm'],
    ['0.29', 'focus-distance', '290 mm'],
    ['0.05', 'focal-length', '50 mm'],
    ['0.02', 'airy-diameter', '20 µm'],
  ])('is not taken for %j of the field’s own unit, but asked about: %s', (text, name, meant) => {
    expect(message(readQuantity(name, text))).toContain(`Did you mean ${meant}?`);
    expect(readQuantity(name, meant).kind).toBe('value');
  });

  it.each<[text: string, name: QuantityName, question: string]>([
    ['0.45', 'contrast', '“0.45” is taken as 0.45 %. Did you mean 45 %?'],
    ['0.3', 'overlap', '“0.3” is taken as 0.3 %. Did you mean 30 %?'],
    ['125', 'exposure-time', '“125” is taken as 125 s. Did you mean 1/125 s?'],
  ])('is taken as it stands where it may be meant so, and asked about: %j for %s', (text, name, question) => {
    const reading = readQuantity(name, text);
    expect(reading.kind).toBe('value');
    expect('asks' in reading && reading.asks?.replaceAll('\u202f', ' ')).toBe(question);
  });

  it.each<[text: string, name: QuantityName]>([
    ['0.03 mm', 'circle-of-confusion'],
    ['30', 'circle-of-confusion'],
    ['0.45 %', 'contrast'],
    ['45', 'contrast'],
    ['0', 'overlap'],
    ['125 s', 'exposure-time'],
    ['1/125', 'exposure-time'],
    ['30', 'exposure-time'],
    ['50', 'focal-length'],
    ['0.5', 'magnification'],
  ])('is not asked about where %j for %s is clear', (text, name) => {
    expect(readQuantity(name, text)).not.toHaveProperty('asks');
    expect(readQuantity(name, text).kind).toBe('value');
  });

  it('is not asked about where the other meaning is out of range as well', () => {
    expect(message(readQuantity('circle-of-confusion', '0.0000001'))).not.toContain('Did you mean');
    expect(message(readQuantity('focal-length', '-3'))).not.toContain('Did you mean');
  });
});
