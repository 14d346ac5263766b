import { limitsOfCone } from '#core/depth/limits-of-cone.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { ImpossibleChain } from '#core/rig/impossible-chain.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import { rigPositions, type RigPositions } from '#core/rig/positions.ts';
import { textOfChain } from '#site/chain/chain-in-text.ts';
import { engineChain, faultIn, fNumberOf, fNumbersOf, mainLensAt, usualLens, type Chain } from '#site/chain/chain.ts';
import { openLenses, waysOf } from '#site/chain/open-lenses.ts';
import type { Thing } from '#site/chain/thing.ts';
import { shortName } from '#site/bench/short-names.ts';
import { isOneNumber, leanWords, rangeWords } from '#site/kit/range-words.ts';
import { refusalInWords } from '#site/state/answer.ts';
import { remembered } from '#site/state/remembered.ts';
import type { AskedOfChain } from './asked-of-chain.ts';
import { chainBy, spelledChain } from './chain-by.ts';
import { focusedTo } from './focused-to.ts';

/** What a chain gives a plan, base units; what it does not have is left out. */
export interface ChainNumbers {
  /** As near to the one that is wanted as it comes. */
  readonly magnification?: number;
  /** Of the chain as one lens: *f*, *HH′*, *h*, *P*, and f over its opening. */
  readonly focalLength?: number;
  readonly principalSeparation?: number;
  readonly frontPrincipalDepth?: number;
  /** None where the pupil is imaged upside down on its way: such a chain is no lens with two pupils. */
  readonly pupilMagnification?: number;
  readonly fNumber?: number;
  readonly workingDistance?: number;
  readonly effectiveFNumber?: number;
  /** What *N_w* the lens whose iris is set would come to, were it alone to limit the light; goes in step with its mark. */
  readonly irisEffectiveFNumber?: number;
  /** What *N_w* the other stops leave at the most, that iris wide open. */
  readonly openEffectiveFNumber?: number;
  readonly entrancePupilDistance?: number;
  readonly nearLimit?: number;
  readonly farLimit?: number;
}

/** A chain put together and set for a plan. */
export interface SetChain {
  /** Set as it is to be; the camera first. */
  readonly chain: Chain;
  readonly positions?: RigPositions;
  /** Which link each part of the engine belongs to. */
  readonly linkOf: readonly number[];
  readonly numbers: ChainNumbers;
  /** What each part is called in a drawing; '' for what needs no name. */
  readonly labels: readonly string[];
  /** All of it on one line, from the camera outwards. */
  readonly name: string;
  /** What is set on the lens, between its widest and its smallest mark. */
  readonly marked: number;
  /** Length of all rings and bellows in it, mm. */
  readonly extension: number;
  /** Why it gives nothing, or what of its text could not be used, in sentences. */
  readonly notices: readonly string[];
}

const kept = remembered<SetChain>(60);

/** The chain that *slug* stands for, set so that it gives what is asked: the best of a kit, or one that is spelled out. */
export function plannedChain(slug: string, asked: AskedOfChain): SetChain {
  const { chain, notices, edition } = chainBy(slug, asked);
  return kept(JSON.stringify([slug, edition, asked]), () => setChain(chain, asked, notices));
}

/** What a chain that an address spells out is called. */
export const spelledName = (text: string): string => nameOf(spelledChain(text).chain);

/** A chain as an address spells it out: its parts, for how they are set follows from the plan. */
export const textOf = ({ chain }: SetChain): string =>
  textOfChain(chain.map(({ thing, turned }) => ({ thing, ...(turned && { turned }) })));

/** What of a chain has a range, because something of its lenses is assumed: as the card prints it, and why. */
export interface Ranges {
  readonly texts: Readonly<Partial<Record<Ranged, string>>>;
  /** A sentence for each such lens. */
  readonly because: readonly string[];
}

/** What is said with its range. */
export type Ranged = 'working-distance' | 'effective-f-number';

