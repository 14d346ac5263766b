import { textWidth } from '../dimension/text-width.ts';
import { around, type Box } from '../sheet/boxes.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Words that stand along a line, ending at its end. */
export interface AlongLine {
  readonly text: string;
  /** SVG transform of a text anchored at its end. */
  readonly place: string;
  /** What they take of the sheet, one box after the other. */
  readonly boxes: readonly Box[];
}

/** *text* just above the straight line from *from* to *to*, at its upper end. */
export function alongLine(text: string, from: Point, to: Point, size: number): AlongLine {
  const angle = Math.atan2(to.y - from.y, to.x - from.x);
  const lift = 0.3 * size;
  const end = { x: to.x - 6 + lift * Math.sin(angle), y: to.y - 6 * Math.tan(angle) - lift * Math.cos(angle) };
  const degrees = (180 / Math.PI) * angle;
  const half = 0.55 * size;
  const boxes = Array.from({ length: Math.ceil(textWidth(text, size) / half) }, (_, index) =>
    around(end.x - index * half * Math.cos(angle), end.y - half * 0.6 - index * half * Math.sin(angle), half),
  );
  return { text, place: `translate(${end.x.toFixed(1)} ${end.y.toFixed(1)}) rotate(${degrees.toFixed(1)})`, boxes };
}
