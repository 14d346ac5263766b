import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { camelCase } from '#core/quantity/formula.ts';
import { isQuantityId, quantityIds, quantityOf, type QuantityId } from '#core/quantity/vocabulary.ts';
import { root } from '../run.ts';
import { requireName, Refusal, type Scaffold } from './scaffold.ts';
import { filledTemplates } from './template.ts';

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
  const texts = filledTemplates('formula', marksOf(id, gives, inputs as QuantityId[]));
  return {
    files: { [`${file}.ts`]: texts['formula.ts']!, [`${file}.test.ts`]: texts['formula.test.ts']! },
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

function marksOf(id: string, gives: QuantityId, inputs: readonly QuantityId[]): Readonly<Record<string, string>> {
  const lines = (line: (input: QuantityId) => string, between = '\n') => inputs.map(line).join(between);
  const nameOf = (input: QuantityId) => quantityOf(input).symbol || quantityOf(input).name;
  return {
    id,
    name: camelCase(id),
    gives,
    givesName: quantityOf(gives).name,
    symbol: nameOf(gives),
    unit: unitOf(gives),
    union: lines((input) => `'${input}'`, ' | '),
    list: lines((input) => `'${input}'`, ', '),
    names: lines(camelCase, ', '),
    parameters: lines(
      (input) =>
        ` * @param given.${camelCase(input)} *${nameOf(input)}*, ⟨… what it is here⟩; ${unitOf(input)}, above 0`,
    ),
    requires: lines((input) => `  requirePositive('${input}', ${camelCase(input)});`),
    texGives: `\\q{${gives}}`,
    tex: lines((input) => `\\q{${input}}`, ' + '),
    ones: lines((input) => `${camelCase(input)}: 1`, ', '),
    first: inputs[0]!,
    firstName: camelCase(inputs[0]!),
  };
}
