import { OutOfRange } from '#core/quantity/errors.ts';
import { evaluateFormula, type Formula } from '#core/quantity/formula.ts';
import { printQuantity } from '#core/quantity/print.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Chain } from '#site/chain/chain.ts';
import { formulaLine } from '#site/state/formula-line.ts';
import type { AnsweredName, BuiltChain } from './answers.ts';
import type { ShownStep } from '#site/check/check.ts';
import type { Conditions } from './conditions.ts';
import { ways, type Way } from './formulas.ts';
import { asOneLens, driftOf, givenBy, kindOf } from './set-up.ts';

/** How an answer follows: from what, and by which formulas; without formulas, what it is. */
export interface Working {
  readonly from: 'parts' | 'one lens' | 'engine' | 'nothing';
  readonly words: string;
  readonly steps: readonly ShownStep[];
}

type Known = Readonly<Partial<Record<string, number>>>;

/** A short formula counts where it gives what the engine gives, to rounding. */
const agreed = 1e-6;

const from = {
  parts: 'From the numbers of the parts.',
  'one lens':
    'No short formula knows this chain. All of it together acts as one lens, whose numbers follow from two rays traced through every part; with those:',
  engine: 'The numbers put in follow from two rays traced through every part of the chain.',
} as const;

const alsoTraced = 'Where the pupil stands is traced through every part.';

const traced: Readonly<Partial<Record<AnsweredName, string>>> = {
  'focal-length':
    'Two rays are traced through every part; from where they cross, the chain acts as one lens of this focal length.',
  'principal-separation':
    'Two rays are traced through every part; H and H′ of the whole chain are where they seem to bend.',
  'image-distance': 'Two rays are traced through every part; H′ of the whole chain is so far before the sensor.',
  'best-f-number':
    'At every full stop the contrast of detail as fine as the circle of confusion is computed over the subject’s whole depth; the stop that leaves most where there is least is the best.',
  'f-number': 'It is marked on the part whose opening limits the light.',
};

/** The mark is read by a step of this working. */
const readsMark = ({ formula }: ShownStep) =>
  ways.some(({ id, formula: { from } }) => id === formula && (from as readonly QuantityName[]).includes(mark));

const mark: QuantityName = 'f-number';

/** Why *N* of a working is not what is marked on the lens; empty where it is. */
function driftInWords(chain: Chain, built: BuiltChain): string {
  const drift = driftOf(built);
  if (!drift) return '';
  const [marked, open] = [drift.marked, drift.byOpening].map((value) => printQuantity(mark, value));
  if (marked === open) return '';
  const { name } = chain[built.linkOf[drift.at]!]!.thing;
  return `N here is ${open}, though ${name} is marked ${marked}: set so close its focal length is another, and N is that over the opening as the light finds it. Stops are counted from the mark.`;
}

/** What is traced, and no formula gives. */
const tracedWords =
  'Two rays are traced through every part of the chain, one after the other; no short formula gives it.';

/**
 * How an answer of a chain follows, in formulas with the chain's numbers.
 *
 * The formulas of its set-up are tried first, then those of the chain as one lens, then any one formula between answers of the engine. One is shown only
 * where it gives what the engine gives.
 */
export function workingOf(name: AnsweredName, chain: Chain, built: BuiltChain, conditions: Conditions): Working {
  const { answers } = built;
  const kind = kindOf(built);
  const far: Known = built.positions.solved.sharpPlane === 'at infinity' ? { magnification: 0 } : {};
  if (kind !== 'other') {
    const given = { ...givenBy(chain, built, conditions, kind), ...far };
    const found = route(name, given, { ...answers, ...pupils(built) }, seenOfPupils(built), []);
    if (found && found.steps.length > 0) {
      const drift = found.steps.some((step) => readsMark(step)) ? driftInWords(chain, built) : '';
      const words = [from.parts, drift, found.hasTraced ? alsoTraced : ''].filter((one) => one !== '').join(' ');
      return { from: 'parts', words, steps: found.steps };
    }
  }
  const lens = asOneLens(chain, built, conditions);
  if (lens && !traced[name]) {
    const found = route(name, { ...lens, ...far }, { ...answers, ...unmarked }, {}, []);
    if (found && found.steps.length > 0) return { from: 'one lens', words: from['one lens'], steps: found.steps };
  }
  const { [name]: _, ...others } = answers;
  const known: Known = { ...givenBy(chain, built, conditions, 'other'), ...others, ...pupils(built) };
  const step = oneStep(name, known, answers, ['working-distance', 'magnification']);
  if (step) return { from: 'engine', words: from.engine, steps: [step] };
  return { from: 'nothing', words: traced[name] ?? tracedWords, steps: [] };
}