/** The ranges of what a chain gives over all that its lenses may be; set for the size that is wanted each time. */
export function rangesOf(slug: string, asked: AskedOfChain): Ranges {
  const { chain } = plannedChain(slug, asked);
  const open = openLenses(chain);
  if (open.length === 0) return { texts: {}, because: [] };
  const all = waysOf(open, mostWays).map(
    (way) => setChain(chain, asked, [], (thing) => way.get(thing) ?? usualLens(thing)).numbers,
  );
  return {
    texts: rangeTexts({
      'working-distance': all.map(({ workingDistance }) => workingDistance),
      'effective-f-number': all.map(({ effectiveFNumber }) => effectiveFNumber),
    }),
    because: open.map(({ thing, lenses }) => `${thing.name}: ${leanWords(lenses)}.`),
  };
}

/** Ranges as they are printed, of answers that each possible lens gives or has not; what prints as one number has none. */
export function rangeTexts(
  answers: Readonly<Record<Ranged, readonly (number | undefined)[]>>,
): Readonly<Partial<Record<Ranged, string>>> {
  const texts = (Object.entries(answers) as [Ranged, readonly (number | undefined)[]][]).flatMap(([name, all]) => {
    const values = all.filter((value) => value !== undefined);
    if (values.length === 0) return [];
    const span = {
      usual: undefined,
      least: Math.min(...values),
      most: Math.max(...values),
      isOpen: values.length < all.length,
    };
    return isOneNumber(name, span) ? [] : [[name, `${rangeWords(name, span)}${span.isOpen ? ' or none' : ''}`]];
  });
  return Object.fromEntries(texts) as Readonly<Partial<Record<Ranged, string>>>;
}

/** A chain in words. */
const nameOf = (chain: Chain): string =>
  chain
    .slice(1)
    .map((link) => {
      const { thing, turned } = link;
      if (thing.isOwn) return turned ? `${thing.name}, turned` : thing.name;
      return thing.kind === 'ring' ? `ring ${shortName(link)}` : shortName(link);
    })
    .filter((name) => name !== '')
    .join(', ');

/** More ways than this are not tried with each other. */
const mostWays = 64;

/** That a lens has no such mark, and what is taken. */
function markInWords(lens: Thing, marked: number): string {
  const { least, most } = fNumbersOf(lens);
  const print = (fNumber: number) => printQuantity('f-number', fNumber);
  return `${lens.name} goes from ${print(least)} to ${print(most)}: ${print(marked)} is taken.`;
}

function setChain(
  plain: Chain,
  asked: AskedOfChain,
  notices: readonly string[],
  lensOf: (thing: Thing) => Lens = usualLens,
): SetChain {
  const main = mainLensAt(plain);
  const opened = main < 0 ? plain : plain.with(main, { ...plain[main]!, fNumber: asked.fNumber });
  const nothing = (why: string, chain = opened): SetChain => ({
    chain,
    linkOf: [],
    labels: [],
    name: nameOf(chain),
    numbers: {},
    marked: asked.fNumber,
    extension: 0,
    notices: [...notices, why],
  });
  const fault = faultIn(opened);
  if (fault) return nothing(`${opened[fault.at]!.thing.name}: ${fault.why}`);
  try {
    const rigOf = (chain: Chain) => assembleRig(partsOf(chain, asked.sensorWidth, lensOf).parts);
    const chain = focusedTo(opened, asked.magnification, rigOf, lensOf);
    const { parts, linkOf } = partsOf(chain, asked.sensorWidth, lensOf);
    const positions = rigPositions(assembleRig(parts));
    const marked = main < 0 ? asked.fNumber : fNumberOf(chain, main);
    return {
      chain,
      positions,
      linkOf,
      // A link of two parts is named at the second: the glass, not its seat.
      labels: linkOf.map((at, part) => (linkOf[part + 1] === at ? '' : shortName(chain[at]!))),
      name: nameOf(chain),
      numbers: { ...numbersOf(positions, asked.circleOfConfusion), ...irisOf(parts, linkOf.indexOf(main), marked) },
      marked,
      extension: lengthOf(parts, linkOf, chain),
      notices: marked === asked.fNumber ? notices : [...notices, markInWords(chain[main]!.thing, marked)],
    };
  } catch (error) {
    if (error instanceof ImpossibleChain) return nothing(`This chain cannot be built: ${error.reason}.`);
    if (error instanceof OutOfRange) return nothing(refusalInWords(error));
    throw error;
  }
}

