import type { KitRow } from '#core/rig/kit/kit.ts';
import { turnedRound } from '#core/rig/assumed/turned-round.ts';
import { searchSoundKit } from '#core/rig/kit/search-sound-kit.ts';
import type { Verdict } from '#core/rig/kit/verdict.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Lens } from '#core/rig/lens.ts';
import { isOneNumber, leanWords, rangeWords } from '#site/kit/range-words.ts';
import { rowsOn, type KitSlug, type WishSlug } from '#site/state/kits.ts';
import { ownParts } from '#site/state/own-parts.svelte.ts';
import { subjectOf, type Asked } from './searches.ts';

/** Between what the numbers of a chain lie, because something of its lenses is assumed or measured: as they are printed. */
export interface RowRanges {
  readonly magnification?: string;
  readonly 'working-distance'?: string;
  readonly merit?: string;
  /** What else it may be than it is with the usual lenses. */
  readonly maybe: readonly Verdict[];
  /** A sentence for each such lens. */
  readonly because: readonly string[];
}

/** More ways than this are not tried with each other. */
const mostWays = 64;

/**
 * The ranges of a chain over all that its lenses may be, each way judged and set as the search judges and sets it; none where all is known.
 *
 * @param ids names of its rows, the camera first
 */
export function rangesOfRow(
  ids: readonly string[],
  kit: KitSlug,
  added: readonly WishSlug[],
  asked: Asked,
  as: string | undefined,
): RowRanges | undefined {
  const rows = rowsOn(kit, added, asked).filter(({ id }) => ids.includes(id));
  const open = rows.flatMap(({ id, part }) => {
    const thing = part === 'lens' ? ownParts.found?.things[id] : undefined;
    if (!thing?.lenses) return [];
    const lenses = isTurned(id, ids, rows) ? turnedRound(thing.lenses) : thing.lenses;
    return lenses.extremes.length > 1 ? [{ id, name: thing.name, lenses }] : [];
  });
  if (open.length === 0) return undefined;
  const at = placeOf(rows, ids, asked, as);
  const all = waysOf(open).map((way) => {
    const kit = rows.map((row) => (row.part === 'lens' && way.has(row.id) ? { ...row, lens: way.get(row.id)! } : row));
    const search = searchSoundKit(kit, subjectOf(asked, as), Infinity);
    return { verdict: search.verdictOf(at), ...search.judgementOf(at) };
  });
  const shown = all.filter(({ magnification }) => magnification > 0);
  const suited = all.filter(({ verdict }) => verdict === 'suited');
  const words = (name: QuantityName, values: readonly number[], lacks: boolean) => {
    if (values.length === 0) return undefined;
    const span = { usual: undefined, least: Math.min(...values), most: Math.max(...values), isOpen: lacks };
    return isOneNumber(name, span) ? undefined : `${rangeWords(name, span)}${lacks ? ' or none' : ''}`;
  };
  const isLacking = shown.length < all.length;
  const magnification = words(
    'magnification',
    shown.map((one) => one.magnification),
    isLacking,
  );
  const room = words(
    'working-distance',
    shown.map((one) => one.room),
    isLacking,
  );
  const merit = words(
    'merit',
    suited.map((one) => one.merit),
    false,
  );
  return {
    ...(magnification !== undefined && { magnification }),
    ...(room !== undefined && { 'working-distance': room }),
    ...(merit !== undefined && { merit }),
    maybe: [...new Set(all.map(({ verdict }) => verdict))],
    because: open.map(({ name, lenses }) => `${name}: ${leanWords(lenses)}.`),
  };
}

/** Whether a chain of these rows has a lens turned round: on a ring with a thread. */
function isTurned(id: string, ids: readonly string[], rows: readonly KitRow[]): boolean {
  const before = rows.find((row) => row.id === ids[ids.indexOf(id) - 1]);
  return before?.part === 'reversing ring' || before?.part === 'coupling ring';
}

interface Open {
  readonly id: string;
  readonly lenses: { readonly usual: Lens; readonly extremes: readonly Lens[] };
}

/** Each lens as each that it may be, together with the others where those are not too many. */
function waysOf(open: readonly Open[]): readonly ReadonlyMap<string, Lens>[] {
  const count = open.reduce((product, { lenses }) => product * lenses.extremes.length, 1);
  if (count > mostWays) return open.flatMap(({ id, lenses }) => lenses.extremes.map((lens) => new Map([[id, lens]])));
  return open.reduce<readonly ReadonlyMap<string, Lens>[]>(
    (ways, { id, lenses }) => ways.flatMap((way) => lenses.extremes.map((lens) => new Map([...way, [id, lens]]))),
    [new Map()],
  );
}

/** The number of a chain among those that its own parts make: few, and in an order that names alone decide. Throws for a chain of other parts. */
function placeOf(rows: readonly KitRow[], ids: readonly string[], asked: Asked, as: string | undefined): number {
  const search = searchSoundKit(rows, subjectOf(asked, as), Infinity);
  const wanted = ids.join();
  for (let chain = 0; chain < search.count; chain++) if (search.chain(chain).ids.join() === wanted) return chain;
  throw new Error(`no chain of these parts: ${wanted}`);
}
