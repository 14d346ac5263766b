import { requireName, type Scaffold } from './scaffold.ts';

/** An outside check. Until its row says why its tolerance is what it is, and ours answers, its test fails. */
export function check([name = '']: readonly string[]): Scaffold {
  requireName(name, 'Write: npm run scaffold -- check <name>, e.g. npm run scaffold -- check thin-lens-textbook');
  const folder = `tests/reference/${name}`;
  return {
    files: {
      [`${folder}/PROVENANCE.md`]: provenance,
      [`${folder}/cases.json`]: cases(name),
      [`${folder}/ours.ts`]: ours(name),
      [`${folder}/${name}.test.ts`]: test,
    },
    next: [
      `Name the source in ${folder}/PROVENANCE.md: what was read, what is from memory, under which licence.`,
      `Put what it prints into ${folder}/cases.json, and what the core makes of it into ${folder}/ours.ts.`,
      `npx vitest run tests/reference; the Sources page shows the check by itself.`,
    ],
  };
}

const provenance = `# ⟨… what is compared, in a few words⟩

⟨… what the source prints, in one sentence⟩

- ⟨… author, work, edition, page⟩

**Read:** ⟨…⟩ **From memory:** ⟨…⟩

**Conventions translated:** ⟨… or take this line out⟩

**Licence:** ⟨…⟩
`;

const cases = (name: string) => `[
  {
    "id": "${name}-1",
    "title": "⟨… what this row shows⟩",
    "kind": "published",
    "sourceText": "read",
    "source": "",
    "inputs": { "focalLength": "50 mm" },
    "expected": { "subjectDistance": "0 mm" },
    "tolerance": 0,
    "because": ""
  }
]
`;

const ours = (name: string) => `interface Given {
  focalLength: number;
}

/** What the core makes of a row, in base units: the keys of its \`expected\`. */
export function ours(given: Given): { subjectDistance: number } {
  throw new Error(\`${name} has no answer yet for \${JSON.stringify(given)}\`);
}
`;

const test = `import { describeReference } from '#tests/support/reference.ts';
import cases from './cases.json';
import { ours } from './ours.ts';

describeReference(cases, ours);
`;