/** Of the chain as one lens N is f over its entrance pupil, whatever is marked on its lenses. */
const unmarked = { 'f-number': undefined };

/** What cones take of the engine. */
function pupils({ positions }: BuiltChain): Known {
  const { solved } = positions;
  const isSharp = solved.sharpPlane === 'in front' || solved.sharpPlane === 'inside';
  return isSharp ? { 'inverse-entrance-pupil-distance': solved.inverseEntrancePupilDistance } : {};
}

/** From how far the light comes, which short formulas do not say of every set-up. */
function seenOfPupils(built: BuiltChain): Known {
  const { 'entrance-pupil': pupil, 'entrance-pupil-distance': distance } = built.answers;
  return { ...pupils(built), 'entrance-pupil': pupil, 'entrance-pupil-distance': distance };
}

interface Found {
  readonly steps: readonly ShownStep[];
  /** Something on the way is the engine's. */
  readonly hasTraced: boolean;
  readonly known: Known;
}

/** Steps to a quantity from what is given; where no formulas lead there and agree, as it was traced, if that may be. Else undefined. */
function route(
  name: QuantityName,
  given: Known,
  engine: Known,
  tracedAsWell: Known,
  on: readonly QuantityName[],
): Found | undefined {
  if (given[name] !== undefined) return { steps: [], hasTraced: false, known: given };
  if (on.includes(name)) return undefined;
  for (const way of ways.filter(({ gives }) => gives === name)) {
    let found: Found | undefined = { steps: [], hasTraced: false, known: given };
    for (const letter of lettersOf(way)) {
      const next: Found | undefined = route(letter, found.known, engine, tracedAsWell, [...on, name]);
      if (!next) {
        found = undefined;
        break;
      }
      found = {
        steps: [...found.steps, ...next.steps],
        hasTraced: found.hasTraced || next.hasTraced,
        known: next.known,
      };
    }
    if (!found) continue;
    const value = valueBy(way, found.known);
    if (value === undefined || !agrees(value, engine[name])) continue;
    const known = { ...found.known, [name]: value };
    return { ...found, steps: [...found.steps, stepOf(way, value, known)], known };
  }
  const seen = on.length > 0 ? tracedAsWell[name] : undefined;
  return seen === undefined ? undefined : { steps: [], hasTraced: true, known: { ...given, [name]: seen } };
}

/** One formula from what the engine gives; those that would only turn the question round are left out. */
function oneStep(name: QuantityName, known: Known, engine: Known, never: readonly string[]): ShownStep | undefined {
  if (never.includes(name)) return undefined;
  for (const way of ways) {
    if (way.gives !== name || way.solved) continue;
    const value = valueBy(way, known);
    if (value !== undefined && agrees(value, engine[name])) return stepOf(way, value, { ...known, [name]: value });
  }
  return undefined;
}

const lettersOf = ({ formula, gives, solved }: Way): readonly QuantityName[] =>
  solved ? [formula.gives, ...formula.from].filter((letter) => letter !== gives) : formula.from;

function valueBy(way: Way, known: Known): number | undefined {
  if (lettersOf(way).some((letter) => known[letter] === undefined)) return undefined;
  try {
    const all = known as Readonly<Record<string, number>>;
    const value = way.solved ? way.solved(all) : evaluateFormula(way.formula as unknown as Formula, all as never);
    return Number.isNaN(value) ? undefined : value;
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

/** What the engine does not know cannot disagree. */
const agrees = (value: number, engine: number | undefined) =>
  engine === undefined || value === engine || Math.abs(value - engine) <= agreed * Math.max(Math.abs(engine), 1e-3);

const stepOf = ({ id, formula, gives, solved }: Way, value: number, known: Known): ShownStep => ({
  formula: id,
  gives,
  value,
  isBackwards: solved !== undefined,
  says: formula.says,
  line: formulaLine(formula, known),
});
