import { reflectedLightConstants } from '#core/exposure/metering-constants.ts';
import { rounding, type Case, type Judgement } from './case.ts';
import { setIris } from './iris.ts';
import { verdicts, type Verdict } from './verdict.ts';
import { walkAt, type Walk } from './walk.ts';

/** Where the verdict stands in the list: what is kept for each chain. */
const code = Object.fromEntries(verdicts.map((verdict, index) => [verdict, index])) as Record<Verdict, number>;

/** A magnification not to be told from that of a lens set to infinity. */
const nothing = 1e-9;

/** What may stop standing against a chain where the subject is taken smaller: from farther off, with more depth, in more light. */
const eased: ReadonlySet<number> = new Set([
  code.inside,
  code['too near'],
  code['too shallow'],
  code['too soft'],
  code['too dark'],
]);

/** Parts into which the settings between the full frame and the least share are cut where neither will do. */
const between = 8;

/** Halvings between a setting that is too large and one that is not: to a four-thousandth of their distance, closer than any hand sets a ring. */
const halvings = 12;

/**
 * Sets a chain for the subject, judges it, and leaves what it found in *out*.
 *
 * As large as fits the frame, or where something stands against that, as large as nothing does, down to the least share of the picture; opened as
 * far as the depth allows: b² + (λ N_w)² = c², b the blur of the ends; t = N_w² K/(L_v S) against c/(m v) and the longest exposure; c smaller
 * with the share of the picture that is taken.
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
  if (out.verdict !== code.suited) {
    // Taken so small it may be blurred too much where it is not, a little larger: c shrinks with the picture.
    const least = allowed;
    const full = tooLarge;
    for (let step = 1; step < between && out.verdict !== code.suited; step++) {
      tooLarge = full + ((least - full) * (step - 1)) / between;
      allowed = full + ((least - full) * step) / between;
      judgeAt(one, allowed, out);
    }
    if (out.verdict !== code.suited) return judgeAt(one, least, out);
  }
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
  const { walk, camera, lens, subject, filling } = one;
  out.focusMagnification = setting;
  out.fNumber = lens.maxAperture;
  out.effectiveFNumber = 0;
  out.magnification = 0;
  out.merit = 0;
  out.room = 0;
  if (walk.focusedTo !== setting) walkAt(walk, setting);
  const m = walk.magnification;
  if (Math.abs(m) <= nothing) return void (out.verdict = code['too small']);
  if (!(m > 0 && walk.real)) return void (out.verdict = code['no picture']);
  out.magnification = m;
  out.room = walk.workingDistance;
  if (m > filling * (1 + rounding)) return void (out.verdict = code['too large']);
  if (m < filling * subject.leastFill * (1 - rounding)) return void (out.verdict = code['too small']);
  if (!(walk.workingDistance > 0)) return void (out.verdict = code.inside);
  if (walk.workingDistance < subject.nearestDistance) return void (out.verdict = code['too near']);

  // What does not fill the frame is enlarged the more.
  const c = camera.circleOfConfusion * Math.min(1, m / filling);
  const iris = setIris(one, c, out);
  if (iris !== 'suited') return void (out.verdict = code[iris]);

  const effective = out.effectiveFNumber;
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
