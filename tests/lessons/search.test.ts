import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { ProblemFamily } from '#core/practice/family.ts';
import { course } from '#site/course.ts';
import { searchEntries } from '#site/search/entries.ts';
import { finderOf } from '#site/search/find.ts';
import { everyLessonFile } from '#tests/support/lessons.ts';
import { root } from '#tests/support/run.ts';

const problems = Object.fromEntries(
  (await everyLessonFile('problems.ts')).map(({ slug, exports }) => [
    slug,
    exports['families'] as readonly ProblemFamily[],
  ]),
);
const lessons = Object.fromEntries(
  course.map(({ slug, question }) => {
    const file = readFileSync(join(root, 'lessons', slug, 'lesson.mdx'), 'utf8');
    const { summary = '', prose = '' } = /^---.*?^summary: (?<summary>.*?)$.*?^---$(?<prose>.*)/ms.exec(file)!.groups!;
    return [slug, { question, summary, prose }];
  }),
);
const find = finderOf(searchEntries({ lessons, problems, sources: [] }));

// What somebody types who knows none of our words, and where they should be sent first: in the whole course, as it is.
it.each([
  ['tripod', 'lessons/holding-still/'],
  ['handheld', 'lessons/holding-still/'],
  ['hand-held', 'lessons/holding-still/'],
  ['blurry', 'lessons/holding-still/'],
  ['why are my pictures blurry?', 'lessons/holding-still/'],
  ['shaky', 'lessons/holding-still/'],
  ['shutter speed', 'lessons/holding-still/'],
  ['flash too bright', 'lessons/exposure-and-flash/'],
  ['my flash is too bright', 'lessons/exposure-and-flash/'],
  ['too dark', 'lessons/exposure-and-flash/'],
  ['print', 'course/'],
  ['pdf', 'course/'],
  ['offline', 'course/'],
  ['no internet', 'course/'],
  ['out of focus', 'lessons/depth-of-field/'],
  ['bokeh', 'lessons/depth-of-field/'],
  ['which lens to buy', 'lessons/choosing-kit/'],
  ['bugs', 'lessons/planning-a-picture/'],
  ['harsh shadows', 'lessons/size-of-light/'],
  ['Focus Stacking', 'lessons/stacking/'],
  ['reverse lens', 'lessons/reversed/'],
  ['microscope', 'lessons/beyond-life-size/'],
  ['will not focus', 'lessons/focusing-close/'],
  ['soft images', 'lessons/diffraction/'],
  ['teleconverter', 'glossary/#converter'],
  ['extension tube', 'glossary/#extension-ring'],
  ['camera setup', 'lessons/planning-a-picture/'],
])('a beginner who looks for “%s” is sent to %s', (query, path) => {
  expect(find(query).entries[0]?.path).toBe(path);
});
