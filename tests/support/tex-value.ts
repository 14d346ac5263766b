import { compile, ComputeEngine } from '@cortex-js/compute-engine';
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
  const known = evaluators.get(tex) ?? evaluatorOf(tex);
  evaluators.set(tex, known);
  return known;
}

/** By the expression: a fresh library takes longer to set up than an expression to be evaluated a hundred times. */
const evaluators = new Map<string, TexValue>();

function evaluatorOf(tex: string): TexValue {
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

  // Compiled, for interpreting an expression takes a hundred times as long, and some are asked for thousands of values.
  const { run, success } = compile(parsed);
  if (!success || !run) throw new Error(`cannot compile ${tex}`);
  return (values) => {
    const named = Object.fromEntries([...nameOf].map(([id, name]) => [name, values[id]!]));
    const { re, im } = complex(run(named));
    if (!Number.isFinite(re) || im !== 0) throw new Error(`${tex} is ${re} + ${im}i at ${JSON.stringify(values)}`);
    return re;
  };
}

/** What a compiled expression gives: a number, or its two parts where it may have left the real ones. */
function complex(value: unknown): { readonly re: number; readonly im: number } {
  return typeof value === 'number' ? { re: value, im: 0 } : (value as { re: number; im: number });
}

/** 0, 1, ... 25, 26 as a, b, ... z, ba: names of letters only, which the library takes for one symbol. */
function letters(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26)) + last;
}
