/** How a quantity reads inside a formula (a bare number with unit) and in running text (as the trade writes it). */
export interface Printers {
  readonly inFormula: (id: string) => string | undefined;
  readonly inProse: (id: string) => string | undefined;
}

/**
 * Keeps the numbers that stand in a page's formulas and prose up to date without rendering anything anew:
 * the text of every `[data-number]` below *root* follows.
 *
 * Inside `[data-still]` it stays as it was built; inside `[data-example]` too, until that has `data-following`.
 */
export function numberPatcher(root: ParentNode): (print: Printers) => void {
  const slots = [...root.querySelectorAll<HTMLElement>('[data-number]')]
    .filter((element) => element.closest('[data-still]') === null)
    .map((element) => ({
      element,
      id: element.dataset['number']!,
      printer: printerOf(element),
      example: element.closest('[data-example]'),
      built: element.textContent,
      shown: element.textContent,
    }));
  return (print) => {
    const printed: Record<keyof Printers, Record<string, string | undefined>> = { inFormula: {}, inProse: {} };
    for (const slot of slots) {
      const follows = slot.example?.hasAttribute('data-following') ?? true;
      const text = follows ? (printed[slot.printer][slot.id] ??= print[slot.printer](slot.id)) : slot.built;
      if (text === undefined || text === slot.shown) continue;
      slot.element.textContent = text;
      slot.shown = text;
    }
  };
}

function printerOf(slot: HTMLElement): keyof Printers {
  return slot.dataset['printed'] === undefined ? 'inFormula' : 'inProse';
}

/** Turns the example around *button* from the crate's numbers to the figure's or back. */
export function switchExample(button: HTMLElement): void {
  const follows = button.closest('[data-example]')!.toggleAttribute('data-following');
  button.setAttribute('aria-pressed', String(follows));
}
