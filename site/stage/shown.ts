import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import type { AnyBench, OwnSheet, SheetPlan } from '#site/controls/workbench/workbench.ts';
import { glide } from './glide.ts';
import { quantitiesIn } from './steps.ts';

type Sheets = readonly (SheetPlan | OwnSheet)[];

/** The sheet that a query names, else the first. */
export function sheetIn(search: string, sheets: Sheets): SheetPlan | OwnSheet {
  const named = new URLSearchParams(search).get('sheet');
  return sheets.find(({ id }) => id === named) ?? sheets[0]!;
}

/** Has everything that takes time begun that these queries will show, in their order; the bench stands as before when it comes back. */
export function prepareAll(bench: AnyBench, sheets: Sheets, searches: readonly string[]): void {
  const { inputs, kept } = bench;
  for (const search of searches) {
    const sheet = sheetIn(search, sheets);
    if (!('own' in sheet) || !sheet.prepare) continue;
    ({ inputs: bench.inputs, kept: bench.kept } = bench.stateAfter(search));
    sheet.prepare(new URLSearchParams(search).get('arranged') ?? undefined);
  }
  [bench.inputs, bench.kept] = [inputs, kept];
}

/**
 * Shows a change that the bench has made, happening: from the inputs that it had *before* to those that it has now. Gives the way to be there at
 * once while it is on its way; *arrived* is called when it is there, unless that is at once.
 */
export function showHappening(
  bench: AnyBench,
  before: AnyBench['inputs'],
  arrived: () => void,
): (() => void) | undefined {
  const after = bench.inputs;
  let there = false;
  const end = glide(before, after, (now) => {
    bench.inputs = now;
    there = now === after;
    if (there) arrived();
  });
  return there ? undefined : end;
}

/** The numbers of a caption by name, where its words no longer hold. */
export function numbersNow(caption: string, inProse: (id: string) => string | undefined): readonly string[] {
  return quantitiesIn(caption).map((id) => `${quantityOf(id as QuantityName).name} ${inProse(id)}`);
}
