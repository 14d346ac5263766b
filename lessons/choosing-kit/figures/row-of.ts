import type { ChainJudgement } from '#core/rig/kit/search-sound-kit.ts';
import type { KitChain } from '#core/rig/kit/built-chain.ts';
import { benchLink, planLink, type Chosen } from './chain-links.ts';
import { framesInWords, framesOf } from './frames-of-row.ts';
import type { RowRanges } from './row-ranges.ts';
import type { Asked } from './searches.ts';

/** A chain of the list as the figure has it. */
interface Listed {
  readonly built: KitChain;
  readonly name: string;
  readonly reason: string;
  /** m, w, N and time; none where nothing is sharp. */
  readonly numbers: readonly string[];
  readonly judged: ChainJudgement;
}

/** What a row of the list says of a chain, with ranges where its lenses leave something open, and where it leads. */
export function rowOf(
  { built, name, reason, numbers, judged }: Listed,
  ranges: RowRanges | undefined,
  asked: Asked,
  chosen: Chosen,
) {
  const [size, room, ...settings] = numbers;
  const set = { ids: built.ids, parts: built.parts, ...judged };
  const { verdict } = built;
  const result =
    verdict !== 'suited' ? `${verdict}: ${reason}` : ranges?.merit === undefined ? reason : `${ranges.merit} in hand`;
  // Stops are those of one frame: how many it takes is not in them.
  const frames = verdict === 'suited' && chosen.isStack ? framesOf(built.solved, asked) : undefined;
  const others = ranges?.maybe.filter((other) => other !== verdict) ?? [];
  return {
    parts: name,
    numbers:
      size === undefined ? [] : [ranges?.magnification ?? size, ranges?.['working-distance'] ?? room!, ...settings],
    reason: [result, ...others].join('; or ') + (frames === undefined ? '' : `, ${framesInWords(frames)}`),
    plan: planLink(set, asked, chosen),
    onBench: benchLink(set, asked, chosen),
  };
}

/** Between what the readings of a chain lie, and why; undefined where all is known. */
export function rangesInWords(ranges: RowRanges | undefined): string | undefined {
  if (!ranges) return undefined;
  const said = [
    ['room', ranges['working-distance']],
    ['magnification', ranges.magnification],
    ['stops in hand', ranges.merit],
  ].flatMap(([what, range]) => (range === undefined ? [] : [`${what} ${range}`]));
  return [...(said.length > 0 ? [`Of the best: ${said.join(', ')}.`] : []), ...ranges.because].join(' ');
}

type AskedName =
  'chain-count' | 'subject-width' | 'nearest.working-distance' | 'least.frame-fill' | 'suited.chain-count';

/** Room and size for listeners, and the chain that is drawn. */
export const reachInWords = (words: (name: AskedName) => string, rank: string, drawn: readonly string[]): string =>
  `${words('chain-count')} chains. Asked for: ${words('subject-width')} wide, from ${words('nearest.working-distance')} or more, ` +
  `${words('least.frame-fill')} of the picture width at least. ${words('suited.chain-count')} suit. Drawn, place ${rank} of the list: ${drawn.join(', ')}.`;
