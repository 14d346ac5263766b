export { sharpFromLens as ours } from '#tests/support/depth-from-lens.ts';
