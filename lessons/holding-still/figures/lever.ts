import { printQuantity } from '#core/quantity/print.ts';
import { textWidth } from '#site/figures/dimension/text-width.ts';
import type { Pivot } from './gear.ts';

/** A camera before its subject; lengths in mm. */
export interface LeverGiven {
  readonly focalLength: number;
  readonly magnification: number;
  readonly principalSeparation: number;
  readonly entrancePupilDistance: number;
  readonly pivot: Pivot;
}

/** Where all of it stands on the axis, mm from H towards the subject. */
export interface LeverPlaces {
  readonly sensor: number;
  /** H′ */
  readonly rear: number;
  readonly pupil: number;
  readonly subject: number;
  /** About which it turns. */
  readonly pivot: number;
  /** From there to the subject. */
  readonly lever: number;
}

/** The places, counted from H: there the drawing stays when the subject is pulled nearer. */
export function leverPlaces(given: LeverGiven): LeverPlaces {
  const { focalLength: f, magnification: m, principalSeparation, entrancePupilDistance, pivot } = given;
  const subject = f * (1 + 1 / m);
  const sensor = -principalSeparation - f * (1 + m);
  const pupil = subject - entrancePupilDistance;
  const at = pivot === 'sensor' ? sensor : pupil;
  return { sensor, rear: -principalSeparation, pupil, subject, pivot: at, lever: subject - at };
}

/** How far a turn is drawn at most, radians. */
const drawnTurn = 0.2;

/**
 * By what angle a turn is drawn so that each end of what swings stays within its room, and how many times too large that is.
 *
 * @param ends how far an end is from the pivot, and how far it may swing, pixels
 */
export function turnAsDrawn(turn: number, ends: readonly { readonly reach: number; readonly room: number }[]) {
  const most = ends.map(({ reach, room }) => Math.atan(Math.max(4, room) / Math.max(Math.abs(reach), 1)));
  const angle = Math.min(drawnTurn, ...most);
  const times = angle / turn;
  // Steadied so well, how many times too large it is drawn tells nobody anything.
  const words = times > 2000 ? 'turn drawn far too large' : `turn drawn ×${Number(times.toPrecision(2))}`;
  return { angle, words: times > 1.05 ? words : 'turn not to scale' };
}

/** One streak as a bar. */
export interface Bar {
  readonly name: 'turning.motion-blur' | 'sideways.motion-blur' | 'subject.motion-blur' | 'motion-blur';
  readonly word: string;
  /** mm on the sensor */
  readonly streak: number;
}

export interface BarsGiven {
  readonly bars: readonly Bar[];
  readonly circleOfConfusion: number;
  readonly pixelPitch: number;
}

/** Where the bars stand: their words at the left, c as a line across, pixels below. All in the sheet's pixels. */
export function barsLayout(
  { bars, circleOfConfusion, pixelPitch }: BarsGiven,
  { width, top, bottom, text, small }: { width: number; top: number; bottom: number; text: number; small: number },
  held?: number,
) {
  const left = 8 + Math.max(...bars.map(({ word }) => textWidth(word, text))) + 0.6 * text;
  const right = width - 8;
  const longest = Math.max(2.2 * circleOfConfusion, ...bars.map(({ streak }) => streak));
  const values = Math.max(...bars.map(({ name, streak }) => textWidth(inMicrometres(name, streak), text)));
  const perMillimetre = held ?? (right - left - values - 1.9 * text - 12) / longest;
  const strip = { top: bottom - 1.5 * small, height: 0.55 * small };
  const first = top + 1.5 * text;
  const pitch = (strip.top - 0.5 * text - first) / bars.length;
  const within = (x: number) => Math.min(right, x);
  const circleX = left + circleOfConfusion * perMillimetre;
  const circle = circleX <= right ? circleX : undefined;
  const rows = bars.map((bar, index) => {
    const end = within(left + bar.streak * perMillimetre);
    const y = first + (index + 0.5) * pitch;
    const value = inMicrometres(bar.name, bar.streak);
    const after = end + 0.5 * text + (bar.name === 'motion-blur' ? 16 : 0);
    const isAfter = after + textWidth(value, text) <= right;
    return {
      ...bar,
      value,
      y,
      end,
      height: Math.min(0.72 * pitch, 1.6 * text),
      isOver: bar.streak > circleOfConfusion,
      valueX: isAfter ? after : end - 20,
      anchor: isAfter ? ('start' as const) : ('end' as const),
    };
  });
  const crossed = rows.filter(({ value, valueX, anchor }) => {
    const toCircle = anchor === 'start' ? circleX - valueX : valueX - circleX;
    return toCircle > -4 && toCircle < textWidth(value, text) + 4;
  });
  const pixel = pixelPitch * perMillimetre;
  // Fewer than three pixels of the screen would be a grey line, and many hundred a heavy one.
  const count = pixel < 3 ? 0 : Math.min(400, Math.floor((right - left) / pixel));
  const cells = Array.from(
    { length: count + 1 },
    (_, at) => `M${(left + at * pixel).toFixed(1)} ${strip.top}v${strip.height.toFixed(1)}`,
  );
  const stripPath =
    count === 0
      ? ''
      : `${cells.join('')}M${left} ${strip.top}h${(count * pixel).toFixed(1)}m0 ${strip.height.toFixed(1)}H${left}`;
  // The line of c leaves out the numbers that stand in its way.
  const circleLine =
    `M${circleX} ${top + 1.35 * text}` +
    crossed.map(({ y }) => `V${y - 0.6 * text}m0 ${1.2 * text}`).join('') +
    `V${strip.top + strip.height}`;
  return { left, right, perMillimetre, rows, circle, circleLine, strip: stripPath };
}

/** A streak as it is printed; what is nothing to any sensor says so. */
export function inMicrometres(name: Bar['name'], streak: number): string {
  return streak < 1e-4 ? 'under 0.1\u202fµm' : printQuantity(name, streak);
}
