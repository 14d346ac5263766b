/** From the baseline to the top of the tallest letters, and to the end of their tails, in text sizes, of the face in use. */
export const ascent = 0.74;
export const descent = 0.21;

/** About how wide a text will be, without asking the page to lay it out: on the safe side for the face in use. */
export function textWidth(text: string, size: number): number {
  let units = 0;
  for (const character of text) units += widthOf(character);
  return units * size;
}

/** In em; the face's tabular digits are all 0.632 wide. */
function widthOf(character: string): number {
  if (character >= '0' && character <= '9') return 0.632;
  return narrow.has(character) ? 0.3 : wide.has(character) ? 0.85 : 0.56;
}

const narrow = new Set(" .,:;'′il|I\u2009\u202f\u00a0");
const wide = new Set('mwMW—');