/** As the engine takes it, on the camera that the plan is for. */
function partsOf(chain: Chain, sensorWidth: number, lensOf: (thing: Thing) => Lens) {
  const { parts, linkOf } = engineChain(chain, lensOf);
  const camera = { ...parts[0]!, sensorWidth, sensorHeight: (2 / 3) * sensorWidth } as Part;
  return { parts: [camera, ...parts.slice(1)], linkOf };
}

/** Far beyond any mark, where nothing but the iris limits; and far before the first. */
const [shut, wide] = [2 ** 12, 2 ** -4];

/** What limits the light besides the iris that is set. */
function irisOf(
  parts: readonly Part[],
  iris: number,
  marked: number,
): Pick<ChainNumbers, 'irisEffectiveFNumber' | 'openEffectiveFNumber'> {
  if (iris < 0) return {};
  const at = (fNumber: number) => {
    const { solved } = rigPositions(assembleRig(parts.with(iris, { ...parts[iris]!, fNumber } as Part)));
    return solved.sharpPlane === 'in front' || solved.sharpPlane === 'inside' ? solved.effectiveFNumber : undefined;
  };
  const closed = at(shut);
  const open = at(wide);
  return {
    ...(closed !== undefined && { irisEffectiveFNumber: (closed * marked) / shut }),
    ...(open !== undefined && { openEffectiveFNumber: open }),
  };
}

const spacers = ['ring', 'bellows', 'reversing-ring', 'coupling-ring'];

/** The seat of a close-up lens is no ring that anybody puts there. */
const lengthOf = (parts: readonly Part[], linkOf: readonly number[], chain: Chain) =>
  parts.reduce(
    (sum, part, at) =>
      sum + ('extension' in part && spacers.includes(chain[linkOf[at]!]!.thing.kind) ? part.extension : 0),
    0,
  );

/** Two ways to one number agree within this: rounding. */
const alike = 1e-9;

function numbersOf({ solved, whole, entrancePupil, foremost }: RigPositions, circle: number): ChainNumbers {
  if (solved.sharpPlane !== 'in front' && solved.sharpPlane !== 'inside') return {};
  // Upright, the subject is seen through a picture inside the chain: that is no picture of a thing before it.
  if (solved.upright) return {};
  const { magnification, workingDistance, effectiveFNumber, inverseEntrancePupilDistance } = solved;
  const sharp: ChainNumbers = {
    magnification,
    workingDistance,
    effectiveFNumber,
    ...(inverseEntrancePupilDistance > 0 && { entrancePupilDistance: 1 / inverseEntrancePupilDistance }),
    ...limitsOfCone(solved, circle),
  };
  if (!whole || !(whole.focalLength > 0)) return sharp;
  const { focalLength } = whole;
  const lens: ChainNumbers = {
    ...sharp,
    focalLength,
    principalSeparation: whole.frontPrincipal - whole.rearPrincipal,
    frontPrincipalDepth: foremost - whole.frontPrincipal,
  };
  if (!entrancePupil) return lens;
  // u = f (1/m + 1/P) says P; it is one where N_w = N (1 + m/P) says the same of the cone.
  const pupilMagnification = 1 / (1 / (inverseEntrancePupilDistance * focalLength) - 1 / magnification);
  const fNumber = focalLength / entrancePupil.diameter;
  const asLens = fNumber * (1 + magnification / pupilMagnification);
  const isLens = pupilMagnification > 0 && Math.abs(asLens / effectiveFNumber - 1) < 1e3 * alike;
  return isLens ? { ...lens, pupilMagnification, fNumber } : lens;
}
