import { describe, expect, it } from 'vitest';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { by, families, formulas, made, rings, roads } from '#tests/support/few-roads.ts';
import { diagnose, workedOut, type Enquiry, type Grounds } from './diagnose.ts';

const rounding = { relative: 1e-9, because: 'rounding' };

const grounds: Grounds = { ...roads, families };
const onFilm = { given: { ...rings, 'sensor-width': 36 } };
const enquiry = (asks: QuantityName, value: number, more: Partial<Enquiry> = {}): Enquiry => ({
  asks,
  given: rings,
  answer: { value, halfFigure: 0 },
  ...more,
});

describe('a number that somebody found', () => {
  it('is right within two per cent, or within what was written, and says how far off it is', () => {
    expect(diagnose(enquiry('magnification', 0.72), grounds)).toMatchObject({ verdict: 'right', off: 0 });
    expect(diagnose(enquiry('magnification', 0.7343), grounds).verdict).toBe('right');
    expect(diagnose(enquiry('magnification', 0.7345), grounds).verdict).toBe('off');
    expect(diagnose(enquiry('magnification', 0.7057), grounds).verdict).toBe('right');
    expect(diagnose(enquiry('magnification', 0.7055), grounds).verdict).toBe('off');
    expect(diagnose(enquiry('magnification', 0.9), grounds)).toMatchObject({ off: closeTo(0.25, rounding) });
    const written = (value: number, halfFigure: number) =>
      diagnose(enquiry('magnification', value, { answer: { value, halfFigure } }), grounds).verdict;
    expect(written(0.7, 0.05)).toBe('right');
    expect(written(0.7, 0.005)).not.toBe('right');
    // One figure is taken to a twentieth all the same.
    expect(written(0.75, 0.05)).toBe('right');
    expect(written(0.76, 0.5)).not.toBe('right');
  });

  it('is right from a number found before that was not, where the rest was done rightly', () => {
    const before = { foundBefore: { magnification: 1 } } as const;
    expect(diagnose(enquiry('effective-f-number', 16, before), grounds)).toMatchObject({
      verdict: 'right',
      from: 'magnification',
    });
    expect(diagnose(enquiry('effective-f-number', 16.3, before), grounds).verdict).not.toBe('right');
    // What was found before is where one begins, not what is asked; and it may be any number on the way.
    const itself = { foundBefore: { 'effective-f-number': 16 } } as const;
    expect(diagnose(enquiry('effective-f-number', 16, itself), grounds).verdict).not.toBe('right');
    const disc = 2 * 1.2196698913 * 0.00055 * 16;
    expect(diagnose(enquiry('airy-diameter', disc, itself), grounds)).toMatchObject({ from: 'effective-f-number' });
    expect(diagnose(enquiry('effective-f-number', 16), grounds).verdict).not.toBe('right');
  });

  it('is right by another way, where another formula has it so', () => {
    const rough = by(
      'roughly',
      made('field-width', ['extension', 'wavelength', 'pupil-magnification'], ({ extension }) => extension! + 20),
    );
    const both = { ...grounds, formulas: [...formulas, rough] };
    const found = diagnose(enquiry('field-width', 56), both);
    expect(found).toMatchObject({
      verdict: 'right',
      working: { value: closeTo(50, rounding) },
      otherWay: { value: 56 },
    });
    expect(diagnose(enquiry('field-width', 57), both)).not.toHaveProperty('otherWay');
    expect(diagnose(enquiry('field-width', 50), both)).not.toHaveProperty('otherWay');
  });

  it('is a slip where one leads to it, the likelier kind first, in its words', () => {
    const upside = diagnose(enquiry('magnification', 1.389), grounds);
    expect(upside).toMatchObject({ verdict: 'slip', slip: { id: 'extension/rings/upside-down', tier: 1 } });
    if (upside.verdict === 'slip') expect(upside.because).toBe(upside.slip.because);
    expect(diagnose(enquiry('magnification', 1.44), grounds)).toMatchObject({ slip: { id: 'double' } });
    expect(diagnose(enquiry('field-width', 23.5 / 0.72, onFilm), grounds)).toMatchObject({
      slip: { id: 'sensor-23.5', because: 'That is right for a sensor 23.5\u202fmm wide; here it is 36\u202fmm.' },
    });
    // Written so roughly a number meets too many.
    const roughly = { ...onFilm, answer: { value: 33, halfFigure: 5 } };
    expect(diagnose(enquiry('field-width', 33, roughly), grounds).verdict).toBe('off');
  });
});

