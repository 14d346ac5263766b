/** How a quantity reads inside a formula (a bare number with unit) and in running text (as the trade writes it). */
export interface Printers {
  readonly inFormula: (id: string) => string | undefined;
  readonly inProse: (id: string) => string | undefined;
}

/** The numbers of one part of the page, which come into view together. */
interface Place {
  readonly slots: Slot[];
  inView: boolean;
}

type Slot = ReturnType<typeof slotOf>;

/**
 * Keeps the numbers that stand in a page's formulas and prose up to date without rendering anything anew:
 * the text of every `[data-number]` below *root* follows.
 *
 * Inside `[data-still]` it stays as it was built; inside `[data-example]` too, until that has `data-following`.
 *
 * Parts out of sight follow when they come into view, or when *patch* is asked for all: most of a page's formulas cannot be seen
 * while a hand drags.
 */
export function numberPatcher(root: ParentNode): (print: Printers, all?: boolean) => void {
  const places = new Map<Element | null, Place>();
  for (const element of root.querySelectorAll<HTMLElement>('[data-number]')) {
    if (element.closest('[data-still]')) continue;
    const part = element.closest('.part');
    if (!places.has(part)) places.set(part, { slots: [], inView: part === null });
    places.get(part)!.slots.push(slotOf(element));
  }

  let latest: Printers | undefined;
  function follow(inPlaces: Iterable<Place>) {
    const printed: Record<keyof Printers, Record<string, string | undefined>> = { inFormula: {}, inProse: {} };
    for (const { slots } of inPlaces) {
      for (const slot of slots) {
        const follows = slot.example?.hasAttribute('data-following') ?? true;
        const text = follows ? (printed[slot.printer][slot.id] ??= latest?.[slot.printer](slot.id)) : slot.built;
        if (text === undefined || text === slot.shown) continue;
        slot.element.textContent = text;
        slot.shown = text;
      }
    }
  }

  const watch = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) {
        const place = places.get(target)!;
        place.inView = isIntersecting;
        if (isIntersecting) follow([place]);
      }
    },
    // Half a screen ahead, so that what scrolls in is right already.
    { rootMargin: '50%' },
  );
  for (const part of places.keys()) if (part) watch.observe(part);

  return (print, all = false) => {
    latest = print;
    follow([...places.values()].filter(({ inView }) => all || inView));
  };
}

function slotOf(element: HTMLElement) {
  return {
    element,
    id: element.dataset['number']!,
    printer: printerOf(element),
    example: element.closest('[data-example]'),
    built: element.textContent,
    shown: element.textContent,
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
