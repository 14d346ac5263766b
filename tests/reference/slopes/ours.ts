import { subjectDepthAslant } from '#core/light/subject-depth-aslant.formula.ts';

/** A roof rises above its run as a subject seen aslant recedes across the picture, mm. */
export const ours = ({ run, incidenceAngle }: { readonly run: number; readonly incidenceAngle: number }) => ({
  rise: subjectDepthAslant({ fieldWidth: run, incidenceAngle }),
});
