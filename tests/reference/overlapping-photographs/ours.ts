import { frameCount } from '#core/stack/frame-count.formula.ts';
import { frameStep } from '#core/stack/frame-step.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Survey {
  frames: readonly number[];
  overlaps: readonly number[];
}

const steps = ({ frames, overlaps }: Survey) => ({
  steps: frames.map((depthOfField, index) => frameStep({ depthOfField, overlap: overlaps[index]! })),
});

export const ours = oursById({
  'survey-lines': (survey: Survey & { lengths: readonly number[] }) => ({
    ...steps(survey),
    counts: survey.lengths.map((length, index) => {
      const frame = { depthOfField: survey.frames[index]!, overlap: survey.overlaps[index]! };
      return frameCount({ ...frame, subjectDepth: length + frame.depthOfField });
    }),
  }),
  'survey-steps': steps,
  'navy-side-lap': steps,
});
