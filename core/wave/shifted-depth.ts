import { balancedDepth, depthAround, inFrontBy, type DepthInWaves, type SubjectInWaves } from './depth-in-waves.ts';

/** Places of the nearest part tried before the best is closed in on, and how often it is closed in on. */
const tried = 64;
const closings = 32;
const golden = (Math.sqrt(5) - 1) / 2;
/** Steps from best focus to the ends, sixteen periods of the transfer: no pattern lives to see so many. */
const mostSteps = 512;

/**
 * A subject's depth moved through the focus of an aberrated lens until its worst place is best: on one side of best focus such a lens
 * loses contrast sooner than on the other.
 *
 * @param subject in waves
 * @param reach by how many waves the ends may part from being equally blurred
 * @param stepsPerWave how finely the transfer has to be followed, at least
 * @param transferOff the transfer so many waves off best focus, negative towards the lens
 * @returns the ends as they stand best; balanced where the pattern is lost whatever is done
 */
export function bestShift(
  subject: SubjectInWaves,
  reach: number,
  stepsPerWave: number,
  transferOff: (waves: number) => number,
): DepthInWaves {
  const balanced = balancedDepth(subject);
  if (!(stepsPerWave * balanced.near < mostSteps)) return balanced;
  const most = balanced.near + reach;
  const steps = Math.ceil(stepsPerWave * most) + 4;
  const samples = new Map<number, number>();
  const sampleAt = (step: number) => {
    let sample = samples.get(step);
    if (sample === undefined) {
      sample = transferOff((most * step) / steps);
      samples.set(step, sample);
    }
    return sample;
  };
  /** The least contrast with the nearest part so many waves in front: both ends themselves, and samples between them. */
  const worstAt = (near: number): number => {
    const { far } = endsAt(near);
    if (!(far <= most)) return -1;
    let worst = Math.min(transferOff(-near), transferOff(far));
    const last = Math.floor((far / most) * steps);
    for (let step = -Math.floor((near / most) * steps); step <= last && worst > 0; step++) {
      worst = Math.min(worst, sampleAt(step));
    }
    return worst;
  };
  const endsAt = (near: number) => depthAround(subject, Math.min(inFrontBy(subject, near), subject.subjectDepth));

  // No farther than where the whole subject lies in front of the plane.
  const { near: whole } =
    subject.subjectDepth * subject.inverseEntrancePupilDistance < 1
      ? depthAround(subject, subject.subjectDepth)
      : { near: Infinity };
  const end = Math.min(most, whole);
  let best = balanced.near;
  let bestWorst = worstAt(best);
  for (let step = 0; step <= tried; step++) {
    const near = (end * step) / tried;
    const worst = worstAt(near);
    if (worst > bestWorst) [best, bestWorst] = [near, worst];
  }
  if (!(bestWorst > 0)) return balanced;

  let low = Math.max(0, best - end / tried);
  let high = Math.min(end, best + end / tried);
  for (let step = 0; step < closings; step++) {
    const span = golden * (high - low);
    if (worstAt(high - span) > worstAt(low + span)) high = low + span;
    else low = high - span;
  }
  const closed = (low + high) / 2;
  return endsAt(worstAt(closed) > bestWorst ? closed : best);
}
