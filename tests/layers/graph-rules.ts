import type { IForbiddenRuleType, IRegularForbiddenRuleType } from 'dependency-cruiser';
import { layers, type Layer } from './directions.ts';

const inTest = '\\.test\\.ts$';
const anyOf = (names: readonly string[]) => `(?:${names.join('|')})`;

function directionsOf({ folder, mayImport, packages }: Layer): IForbiddenRuleType[] {
  // A lesson is a layer of its own: $1 is the one that imports.
  const [from, own] = folder === 'lessons' ? ['^lessons/([^/]+)/', 'lessons/$1'] : [`^${folder}/`, folder];
  const below = anyOf([own, ...mayImport]);
  const rule = (name: string, test: boolean, to: IRegularForbiddenRuleType['to']): IForbiddenRuleType => ({
    name,
    severity: 'error',
    from: { path: from, ...(test ? { path: `${from}.*${inTest}` } : { pathNot: inTest }) },
    to,
  });
  const ofProject = '^(?:core|site|lessons|tests)/';
  return [
    rule(`${folder}: only what lies below`, false, { path: ofProject, pathNot: `^${below}/` }),
    rule(`${folder}: only what lies below, and tests/`, true, {
      path: ofProject,
      pathNot: `^${anyOf([below, 'tests'])}/`,
    }),
    ...(packages === 'any'
      ? []
      : [
          rule(`${folder}: packages`, false, {
            pathNot: [ofProject, '^[.#]', ...packages.map((name) => `^${name}(?:/|$)`)],
          }),
        ]),
  ];
}

/** What no import in the project may be. */
export const forbidden: IForbiddenRuleType[] = [
  { name: 'no circle', severity: 'error', from: {}, to: { circular: true } },
  { name: 'nothing that is not there', severity: 'error', from: {}, to: { path: '^[.#]', couldNotResolve: true } },
  ...layers.flatMap(directionsOf),
];
