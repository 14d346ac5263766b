import type { FormulaFile } from '../every-formula.ts';

/** The island that joins bench, drawing, readings and controls. */
export function benchFigure({ formula }: FormulaFile): string {
  const { gives, from } = formula;
  return `<script lang="ts">
  import Inputs from '#site/controls/workbench/Inputs.svelte';
  import Workbench from '#site/controls/workbench/Workbench.svelte';
  import type { SheetBox } from '#site/controls/workbench/workbench.ts';
  import { printAnswer } from '#site/state/answer.ts';
  import { bench } from '../bench.svelte.ts';
  import Drawing from './Drawing.svelte';

  const title = '⟨… what is drawn⟩';
  const print = (name: keyof typeof bench.answers) => printAnswer(name, bench.answers[name]);
  const inWords = () => \`⟨… the drawing in words⟩ \${print('${gives}')}.\`;
</script>

{#snippet sheet(box: SheetBox)}
  <Drawing {box} {title} label={print('${gives}')} />
{/snippet}

<Workbench {bench} sheets={[{ id: 'main', title, inWords, figure: sheet }]} readings={['${gives}']}>
  {#snippet controls()}
    <Inputs {bench} quantities={[${from.map((id) => `'${id}'`).join(', ')}]} />
  {/snippet}
</Workbench>
`;
}

/** A drawing that so far only writes its number. */
export function drawing({ formula }: FormulaFile): string {
  return `<script lang="ts">
  import type { SheetBox } from '#site/controls/workbench/workbench.ts';
  import TitleBlock from '#site/figures/sheet/TitleBlock.svelte';

  /** ⟨… what is drawn, and what can be dragged in it⟩ */
  interface Props {
    box: SheetBox;
    title: string;
    label: string;
  }

  const { box, title, label }: Props = $props();
</script>

<text x={box.width / 2} y={box.height / 2} text-anchor="middle" data-quantity="${formula.gives}">{label}</text>
<TitleBlock {title} scale="none" x={box.width - 6} y={box.height - 6} size={box.small} />
`;
}

/** The island of the problems. */
export function checkFigure(slug: string): string {
  return `<script lang="ts">
  import Practice from '#site/controls/practice/Practice.svelte';
  import { families } from '../problems.ts';
</script>

<Practice lesson="${slug}" {families} />
`;
}

/** The script that brings figure and problems to life. */
export const islands = `---
/** The lesson's figure and problems, brought to life. */
---

<script>
  import { enliven } from '#site/islands/enliven.ts';
  import Bench from './Bench.svelte';
  import Check from './Check.svelte';

  enliven({ bench: Bench, check: Check });
</script>
`;
