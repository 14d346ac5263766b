/** What stands on paper where a number is left out. */
const blank = '…';
const number = /\d+(?:[.,:\u202f]\d+)*/g;

/** Of an axis, of a lens by its focal length, of a sensor's sides: no words that say what was found. */
const isMark = (text: string) => /^[+−-]?[\d.,/ ×:\u202f\u00a0]+(?:mm|dpt|%)?$/.test(text);
/** How a drawing is drawn, which no lens decides. */
const isDrawing = (text: string) => /^(?:scale|heights|slanted)\b/.test(text);

/**
 * Words of a drawing without the numbers that answer questions: each that is none of *given* is a blank.
 *
 * @param quantity - what the words say, by name, where they are of one
 * @param given - what was chosen, as it prints, by name: `{ 'f-number': 'f/8' }`
 */
export function withoutAnswers(
  text: string,
  quantity: string | undefined,
  given: Readonly<Record<string, string>>,
): string {
  const words = text.trim();
  const isFound = quantity !== undefined && !Object.hasOwn(given, quantity);
  if (isDrawing(words) || (isMark(words) && !isFound)) return text;
  // What was found is blank even where it happens to be a number that was chosen as well.
  const kept = new Set(isFound ? [] : Object.values(given).flatMap((printed) => printed.match(number) ?? []));
  const isScale = (found: string) => quantity === undefined && found.includes(':');
  return text.replace(number, (found) => (kept.has(found) || isScale(found) ? found : blank));
}

/** Leaves the answers out of all words of *drawing*, and of those that it gets later; returns the way to stop. */
export function leaveBlanks(drawing: Element, given: () => Readonly<Record<string, string>>): () => void {
  const leave = () => {
    const words = document.createTreeWalker(drawing, NodeFilter.SHOW_TEXT);
    for (let node = words.nextNode(); node; node = words.nextNode()) {
      const before = node.nodeValue!;
      const of = node.parentElement!.closest<SVGElement>('[data-quantity]')?.dataset['quantity'];
      const after = withoutAnswers(before, of, given());
      if (after !== before) node.nodeValue = after;
    }
  };
  leave();
  const later = new MutationObserver(leave);
  later.observe(drawing, { childList: true, characterData: true, subtree: true });
  return () => later.disconnect();
}
