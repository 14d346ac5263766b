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
    ['24 MP on 23.5 x 15.6 mm', 'sensor-width 23.5; sensor-height 15.6; pixel-pitch 0.00390832'],
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
    expect(readStatement('160/0.17').unread[0]?.because).toContain('tube and cover glass');
    expect(readStatement('30 steps').unread[0]?.because).toContain('one frame more');
    expect(readStatement('at f/4 and at f/8').unread[0]?.because).toContain('second of its kind');
    expect(readStatement('APS-C, 60 mm').unread[0]?.because).toContain('width and height');
  });

  it('keeps the words of a number, the number, and what else these words and it could be', () => {
    const [converter, long] = readStatement('2x converter 40 mm long').numbers;
    expect(converter).toMatchObject({ written: '2× converter', number: '2×', isSaid: true, alsoNamed: [] });
    expect(long).toMatchObject({ quantity: 'converter-length', written: '40 mm long', alsoNamed: ['subject-width'] });
    const [flash, away] = readStatement('guide number 12, 300 mm away').numbers;
    expect(flash?.quantity).toBe('guide-number');
    expect(away).toMatchObject({ quantity: 'flash-distance', value: 300, alsoNamed: ['working-distance'] });
    expect(readStatement('300 mm away').numbers[0]).toMatchObject({ quantity: 'working-distance', isSaid: true });
    expect(readStatement('36 x 24').numbers).toMatchObject([
      { quantity: 'sensor-width', isSaid: false },
      { quantity: 'sensor-height', isSaid: true },
    ]);
    expect(readStatement('1000 x 2000 mm').numbers).toMatchObject([
      { quantity: 'field-width', value: 1000 },
      { quantity: 'field-height', value: 2000 },
    ]);
  });

  it('adds rings and close-up lenses, and takes one of anything else', () => {
    expect(readStatement('ring 12 mm, tube 20 mm').numbers).toMatchObject([
      { value: 32, written: 'ring 12 mm + tube 20 mm', number: expect.stringMatching(/^32.mm$/) as string },
    ]);
    expect(readStatement('close-up lenses +2 and +4 on a 200 mm lens').numbers.map(({ value }) => value)).toEqual([
      6, 200,
    ]);
    const twice = readStatement('w 100 and w 200');
    expect(twice.numbers.map(({ value }) => value)).toEqual([100]);
    expect(twice.unread).toEqual([
      { written: 'w 200', because: '“w 200” is the second of its kind: only one can be used.' },
    ]);
    // The wider of two openings is what the lens has at most, if it is said first.
    expect(read('aperture f/2.8, aperture f/8')).toBe('max-aperture 2.8; f-number 8');
    expect(read('aperture f/8, aperture f/2.8')).toBe('f-number 8; unread aperture f/2.8');
  });

  it.each([
    ['two 10 dpt', 'close-up-power 20; setup close-up lens'],
    ['2 +3,5 diopter', 'close-up-power 7; setup close-up lens'],
    ['two 3dpt close-up lenses', 'close-up-power 6; setup close-up lens'],
    ['two 2 dioptres', 'close-up-power 4; setup close-up lens'],
    ['two rings of 12.5 mm', 'extension 25'],
    ['two rings of 12mm', 'extension 24'],
    ['close-up lens, 100 mm, +3', 'focal-length 100?; close-up-power 3; setup close-up lens'],
    ['+3', 'unread +3'],
    [
      '28 mm reversed, 24 mm f/8',
      'reversed-lens.focal-length 28?; main-lens.focal-length 24; f-number 8; setup reversed lens',
    ],
  ])(
    'adds what there are two of, and takes a sign for a close-up lens where one is spoken of: %s',
    (text, expected) => {
      expect(read(text)).toBe(expected);
    },
  );

  it.each([
    [
      'own magnification 0.2, 100 mm lens at 1:2 with 36 mm rings',
      'focus-magnification 0.2; focal-length 100; magnification 0.5?; extension 36',
    ],
    ['100 mm lens at f/8, 1:2, 36 mm rings', 'focal-length 100; f-number 8; magnification 0.5?; extension 36'],
    ['closest focus 0.3 m, 1:2', 'focus-distance 300; magnification 0.5?'],
    ['closest focus to 1:2', 'focus-magnification 0.5?'],
    ['nearest focusing at 0.5x', 'focus-magnification 0.5?'],
    ['100mm at 1:2, 20 mm ring', 'focal-length 100?; focus-magnification 0.5?; extension 20'],
    ['lens focused at 1:2, 20 mm ring', 'focus-magnification 0.5?; extension 20'],
    ['focussed to 1:2, 20 mm ring', 'focus-magnification 0.5?; extension 20'],
    ['prime at 1:4, ring 12 mm', 'focus-magnification 0.25?; extension 12'],
  ])('knows by what stands before it whether a lens by itself gives it: %s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  it.each([
    ['wavelength 550', 'wavelength 0.00055'],
    ['wavelength 0.00055', 'wavelength 0.00055'],
    ['pixel pitch 4', 'pixel-pitch 0.004'],
    ['pixel pitch 0.004', 'pixel-pitch 0.004'],
    ['2x converter, 300 mm long', 'converter-factor 2; subject-width 300'],
    ['50 mm lens 40 mm long', 'focal-length 50; subject-width 40'],
    ['gn 12, far away 300 mm', 'guide-number 12; working-distance 300; setup far subject'],
    ['a wall 300 mm away, gn 12', 'working-distance 300; guide-number 12'],
    ['36 x 24 mm, 23 x 15 mm', 'sensor-width 36?; sensor-height 24; unread 23 mm; unread 15 mm'],
    ['n = 1.5, n', 'refractive-index 1.5; asks frame-count'],
  ])('takes a bare number in the unit of screens or of books, and a word where it stands: %s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  it('tells what a lens gives by itself from what it gives with something on it', () => {
    expect(read('100 mm lens at 1:2')).toBe('focal-length 100; magnification 0.5?');
    expect(read('100 mm lens at 1:2 with 36 mm rings')).toBe(
      'focal-length 100; focus-magnification 0.5?; extension 36',
    );
    expect(read('magnification 1:2 with 36 mm rings')).toBe('magnification 0.5; extension 36');
    expect(readStatement('closest focus at 1:2').numbers).toMatchObject([
      { quantity: 'focus-magnification', others: ['magnification'] },
    ]);
    expect(read('closest focus 0.15x, closest focus?')).toBe('focus-magnification 0.15?');
    expect(read('closest focus 0.3 m')).toBe('focus-distance 300');
  });

  it('asks of a size that is none, unless another says it', () => {
    expect(readStatement('APS-C').unread).toMatchObject([{ written: 'APS-C', quantity: 'sensor-width' }]);
    expect(read('APS-C, crop factor 1.5')).toBe('crop-factor 1.5');
    expect(read('full frame')).toBe('sensor-width 36; sensor-height 24');
    expect(readStatement('m 1000').unread).toMatchObject([{ written: 'm 1000', quantity: 'magnification' }]);
    expect(readStatement('0.72').unread[0]).not.toHaveProperty('quantity');
  });

  it('asks for what is named and has no number', () => {
    expect(read('what magnification?')).toBe('asks magnification');
    expect(read('magnification, m 0.5')).toBe('magnification 0.5');
    expect(read('m 1000, magnification')).toBe('unread m 1000');
    expect(read('n 1.5, magnification')).toContain('asks magnification');
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
