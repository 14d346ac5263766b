import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { textWidth } from '#site/figures/dimension/text-width.ts';
import { codeRoom } from '#site/print/paper.ts';
import type { PlanRow } from './plan.ts';

export interface CardLine {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly kind: 'head' | 'title' | 'answer' | 'open' | 'change';
}

/** Words in lines that are no wider than so many pixels. */
export function wrapped(words: string, size: number, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, size) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Pixels: a card of one line a question, what fails marked, a line of caution at the foot; text as large as its room allows, never below *text* of a wall. */
export function cardLayout(head: string, rows: readonly PlanRow[], caution: string, box: SheetBox) {
  const { width, height, text, onPaper } = box;
  const [left, right] = [0.8 * text, width - 0.8 * text];
  const at = (size: number) => {
    const titleWidth = Math.max(...rows.map(({ title }) => textWidth(title, size))) + 0.6 * size;
    const lines: CardLine[] = [];
    let y = 1.5 * size;
    const put = (kind: CardLine['kind'], words: string, x: number) => {
      for (const line of wrapped(words, size, right - x)) {
        lines.push({ text: line, x, y, size, kind });
        y += 1.22 * size;
      }
    };
    put('head', head, left);
    y += 0.15 * size;
    for (const { title, answer, change, isOpen } of rows) {
      lines.push({ text: title, x: left, y, size, kind: 'title' });
      put(
        change !== undefined ? 'change' : isOpen ? 'open' : 'answer',
        change === undefined ? answer : `${answer} → ${change}`,
        left + titleWidth,
      );
    }
    y += 0.15 * size;
    put('head', caution, left);
    return { lines, foot: y };
  };
  const sizes = [2.2, 2, 1.8, 1.65, 1.5, 1.35, 1.2, 1.1, 1, 0.94, 0.88, 0.82].map((part) => part * text);
  const room = height - (onPaper ? codeRoom : 0.4 * text);
  const fitting = sizes.map(at).find(({ foot }) => foot <= room) ?? at(sizes.at(-1)!);
  return { ...fitting, left, right };
}
