import { fireEvent, render } from '@testing-library/svelte';
import { tick } from 'svelte';
import { describe, expect, it } from 'vitest';
import { focusDistanceFormula } from '#core/gaussian/focus-distance.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { filmReflectanceFormula } from '#core/light/film-reflectance.formula.ts';
import { spatialFrequencyOfCircleFormula } from '#core/wave/spatial-frequency-of-circle.formula.ts';
import { stackTravelFormula } from '#core/stack/stack-travel.formula.ts';
import type { FormulaLine } from '#site/state/formula-line.ts';
import { ownCircle } from '#site/state/kept-circle.ts';
import FillIn from './FillIn.svelte';
import type { SheetSolvable } from './filling.svelte.ts';

const effective: SheetSolvable = { id: 'effective-f-number', ...effectiveFNumberFormula };
const focus: SheetSolvable = { id: 'focus-distance', ...focusDistanceFormula };

/** The fields of a formula, what they answer, and what they tell the page. */
async function filled(formula: SheetSolvable, search = '') {
  let line: FormulaLine | undefined;
  let address = '';
  const equation = document.createElement('div');
  const { container } = render(FillIn, {
    formula,
    search,
    equation,
    show: (now: FormulaLine) => (line = now),
    settle: (now: string) => (address = now),
  });
  await tick();
  const one = <Wanted extends Element>(selector: string) => container.querySelector<Wanted>(selector)!;
  const texts = (selector: string) =>
    [...container.querySelectorAll(selector)].map(({ textContent }) => textContent.replaceAll('\u202f', ' ').trim());
  const field = (name: string) => one<HTMLInputElement>(`input[name="${name}"]`);
  return {
    container,
    equation,
    field,
    answers: () => texts('output'),
    words: () => texts('.words').join(' '),
    notices: () => texts('.notice'),
    line: () => line!,
    address: () => address,
    press: async (name: string) => {
      const button = [...container.querySelectorAll('button')].find(({ textContent }) => textContent === name)!;
      await fireEvent.click(button);
    },
    type: async (name: string, text: string) => {
      await fireEvent.input(field(name), { target: { value: text } });
      await fireEvent.change(field(name));
    },
    ask: async (name: string) => {
      await fireEvent.change(one('select'), { target: { value: name } });
    },
  };
}

const numbersIn = (line: FormulaLine) =>
  'texts' in line
    ? Object.fromEntries(Object.entries(line.texts).map(([name, text]) => [name, text.replaceAll('\u2009', ' ')]))
    : line.words;

