/** How a quantity reads inside a formula (a bare number with unit) and in running text (as the trade writes it). */
export interface Printers {
  readonly inFormula: (id: string) => string | undefined;
  readonly inProse: (id: string) => string | undefined;
}

/**
 * Keeps the numbers that stand in a page's formulas and prose up to date without rendering anything anew:
 * the text of every `[data-number]` below *root* follows, but for those inside `[data-still]`, which keep what they were built with.
 */
export function numberPatcher(root: ParentNode): (print: Printers) => void {
  const slots = [...root.querySelectorAll<HTMLElement>('[data-number]')]
    .filter((slot) => slot.closest('[data-still]') === null)
    .map((element) => ({ element, id: element.dataset['number']!, printer: printerOf(element) }));
  const shown = new Map(slots.map(({ element }) => [element, element.textContent]));
  return (print) => {
    for (const { element, id, printer } of slots) {
      const text = print[printer](id);
      if (text === undefined || text === shown.get(element)) continue;
      element.textContent = text;
      shown.set(element, text);
    }
  };
}

function printerOf(slot: HTMLElement): keyof Printers {
  return slot.dataset['printed'] === undefined ? 'inFormula' : 'inProse';
}
