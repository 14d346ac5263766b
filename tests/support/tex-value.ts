import { ComputeEngine } from '@cortex-js/compute-engine';
import { quantitiesIn } from './every-formula.ts';

/** Evaluates the expression it was made from for values keyed by quantity id. */
export type TexValue = (values: Readonly<Record<string, number>>) => number;

/**
 * Reads an expression in TeX, its quantities written `\q{id}`, with an algebra library that shares no code with ours.
 *
 * Left to itself the library misreads in silence: `c(1+m)` as a call, `s'` as a derivative, `i` and `e` as constants.
 * So each quantity becomes a plain name declared real, no bare letter may remain, and the library is fresh for each expression.
 *
 * Throws on a bare letter or prime and on what the library cannot parse; the evaluator throws where the result is no real number.
 */
export function texValue(tex: string): TexValue {
  const stray = /[A-Za-z']/.exec(tex.replaceAll(/\\q\{[^}]*\}|\\operatorname\{[a-z]+\}|\\[A-Za-z]+/g, ''));
  if (stray)
    throw new Error(`a bare ${stray[0]} in ${tex}: quantities are written \\q{id}, the exponential \\exp(...)`);

  const ids = quantitiesIn(tex);
  const nameOf = new Map(ids.map((id, index) => [id as string, `q${letters(index)}`]));
  const engine = new ComputeEngine();
  for (const name of nameOf.values()) engine.declare(name, 'real');

  const parsed = engine.parse(tex.replaceAll(/\\q\{([^}]*)\}/g, (_, id: string) => `\\mathrm{${nameOf.get(id)}}`));
  const known = new Set([...nameOf.values(), 'Pi', 'ExponentialE']);
  const unknown = parsed.symbols.filter((symbol) => !known.has(symbol));
  if (!parsed.isValid || unknown.length > 0) throw new Error(`cannot read ${tex}: ${JSON.stringify(parsed.json)}`);

  return (values) => {
    for (const [id, name] of nameOf) engine.assign(name, values[id]!);
    const { re, im } = parsed.N();
    if (!Number.isFinite(re) || im !== 0) throw new Error(`${tex} is ${re} + ${im}i at ${JSON.stringify(values)}`);
    return re;
  };
}

/** 0, 1, ... 25, 26 as a, b, ... z, ba: names of letters only, which the library takes for one symbol. */
function letters(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26)) + last;
}
