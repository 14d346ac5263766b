import type { Linter } from 'eslint';
import { exceptions, layers, testFiles, type Exception, type Layer } from './directions.ts';

interface Pattern {
  readonly regex: string;
  readonly message: string;
}

const code = '*.{ts,svelte,astro}';

const everywhere: readonly Pattern[] = [
  {
    regex: '^(\\.\\./)+(core|site|lessons|tests)/',
    message: 'From one layer to another write #core/…, #site/… or #tests/…, so that the direction can be read.',
  },
  { regex: '^[.#].*/[^./]+$', message: 'Write the file extension: the core runs without a build.' },
];

const literally = (specifier: string) => specifier.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

/** Matches what `pattern` matches, apart from the listed specifiers. */
const apartFrom = (specifiers: readonly string[], pattern: string) =>
  specifiers.length === 0 ? `^${pattern}` : `^(?!(?:${specifiers.map(literally).join('|')})$)${pattern}`;

function directionsOf(layer: Layer, inTest: boolean, allowed: readonly Exception[] = []): Pattern[] {
  const mayImport = [...layer.mayImport, ...(inTest ? ['tests'] : [])];
  const but = allowed.map(({ imports }) => imports);
  const names = mayImport.map((name) => `#${name}/`).join(', ');
  const patterns = [
    {
      regex: apartFrom(but, `#(?!(?:${mayImport.join('|')})/)`),
      message: `${layer.folder}/ imports ${names} and nothing above.`,
    },
  ];
  if (layer.packages !== 'any' && !inTest) {
    const known = layer.packages.length === 0 ? '' : `(?!(?:${layer.packages.map(literally).join('|')})(?:/|$))`;
    const which = layer.packages.join(', ') || 'no package and nothing of the platform';
    patterns.push({ regex: apartFrom(but, `${known}[^.#]`), message: `${layer.folder}/ imports ${which}.` });
  }
  return patterns;
}

const block = (name: string, files: string[], patterns: readonly Pattern[]): Linter.Config => ({
  name: `layers/${name}`,
  files,
  rules: { 'no-restricted-imports': ['error', { patterns: [...everywhere, ...patterns] }] },
});

/** A file directly in a lesson's folder climbs out of it with one `../`, a file in `figures/` with two. */
function lessonBlocks(layer: Layer): Linter.Config[] {
  return ['../', '../../'].flatMap((climb, depth) => {
    const folder = `lessons/*/${'*/'.repeat(depth)}`;
    const sideways = {
      regex: `^${literally(climb)}`,
      message: 'No lesson imports another; what two share belongs in site/.',
    };
    return [
      block(`lessons, depth ${depth}`, [folder + code], [...directionsOf(layer, false), sideways]),
      block(`tests of lessons, depth ${depth}`, [`${folder}*.test.ts`], [...directionsOf(layer, true), sideways]),
    ];
  });
}

/** The directions of the layers as settings of ESLint's own rule, later blocks replacing earlier ones. */
export const importRules: Linter.Config[] = [
  block('everything', [`**/${code}`], []),
  ...layers.flatMap((layer) =>
    layer.folder === 'lessons'
      ? lessonBlocks(layer)
      : [
          block(layer.folder, [`${layer.folder}/**/${code}`], directionsOf(layer, false)),
          block(`tests of ${layer.folder}`, [`${layer.folder}/${testFiles}`], directionsOf(layer, true)),
        ],
  ),
  ...layers.flatMap((layer) =>
    Object.entries(Object.groupBy(exceptions, ({ file }) => file))
      .filter(([file]) => file.startsWith(`${layer.folder}/`))
      .map(([file, allowed]) => block(file, [file.replaceAll(/[[\]]/g, '\\$&')], directionsOf(layer, false, allowed))),
  ),
];
