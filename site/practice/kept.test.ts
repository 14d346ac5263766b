import { describe, expect, it } from 'vitest';
import type { Progress } from '#core/practice/score.ts';
import { reviewAfter } from '#core/practice/review.ts';
import { kindsInTurn } from './candidates.ts';
import { fileOfRecord, readRecord, withAnswers, type WholeRecord } from './kept.ts';

const score = { seed: 3, tries: 1, closed: true, worked: 3, atOnce: 3, later: 0 };
const right: Progress = { 'ring-on-a-lens': score };
const whole: WholeRecord = {
  lessons: { extension: right },
  sheets: { 'a-4-8-A-7': [{ text: '12 mm', first: 'right' }, { text: '' }] },
  review: reviewAfter(
    { asked: 0, kinds: {} },
    { kind: 'extension/room-left', seed: 2, isRight: false, mistake: 'from-h' },
  ),
};
const slugs = ['extension', 'reversed'];

describe('the file of a record', () => {
  it('is read back as it was written', () => {
    expect(readRecord(fileOfRecord(whole), slugs)).toEqual(whole);
  });

  it.each([
    ['', 'not JSON'],
    ['{"kit":"ring-and-ruler"}', 'no record of practice'],
    ['null', 'no record of practice'],
    [fileOfRecord(whole).replace('"version": 1', '"version": 9'), 'version 9'],
    [fileOfRecord(whole).replace('extension":', 'astronomy":'), '“astronomy”, which is not here'],
    [fileOfRecord(whole).replace('"worked": 3', '"worked": -3'), 'cannot be true'],
    [fileOfRecord(whole).replace('"asked": 1', '"asked": "one"'), 'review cannot be read'],
    [fileOfRecord(whole).replace('"text": ""', '"text": 5'), 'answers to sheets'],
    ['{"practice":"ring-and-ruler","version":1}', 'no list of lessons'],
  ])('is refused in words where it is not: %s', (text, words) => {
    expect(readRecord(text, slugs)).toContain(words);
  });
});

describe('answers to sheets', () => {
  it('are kept for the last twenty sheets, the one worked now at the end', () => {
    let kept = {};
    for (let sheet = 1; sheet <= 25; sheet++) kept = withAnswers(kept, `a-4-8-A-${sheet}`, [{ text: `${sheet}` }]);
    kept = withAnswers(kept, 'a-4-8-A-10', [{ text: 'again' }]);
    expect(Object.keys(kept)).toHaveLength(20);
    expect(Object.entries(kept).at(-1)).toEqual(['a-4-8-A-10', [{ text: 'again' }]]);
    expect(kept).not.toHaveProperty('a-4-8-A-5');
  });
});

describe('the kinds of a review', () => {
  const lessons = [
    { slug: 'one', kinds: [{ id: 'a' }, { id: 'b' }, { id: 'c' }] },
    { slug: 'two', kinds: [{ id: 'a' }] },
  ];

  it('take turns by lesson', () => {
    expect(kindsInTurn(lessons, {})).toEqual(['one/a', 'two/a', 'one/b', 'one/c']);
  });

  it('begin with what was slipped on in a lesson and end with what was right there', () => {
    const progress = { one: { a: score, c: { ...score, atOnce: 2 } } };
    expect(kindsInTurn(lessons, progress)).toEqual(['one/c', 'two/a', 'one/b', 'one/a']);
  });
});
