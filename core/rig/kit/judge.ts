import { reflectedLightConstants } from '#core/exposure/metering-constants.ts';
import type { KitCamera, KitLens, KitSubject } from './kit.ts';
import { verdicts, type Verdict } from './verdict.ts';
import { walkAt, type Walk } from './walk.ts';

/** Where the verdict stands in the list: what is kept for each chain. */
const code = Object.fromEntries(verdicts.map((verdict, index) => [verdict, index])) as Record<Verdict, number>;

/** How a chain would be set for the subject, and what that is worth; overwritten by the next. */
export interface Judgement {
  verdict: number;
  /** *m₀* of the main lens. */
  focusMagnification: number;
  /** *N* of the main lens. */
  fNumber: number;
  /** Stops of exposure in hand, less the stops lost by not filling the frame. */
  merit: number;
}

/** A magnification not to be told from that of a lens set to infinity. */
const nothing = 1e-9;

/** Rounding: what misses a limit by less meets it. */
const rounding = 1e-9;

/** A chain and what it is judged for: one for all chains that share camera and front; the numbers of its walk are overwritten. */
export interface Case {
  readonly walk: Walk;
  readonly camera: KitCamera;
  readonly lens: KitLens;
  /** Whether the iris of the main lens can be reached through the back in use. */
  stopsDown: boolean;
  readonly subject: KitSubject;
  /** The magnification that fills the frame. */
  readonly filling: number;
}

/** What may stop standing against a chain where the subject is taken smaller: from farther off, with more depth, in more light. */
const eased: ReadonlySet<number> = new Set([code.inside, code['too near'], code['too shallow'], code['too dark']]);

/** Halvings between a setting that is too large and one that is not: to a four-thousandth of their distance, closer than any hand sets a ring. */
const halvings = 12;

/**
 * Sets a chain for the subject, judges it, and leaves what it found in *out*.
 *
 * As large as fits the frame, or where something stands against that, as large as nothing does, down to the least share of the frame;
 * opened as far as the depth allows: N_w = Z m²/(2c); t = N_w² K/(L_v S) against c/(m v) and the longest exposure.
 */
export function judge(one: Case, out: Judgement): void {
  const { walk, subject, filling } = one;
  walk.focusedTo = -1;
  judgeAt(one, settingFor(walk, filling), out);
  if (!eased.has(out.verdict)) return;

  let tooLarge = out.focusMagnification;
  let allowed = settingFor(walk, filling * subject.leastFill);
  if (allowed === tooLarge) return;
  judgeAt(one, allowed, out);
  if (out.verdict !== code.suited) return;
  for (let step = 0; step < halvings; step++) {
    const middle = (tooLarge + allowed) / 2;
    judgeAt(one, middle, out);
    if (out.verdict === code.suited) allowed = middle;
    else tooLarge = middle;
  }
  judgeAt(one, allowed, out);
}

/** The verdict on one setting of the main lens. */
function judgeAt({ walk, camera, lens, stopsDown, subject, filling }: Case, setting: number, out: Judgement): void {
  const { maxAperture, smallestAperture } = lens;
  out.focusMagnification = setting;
  out.fNumber = maxAperture;
  out.merit = 0;
  if (walk.focusedTo !== setting) walkAt(walk, setting);
  const m = walk.magnification;
  if (Math.abs(m) <= nothing) return void (out.verdict = code['too small']);
  if (!(m > 0 && walk.real)) return void (out.verdict = code['no picture']);
  if (m > filling * (1 + rounding)) return void (out.verdict = code['too large']);
  if (m < filling * subject.leastFill * (1 - rounding)) return void (out.verdict = code['too small']);
  if (!(walk.workingDistance > 0)) return void (out.verdict = code.inside);
  if (walk.workingDistance < subject.nearestDistance) return void (out.verdict = code['too near']);

  const c = camera.circleOfConfusion;
  const needed = (subject.subjectDepth * m * m) / (2 * c);
  const most = stopsDown ? smallestAperture : maxAperture;
  out.fNumber = Math.min(most, Math.max(maxAperture, needed / walk.conePerStop));
  const effective = Math.max(walk.conePerStop * out.fNumber, walk.coneAtLeast);
  if (effective < needed * (1 - rounding)) return void (out.verdict = code['too shallow']);

  const exposure = (effective * effective * reflectedLightConstants.common) / (subject.luminance * subject.iso);
  const steady = subject.subjectSpeed > 0 ? c / (m * subject.subjectSpeed) : Infinity;
  const inHand = Math.log2(Math.min(steady, subject.longestExposure) / exposure);
  out.merit = inHand + 2 * Math.log2(Math.min(1, m / filling));
  out.verdict = inHand < -rounding ? code['too dark'] : code.suited;
}

/**
 * The *m₀* that gives *wanted*, or that end of the focus ring which comes nearest to it.
 *
 * By false position: exact at once where m is linear in m₀, as for a lens focused as a whole, and almost so for all others. Behind
 * a reversed lens m can fall as the main lens moves out.
 */
function settingFor(walk: Walk, wanted: number): number {
  let low = 0;
  let high = walk.main.closest;
  if (walk.reversed || high === 0) return 0;
  // The far end last, for that is where most chains stay: too large a picture even there.
  let atHigh = excess(walk, high, wanted);
  let atLow = excess(walk, low, wanted);
  if (atLow > 0 === atHigh > 0) return Math.abs(atHigh) < Math.abs(atLow) ? high : low;
  let kept = 0;
  for (let step = 0; step < 60; step++) {
    const middle = low - (atLow * (high - low)) / (atHigh - atLow);
    const here = excess(walk, middle, wanted);
    if (Math.abs(here) <= 1e-13 * wanted || middle === low || middle === high) return middle;
    // The end that stays twice running counts for half, or it would stay for ever.
    if (here > 0 === atHigh > 0) {
      high = middle;
      atHigh = here;
      if (kept === 1) atLow /= 2;
      kept = 1;
    } else {
      low = middle;
      atLow = here;
      if (kept === -1) atHigh /= 2;
      kept = -1;
    }
  }
  return low;
}

/** How much larger than *wanted* the picture is at a setting. */
function excess(walk: Walk, focusMagnification: number, wanted: number): number {
  walkAt(walk, focusMagnification);
  return walk.magnification - wanted;
}
