import type { Named } from '#core/quantity/formula.ts';
import type { Cone } from './cone.ts';
import { farLimitOfCone } from './far-limit-of-cone.formula.ts';
import { nearLimitOfCone } from './near-limit-of-cone.formula.ts';

/**
 * Both limits of the depth of field of a chain, as plans of stacks and shares of keepers ask for them.
 *
 * 1/near = m²/(c N_w) + 1/u, 1/far = m²/(c N_w) − 1/u
 *
 * @param cone of the chain; a solved rig will do
 * @param circleOfConfusion *c*, on the sensor, mm, above 0
 * @returns mm from the sharp plane towards the lens and away from it; `Infinity` as the two formulas say
 * @throws OutOfRange as the two formulas do
 *
 * Derived in [README](README.md#any-chain).
 *
 * @example limitsOfCone({ magnification: 1, effectiveFNumber: 20, inverseEntrancePupilDistance: 0 }, 0.02).farLimit // 0.4
 */
export function limitsOfCone(cone: Cone, circleOfConfusion: number): Named<'near-limit' | 'far-limit'> {
  const { magnification, effectiveFNumber, inverseEntrancePupilDistance } = cone;
  const given = { magnification, effectiveFNumber, inverseEntrancePupilDistance, circleOfConfusion };
  return { nearLimit: nearLimitOfCone(given), farLimit: farLimitOfCone(given) };
}
