import type { PictureJob } from '#site/figures/picture/job.ts';
import { subjects as rendered, type SubjectSlug } from '#site/state/subjects.ts';
import type { Planned } from './subjects.ts';

/** What stands in the picture for a subject that is planned. The film has a picture of its own, in its lesson. */
const nearest: Readonly<Record<Exclude<Planned, 'own' | 'soap-film'>, SubjectSlug>> = {
  'jumping-spider': 'hoverfly-head',
  'flower-detail': 'bay-leaf',
  butterfly: 'bay-leaf',
  'hoverfly-head': 'hoverfly-head',
  'water-drop': 'drop-on-wire',
  'frost-crystal': 'frost-crystal',
  stamp: 'stamp',
};

const depthOf = (slug: SubjectSlug) => {
  const one = rendered[slug];
  return 'subject-depth' in one ? one['subject-depth'] : one.top;
};

/** The rendered thing that comes nearest to a subject of the reader's own, in width and in depth, mm. */
function nearestInSize(width: number, depth: number): SubjectSlug {
  const off = (slug: SubjectSlug) =>
    Math.abs(Math.log(rendered[slug].width / width)) + Math.abs(Math.log(depthOf(slug) / depth));
  return (Object.keys(rendered) as SubjectSlug[]).reduce((best, slug) => (off(slug) < off(best) ? slug : best));
}

/** What is rendered for a subject so wide and so deep, mm; undefined for the film. */
export function renderedFor(subject: Planned, width: number, depth: number): SubjectSlug | undefined {
  if (subject === 'soap-film') return undefined;
  return subject === 'own' ? nearestInSize(width, depth) : nearest[subject];
}

/** What is said of it above the pictures: whose size it is, and whether it stands for another. */
export function standsFor(slug: SubjectSlug, subject: Planned): string {
  const { label, width } = rendered[slug];
  const named = `${label}, ${width}\u00a0mm wide`;
  return isItself[subject] ? `Rendered: ${named}` : `The nearest thing that is rendered: ${named}`;
}

const isItself: Readonly<Partial<Record<Planned, true>>> = {
  'hoverfly-head': true,
  'water-drop': true,
  'frost-crystal': true,
  stamp: true,
};

/** One picture as planned; lengths in mm, angles in rad. */
export interface PlannedPicture {
  readonly magnification: number;
  readonly effectiveFNumber: number;
  readonly pupilMagnification: number;
  readonly entrancePupilDistance: number;
  readonly nearLimit: number;
  /** undefined where one frame shows it all. */
  readonly frameStep: number | undefined;
  readonly frameCount: number;
  /** Of them those that are done while the subject holds still. */
  readonly taken: number;
  /** Only the first of them. */
  readonly isAlone: boolean;
  /** Streak on the sensor by what moves while daylight exposes; 0 by flash. */
  readonly motionBlur: number;
  /** How wide the flash looks; undefined in daylight. */
  readonly sourceAngle: number | undefined;
}

const [columns, rows] = [384, 272];
/** A longer streak is an even smear from edge to edge, pixels. */
const longest = 3 * columns;
/** How many times as wide as the subject a picture is. */
const margin = 1.3;
/** Of those that would be small in it, the part that is shown: so wide, mm, and around this place. */
const parts: Readonly<
  Partial<Record<SubjectSlug, { readonly width: number; readonly centre: NonNullable<PictureJob['centre']> }>>
> = {
  'drop-on-wire': { width: 5.6, centre: { x: 0, y: 0.7 } },
  'bay-leaf': { width: 24, centre: { x: 0, y: 0 } },
};
/** Farther than that from the first frame nothing of any subject here is deep, and nobody waits for more frames. */
export const mostFrames = 240;
/** Of the flash, as the sheet of room and light has it: from the axis, rad. */
const fromAxis = Math.PI / 3;
/** A light wider than this would surround the subject. */
const widest = 0.95 * Math.PI;

/** Frames of a stack that see anything of the rendered thing: those deeper than it are left out. */
function framesWithin(slug: SubjectSlug, { frameStep, frameCount, taken }: PlannedPicture) {
  const seen = frameStep === undefined ? 1 : Math.min(frameCount, Math.ceil(rendered[slug].top / frameStep) + 1);
  return { count: seen, taken: Math.min(taken, seen) };
}

/** Whether so many frames are more than are rendered here. */
export const isTooMany = (slug: SubjectSlug, plan: PlannedPicture) => framesWithin(slug, plan).count > mostFrames;

/** What the plan comes to on such a subject: the merged stack without the frames that were too late, or one frame, so lit. */
export function jobOf(slug: SubjectSlug, plan: PlannedPicture): PictureJob | undefined {
  const { magnification, effectiveFNumber, pupilMagnification, entrancePupilDistance } = plan;
  const { top, focusHeight } = rendered[slug];
  const { count, taken } = framesWithin(slug, plan);
  const isStack = plan.frameStep !== undefined && count > 1;
  if (taken < 1 || count > mostFrames) return undefined;
  const firstHeight = isStack ? top - plan.nearLimit : focusHeight;
  const { width, centre } = parts[slug] ?? { width: margin * rendered[slug].width };
  const pitch = (magnification * width) / columns;
  const { sourceAngle } = plan;
  const angularSize = sourceAngle === undefined ? undefined : Math.min(widest, sourceAngle);
  return {
    subject: slug,
    seed: 1,
    ...(centre && { centre }),
    view: {
      magnification,
      effectiveFNumber,
      pupilMagnification,
      entrancePupilDistance,
      focusHeight: firstHeight,
      pitch,
      columns,
      rows,
      colour: true,
      ...(plan.motionBlur > 0 && { motionBlur: { width: Math.min(plan.motionBlur, longest * pitch), angle: 0 } }),
    },
    ...(angularSize !== undefined &&
      // The head shows how wide its light is in its shading too.
      (slug === 'hoverfly-head'
        ? { lamps: [{ direction: [-Math.sin(fromAxis), 0, Math.cos(fromAxis)] as const, angularSize }] }
        : { lighting: { azimuth: 2.2, elevation: Math.PI / 2 - fromAxis, angularSize } })),
    ...(isStack && {
      stack: {
        frameStep: plan.frameStep!,
        frameCount: count,
        firstHeight,
        by: 'rail' as const,
        focalLength: entrancePupilDistance / (1 / magnification + 1 / pupilMagnification),
        scale: 'known' as const,
        lost: [],
        taken,
        ...(plan.isAlone && { only: 0 }),
      },
    }),
  };
}
