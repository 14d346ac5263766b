import type { AnswerSpan } from '#core/rig/assumed/span-over.ts';
import { usualLens, type Chain } from '#site/chain/chain.ts';
import { openLenses, waysOf, type Way } from '#site/chain/open-lenses.ts';
import { isOneNumber, leanWords } from '#site/kit/range-words.ts';
import { builtChain, type AnsweredName, type BuiltChain } from './answers.ts';
import type { Conditions } from './conditions.ts';

/** Between what answers lie because something of a lens is assumed or measured with an error, and what that is, a sentence for each such lens. */
export interface Ranges {
  readonly spans: Readonly<Partial<Record<AnsweredName, AnswerSpan>>>;
  readonly because: readonly string[];
}

/** So many chains are asked at most; where two lenses are open in many ways each is tried with the other as usual. */
const most = 128;

/** The ranges of a chain's answers; none where everything about its lenses is known. */
export function rangesOf(chain: Chain, { answers: usual }: BuiltChain, conditions: Conditions): Ranges {
  const open = openLenses(chain);
  if (open.length === 0) return { spans: {}, because: [] };
  const all = waysOf(open, most).map((way) => builtWith(chain, conditions, way)?.answers);
  const spans: Partial<Record<AnsweredName, AnswerSpan>> = {};
  for (const name of Object.keys(usual) as AnsweredName[]) {
    const span = spanOf(
      name,
      usual[name],
      all.map((answers) => answers?.[name]),
    );
    if (span) spans[name] = span;
  }
  const because = open.map(({ thing, lenses }) => `${thing.name}: ${leanWords(lenses)}.`);
  return { spans, because };
}

/** The range of the f-number that *find* takes for the best; undefined where it is one number. It takes too long for a hand that moves. */
export function bestRange(
  chain: Chain,
  conditions: Conditions,
  usual: number,
  find: (chain: Chain, built: BuiltChain, conditions: Conditions) => number | null | undefined,
): AnswerSpan | undefined {
  const open = openLenses(chain);
  if (open.length === 0) return undefined;
  const all = waysOf(open, most).map((way) => {
    const built = builtWith(chain, conditions, way);
    return built && (find(chain, built, conditions) ?? undefined);
  });
  return spanOf('best-f-number', usual, all);
}

/** Undefined where it prints as one number. */
function spanOf(
  name: AnsweredName,
  usual: number | undefined,
  all: readonly (number | undefined)[],
): AnswerSpan | undefined {
  const values = all.filter((value) => value !== undefined);
  if (values.length === 0) return undefined;
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const span = { usual, least, most, isOpen: values.length < all.length };
  return isOneNumber(name, span) ? undefined : span;
}

/** Undefined where a chain with such lenses cannot be built. */
function builtWith(chain: Chain, conditions: Conditions, way: Way): BuiltChain | undefined {
  const built = builtChain(chain, conditions, (thing) => way.get(thing) ?? usualLens(thing));
  return built.kind === 'built' ? built : undefined;
}
