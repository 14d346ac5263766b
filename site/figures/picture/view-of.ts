import type { View } from '#core/picture/view.ts';
import type { Named } from '#core/quantity/formula.ts';
import { subjects, type SubjectSlug } from '#site/state/subjects.ts';
import { columns, pitchFor, rows } from './framing.ts';
import type { PictureJob } from './job.ts';

/** A bench that knows these quantities, whatever else it knows. */
export interface BenchWith<Name extends string> {
  readonly named: <Wanted extends Name>(...names: readonly Wanted[]) => Readonly<Named<Wanted>>;
}

type OfView = 'magnification' | 'effective-f-number' | 'pupil-magnification' | 'entrance-pupil-distance';
export type OfFrame = OfView | 'sensor-width' | 'pixel-pitch';

/** The camera as a bench has it, with what the bench does not know: where it is focused, how fine the picture is. */
export function viewOf(bench: BenchWith<OfView>, own: Pick<View, 'focusHeight' | 'pitch' | 'wavelength'>): View {
  const lens = bench.named('magnification', 'effective-f-number', 'pupil-magnification', 'entrance-pupil-distance');
  return { ...lens, columns, rows, colour: true, ...own };
}

/** The camera so that a *subject* is seen with a margin around it, *margin* times as wide as it is, as far as the sensor takes that in. */
export function viewOfSubject(
  bench: BenchWith<OfFrame>,
  subject: SubjectSlug,
  { margin, focusHeight }: { readonly margin: number; readonly focusHeight: number },
): View {
  const width = margin * subjects[subject].width;
  const pitch = pitchFor({ ...bench.named('magnification', 'sensor-width', 'pixel-pitch'), width });
  return viewOf(bench, { focusHeight, pitch });
}

/** The whole frame that the sensor records, or the middle of it where the subject would be lost in it. */
export function pictureOf(bench: BenchWith<OfFrame>, subject: SubjectSlug, margin: number): PictureJob {
  const { focusHeight } = subjects[subject];
  return { subject, seed: 1, view: viewOfSubject(bench, subject, { margin, focusHeight }) };
}
