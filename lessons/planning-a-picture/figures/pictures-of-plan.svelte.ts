import { printQuantity } from '#core/quantity/print.ts';
import { startsOf } from '#site/state/bench.svelte.ts';
import { lampWidths } from '#site/state/crate-light.ts';
import { lensAt } from '#site/state/lens-in-use.ts';
import { bench, ofLens } from '../bench.svelte.ts';
import { changes, type Change } from './changes.ts';
import { isTooMany, jobOf, renderedFor, standsFor, type PlannedPicture } from './pictures.ts';
import { plan } from './planned.svelte.ts';

const beside = $derived(bench.chosen('beside') as Change);
const shown = $derived(renderedFor(plan.subject, bench.inputs['subject-width'], bench.inputs['subject-depth']));

/** Pupils as wide as each other, for a chain that has not two of them. */
const alike = 1;

type Changed = Parameters<typeof bench.would>[1];
/** What the plan has otherwise beside it; nothing for one frame alone. */
const otherwise = $derived.by((): Changed => {
  const fill = bench.inputs['frame-fill'] / 2;
  switch (beside) {
    case 'frames':
      return {};
    case 'f-number':
      return { 'f-number': Math.min(bench.range('f-number').most, 2 * bench.inputs['f-number']) };
    case 'size': {
      const inUse =
        plan.isOneLens && plan.lens && startsOf(lensAt(plan.lens, bench.number('magnification') / 2), ofLens);
      return { 'frame-fill': Math.max(bench.range('frame-fill').least, fill), ...inUse };
    }
    case 'light':
      return { 'source-size': lampWidths.paper, 'flash-distance': 60 };
  }
});

/** The plan with some answers changed, as a picture is made from it; undefined where nothing is sharp. */
function pictured(
  changed: Changed,
  own: { readonly isAlone: boolean; readonly isByFlash: boolean },
): PlannedPicture | undefined {
  const would = (name: keyof typeof bench.answers) => bench.would(name, changed, undefined);
  const [entrancePupilDistance, effectiveFNumber, nearLimit] = [
    would('entrance-pupil-distance'),
    would('effective-f-number'),
    would('near-limit'),
  ];
  const [frameCount, taken] = [would('frame-count'), would('in-time.frame-count')];
  if (entrancePupilDistance === undefined || effectiveFNumber === undefined || nearLimit === undefined)
    return undefined;
  if (frameCount === undefined || taken === undefined) return undefined;
  const slowest = would('slowest.exposure-time');
  return {
    magnification: would('chain.magnification')!,
    effectiveFNumber,
    pupilMagnification: would('chain.pupil-magnification') ?? alike,
    entrancePupilDistance,
    nearLimit,
    frameStep: frameCount > 1 ? would('frame-step') : undefined,
    frameCount,
    taken,
    isAlone: own.isAlone,
    motionBlur:
      own.isByFlash || slowest === undefined
        ? 0
        : (bench.inputs['circle-of-confusion'] * would('ambient.exposure-time')!) / slowest,
    sourceAngle: own.isByFlash ? would('source-angle') : undefined,
  };
}

const framesTaken = ({ frameCount, taken, isAlone }: PlannedPicture) =>
  isAlone || frameCount === 1
    ? 'one frame'
    : taken < frameCount
      ? `${printQuantity('frame-count', taken)} of ${printQuantity('frame-count', frameCount)} frames`
      : `${printQuantity('frame-count', frameCount)} frames merged`;

/** The plan, and beside it the same with one answer changed, where that makes another picture. */
const pictures = $derived.by(() => {
  if (shown === undefined) return [];
  const isByFlash = plan.decided.light === 'flash';
  const both = [
    { key: 'planned', word: 'As planned', made: pictured({}, { isAlone: false, isByFlash }) },
    {
      key: 'changed',
      word: `Changed: ${changes[beside]}`,
      made: pictured(otherwise, { isAlone: beside === 'frames', isByFlash: isByFlash || beside === 'light' }),
    },
  ].flatMap(({ key, word, made }) => {
    if (!made) return [];
    const size = `${printQuantity('magnification', made.magnification)}, ${framesTaken(made)}`;
    return [{ key, name: `${word}. ${size}`, job: jobOf(shown, made), made }];
  });
  const [planned, changed] = both;
  return changed?.job && JSON.stringify(planned!.job) === JSON.stringify(changed.job) ? [planned!] : both;
});
const pictureRefusal = $derived(
  shown === undefined
    ? 'The colours of a film are a picture of their own: in its lesson, Why is a bubble coloured?'
    : pictures.some(({ made }) => made.taken < 1)
      ? 'Not one frame is done in time.'
      : pictures.some(({ made }) => isTooMany(shown, made))
        ? 'More frames than are merged here. Make it smaller, or close the lens further.'
        : 'Nothing is sharp in front of this lens.',
);
const pictureNote = $derived(
  shown &&
    standsFor(shown, plan.subject) +
      (pictures.length === 1 && pictures[0]!.job ? '. Changed as chosen, it would be the same.' : ''),
);
/** The pictures for listeners. */
export const picturesInWords = () =>
  pictures.length === 0 ? pictureRefusal : `${pictureNote}. ${pictures.map(({ name }) => name).join('. ')}.`;

/** What the sheet shows: pictures side by side, or why there are none. */
export const picturesNow = () => ({
  pictures: pictures.length > 0 ? pictures : [{ key: 'none', name: 'No picture', job: undefined }],
  refusal: pictureRefusal,
  note: pictureNote ?? '',
});
