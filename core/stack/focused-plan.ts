import { limitsOfCone } from '#core/depth/limits-of-cone.ts';
import type { Cone } from '#core/depth/cone.ts';
import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import { requireOverlap } from './overlap.ts';

/** A stack taken through any chain by focusing, the camera standing still, from near to far. */
export interface FocusedStack {
  /** The cone of the chain with its sharp plane so many mm behind that of the first and nearest frame; 0 is that frame. */
  readonly coneAfter: (step: number) => Cone;
  /** How far behind that of the first frame the sharp plane can be put, mm; without end where left out. */
  readonly farthestStep?: number;
  /** *c*, mm, above 0 */
  readonly circleOfConfusion: number;
  /** *Z*, mm, above 0 and finite */
  readonly subjectDepth: number;
  /** Share of a frame's depth that the next one has in common with it; below 1 */
  readonly overlap: number;
}

/** One frame. Places in mm along the axis, counted from the nearest part of the subject away from the lens; `far` is Infinity where all behind is sharp. */
export interface FocusedFrame {
  readonly magnification: number;
  readonly plane: number;
  readonly near: number;
  readonly far: number;
}

const mostFrames = 10000;
/** What a frame may leave over, as a part of the depth, without another being taken for it. */
const rounding = 1e-9;
/** Of a place along the axis, as a part of itself. */
const closeness = 1e-14;

/**
 * The frames of a stack taken by focusing, through any chain. Each has its own magnification and depth, so they are counted one by one.
 *
 * @param stack see {@link FocusedStack}; the near limit of its first frame lies on the nearest part of the subject
 * @returns the frames from near to far; the last reaches the far end of the subject or past it
 * @throws OutOfRange for what lies outside, for a first frame whose depth has no end on either side, for more than 10000 frames, and
 *   a subject that reaches farther than the chain can be focused
 *
 * See [README](README.md#focusing-by-the-ring).
 */
export function focusedPlan(stack: FocusedStack): readonly FocusedFrame[] {
  const { subjectDepth, overlap } = stack;
  requireOverlap(overlap);
  requirePositive('subject-depth', subjectDepth);
  const { nearLimit: offset } = limitsOfCone(stack.coneAfter(0), stack.circleOfConfusion);
  const first = frameAt(stack, 0, offset);
  if (offset === Infinity || first.far === Infinity)
    throw new OutOfRange('depth-of-field', Infinity, 'a finite depth: one frame shows all there is');
  const frames = [first];
  for (let last = first; last.far < subjectDepth * (1 - rounding); frames.push(last)) {
    if (frames.length === mostFrames) throw new OutOfRange('frame-count', Infinity, `at most ${mostFrames} frames`);
    last = frameFrom(stack, last.near + (last.far - last.near) * (1 - overlap), last, offset);
  }
  return frames;
}

/** The frame whose sharp plane lies a step behind the first one's, which lies *offset* behind the nearest part. */
function frameAt(stack: FocusedStack, step: number, offset: number): FocusedFrame {
  const cone = stack.coneAfter(step);
  const { nearLimit, farLimit } = limitsOfCone(cone, stack.circleOfConfusion);
  const plane = offset + step;
  return { magnification: cone.magnification, plane, near: plane - nearLimit, far: plane + farLimit };
}

/**
 * The frame whose near limit lies at *near*, closed in on by the Illinois rule of false position. A little within life size that place first
 * comes nearer as the lens is racked in, for the depth grows faster than the plane moves; then it goes away for good, as far as the lens's
 * hyperfocal distance: a frame sharp from there on is the last, wherever its near limit should have lain.
 */
function frameFrom(stack: FocusedStack, near: number, last: FocusedFrame, offset: number): FocusedFrame {
  const missing = (step: number) => near - frameAt(stack, step, offset).near;
  let low = { step: last.plane - offset, missing: near - last.near };
  let high = low;
  const { farthestStep = Infinity } = stack;
  for (let reach = low.missing; high.missing > 0; reach *= 2) {
    const step = Math.min(low.step + reach, farthestStep);
    const frame = frameAt(stack, step, offset);
    if (frame.far === Infinity && frame.near <= near) return frame;
    high = { step, missing: near - frame.near };
    if (high.missing > 0 && step === farthestStep) {
      // As far as it goes: more overlap than was asked for does no harm.
      if (frame.far >= stack.subjectDepth) return frame;
      throw new OutOfRange('subject-depth', stack.subjectDepth, `up to ${frame.far} mm, which focusing reaches`);
    }
  }
  let kept = 0;
  while (high.step - low.step > closeness * high.step && high.missing !== 0) {
    const step = (low.step * high.missing - high.step * low.missing) / (high.missing - low.missing);
    const tried = { step, missing: missing(step) };
    // An end that stays twice is given half its weight, so that both ends move.
    if (tried.missing > 0) {
      high = kept > 0 ? { ...high, missing: high.missing / 2 } : high;
      if (!(tried.step > low.step)) break;
      low = tried;
      kept = 1;
    } else {
      low = kept < 0 ? { ...low, missing: low.missing / 2 } : low;
      if (!(tried.step < high.step)) break;
      high = tried;
      kept = -1;
    }
  }
  return frameAt(stack, high.step, offset);
}
