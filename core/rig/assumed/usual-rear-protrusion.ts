import type { Assumption } from './usual-lenses.ts';

/**
 * What stands out behind the flange of a camera lens of which nobody has measured it, mm; what counts once the lens is turned round.
 *
 * From nothing, over the claws of a mount with its contacts, to glass of a short lens that reaches far back.
 *
 * Source: ours, assumed; the 28 mm f/2.8 of the crate reaches 10.8 mm. Whoever lays a ruler on it knows better, see [README](README.md#what-is-assumed).
 */
export const usualRearProtrusion: Assumption = { least: 0, usual: 5, most: 15 };
