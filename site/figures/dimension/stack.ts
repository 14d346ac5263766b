import type { Box } from '../sheet/boxes.ts';
import { ascent, descent, textWidth } from './text-width.ts';

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
  /** The label stands over the line because there is room neither between the arrows nor beside them. */
  readonly isOver: boolean;
  /** Middle of the label. */
  readonly labelX: number;
  readonly labelWidth: number;
}

const arrow = 9;

/** How far one level lies outside the next, in text sizes: a label over its line clears the line before. */
export const levelPitch = 1.62;

/** The box of a placed label, *y* being its level's line. */
export function dimensionLabelBox(
  { labelX, labelWidth, fitsInside, isOver }: PlacedSpan,
  y: number,
  text: number,
): Box {
  const baseline = dimensionBaseline(fitsInside || isOver, y, text);
  return {
    left: labelX - labelWidth / 2 + 4,
    right: labelX + labelWidth / 2 - 4,
    top: baseline - ascent * text,
    bottom: baseline + descent * text,
  };
}

/** Over the line, or on it where it stands beside the arrows. */
export function dimensionBaseline(isOverLine: boolean, y: number, text: number): number {
  return isOverLine ? y - 0.3 * text : y + 0.35 * text;
}

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
  // Neither beside it nor between its arrows: over it, as far inside the sheet as need be.
  const isOver = !fitsInside && !hasRoom.left && !hasRoom.right;
  const isLeft = span.beside === 'left' ? hasRoom.left : !hasRoom.right;
  const middle = (left + right) / 2;
  const inside = Math.min(width - labelWidth / 2, Math.max(labelWidth / 2, middle));
  const labelX = fitsInside ? middle : isOver ? inside : isLeft ? besideLeft : besideRight;
  return { ...span, left, right, level: 0, fitsInside, isOver, labelX, labelWidth };
}
