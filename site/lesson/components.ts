import Letter from '#site/controls/letter/Letter.svelte';
import Island from '#site/islands/Island.astro';
import Check from './Check.astro';
import Example from './Example.astro';
import Formula from './Formula.astro';
import Live from './Live.astro';
import Part from './Part.astro';
import Predict from './Predict.astro';
import StageSteps from './StageSteps.astro';

/** What the prose of every lesson is made of, by the names that it uses without importing them. */
export const components = { Check, Example, Formula, Island, Letter, Live, Part, Predict, StageSteps };
