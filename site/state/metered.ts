import { reflectedLightConstants } from '#core/exposure/metering-constants.ts';
import { step } from '#core/quantity/answers-from.ts';

/** The meter's constant, for a bench in which nobody asks for another. */
export const metered = step({
  from: [],
  gives: ['reflected-light-constant'],
  evaluate: () => ({ reflectedLightConstant: reflectedLightConstants.common }),
});
