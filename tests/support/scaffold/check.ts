import { requireName, type Scaffold } from './scaffold.ts';
import { filledTemplates } from './template.ts';

/** An outside check. Until its row says why its tolerance is what it is, and ours answers, its test fails. */
export function check([name = '']: readonly string[]): Scaffold {
  requireName(name, 'Write: npm run scaffold -- check <name>, e.g. npm run scaffold -- check thin-lens-textbook');
  const folder = `tests/reference/${name}`;
  const { 'check.test.ts': test = '', ...texts } = filledTemplates('check', { name });
  const files = Object.entries({ ...texts, [`${name}.test.ts`]: test });
  return {
    files: Object.fromEntries(files.map(([file, text]) => [`${folder}/${file}`, text])),
    next: [
      `Name the source in ${folder}/PROVENANCE.md: what was read, what is from memory, under which licence.`,
      `Put what it prints into ${folder}/cases.json, and what the core makes of it into ${folder}/ours.ts.`,
      `npx vitest run tests/reference; the Sources page shows the check by itself.`,
    ],
  };
}
