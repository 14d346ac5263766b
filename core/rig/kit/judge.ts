import { evenDepthOf } from '#core/depth/balanced-focus.ts';
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
  /** *w*, mm. */
  room: number;
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
const eased: ReadonlySet<number> = new Set([
  code.inside,
  code['too near'],
  code['too shallow'],
  code['too soft'],
  code['too dark'],
]);

/** Halvings between a setting that is too large and one that is not: to a four-thousandth of their distance, closer than any hand sets a ring. */
const halvings = 12;

/**
 * Sets a chain for the subject, judges it, and leaves what it found in *out*.
 *
 * As large as fits the frame, or where something stands against that, as large as nothing does, down to the least share of the frame; opened as
 * far as the depth allows: b² + (λ N_w)² = c², b the blur of the ends; t = N_w² K/(L_v S) against c/(m v) and the longest exposure; c smaller
 * with the share of the frame that is filled.
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
function judgeAt(one: Case, setting: number, out: Judgement): void {
  const { walk, camera, lens, stopsDown, subject, filling } = one;
  const { maxAperture, smallestAperture } = lens;
  out.focusMagnification = setting;
  out.fNumber = maxAperture;
  out.merit = 0;
  out.room = 0;
  if (walk.focusedTo !== setting) walkAt(walk, setting);
  const m = walk.magnification;
  if (Math.abs(m) <= nothing) return void (out.verdict = code['too small']);
  if (!(m > 0 && walk.real)) return void (out.verdict = code['no picture']);
  if (m > filling * (1 + rounding)) return void (out.verdict = code['too large']);
  if (m < filling * subject.leastFill * (1 - rounding)) return void (out.verdict = code['too small']);
  if (!(walk.workingDistance > 0)) return void (out.verdict = code.inside);
  out.room = walk.workingDistance;
  if (walk.workingDistance < subject.nearestDistance) return void (out.verdict = code['too near']);

  // What does not fill the frame is enlarged the more.
  const c = camera.circleOfConfusion * Math.min(1, m / filling);
  const open = walk.conePerStop * maxAperture;
  const most = stopsDown ? smallestAperture : maxAperture;
  const { wavelength } = subject;
  let blur = endBlur(one, open >= walk.coneAtLeast);
  let wanted = leastCone(blur, c, wavelength);
  if (walk.coneAtLeast > open && !(walk.coneAtLeast >= wanted)) {
    // Another stop limits the open chain, and not enough: the main lens is stopped down until it does.
    blur = endBlur(one, true);
    wanted = Math.max(leastCone(blur, c, wavelength), walk.coneAtLeast);
  }
  // Without a cone that will do the one that blurs least.
  const set = Number.isNaN(wanted) ? Math.sqrt(blur / wavelength) : wanted;
  out.fNumber = Math.min(most, Math.max(maxAperture, set / walk.conePerStop));
  const effective = Math.max(walk.conePerStop * out.fNumber, walk.coneAtLeast);
  const deep = Number.isNaN(wanted) ? blur / c : wanted;
  const slowest = Math.max(walk.conePerStop * most, walk.coneAtLeast);
  if (slowest < deep * (1 - rounding)) return void (out.verdict = code['too shallow']);
  if (!(Math.hypot(blur / effective, wavelength * effective) <= c * (1 + rounding))) {
    return void (out.verdict = code['too soft']);
  }

  const exposure = (effective * effective * reflectedLightConstants.common) / (subject.luminance * subject.iso);
  const steady = subject.subjectSpeed > 0 ? c / (m * subject.subjectSpeed) : Infinity;
  const inHand = Math.log2(Math.min(steady, subject.longestExposure) / exposure);
  out.merit = inHand + 2 * Math.log2(Math.min(1, m / filling));
  out.verdict = inHand < -rounding ? code['too dark'] : code.suited;
}

/** The blur of the subject's ends times N_w, mm, the sharp plane where both are blurred alike. */
function endBlur({ walk, subject }: Case, byMain: boolean): number {
  const inverse = byMain ? walk.inverseByMain : walk.inverseByOther;
  return walk.magnification * walk.magnification * evenDepthOf(subject.subjectDepth, inverse);
}

/** The least N_w with which the ends are blurred by c at most, defocus and diffraction together; NaN where there is none. */
function leastCone(blur: number, c: number, wavelength: number): number {
  const square = c * c;
  const spare = square * square - 4 * (wavelength * blur) ** 2;
  // What misses by rounding alone meets the limit.
  const root = Math.sqrt(spare > -rounding * square * square ? Math.max(0, spare) : NaN);
  return blur * Math.sqrt(2 / (square + root));
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
