import type { Cone } from '#core/depth/cone.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { assembleRig } from './assemble.ts';
import type { Part } from './part.ts';
import { solveRig } from './solve.ts';

/**
 * The cone of a chain at any marked f-number of one of its lenses: what the search for the best f-number asks for.
 *
 * @param parts the camera first, the foremost last
 * @param part place of the lens whose iris is opened and closed
 * @returns a function of *N*; another stop that limits the cone keeps it as slender as it is, and says where the pupil lies
 * @throws RangeError where no lens stands at that place; from the function OutOfRange where no plane near is sharp, and what
 *   `assembleRig` throws
 *
 * Source: derived in [README](README.md#which-stop-limits).
 */
export function conesOfChain(parts: readonly Part[], part: number): (fNumber: number) => Cone {
  const lens = parts[part];
  if (lens?.part !== 'lens') throw new RangeError(`part ${part} is ${lens?.part ?? 'none'}; accepted: a lens`);
  return (fNumber) => {
    const solved = solveRig(assembleRig(parts.with(part, { ...lens, fNumber })));
    if (solved.sharpPlane === 'in front' || solved.sharpPlane === 'inside') return solved;
    throw new OutOfRange('magnification', 0, 'above 0: a chain with a sharp plane near');
  };
}
