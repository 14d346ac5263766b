/** Numerals as an engraver cuts them: strokes in a cell 4 wide and 6 high, upper left corner first. */
const strokes: Readonly<Record<string, readonly (readonly [number, number, number, number])[]>> = {
  '0': [
    [0, 1, 0, 5],
    [4, 1, 4, 5],
    [0, 1, 1, 0],
    [1, 0, 3, 0],
    [3, 0, 4, 1],
    [0, 5, 1, 6],
    [1, 6, 3, 6],
    [3, 6, 4, 5],
  ],
  '1': [
    [2, 0, 2, 6],
    [1, 1, 2, 0],
  ],
  '2': [
    [0, 1, 1, 0],
    [1, 0, 3, 0],
    [3, 0, 4, 1],
    [4, 1, 4, 2],
    [4, 2, 0, 6],
    [0, 6, 4, 6],
  ],
  '3': [
    [0, 0, 4, 0],
    [4, 0, 2, 2.5],
    [2, 2.5, 4, 3.5],
    [4, 3.5, 4, 5],
    [4, 5, 3, 6],
    [3, 6, 1, 6],
    [1, 6, 0, 5],
  ],
  '4': [
    [3, 6, 3, 0],
    [3, 0, 0, 4],
    [0, 4, 4, 4],
  ],
  '5': [
    [4, 0, 0.5, 0],
    [0.5, 0, 0, 2.7],
    [0, 2.7, 3, 2.5],
    [3, 2.5, 4, 3.5],
    [4, 3.5, 4, 5],
    [4, 5, 3, 6],
    [3, 6, 0, 6],
  ],
  '6': [
    [3.5, 0, 1, 1.5],
    [1, 1.5, 0, 3.5],
    [0, 3.5, 0, 5],
    [0, 5, 1, 6],
    [1, 6, 3, 6],
    [3, 6, 4, 5],
    [4, 5, 4, 4],
    [4, 4, 3, 3],
    [3, 3, 0.3, 3],
  ],
  '7': [
    [0, 0, 4, 0],
    [4, 0, 1.5, 6],
  ],
  '8': [
    [1, 0, 3, 0],
    [3, 0, 4, 1],
    [4, 1, 3, 2.8],
    [3, 2.8, 1, 2.8],
    [1, 2.8, 0, 1],
    [0, 1, 1, 0],
    [1, 2.8, 0, 4.5],
    [0, 4.5, 1, 6],
    [1, 6, 3, 6],
    [3, 6, 4, 4.5],
    [4, 4.5, 3, 2.8],
  ],
  '9': [
    [4, 3, 1, 3],
    [1, 3, 0, 2],
    [0, 2, 0, 1],
    [0, 1, 1, 0],
    [1, 0, 3, 0],
    [3, 0, 4, 1],
    [4, 1, 4, 2.5],
    [4, 2.5, 3, 4.5],
    [3, 4.5, 0.5, 6],
  ],
};

/** Width of a numeral and the space after it, for a height of 6. */
const advance = 6;

/** How far a place is from the strokes of *text*, in units of a sixth of its height; Infinity far from it. The text begins at the origin. */
export function distanceToText(text: string, x: number, y: number): number {
  const cell = Math.floor((x + 1) / advance);
  const character = text[cell];
  if (character === undefined || y < -1 || y > 7) return Infinity;
  const across = x - cell * advance;
  let least = Infinity;
  for (const [x0, y0, x1, y1] of strokes[character] ?? []) {
    const [dx, dy] = [x1 - x0, y1 - y0];
    const along = Math.min(1, Math.max(0, ((across - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy)));
    least = Math.min(least, Math.hypot(across - x0 - along * dx, y - y0 - along * dy));
  }
  return least;
}

/** Width of a text of height 6. */
export const textWidth = (text: string): number => advance * text.length - 2;
