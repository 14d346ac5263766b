import type { FormulaLine } from '#site/state/formula-line.ts';

/** Puts *line* into a formula's place in the page, `[data-equation]`: numbers into their slots, or words in their stead. */
export function fillLine(place: HTMLElement, line: FormulaLine): void {
  lineIn(place).show(line);
}

/** A formula's place in the page, looked through once; it writes only what differs from what stands there. */
export function lineIn(place: HTMLElement): {
  readonly built: FormulaLine;
  readonly show: (line: FormulaLine) => void;
} {
  const numbers = place.querySelector<HTMLElement>('[data-equation-numbers]')!;
  const words = place.querySelector<HTMLElement>('[data-equation-words]')!;
  const slots = [...numbers.querySelectorAll<HTMLElement>('[data-number]')].map((element) => ({
    element,
    id: element.dataset['number']!,
    shown: element.textContent,
  }));
  const asBuilt = words.textContent;
  return {
    built: numbers.hidden
      ? { words: asBuilt.trim() }
      : { texts: Object.fromEntries(slots.map(({ id, shown }) => [id, shown])) },
    show(line) {
      const areNumbers = 'texts' in line;
      if (numbers.hidden === areNumbers) {
        numbers.hidden = !areNumbers;
        words.hidden = areNumbers;
        // What is hidden says nothing old to whoever copies the page.
        if (areNumbers) words.textContent = asBuilt;
      }
      if (!areNumbers) {
        words.textContent = line.words;
        return;
      }
      for (const slot of slots) {
        const text = line.texts[slot.id];
        if (text === undefined || text === slot.shown) continue;
        slot.element.textContent = text;
        slot.shown = text;
      }
    },
  };
}
