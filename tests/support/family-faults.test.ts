import { describe, expect, it } from 'vitest';
import type { NumberFamily } from '#core/practice/family.ts';
import { families, ringsOnALens, stopsLost, whichLensGainsMore } from './example-families.ts';
import { familyFaults } from './family-faults.ts';

describe('familyFaults', () => {
  it.each(families)('finds none in $id', (family) => {
    expect(familyFaults(family)).toEqual([]);
  });

  const [own] = ringsOnALens.mistakes;
  const asked: readonly [what: string, change: Partial<NumberFamily>, fault: RegExp][] = [
    ['an id with a space', { id: 'rings on' }, /“rings on” is no id/],
    ['a missing hint', { hint: ' ' }, /has no hint/],
    ['two mistakes only', { mistakes: ringsOnALens.mistakes.slice(0, 2) }, /recognises 2 mistakes/],
    [
      'a mistake that no numbers lead to',
      { mistakes: [...ringsOnALens.mistakes, { id: 'never', value: () => undefined, because: 'x' }] },
      /leads to never in none of 200 problems/,
    ],
    ['a mistake listed twice', { mistakes: [own!, own!] }, /two mistakes of one name/],
    [
      'a mistake within the tolerance',
      { mistakes: [own!, { ...own!, id: 'twin', value: ringsOnALens.answer }] },
      /too near/,
    ],
    ['a tolerance so wide that mistakes pass', { tolerance: { relative: 0.9, because: 'x' } }, /too near/],
    ['a missing working', { working: [] }, /has no working/],
    [
      'a working that stops before the answer',
      { working: ringsOnALens.working.slice(0, 1) },
      /ends its working with another number/,
    ],
    ['a working that lacks a number', { working: ringsOnALens.working.slice(1) }, /extension is undefined/],
    ['a step that says nothing', { working: [...ringsOnALens.working, {}] }, /has an empty step/],
    ['a question about what is not given', { question: 'And {iso}?' }, /\{iso\} is not known/],
    [
      'a tolerance finer than what is printed',
      { tolerance: { relative: 1e-6, because: 'x' } },
      /does not accept its answer as it is printed/,
    ],
    [
      'a tolerance finer than a mistake is printed',
      { tolerance: { relative: 1e-6, because: 'x' } },
      /does not recognise \S+ as it is typed/,
    ],
    [
      'a number under a name that is no quantity',
      { givens: (draw) => ({ ...ringsOnALens.givens(draw), lenght: 3 }) },
      /gives lenght/,
    ],
    [
      'a given that is rounded in print',
      {
        givens: (draw) => ({ ...ringsOnALens.givens(draw), 'focal-length': 50.44 }),
        tolerance: { relative: 5e-4, because: 'x' },
      },
      /cannot be solved with its numbers as printed/,
    ],
    [
      'numbers that never change',
      {
        givens: () =>
          ringsOnALens.givens({ pick: (list) => list[0]!, between: (least) => least, logStep: (least) => least }),
      },
      /only 1 different problems/,
    ],
  ];

  it.each(asked)('finds %s', (_, change, fault) => {
    expect(familyFaults({ ...ringsOnALens, ...change }).join('\n')).toMatch(fault);
  });

  it('finds an answer that a text gives away before the working is asked for', () => {
    const numbers = {
      ...ringsOnALens,
      answer: () => 0.4,
      working: [],
      mistakes: [...ringsOnALens.mistakes, { id: 'told', value: () => 3, because: 'It is 0.4×, not 10.4× or 0.45.' }],
    };
    expect(familyFaults(numbers)).toContain('gives the answer away where it speaks of told (number 1)');
    expect(familyFaults({ ...numbers, mistakes: [], hint: 'Not 10.4× nor 0.4.' }).join()).not.toMatch(
      /gives the answer/,
    );
    const options = { long: 'The long lens', short: 'The short lens' };
    const { question, mistakes, ...choice } = { ...whichLensGainsMore, question: 'Which?', options };
    const told = { ...mistakes[0]!, because: 'The ring is as long on the short one.' };
    expect(familyFaults({ ...choice, question, mistakes: [told] }).join()).toMatch(/gives the answer away where/);
    expect(familyFaults({ ...choice, question: 'A short lens?', mistakes: [told] }).join()).not.toMatch(/gives the/);
  });

  it('finds an option that nobody hears anything of', () => {
    const mistakes = whichLensGainsMore.mistakes.filter(({ id }) => id !== 'ring-alone');
    const faults = familyFaults({ ...whichLensGainsMore, mistakes });
    expect(faults.join()).toMatch(/has no words for whoever chooses same/);
  });

  it('names each fault once, with the first problem that shows it', () => {
    const faults = familyFaults({ ...stopsLost, working: stopsLost.working.slice(0, 1) });
    expect(faults).toEqual(['ends its working with another number (number 1)']);
  });
});
