import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printQuantity } from '#core/quantity/print.ts';
import { quantityIds, quantityOf, vocabulary } from '#core/quantity/vocabulary.ts';
import { statements } from '#tests/support/statements.ts';
import { longestStatement } from './longest-statement.ts';
import { readStatement } from './statement.ts';
import { setUps } from './usual.ts';

/** What was read, in one line. */
function read(text: string): string {
  const { numbers, asked, setUps, unread } = readStatement(text);
  return [
    ...numbers.map(({ quantity, value, isSaid }) => `${quantity} ${Number(value.toPrecision(6))}${isSaid ? '' : '?'}`),
    ...asked.map((id) => `asks ${id}`),
    ...setUps.map((setUp) => `setup ${setUp}`),
    ...unread.map(({ written }) => `unread ${written}`),
  ].join('; ');
}

describe('a statement', () => {
  it('is one of more than 300 as people write them', () => {
    expect(statements.length).toBeGreaterThan(300);
  });

  it.each(statements)('is read: %s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  it.each([...new Set(Object.values(setUps))])('can speak of every set-up: %s', (setUp) => {
    expect(statements.some(([, expected]) => expected.includes(`setup ${setUp}`))).toBe(true);
  });

  it('says how finely each number is written', () => {
    const fine = (text: string) => readStatement(text).numbers[0]?.halfFigure;
    expect(fine('m 0.72')).toBeCloseTo(0.005, 12);
    expect(fine('w 119 mm')).toBeCloseTo(0.5, 12);
    expect(fine('L 0.31 m')).toBeCloseTo(5, 12);
    expect(fine('m 1:2')).toBe(0);
    expect(fine('shutter 1/125')).toBe(0);
  });

  it.each([
    ['24 MP', 'pixel-pitch 0.006'],
    ['24 MP on 23.5 x 15.6 mm', 'sensor-width 23.5?; sensor-height 15.6; pixel-pitch 0.00390832'],
    ['full frame, 24 megapixels', 'sensor-width 36; sensor-height 24; pixel-pitch 0.006'],
    ['6000 px, sensor 36 mm wide', 'sensor-width 36; pixel-pitch 0.006'],
    ['500 px, sensor width 10 mm', 'sensor-width 10; pixel-pitch 0.02'],
    ['499 px, sensor width 10 mm', 'edge-shift 499; sensor-width 10'],
    ['edge shift 600 px', 'edge-shift 600'],
    ['1200 px', 'pixel-pitch 0.03'],
    ['1199 px', 'unread 1199 px'],
    ['3456 MP', 'pixel-pitch 0.0005'],
    ['3457 MP', 'unread 3457 MP'],
    ['24 MP, pixel pitch 4 µm', 'pixel-pitch 0.004'],
    ['24 MP, 45 MP', 'pixel-pitch 0.006'],
  ])('takes pixels for how far they are apart, on 36 × 24 mm where no sensor is spoken of: %s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  it('says how wide pixels would be that there are none of', () => {
    expect(readStatement('1000 px').unread[0]?.because).toMatch(/36.µm/);
  });

  it('says what a refused number may be', () => {
    const [refused] = readStatement('magnification 1000').unread;
    expect(refused?.quantity).toBe('magnification');
    expect(refused?.because).toContain('Magnification takes');
    expect(readStatement('0.72').unread[0]?.because).toContain('Of what is it?');
    expect(readStatement('APS-C, 60 mm').unread[0]?.because).toContain('width and height');
  });

  it('offers what else an unnamed length could be', () => {
    const [lens] = readStatement('50 mm').numbers;
    expect(lens?.quantity).toBe('focal-length');
    expect(lens?.others).toContain('extension');
  });

  it('takes a blur for that of focus, and offers that of movement', () => {
    const [blur] = readStatement('blur 0.2 mm').numbers;
    expect(blur?.quantity).toBe('defocus-blur');
    expect(blur?.others).toContain('motion-blur');
    expect(readStatement('streak 0.2 mm').numbers[0]?.quantity).toBe('motion-blur');
  });

  it('reads what the pages print of any quantity under its name', () => {
    for (const id of quantityIds) {
      const { least, most, name } = quantityOf(id);
      const value = least > 0 ? Math.sqrt(least * most) : (least + most) / 2;
      const printed = printQuantity(id, value);
      const [number] = readStatement(`${name}: ${printed}`).numbers;
      expect(number, `${name}: ${printed}`).toBeDefined();
      expect(vocabulary[number!.quantity as typeof id].base, `${name}: ${printed}`).toBe(vocabulary[id].base);
    }
  });

  it('never throws, and gives finite numbers within the vocabulary’s ranges, whatever is written', () => {
    const pieces = fc.constantFrom(
      ...statements.map(([text]) => text),
      'm',
      'f/',
      ':',
      '×',
      '1e400',
      '½',
      'NaN',
      '\n',
      ' + ',
    );
    const texts = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc.array(pieces, { maxLength: 6 }).map((all) => all.join(' ')),
    );
    fc.assert(
      fc.property(texts, (text) => {
        for (const { quantity, value, halfFigure } of readStatement(text).numbers) {
          expect(Number.isFinite(value)).toBe(true);
          expect(halfFigure).toBeGreaterThanOrEqual(0);
          if (quantity !== 'extension' && quantity !== 'close-up-power') {
            expect(value).toBeLessThanOrEqual(quantityOf(quantity).most * (1 + 1e-9));
          }
        }
      }),
      { numRuns: 120 },
    );
  });

  it('reads the first 2000 characters of a flood', () => {
    const flood = '50 mm, '.repeat(100_000);
    expect(readStatement(flood).unread.length).toBeLessThan(longestStatement);
  });
});
