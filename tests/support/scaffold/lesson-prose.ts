import { parts, type PartName } from '#site/parts/parts.ts';
import type { FormulaFile } from '../every-formula.ts';

/** The prose of a lesson: its nine parts in their order, and safety to keep or to take out. */
export function prose(question: string, { name, path, formula }: FormulaFile): string {
  const text: Readonly<Record<PartName, string>> = {
    question: `⟨… what is at stake, in two sentences⟩

<Predict
  question="⟨… a question to commit to⟩"
  options={['⟨… one⟩', '⟨… another⟩']}
  holds={0}
  shows="?"
  answer="⟨… why⟩"
/>`,
    figure: `<Island is="bench">
  <Bench />
</Island>`,
    idea: `⟨… the idea in plain words⟩ It now is <Live q="${formula.gives}" numbers={here} />.`,
    formula: `⟨… what the formula says⟩

<Formula of={${name}Formula} numbers={here} />`,
    example: `<Example>

<div class="crate-only">

**⟨… the case, on the kit of the crate⟩**

</div>

<Formula of={${name}Formula} numbers={example} brief />

</Example>`,
    'hands-on': `⟨… what to photograph, what to expect, how to measure whether it came true⟩`,
    check: `⟨… one sentence about the problems⟩

<Island is="check">
  <Check />
</Island>
<Workings families={families} />`,
    limits: `- **⟨… what was left out.⟩** ⟨… how much it matters⟩`,
    instructor: `⟨… minutes, what to have on the table⟩

<StageSteps stage={stage} at={(set) => bench.atStep(set)} />

**⟨… “A likely question”⟩** ⟨… its answer⟩`,
    safety: `⟨… the usual cautions; take this part out where nothing can hurt⟩`,
  };
  const sections = (Object.keys(parts) as PartName[]).map((part) => `<Part is="${part}">\n\n${text[part]}\n\n</Part>`);
  return `---
question: ${question}
summary: ⟨… one sentence, what the reader will be able to do⟩
minutes: 20
leansOn: []
---

import { ${name}Formula } from '#${path}';
import Formula from '#site/controls/formula/Formula.astro';
import Live from '#site/controls/formula/Live.astro';
import Predict from '#site/controls/predict/Predict.astro';
import Island from '#site/islands/Island.astro';
import Example from '#site/parts/Example.astro';
import Part from '#site/parts/Part.astro';
import StageSteps from '#site/parts/StageSteps.astro';
import Workings from '#site/controls/practice/Workings.astro';
import { bench } from './bench.svelte.ts';
import Bench from './figures/Bench.svelte';
import Check from './figures/Check.svelte';
import Islands from './figures/Islands.astro';
import { families } from './problems.ts';
import { stage } from './stage.ts';

export const here = bench.at({});
export const example = bench.at({});

${sections.join('\n\n')}

<Islands />
`;
}
