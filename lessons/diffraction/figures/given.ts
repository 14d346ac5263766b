import { airyTable } from '#core/wave/airy-table.ts';

/** What the page gives the figure, worked out while it is built: in units of λ N_w one pattern for all, sixteen steps to each. */
export const given = { pattern: airyTable(8, 132) };
