export { prepare } from '#site/figures/picture/prepare.ts';
export { cardInWords, timesInWords } from './card-of-plan.ts';
export { default as CardSheet } from './CardSheet.svelte';
export { picturesNow } from './pictures-of-plan.svelte.ts';
export { default as PicturesOfPlan } from './PicturesOfPlan.svelte';
export { default as TimeSheet } from './TimeSheet.svelte';