describe('a number that is right with another sensor than was taken', () => {
  it('cannot be told, be it written as roughly as it may, and is wrong where the sensor is given', () => {
    const cannot = {
      verdict: 'cannot',
      missing: ['sensor-width'],
      mayBeRight: true,
      because:
        'For the field width the sensor width must be known too. That is right for a sensor 23.5\u202fmm wide. Where nothing is said 36\u202fmm is taken.',
    };
    expect(diagnose(enquiry('field-width', 23.5 / 0.72), grounds)).toEqual(cannot);
    expect(diagnose(enquiry('field-width', 33, { answer: { value: 33, halfFigure: 5 } }), grounds)).toEqual(cannot);
    expect(diagnose(enquiry('field-width', 50), grounds).verdict).toBe('right');
    expect(diagnose(enquiry('field-width', 23.5 / 0.72, onFilm), grounds).verdict).toBe('slip');
    expect(diagnose(enquiry('field-width', 40), grounds).verdict).toBe('off');
  });
});

describe('of several slips', () => {
  const mistaken = (...values: readonly number[]): Grounds => {
    const [{ lesson, family }] = families as readonly [(typeof families)[number]];
    const mistakes = values.map((value) => ({ id: `to-${value}`, value: () => value, because: 'So.' }));
    return { ...grounds, families: [{ lesson, family: { ...family, mistakes } as never }] };
  };

  it('what the lessons know goes before what happens to any number, and the nearest before others', () => {
    // Twice 0.72 is 1.44 to the last figure, and all the same the lessons know better.
    expect(diagnose(enquiry('magnification', 1.44), mistaken(1.442))).toMatchObject({
      slip: { id: 'extension/rings/to-1.442' },
    });
    expect(diagnose(enquiry('magnification', 1.39), mistaken(1.386, 1.391, 1.395))).toMatchObject({
      slip: { id: 'extension/rings/to-1.391' },
    });
  });

  it('only the likelier kinds are thought of where all of them would explain any number', () => {
    const rough = (value: number) =>
      diagnose(enquiry('field-width', value, { ...onFilm, answer: { value, halfFigure: 0.049 * value } }), grounds);
    expect(rough(100)).toMatchObject({ slip: { id: 'double' } });
    expect(rough(23.5 / 0.72).verdict).toBe('off');
    const fine = (value: number) =>
      diagnose(enquiry('field-width', value, { ...onFilm, answer: { value, halfFigure: 0.01 * value } }), grounds);
    expect(fine(23.5 / 0.72)).toMatchObject({ slip: { id: 'sensor-23.5' } });
  });
});

