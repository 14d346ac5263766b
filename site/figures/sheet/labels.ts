import { ascent, descent, textWidth } from '../dimension/text-width.ts';
import { isWithin, meet, type Box } from './boxes.ts';

/** Where a label may stand: its baseline's left end, middle or right end. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** A label that has still to find its place. */
export interface Wanted {
  readonly key: string;
  /** What it says, the fullest first; what does not fit gives way to the next. */
  readonly texts: readonly string[];
  readonly size: number;
  /** The best place first. */
  readonly spots: readonly Spot[];
  /** The quantity that it names, for colour and lighting. */
  readonly quantity?: string;
  readonly className?: string;
  /** Rather left out than close beside another, for it would read as one with that: a name beside a letter. */
  readonly isApart?: boolean;
  /** Stands even across lines that no other label crosses: a caution. */
  readonly isNeeded?: boolean;
}

export interface PlacedLabel extends Spot {
  readonly key: string;
  readonly text: string;
  readonly size: number;
  readonly box: Box;
  readonly quantity?: string;
  readonly className?: string;
}

/** About the box that a text takes with its baseline at *y*. */
export function labelBox(text: string, size: number, { x, y, anchor }: Spot): Box {
  const width = textWidth(text, size);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { left, top: y - ascent * size, right: left + width, bottom: y + descent * size };
}

/** What two labels side by side keep between them where there is room, in text sizes: nearer they read as one. */
const wordSpace = 0.4;

/** What a label takes with that. */
export function withSpace({ box, size }: Pick<PlacedLabel, 'box' | 'size'>): Box {
  const space = wordSpace * size;
  return { ...box, left: box.left - space, right: box.right + space };
}

/**
 * Puts labels one after the other where they stand on nothing that is taken, nor on each other, and wholly inside *sheet*.
 *
 * A label that finds room nowhere, whichever way it is put, is left out: two on top of each other say less than one.
 *
 * @param crossed lines that a label should not cross, and does where there is no other room
 * @param kept lines that no label crosses but one that is needed
 */
export function placeLabels(
  wanted: readonly Wanted[],
  taken: readonly Box[],
  sheet: Box,
  crossed: readonly Box[] = [],
  kept: readonly Box[] = [],
): PlacedLabel[] {
  const boxes = [...taken];
  const spaced = [...taken];
  const find = ({ texts, size, spots, isNeeded, isApart }: Wanted) => {
    const off = isNeeded ? [] : kept;
    for (const text of texts) {
      for (const without of [
        [...spaced, ...kept, ...crossed],
        [...spaced, ...off],
        ...(isApart ? [] : [[...boxes, ...off]]),
      ]) {
        for (const spot of spots) {
          const box = labelBox(text, size, spot);
          if (isWithin(box, sheet) && !without.some((other) => meet(box, other))) return { ...spot, text, box };
        }
      }
    }
    return undefined;
  };
  return wanted.flatMap((label) => {
    const found = find(label);
    if (!found) return [];
    boxes.push(found.box);
    spaced.push(withSpace({ box: found.box, size: label.size }));
    const { key, size, quantity, className } = label;
    return [{ ...found, key, size, ...(quantity && { quantity }), ...(className && { className }) }];
  });
}
