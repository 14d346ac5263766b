import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: '⟨… one question for the room⟩',
    caption: '⟨… one caption⟩ {focus-distance}',
    set: { 'focal-length': 60 },
  },
];