describe('a question without an answer', () => {
  const told = (asks: QuantityName, given: Enquiry['given'], more: Partial<Grounds> = {}) => {
    const found = workedOut({ asks, given }, { ...grounds, ...more });
    if (!('because' in found)) throw new Error(`it is ${found.working.value}`);
    return found;
  };

  it('names what is missing, of the formula that needs least more', () => {
    const nearly = told('magnification', { extension: 36 });
    expect(nearly).toEqual({
      verdict: 'cannot',
      missing: ['focal-length'],
      because: 'For the magnification the focal length must be known too.',
    });
    expect(told('magnification', {}).because).toBe(
      'For the magnification the extension and the focal length must be known too.',
    );
    const shorter = by(
      'shorter',
      made('magnification', ['print-width'], () => 1),
    );
    expect(told('magnification', {}, { formulas: [...formulas, shorter] }).missing).toEqual(['print-width']);
    const unchecked = by('unchecked', { ...made('magnification', ['print-width'], () => 1), checkedBy: [] });
    expect(told('magnification', { extension: 36 }, { formulas: [...formulas, unchecked] }).missing).toEqual([
      'focal-length',
    ]);
    const forOthers = by(
      'others',
      made('magnification', ['print-width'], () => 1),
      { setUp: 'reversed lens' },
    );
    expect(told('magnification', {}, { formulas: [...formulas, forOthers] }).missing).toHaveLength(2);
  });

  it('is the same whether somebody found a number or not', () => {
    expect(diagnose(enquiry('guide-number', 12), grounds)).toEqual(told('guide-number', rings));
  });

  it('says that no formula gives it, and what a formula refuses', () => {
    expect(told('guide-number', rings)).toEqual({
      verdict: 'cannot',
      missing: [],
      because: 'No formula here gives the guide number.',
    });
    expect(told('field-width', { magnification: 0 })).toMatchObject({
      missing: [],
      because: expect.stringMatching(
        /^With these numbers there is no field width: the magnification would be .*, and it must be .*\.$/,
      ) as string,
    });
    const endless = by(
      'endless',
      made('flash-distance', ['f-number'], () => Infinity),
    );
    expect(told('flash-distance', rings, { formulas: [endless] }).because).toBe(
      'With these numbers there is no flash distance.',
    );
  });

  it('is not answered by the number that was given for it, nor by assumptions alone', () => {
    expect(told('magnification', { magnification: 0.5, 'focal-length': 50 }).missing).toEqual(['extension']);
    const hollow = by(
      'hollow',
      made('working-distance', ['wavelength'], () => 1),
    );
    expect(told('working-distance', rings, { formulas: [hollow] }).verdict).toBe('cannot');
    const assumed = by(
      'assumed',
      made('working-distance', ['f-number', 'wavelength', 'sensor-width'], () => 1),
    );
    expect(workedOut({ asks: 'working-distance', given: rings }, { ...grounds, formulas: [assumed] })).toMatchObject({
      working: { value: 1 },
    });
    const heavier = by(
      'heavier',
      made('working-distance', ['f-number', 'wavelength', 'sensor-width', 'pupil-magnification'], () => 1),
    );
    expect(told('working-distance', rings, { formulas: [heavier] }).verdict).toBe('cannot');
  });

  it('is not answered by a way that passes over a part of the chain', () => {
    const found = told('field-width', { ...rings, 'close-up-power': 3 });
    expect(found.because).toBe(
      'No formula here takes the power of the close-up lens together with all the rest. The bench works out any chain: put it together there.',
    );
    expect(workedOut({ asks: 'field-width', given: { magnification: 1, 'close-up-power': 3 } }, grounds)).toMatchObject(
      {
        working: { value: 36 },
      },
    );
  });

  it('is answered lastly by the steps kept for it, and by those for nothing else', () => {
    const kept = by(
      'kept',
      made('magnification', ['focal-length'], () => 0.1),
    );
    const lastly = [{ by: kept, answers: ['magnification', 'field-width'] as const }];
    const given = { 'focal-length': 50, 'f-number': 8 };
    const answer = (asks: QuantityName, from: Enquiry['given'] = given) => {
      const found = workedOut({ asks, given: from }, { ...grounds, lastly });
      return 'because' in found ? found.verdict : Number(found.working.value.toPrecision(6));
    };
    expect([answer('magnification'), answer('field-width'), answer('effective-f-number')]).toEqual([
      0.1,
      360,
      'cannot',
    ]);
    expect(answer('magnification', rings)).toBe(0.72);
  });
});
