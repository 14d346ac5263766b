import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { camelCase } from '#core/quantity/formula.ts';
import { isQuantityId, quantityIds, quantityOf, type QuantityId } from '#core/quantity/vocabulary.ts';
import { root } from '../run.ts';
import { requireName, Refusal, type Scaffold } from './scaffold.ts';

const usage =
  'Write: npm run scaffold -- formula <topic>/<name> <input> <input> …, e.g. gaussian/field-width sensor-width magnification';

/** A formula of the core and its test. Until the function is written and the four sentences are proved, the tests fail. */
export function formula([path = '', ...inputs]: readonly string[]): Scaffold {
  const [topic = '', id = ''] = path.split('/');
  requireName(topic, usage);
  requireName(id, usage);
  if (!existsSync(join(root, 'core', topic))) throw new Refusal(`core/ has no topic "${topic}". ${usage}`);
  if (inputs.length === 0) throw new Refusal(`A formula has inputs. ${usage}`);
  const unknown = inputs.find((input) => !isQuantityId(input));
  const gives = quantityIn(id);
  if (unknown !== undefined || gives === undefined) {
    throw new Refusal(
      `The vocabulary has no "${unknown ?? id}": add its row to core/quantity/vocabulary.ts first, or use the id it has.`,
    );
  }
  const file = `core/${topic}/${id}.formula`;
  return {
    files: { [`${file}.ts`]: source(id, gives, inputs as QuantityId[]), [`${file}.test.ts`]: test(id, inputs) },
    next: [
      `Write the docstring, the function and the TeX in ${file}.ts.`,
      `Prove the four sentences in ${file}.test.ts, and derive the formula in core/${topic}/README.md.`,
      `npx vitest run core/${topic} tests/physics`,
    ],
  };
}

/** The longest id with which a formula's name begins or ends: `magnification` in `magnification-from-extension`. */
function quantityIn(name: string): QuantityId | undefined {
  const found = quantityIds.filter((id) => `${name}-`.startsWith(`${id}-`) || name.endsWith(`-${id}`));
  return found.sort((a, b) => b.length - a.length)[0];
}

const unitOf = (id: QuantityId) => quantityOf(id).base || 'a pure number';

function source(id: string, gives: QuantityId, inputs: readonly QuantityId[]): string {
  const name = camelCase(id);
  const quoted = inputs.map((input) => `'${input}'`);
  const parameters = inputs.map((input) => {
    const { symbol, name: words } = quantityOf(input);
    return ` * @param given.${camelCase(input)} *${symbol || words}*, ⟨… what it is here⟩; ${unitOf(input)}, above 0`;
  });
  return `import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = ${quoted.join(' | ')};

/**
 * The ${quantityOf(gives).name} ⟨… one sentence⟩
 *
 * ${quantityOf(gives).symbol || quantityOf(gives).name} = ⟨… in the letters of the vocabulary⟩
 *
${parameters.join('\n')}
 * @returns *${quantityOf(gives).symbol || quantityOf(gives).name}*, ${unitOf(gives)}. Not ⟨… what it could be taken for⟩
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes ⟨…⟩
 * Source: ⟨… book, clause or paper⟩. Derived in [README](README.md#⟨…⟩).
 *
 * @example ${name}(⟨…⟩) // ⟨…⟩
 */
export function ${name}({ ${inputs.map(camelCase).join(', ')} }: Named<Inputs>): number {
${inputs.map((input) => `  requirePositive('${input}', ${camelCase(input)});`).join('\n')}
  throw new Error('${name} is not written yet');
}

export const ${name}Formula = {
  gives: '${gives}',
  from: [${quoted.join(', ')}],
  tex: String.raw\`\\q{${gives}} = ${inputs.map((input) => `\\q{${input}}`).join(' + ')}\`,
  evaluate: ${name},
  says: '⟨… one line of plain words⟩',
  source: '⟨… where it is printed⟩',
  checkedBy: ['⟨… folders of its outside checks in tests/reference/⟩'],
} as const satisfies Formula<Inputs>;
`;
}

function test(id: string, inputs: readonly string[]): string {
  const name = camelCase(id);
  const given = inputs.map((input) => `${camelCase(input)}: 1`).join(', ');
  return `import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { ${name} } from './${id}.formula.ts';

const example = { ${given} };

describe('${name}', () => {
  it('⟨… is this for that: one worked number, from the source⟩', () => {
    expect(${name}(example)).toBe('the number that the source prints');
  });

  it('⟨… doubles, stays, falls with the square: one law⟩', () => {
    expect.fail('State the law in the title and prove it.');
  });

  it('⟨… tends to this as that: one limit⟩', () => {
    expect.fail('State the limit in the title and prove it.');
  });

  it('refuses a ${inputs[0]} of zero by name', () => {
    expect(() => ${name}({ ...example, ${camelCase(inputs[0] as string)}: 0 })).toThrow(OutOfRange);
    expect(() => ${name}({ ...example, ${camelCase(inputs[0] as string)}: 0 })).toThrow(/${inputs[0]} is 0/);
  });
});
`;
}
