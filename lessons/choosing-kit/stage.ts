import type { StageStep } from '#site/stage/step.ts';

const spider = { subject: 'jumping-spider', as: 'stack' };

export const stage: readonly StageStep[] = [
  {
    id: 'how-many',
    question: 'Three lenses, a zoom, three rings, two close-up lenses: ten chains, forty, or over a hundred?',
    options: ['Ten', 'Forty', 'Over a hundred'],
    holds: 2,
    caption: '{chain-count}, the zoom at either end counted as a lens. Each is a line in the figure.',
    from: { 'chain-rank': 9 },
    set: {},
    withheld: ['chain-count'],
  },
  {
    id: 'butterfly',
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
    id: 'same-light',
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
    id: 'nearer',
    question: 'It lets us come to 60 mm. Do more chains suit, or others?',
    options: ['More', 'Others', 'Fewer'],
    holds: 0,
    caption: 'More: {suited.chain-count}. Asking for more room can cost chains, and never adds one.',
    from: {},
    set: { 'nearest.working-distance': 60 },
  },
  {
    id: 'spider',
    question: 'A jumping spider, in a stack, by flash. Do all of the chains suit, half, or none?',
    options: ['All', 'Half', 'None'],
    holds: 2,
    caption: 'None: {too-small.chain-count} show it too small, the others nothing sharp, or only inside the lens.',
    from: { 'nearest.working-distance': 60 },
    set: spider,
  },
  {
    id: 'which-part',
    question: 'Which part would help the spider most?',
    options: ['A second 36 mm ring', 'The ×2 converter'],
    holds: 1,
    caption:
      'The converter opens {gain.chain-count} chains, the ring a few. Nothing suited before: a part is worth what it opens.',
    from: { ...spider, part: 'second-ring-36' },
    set: { ...spider, part: 'converter-2' },
    sheet: 'part',
    withheld: ['merit'],
  },
  {
    id: 'dearest',
    question: 'Back to the butterfly, from 150 mm away: does that converter gain it a stop, half, or nothing?',
    options: ['A stop', 'Half', 'Nothing'],
    holds: 2,
    caption:
      'It gains {gain.merit}: {gain.chain-count} chains more, and none better. Depth was the limit, and still is.',
    from: { part: 'second-ring-36', 'nearest.working-distance': 150 },
    set: { part: 'converter-2', 'nearest.working-distance': 150 },
    sheet: 'part',
    withheld: ['merit'],
  },
];
