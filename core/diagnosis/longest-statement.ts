/** Longer texts than an evening's problem are cut: no text may hold a page up. */
export const longestStatement = 2000;
