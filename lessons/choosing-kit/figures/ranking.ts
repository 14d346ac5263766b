import { printQuantity } from '#core/quantity/print.ts';
import type { KitSearch } from '#core/rig/kit/search-sound-kit.ts';
import { verdicts, type Verdict } from '#core/rig/kit/verdict.ts';
import type { Asked } from './searches.ts';

/** The questions in the order in which they are asked: what fails a later one has come farther. */
const asFar = [...verdicts].reverse();

/** By how little a chain fails, for those that fail one question: smaller is nearer to passing. */
function lackOf(search: KitSearch, chain: number): number {
  const { magnification, room, effectiveFNumber, merit } = search.judgementOf(chain);
  const verdict = search.verdictOf(chain);
  if (verdict === 'too large') return magnification;
  if (verdict === 'too small') return -magnification;
  if (verdict === 'inside' || verdict === 'too near') return -room;
  if (verdict === 'too shallow') return -effectiveFNumber;
  return verdict === 'too dark' ? -merit : chain;
}

const orders = new WeakMap<KitSearch, readonly number[]>();

/** All chains: those that suit, best first, then those that came farthest, and among them those that lack least. */
export function ranking(search: KitSearch): readonly number[] {
  const found = orders.get(search);
  if (found) return found;
  const rest = Array.from({ length: search.count }, (_, chain) => chain)
    .filter((chain) => search.verdictOf(chain) !== 'suited')
    .map((chain) => ({ chain, far: asFar.indexOf(search.verdictOf(chain)), lack: lackOf(search, chain) }))
    .sort((one, other) => one.far - other.far || one.lack - other.lack || one.chain - other.chain)
    .map(({ chain }) => chain);
  const order = [...search.suited, ...rest];
  orders.set(search, order);
  return order;
}

/** The place in the ranking of the first chain with a verdict, from 1; undefined where none has it. */
export function firstWith(search: KitSearch, verdict: Verdict): number | undefined {
  const at = ranking(search).findIndex((chain) => search.verdictOf(chain) === verdict);
  return at < 0 ? undefined : at + 1;
}

const print = printQuantity;

/** What a chain lacks, in a few words with its number. */
export function lackInWords(search: KitSearch, chain: number, asked: Asked, price: number): string {
  const { magnification, room, effectiveFNumber, merit } = search.judgementOf(chain);
  const fill = (magnification * asked.subjectWidth) / asked.sensorWidth;
  switch (search.verdictOf(chain)) {
    case 'suited':
      return `${print('merit', merit)} in hand`;
    case 'over budget':
      return `costs ${print('price', price)}`;
    case 'no picture':
      return 'nothing near is sharp';
    case 'too large':
      return `shows ${print('field-width', asked.sensorWidth / magnification)} at most`;
    case 'too small':
      return magnification > 0 ? `fills ${print('frame-fill', fill)} at most` : 'stays at infinity';
    case 'inside':
      return 'sharp inside the lens only';
    case 'too near':
      return `${print('working-distance', asked.nearestWorkingDistance - room)} too near`;
    case 'too shallow':
      return `closes to ${print('effective-f-number', effectiveFNumber)} at most`;
    case 'too soft':
      return 'deeper than one frame holds';
    case 'too dark':
      return `${print('merit', 2 * Math.log2(Math.min(1, fill)) - merit)} too dark`;
  }
}
