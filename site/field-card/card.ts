import { OutOfRange } from '#core/quantity/errors.ts';
import { depthLeftByDiffraction } from '#core/wave/depth-left-by-diffraction.ts';
import { finestEffectiveFNumber } from '#core/wave/finest-effective-f-number.formula.ts';
import { frameStep } from '#core/stack/frame-step.formula.ts';
import { builtChain, type AnsweredName, type BuiltChain } from '#site/bench/answers.ts';
import { withSet } from '#site/bench/change.ts';
import type { Conditions } from '#site/bench/conditions.ts';
import { matchedTo } from '#site/bench/match.ts';
import { reachWords } from '#site/bench/compared-words.ts';
import { caution, refusal } from '#site/bench/words.ts';
import { fNumbersOf, mainLensAt, type Chain } from '#site/chain/chain.ts';
import { numberIn } from '#site/kit/part.ts';

/** What a card can say of every f-number, in the order in which it stands there. */
export const lineNames = [
  'depth-of-field',
  'subject-depth',
  'frame-step',
  'effective-f-number',
  'light-loss',
  'point',
  'exposure-time',
] as const;

export type LineName = (typeof lineNames)[number];

/** One f-number of one block. */
export interface Column {
  /** As marked; undefined where the chain has nothing marked to set. */
  readonly fNumber?: number;
  /** The lens has this f-number; without it there are no values. */
  readonly isThere: boolean;
  /** Closed beyond c/(√2 λ): diffraction takes more than the smaller opening gives. */
  readonly isSpoiled: boolean;
  /** Base units; of `point` pixels, of `subject-depth` what one frame holds with diffraction counted. */
  readonly values: Readonly<Partial<Record<LineName, number>>>;
}

/** One magnification of a card: what stands beside it, and its columns. */
export interface Block {
  readonly chain: Chain;
  readonly magnification: number;
  /** Rim of whatever is foremost to the subject, mm. */
  readonly workingDistance: number;
  readonly fieldWidth: number;
  readonly fieldHeight: number;
  /** Length of all rings and bellows on, mm. */
  readonly extension: number;
  readonly columns: readonly Column[];
  /** Place of the f-number at which one frame holds most; undefined where none holds anything. */
  readonly best?: number;
}

/** A block, or why a chain gives none at this magnification. */
export type BlockOrWhy = Block | { readonly chain: Chain; readonly why: string };

/** Whether it is a block. */
export const isBlock = (one: BlockOrWhy): one is Block => 'columns' in one;

/** What a card is made for. */
export interface CardPlan {
  readonly chains: readonly Chain[];
  /** Magnifications that each chain is set to; where empty each stays as it is set. */
  readonly magnifications: readonly number[];
  /** As marked, smallest first. */
  readonly fNumbers: readonly number[];
  readonly conditions: Conditions;
}

/** The blocks of a card, chain after chain. Throws for nothing that a reader can put together. */
export function blocksOf({ chains, magnifications, fNumbers, conditions }: CardPlan): readonly BlockOrWhy[] {
  return chains.flatMap((chain) => {
    if (magnifications.length === 0) return [blockOf(chain, fNumbers, conditions)];
    const set = magnifications.map((wanted) => [wanted, matchedTo(chain, 'magnification', wanted)] as const);
    const blocks = set.flatMap(([, match]) =>
      match.kind === 'matched' ? [blockOf(match.chain, fNumbers, conditions)] : [],
    );
    // One sentence for all that it does not reach.
    const short = set.flatMap(([wanted, match]) => (match.kind === 'out of reach' ? [{ wanted, ...match }] : []));
    if (set.every(([, { kind }]) => kind === 'fixed'))
      return [blockOf(chain, fNumbers, conditions)].map((block) => (isBlock(block) ? { ...block, chain } : block));
    const [first] = short;
    const times = (value: number) => `${Number(value.toPrecision(3))}×`;
    return first
      ? [
          ...blocks,
          {
            chain,
            why: `It goes ${reachWords('magnification', first)}, so not to ${short.map(({ wanted }) => times(wanted)).join(', ')}.`,
          },
        ]
      : blocks;
  });
}

