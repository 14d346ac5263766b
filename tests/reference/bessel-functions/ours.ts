import { airyRings } from '#core/wave/airy-rings.ts';
import { besselJ1 } from '#core/wave/bessel.ts';
import { oursById } from '#tests/support/reference-case.ts';

/** With λ N_w = π the rings lie at the zeros themselves. */
const atTheZeros = { wavelength: 1, effectiveFNumber: Math.PI };

export const ours = oursById({
  'zeros-of-j1': ({ count }: { count: number }) => ({ zeros: airyRings(atTheZeros, count).dark }),
  'zeros-of-j2': ({ count }: { count: number }) => ({ zeros: airyRings(atTheZeros, count).bright }),
  'j1-of-50': ({ x }: { x: number }) => {
    const value = besselJ1(x);
    return { stdlib: value, cephes: value, bessel: value, scipy: value };
  },
});
