import type { Chosen, Step } from './answer-step.ts';
import { camelCase, type Formula } from './formula.ts';
import type { QuantityName } from './vocabulary.ts';

/**
 * A formula by other names: it takes and gives these, and its line and its TeX, where it has one, speak of them.
 *
 * @param plain the formula, or a step that gives one answer
 * @param names.from in the order of *plain*'s own
 * @param names.keys what the function of *plain* calls what it takes, in the same order
 */
export function renamed<Name extends QuantityName>(
  plain: Step,
  {
    gives,
    from,
    keys,
  }: { readonly gives: Name; readonly from: readonly QuantityName[]; readonly keys: readonly string[] },
): Step<Name> {
  const theirs = from.map(camelCase);
  const call =
    <Result>(evaluate: (given: never, chosen: Chosen) => Result) =>
    (given: Readonly<Record<string, number>>, chosen: Chosen): Result =>
      evaluate(Object.fromEntries(keys.map((key, at) => [key, given[theirs[at]!]])) as never, chosen);
  const { tex, holds, constant } = plain as Partial<Formula<never>>;
  const names = new Map<string, string>(plain.from.map((name, at) => [name, from[at]!]));
  names.set(plain.gives as string, gives);
  return {
    gives,
    from,
    evaluate: call(plain.evaluate),
    // Pages print it while they are built; readers' browsers have none.
    ...(tex !== undefined && {
      tex: tex.replace(/\\q\{([a-z.-]+)\}/g, (_, name: string) => `\\q{${names.get(name)!}}`),
      says: (plain as Formula<never>).says,
    }),
    ...(holds && { holds: call(holds) }),
    ...(constant && { constant }),
  };
}
