import type { StageStep } from '#site/stage/step.ts';

const spider = { subject: 'jumping-spider', as: 'stack' };

export const stage: readonly StageStep[] = [
  {
    question: 'Three lenses, a zoom, three rings, two close-up lenses: how many chains for one camera?',
    options: ['Fewer than 20', 'About 50', 'More than 100'],
    holds: 2,
    caption: '{chain-count}, the zoom at either end counted as a lens. Each is a line in the figure.',
    from: { 'chain-rank': 9 },
    set: {},
  },
  {
    question: 'A butterfly keeps 200 mm away. What do most of the chains fail by: too near, or too large?',
    options: ['Too near', 'Too large'],
    holds: 1,
    caption:
      'Too large: {too-large.chain-count}. Rings keep them from focusing far enough away. {suited.chain-count} suit.',
    from: { 'nearest.working-distance': 0 },
    set: {},
    sheet: 'rest',
    withheld: ['chain-count'],
  },
  {
    question: 'Three chains of different parts: do they need different light?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'The same light: {best.effective-f-number}. Size and depth decide how far to close, not the parts.',
    from: {},
    set: { 'nearest.working-distance': 150 },
    sheet: 'beside',
    withheld: ['field-width'],
  },
  {
    question: 'It lets us come to 60 mm. Do more chains suit, or others?',
    options: ['More', 'Others', 'Fewer'],
    holds: 0,
    caption: 'More: {suited.chain-count}. Every millimetre of room that is asked for costs chains, never adds one.',
    from: {},
    set: { 'nearest.working-distance': 60 },
  },
  {
    question: 'A jumping spider, in a stack, by flash. How many of the chains suit?',
    options: ['Most', 'Half of them', 'One'],
    holds: 2,
    caption: 'Only {suited.chain-count}, with every ring on it. Too small: {too-small.chain-count}.',
    from: { 'nearest.working-distance': 60 },
    set: spider,
  },
  {
    question: 'Which part would help the spider most?',
    options: ['A second 36 mm ring', 'The ×2 converter'],
    holds: 1,
    caption:
      'The converter: {gain.merit}, and {gain.chain-count} chains more. A part is worth what the best chain gains.',
    from: { ...spider, part: 'second-ring-36' },
    set: { ...spider, part: 'converter-2' },
    sheet: 'part',
    withheld: ['merit'],
  },
  {
    question: 'And the dearest lens on the list, 520 points?',
    options: ['It gains more', 'It gains less', 'It gains nothing'],
    holds: 2,
    caption: 'It gains {gain.merit}. For this spider it reaches no size that was not there before.',
    from: { ...spider, part: 'second-ring-36' },
    set: { ...spider, part: 'lens-200' },
    sheet: 'part',
    withheld: ['merit'],
  },
];
