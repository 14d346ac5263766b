import { textWidth } from './text-width.ts';

/** A distance along the drawing, to be dimensioned. */
export interface Span {
  /** The quantity's id. */
  readonly name: string;
  readonly letter: string;
  /** The value with its unit, or words. */
  readonly value: string;
  /** Ends, in pixels, either order. */
  readonly from: number;
  readonly to: number;
  /** Where the witness lines start, pixels. */
  readonly fromY: number;
  readonly toY?: number;
  /** Where the value goes that does not fit between the arrows; to the right unless said otherwise, or where there is room. */
  readonly beside?: 'left' | 'right';
}

export interface PlacedSpan extends Span {
  readonly left: number;
  readonly right: number;
  /** 0 is next to the drawing; dimensions that would overlap step outwards. */
  readonly level: number;
  readonly fitsInside: boolean;
  /** Middle of the label. */
  readonly labelX: number;
  readonly labelWidth: number;
}

const arrow = 9;

/** Puts every dimension on the innermost level where neither its line nor its label meets another; short ones go inside. */
export function stackDimensions(spans: readonly Span[], text: number, width: number): PlacedSpan[] {
  const taken: { level: number; left: number; right: number }[] = [];
  return spans
    .map((span) => place(span, text, width))
    .sort((a, b) => a.right - a.left - (b.right - b.left))
    .map((span) => {
      const half = span.labelWidth / 2;
      const left = Math.min(span.left - (span.fitsInside ? 0 : 2 * arrow), span.labelX - half);
      const right = Math.max(span.right + (span.fitsInside ? 0 : 2 * arrow), span.labelX + half);
      let level = 0;
      while (taken.some((other) => other.level === level && other.left < right + 6 && other.right > left - 6)) level++;
      taken.push({ level, left, right });
      return { ...span, level };
    });
}

function place(span: Span, text: number, width: number): PlacedSpan {
  const left = Math.min(span.from, span.to);
  const right = Math.max(span.from, span.to);
  const labelWidth = textWidth(`${span.letter} ${span.value}`, text) + 8;
  const fitsInside = right - left >= labelWidth + 2 * arrow;
  const besideRight = right + 2 * arrow + labelWidth / 2 + 4;
  const besideLeft = left - 2 * arrow - labelWidth / 2 - 4;
  const hasRoom = { left: besideLeft >= labelWidth / 2, right: besideRight + labelWidth / 2 <= width };
  const isLeft = span.beside === 'left' ? hasRoom.left : !hasRoom.right;
  const beside = isLeft ? besideLeft : besideRight;
  const labelX = fitsInside ? (left + right) / 2 : beside;
  return { ...span, left, right, level: 0, fitsInside, labelX, labelWidth };
}
