import { describe, expect, it } from 'vitest';
import { course } from '#site/course.ts';
import { firstSteps, namesOfSteps } from './first-steps.ts';

describe('the steps as they were when addresses counted places', () => {
  it('are those of the whole course, in its order then: the numbers of a hall counted by it', () => {
    const then = Object.keys(firstSteps);
    expect(then).toHaveLength(21);
    expect(
      course
        .map(({ slug }) => slug)
        .filter((slug) => then.includes(slug))
        .sort(),
    ).toEqual([...then].sort());
    expect([then[0], then[3], then[20]]).toEqual(['life-size', 'extension', 'soap-film']);
  });

  it('name a step by its place then, wherever it stands now', () => {
    expect(namesOfSteps('extension', ['light', 'a-new-one', 'no-ring'])).toEqual([
      ['light', '4'],
      ['a-new-one'],
      ['no-ring', '1'],
    ]);
    expect(namesOfSteps('a-new-lesson', ['one'])).toEqual([['one']]);
    expect(namesOfSteps('toString', ['one'])).toEqual([['one']]);
  });
});
