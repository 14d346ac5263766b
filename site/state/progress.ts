import { isProgress, type Progress } from '#core/practice/score.ts';
import { stored, type Stored } from './stored.ts';

/** How the reader stands in a lesson's problems, kept on their own machine. */
export function progressOf(lesson: string): Stored<Progress> {
  return stored<Progress>({
    key: `progress.${lesson}`,
    words: 'record of your problems',
    renewed: 'Your next answer starts a new record.',
    fallback: {},
    isValid: isProgress,
  });
}