describe('a formula that is filled in', () => {
  it('begins with an answer, its numbers in the equation, which stands below it', async () => {
    const { answers, line, equation, container } = await filled(effective);
    expect(answers()).toEqual(['f/11.6']);
    expect(numbersIn(line())).toMatchObject({ 'f-number': '8', magnification: '0.5', 'pupil-magnification': '1.1' });
    expect(container.contains(equation)).toBe(true);
  });

  it('takes what people type, with units, at once', async () => {
    const { type, answers, field } = await filled(focus);
    await type('focal-length', '5 cm');
    await type('magnification', '1:2');
    await type('principal-separation', '0');
    expect(answers()).toEqual(['225 mm']);
    expect(field('focal-length').value).toBe('5 cm');
  });

  it('answers for another letter, and keeps the answer so far as what is given', async () => {
    const { type, ask, answers, field } = await filled(effective);
    await type('pupil-magnification', '1');
    await type('magnification', '1');
    expect(answers()).toEqual(['f/16']);
    await ask('magnification');
    expect(field('effective-f-number').value).toBe('f/16');
    expect(field('magnification')).toBeNull();
    expect(answers()).toEqual(['1×']);
    await type('effective-f-number', '24');
    expect(answers()).toEqual(['2×']);
  });

  it('has all the answers, and puts the one into the equation that is asked for', async () => {
    const { answers, line, container } = await filled(
      focus,
      '?formula=focus-distance&ask=magnification&focus-distance=225&focal-length=50&principal-separation=0',
    );
    expect(answers()).toEqual(['0.5×', '2×']);
    expect(numbersIn(line())).toMatchObject({ magnification: '0.5', 'focus-distance': '225 mm' });
    await fireEvent.click(container.querySelectorAll('[aria-pressed]')[1]!);
    expect(numbersIn(line())).toMatchObject({ magnification: '2', 'focus-distance': '225 mm' });
  });

  it('folds many answers and has them all', async () => {
    const film: SheetSolvable = { id: 'film-reflectance', ...filmReflectanceFormula };
    const { answers, container } = await filled(
      film,
      '?formula=film-reflectance&ask=film-thickness&film-reflectance=0.05',
    );
    expect(answers().length).toBeGreaterThan(20);
    expect(container.querySelector('summary')!.textContent).toBe(`And ${answers().length - 6} more`);
  });

  it('says what is wrong with what is typed, keeps it, and answers again when it is mended', async () => {
    const { type, notices, answers, words, field, line } = await filled(effective);
    for (const nonsense of ['abc', '12 mm', '-3', '1e999', '']) {
      await type('f-number', nonsense);
      expect(notices(), nonsense).toHaveLength(1);
      expect(notices()[0]).toMatch(/takes an f-number from f\/0\.95 to f\/64/);
      expect(field('f-number').value).toBe(nonsense);
      expect(field('f-number').getAttribute('aria-invalid')).toBe('true');
      expect(answers()).toEqual([]);
      expect(words()).toBe('Fill in the f-number, and the answer follows.');
      expect(numbersIn(line())).toBe('No numbers here until there is an answer.');
    }
    await type('f-number', '8');
    expect(notices()).toEqual([]);
    expect(answers()).toEqual(['f/11.6']);
  });

  it('says why there is no answer, and what there could be', async () => {
    const { type, ask, words, answers } = await filled(focus);
    await ask('magnification');
    await type('focus-distance', '100 mm');
    expect(answers()).toEqual([]);
    expect(words()).toMatch(/^Focus distance cannot be 100 mm: with these numbers it is from 196 mm to/);
  });

  it('says that a count comes out between two', async () => {
    const travel: SheetSolvable = { id: 'stack-travel', ...stackTravelFormula };
    const { words, answers } = await filled(travel, '?ask=frame-count&stack-travel=3.3&frame-step=0.5');
    expect(answers()).toEqual(['7.6']);
    expect(words()).toMatch(/^No whole number fits exactly/);
  });

  it('writes all of it into the address, from which it comes back', async () => {
    const { type, ask, address, answers } = await filled(effective);
    await type('f-number', 'f/5.6');
    await ask('magnification');
    await type('effective-f-number', '11');
    const again = await filled(effective, address());
    expect(again.answers()).toEqual(answers());
    expect(again.field('f-number').value).toBe('f/5.6');
    expect(again.address()).toBe(address());
  });

  it('names what an address asks for in vain, and shows the usual', async () => {
    const { notices, answers } = await filled(effective, '?ask=extension&f-number=NaN&magnification=1e9');
    expect(notices()).toHaveLength(3);
    expect(notices().join(' ')).toMatch(/f-number.*magnification/s);
    expect(answers()).toEqual(['f/11.6']);
  });

  it('begins with the circle of confusion that the reader has set elsewhere', async () => {
    const circle: SheetSolvable = { id: 'spatial-frequency-of-circle', ...spatialFrequencyOfCircleFormula };
    ownCircle.write(0.025);
    expect((await filled(circle)).answers()).toEqual(['20 lp/mm']);
    localStorage.clear();
    expect((await filled(circle)).answers()).toEqual(['25 lp/mm']);
  });

  it('starts anew', async () => {
    const { type, ask, press, answers } = await filled(effective);
    await ask('f-number');
    await type('magnification', '3');
    await press('Start anew');
    expect(answers()).toEqual(['f/11.6']);
  });
});
