import { letterOf } from '#site/controls/letter/letter-of.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import { ownRings } from '#site/state/own-rings.svelte.ts';
import { ownParts } from '#site/state/own-parts.svelte.ts';
import { keptKit } from './kept-kit.ts';
import { chooseNamed } from './named-in-address.ts';
import { offersOf, type Offers } from './offers.ts';
import { numberIn, partsOf, type Kit } from './part.ts';
import { isOneNumber, leanWords, rangeWords } from './range-words.ts';

/** What the page calls a reading, where that is not its name. */
type Labels = Readonly<Partial<Record<QuantityName, string>>>;

/** The reader's kit in a lesson. */
export interface KitInLesson {
  /** Readings that lean on what is assumed of a lens in use, each with its range, and what that is: a line for each such lens. */
  ranges(readings: readonly QuantityName[], labels?: Labels): readonly string[];
  /** Before the example follows the figure: puts the first usable parts of the kit into the figure, where none of it is in use. */
  work(button: HTMLElement): void;
  stop(): void;
}

/**
 * Lists the reader's kit first in every choice of a lesson's bench that it has parts for; another tab's changes as well.
 *
 * @param opened the query that the page was opened with: it may name parts that were not here yet
 */
export function kitIn(bench: AnyBench, opened: string): KitInLesson {
  let offers: Offers = {};
  const plain = bench.choices;

  function bring(kit: Kit) {
    offers = offersOf({ starts: bench.starts, choices: plain, range: (name) => bench.range(name) }, kit);
    const own = Object.fromEntries(
      Object.entries(offers).map(([choice, some]) => [
        choice,
        Object.fromEntries(Object.entries(some).map(([slug, { option }]) => [slug, option])),
      ]),
    );
    bench.offer(own);
    void ownParts.load?.().then(
      ({ searchIn }) => searchIn(bench as never, own as never, kit as never),
      () => undefined,
    );
    ownRings.lengths = partsOf(kit, 'ring').map((ring) => numberIn(ring, 'extension')!);
    const isUsable = Object.keys(offers).some((choice) => firstUsable(offers, choice) !== undefined);
    for (const button of document.querySelectorAll('[data-example-switch]')) {
      button.textContent = isUsable ? 'Work it with my own kit' : 'Work it with the figure’s numbers';
    }
  }

  bring(keptKit.read().value);
  chooseNamed(bench, offers, opened);
  const stop = keptKit.onChanged(({ value }) => bring(value));
  return {
    ranges: (readings, labels = {}) =>
      Object.entries(offers).flatMap(([choice, some]) => {
        const offer = some[bench.chosenOrOwn(choice) ?? ''];
        const why = offer?.lenses && leanWords(offer.lenses);
        if (!why) return [];
        const open = openOf(bench, readings, offer.option.between!(bench.inputs), labels);
        return open.length === 0 ? [] : [`${open.join(', ')}: ${why}.`];
      }),
    work(button) {
      if (button.getAttribute('aria-pressed') === 'true') return;
      for (const [choice, some] of Object.entries(offers)) {
        const slug = firstUsable(offers, choice);
        if (slug !== undefined && !some[bench.chosenOrOwn(choice) ?? '']) bench.choose(choice, slug);
      }
    },
    stop,
  };
}

const firstUsable = (offers: Offers, choice: string) =>
  Object.entries(offers[choice] ?? {}).find(([, { option }]) => option.apart === undefined)?.[0];

/** `w 78 to 96 mm`, for each reading that is no single number over what the lens may fill. */
function openOf(
  bench: AnyBench,
  readings: readonly QuantityName[],
  fills: readonly Readonly<Partial<Record<QuantityName, number>>>[],
  labels: Labels,
): readonly string[] {
  const inputs = Object.keys(fills[0] ?? {}) as QuantityName[];
  return readings.flatMap((name) => {
    if (!inputs.some((input) => bench.leansOn(name, input))) return [];
    const all = fills.map((one) => bench.would(name, one, undefined));
    const found = all.filter((value) => value !== undefined);
    if (found.length === 0) return [];
    const span = {
      usual: undefined,
      least: Math.min(...found),
      most: Math.max(...found),
      isOpen: found.length < all.length,
    };
    if (isOneNumber(name, span)) return [];
    const { name: words, symbol } = letterOf(name);
    const called = labels[name] ?? (symbol === '' || symbol.includes('_') ? words : symbol);
    return [`${called} ${rangeWords(name, span)}${span.isOpen ? ' or none' : ''}`];
  });
}
