import { describe, expect, it } from 'vitest';
import { extensionInWords } from './extension-in-words.ts';
import { decisionsOf, type Planned } from './decisions.ts';
import { planRows, type SizeGiven } from './plan.ts';

const spider: Planned = {
  workingDistance: 72.7,
  flightDistance: 30,
  subjectDepth: 3,
  magnification: 3,
  effectiveFNumber: 25.4,
  circleOfConfusion: 0.02,
  wavelength: 0.00055,
  frameCount: 38,
  inTimeFrameCount: 16,
  ambientExposureTime: 1 / 6,
  slowestExposureTime: 1 / 900,
  neededFlashPower: 1 / 30,
};
const words = { chain: 'bellows', checks: 'eyes first', gives: 'asked' as SizeGiven };
const changesOf = (plan: Planned, more = words) =>
  planRows(decisionsOf(plan), (name) => name, more).flatMap(({ title, change }) =>
    change === undefined ? [] : [`${title}: ${change}`],
  );

describe('a plan', () => {
  it('has eight answers', () => {
    expect(planRows(decisionsOf(spider), (name) => name, words).map(({ title }) => title[0])).toEqual([...'12345678']);
  });

  it('says in words how many frames there are, and how many of them there is no time for', () => {
    const printed = {
      'frame-count': '38',
      'frame-step': '0.0789 mm',
      'in-time.frame-count': '16 of 38',
      'time-limit': '8 s',
    } as Readonly<Record<string, string>>;
    const frames = (plan: Planned) =>
      planRows(decisionsOf(plan), (name) => printed[name] ?? name, words).find(({ title }) => title === '5 Frames');
    expect(frames(spider)).toEqual({
      title: '5 Frames',
      answer: '38 frames, 0.0789 mm apart; only 16 of 38 done in 8 s',
      change: 'take it smaller (question 1)',
    });
    expect(frames({ ...spider, inTimeFrameCount: 38 })).toMatchObject({ answer: '38 frames, 0.0789 mm apart' });
  });

  it('names the earlier answer to change, and nothing where all hold', () => {
    expect(changesOf(spider)).toEqual(['5 Frames: take it smaller (question 1)']);
    expect(changesOf({ ...spider, inTimeFrameCount: 38 })).toEqual([]);
    expect(changesOf({ ...spider, inTimeFrameCount: 38, flightDistance: 80 })).toEqual([
      '3 Room: a longer lens (question 2)',
    ]);
    expect(changesOf({ ...spider, effectiveFNumber: 36 })).toEqual(['4 f-number: open up']);
    expect(changesOf({ ...spider, subjectDepth: 0.08, effectiveFNumber: 18, frameCount: 2 })).toEqual([
      '4 f-number: close further',
    ]);
    expect(changesOf({ ...spider, inTimeFrameCount: 38, neededFlashPower: 2 })).toEqual([
      '6 Light: another ISO, or f-number (question 4)',
    ]);
    expect(changesOf({ ...spider, inTimeFrameCount: 38 }, { ...words, gives: 'more' })).toEqual([
      '2 Chain: take it larger (question 1)',
    ]);
    expect(changesOf({ ...spider, inTimeFrameCount: 38 }, { ...words, gives: 'less' })).toEqual([
      '2 Chain: take it smaller (question 1)',
    ]);
  });
});

describe('what makes an extension', () => {
  it.each([
    [0, [], 'lens alone'],
    [45.3, [], 'lens + 48 mm of rings'],
    [145, [], 'lens + bellows'],
    [900, [], 'longer than the bellows: another lens'],
    [15, [20], 'lens + 20 mm of your rings'],
    [27, [13, 21, 31], 'lens + 31 mm of your rings'],
    [45.3, [20], 'longer than your rings: bellows, or another lens'],
  ] as const)('%s mm, of rings %j', (extension, own, words) => {
    expect(extensionInWords(extension, own)).toBe(words);
  });
});
