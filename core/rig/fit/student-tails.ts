/** A term of the sum for every second one: more are never met, and take long. */
const mostFreedom = 1e6;

/**
 * How likely chance alone brings a number as far from 0 as this, to either side, by Student's distribution.
 *
 * 1 − A(t|ν), with θ = arctan(t/√ν) and a finite sum for every whole ν
 *
 * @param t finite, of either sign
 * @param degreesOfFreedom *ν*, a whole number from 1 to a million
 * @returns from 0 to 1: 1 for t = 0
 * @throws RangeError in words for a *t* or *ν* that is none
 *
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4 (from memory).
 *
 * @example studentTails(2.776445, 4) // 0.05
 */
export function studentTails(t: number, degreesOfFreedom: number): number {
  if (!Number.isFinite(t)) throw new RangeError(`t is ${t}; accepted: a finite number`);
  if (!(Number.isInteger(degreesOfFreedom) && degreesOfFreedom >= 1 && degreesOfFreedom <= mostFreedom))
    throw new RangeError(
      `there are ${degreesOfFreedom} degrees of freedom; accepted: a whole number from 1 to 1000000`,
    );
  const angle = Math.atan(Math.abs(t) / Math.sqrt(degreesOfFreedom));
  const [sine, square] = [Math.sin(angle), Math.cos(angle) ** 2];
  const isOdd = degreesOfFreedom % 2 === 1;
  let [term, sum] = [isOdd ? Math.cos(angle) : 1, 0];
  for (let k = isOdd ? 1 : 0; k <= degreesOfFreedom - 2; k += 2) {
    sum += term;
    term *= (square * (k + 1)) / (k + 2);
  }
  const within = isOdd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
  return Math.max(0, 1 - within);
}
