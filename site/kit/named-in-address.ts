import { readPlainNumber } from '#core/quantity/plain-number.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import type { Offers } from './offers.ts';

/**
 * Chooses what of the reader's kit an address names, which was read before the kit was here: then such names were refused. The numbers of the
 * address stand above those that a part fills in, as they do when it is read.
 *
 * @param opened the query that the page was opened with
 */
export function chooseNamed(bench: AnyBench, offers: Offers, opened: string): void {
  const named = new URLSearchParams(opened);
  const own = [...named].filter(([choice, slug]) => {
    const option = offers[choice]?.[slug]?.option;
    return option !== undefined && option.apart === undefined;
  });
  if (own.length === 0) return;
  for (const [choice, slug] of own) bench.choose(choice, slug);
  for (const [name, text] of named) {
    const value = readPlainNumber(text);
    if (value === undefined || !Object.hasOwn(bench.starts, name)) continue;
    const { least, most } = bench.range(name as QuantityName);
    if (value >= least && value <= most) bench.set(name as QuantityName, value);
  }
}