/** A chain as it is set, at all the f-numbers of the lens whose iris is nearest to the camera. */
export function blockOf(chain: Chain, fNumbers: readonly number[], conditions: Conditions): BlockOrWhy {
  const built = builtChain(chain, conditions);
  if (built.kind === 'impossible') return { chain, why: refusal(chain, built) };
  const words = caution(built);
  if (words !== '') return { chain, why: words };
  const { answers } = built;
  const at = mainLensAt(chain);
  const columns =
    at < 0
      ? [{ isThere: true, ...columnOf(built, undefined, conditions) }]
      : fNumbers.map((fNumber): Column => {
          const { least, most } = fNumbersOf(chain[at]!.thing);
          const here = least <= fNumber && fNumber <= most && builtChain(withSet(chain, at, { fNumber }), conditions);
          if (!here || here.kind === 'impossible') return { fNumber, isThere: false, isSpoiled: false, values: {} };
          return { fNumber, isThere: true, ...columnOf(here, at, conditions) };
        });
  const best = bestOf(columns);
  return {
    chain,
    magnification: answers.magnification!,
    workingDistance: answers['working-distance']!,
    fieldWidth: answers['field-width']!,
    fieldHeight: answers['field-height']!,
    extension: ringsIn(chain, built),
    columns,
    ...(best !== undefined && { best }),
  };
}

function columnOf(
  built: BuiltChain,
  lens: number | undefined,
  conditions: Conditions,
): Pick<Column, 'isSpoiled' | 'values'> {
  const { answers, circle, pixelPitch, positions, linkOf } = built;
  const { solved } = positions;
  const rule = { circleOfConfusion: circle, wavelength: conditions.wavelength };
  const effective = answers['effective-f-number']!;
  // Stops are counted from the mark of the iris that is set, where that is what limits the light.
  const isSet = 'limitedBy' in solved && lens !== undefined && linkOf[solved.limitedBy] === lens;
  const said = (name: AnsweredName) => (answers[name] === undefined ? {} : { [name]: answers[name] });
  const airy = answers['airy-diameter'];
  const frame = solved.sharpPlane === 'in front' ? orNone(() => depthLeftByDiffraction(solved, rule)) : undefined;
  return {
    isSpoiled: effective > finestEffectiveFNumber(rule) * (1 + rounding),
    values: {
      ...said('depth-of-field'),
      ...(solved.sharpPlane === 'in front' && { 'subject-depth': frame }),
      // Frames share a part of what each really holds: by defocus alone there would be gaps where diffraction counts.
      ...(frame !== undefined &&
        frame > 0 &&
        frame < Infinity && { 'frame-step': frameStep({ depthOfField: frame, overlap: conditions.overlap }) }),
      'effective-f-number': effective,
      ...(isSet && said('light-loss')),
      ...(airy !== undefined && pixelPitch !== undefined && { point: airy / pixelPitch }),
      ...said('exposure-time'),
    } as Column['values'],
  };
}

/** Within this an f-number is the best one but for rounding. */
const rounding = 1e-9;

function orNone(ask: () => number): number | undefined {
  try {
    return ask();
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

/** The first of the f-numbers at which one frame holds most. */
function bestOf(columns: readonly Column[]): number | undefined {
  const depths = columns.map(({ values }) => values['subject-depth'] ?? 0);
  const most = Math.max(...depths);
  return most > 0 ? depths.indexOf(most) : undefined;
}

/** Rings and the draw of bellows, mm. */
function ringsIn(chain: Chain, { positions, linkOf }: BuiltChain): number {
  return positions.parts.reduce((sum, { part }, index) => {
    const isRing = part.part === 'ring' || part.part === 'bellows';
    const kind = chain[linkOf[index]!]!.thing.kind;
    return isRing && ['ring', 'bellows'].includes(kind) ? sum + part.extension : sum;
  }, 0);
}

/**
 * The chain with no rings and with every set of some rings, shortest first; of sets that are alike in length one. So a card has a block for each of the rings
 * that can be on.
 *
 * @param most so many chains come back at most
 */
export function withEachSetOfRings(chain: Chain, rings: Chain, most: number): readonly Chain[] {
  const bare = chain.filter(({ thing }) => thing.kind !== 'ring');
  const sets = rings.reduce<Chain[]>((before, ring) => [...before, ...before.map((set) => [...set, ring])], [[]]);
  const length = (set: Chain) => set.reduce((sum, { thing }) => sum + numberIn(thing.part, 'extension')!, 0);
  const sorted = [...sets].sort((one, other) => length(one) - length(other) || one.length - other.length);
  const distinct = sorted.filter((set, at) => at === 0 || length(set) !== length(sorted[at - 1]!));
  return distinct.slice(0, most).map((set) => [...bare.slice(0, 1), ...set, ...bare.slice(1)]);
}

/** The chain with each of *lenses* in the place of its first lens, as each is usually set; those that can stand in no chain are left out. */
export function withEachLens(chain: Chain, lenses: Chain, most: number): readonly Chain[] {
  const at = mainLensAt(chain);
  const place = at < 0 ? chain.length : at;
  const turned = chain[at]?.turned;
  return lenses
    .filter(({ thing }) => thing.fault === undefined)
    .slice(0, most)
    .map((link) => chain.toSpliced(place, at < 0 ? 0 : 1, { ...link, ...(turned && { turned }) }));
}
