import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { textWidth } from '#site/figures/dimension/text-width.ts';

/** One line with its bar. */
export interface Bar {
  readonly key: string;
  readonly name: string;
  /** Of the longest possible bar; 0 to 1. */
  readonly share: number;
  /** What is said of it, the fullest first. */
  readonly texts: readonly string[];
}

/** Lines one under the other, each a name, words at the right where they fit, and a bar below both. */
export function barsLayout(bars: readonly Bar[], { width, height, text, small }: SheetBox) {
  const side = 0.8 * text;
  const top = 0.5 * text;
  const each = Math.min(4 * text, (height - top - 2.4 * small) / Math.max(1, bars.length));
  const size = Math.min(text, 0.5 * each);
  const thick = Math.max(3, Math.min(0.6 * text, each - 1.75 * size));
  return bars.map((bar, index) => {
    const y = top + index * each;
    const left = width - 2 * side - textWidth(bar.name, size) - size;
    return {
      ...bar,
      words: bar.texts.find((words) => textWidth(words, size) <= left),
      size,
      x: side,
      right: width - side,
      y,
      each,
      baseline: y + 1.1 * size,
      barTop: y + 1.4 * size,
      thick,
      long: Math.max(0, Math.min(1, bar.share)) * (width - 2 * side),
    };
  });
}
