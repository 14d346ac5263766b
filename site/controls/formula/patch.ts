import type { FormulaLine } from '#site/state/formula-line.ts';
import { lineIn } from './line.ts';

/** How a page's numbers read: a formula's line by the formula's name, a quantity in running text as the trade writes it. */
export interface Printers {
  readonly line: (name: string) => FormulaLine | undefined;
  readonly inProse: (id: string) => string | undefined;
}

/** The numbers of one part of the page, which come into view together. */
interface Place {
  readonly followers: Follower[];
  inView: boolean;
}

/** Something that shows what is printed under a name; *built* is what the build put there. */
interface Follower {
  readonly name: string;
  readonly printer: keyof Printers;
  readonly example: Element | null;
  readonly built: Printed;
  readonly show: (printed: Printed) => void;
}

type Printed = FormulaLine | string;

/**
 * Keeps the numbers that stand in a page's formulas and prose up to date without rendering anything anew:
 * every `[data-equation]` of a formula and every `[data-printed]` number below *root* follows.
 *
 * Inside `[data-still]` it stays as it was built; inside `[data-example]` too, until that has `data-following`.
 *
 * Parts out of sight follow when they come into view, or when *patch* is asked for all: most of a page's formulas cannot be seen
 * while a hand drags.
 */
export function numberPatcher(root: ParentNode): (print: Printers, all?: boolean) => void {
  const places = new Map<Element | null, Place>();
  for (const element of root.querySelectorAll<HTMLElement>('[data-equation], [data-printed]')) {
    if (element.closest('[data-still]')) continue;
    const part = element.closest('.part');
    if (!places.has(part)) places.set(part, { followers: [], inView: part === null });
    places.get(part)!.followers.push(element.dataset['equation'] === undefined ? wordIn(element) : formulaIn(element));
  }

  let latest: Printers | undefined;
  function follow(inPlaces: Iterable<Place>) {
    const printed: Record<keyof Printers, Record<string, Printed | undefined>> = { line: {}, inProse: {} };
    for (const { followers } of inPlaces) {
      for (const { name, printer, example, built, show } of followers) {
        const follows = example?.hasAttribute('data-following') ?? true;
        const now = follows ? (printed[printer][name] ??= latest?.[printer](name)) : built;
        if (now !== undefined) show(now);
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

function formulaIn(place: HTMLElement): Follower {
  const { built, show } = lineIn(place);
  const example = place.closest('[data-example]');
  return {
    name: place.dataset['equation']!,
    printer: 'line',
    example,
    built,
    show: (line) => show(line as FormulaLine),
  };
}

function wordIn(element: HTMLElement): Follower {
  const built = element.textContent;
  let shown = built;
  return {
    name: element.dataset['number']!,
    printer: 'inProse',
    example: element.closest('[data-example]'),
    built,
    show(text) {
      if (text === shown) return;
      element.textContent = shown = text as string;
    },
  };
}
