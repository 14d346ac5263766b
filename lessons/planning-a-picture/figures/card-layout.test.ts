import { describe, expect, it } from 'vitest';
import { textWidth } from '#site/figures/dimension/text-width.ts';
import { cardSize, quarterCardSize, smallCardSize } from '#site/print/paper.ts';
import { cardLayout, wrapped } from './card-layout.ts';

const rows = Array.from({ length: 8 }, (_, at) => ({
  title: `${at + 1} Softness`,
  answer:
    at === 4 ? '38 frames, 0.0789 mm apart; only 16 of 38 done in 8 s' : '90 mm f/2.8 macro: lens + bellows, 145 mm',
  change: at === 4 ? 'take it smaller (question 1)' : undefined,
}));
const boxes = [
  { width: 360, height: 300, text: 13, small: 11 },
  { width: 1226, height: 512, text: 28.8, small: 28.8 },
  { width: 397, height: 559, text: 13, small: 11 },
];

describe('a card', () => {
  it.each(boxes)('keeps every line within $width pixels', (box) => {
    const { lines, right } = cardLayout('a jumping spider on a leaf', rows, '! Leave if it is disturbed', box);
    for (const { text, x, size } of lines) expect(x + textWidth(text, size)).toBeLessThanOrEqual(right + 1e-9);
  });

  it.each([cardSize, quarterCardSize, smallCardSize])('ends on its paper, $width wide', ({ box }) => {
    const { foot } = cardLayout('a jumping spider on a leaf', rows, '! Leave if it is disturbed', {
      ...box,
      onPaper: box === cardSize.box,
    });
    expect(foot).toBeLessThanOrEqual(box.height);
  });

  it('is set as large as its room allows', () => {
    const size = (height: number) => cardLayout('a', rows, '!', { ...boxes[2]!, height }).lines[0]!.size;
    expect(size(900)).toBeGreaterThan(size(400));
  });

  it('marks what fails, and says what to change', () => {
    const { lines } = cardLayout('a', rows, '!', boxes[1]!);
    const marked = lines.filter(({ kind }) => kind === 'change').map(({ text }) => text);
    expect(marked.join(' ')).toContain('→ take it smaller (question 1)');
  });
});

describe('words in lines', () => {
  it('lose none, and break between words alone', () => {
    const words = 'what hangs behind is in it upside down';
    expect(wrapped(words, 10, 90).join(' ')).toBe(words);
    expect(wrapped('unbreakable', 10, 5)).toEqual(['unbreakable']);
  });
});
