import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { Preparation } from './preparation.ts';
import { Renderer } from './renderer.ts';
import type { StartWorker } from './start-worker.ts';
import { finished, sketch, type PictureJob } from './job.ts';
import type { RenderRequest, RenderReply } from './messages.ts';

const job = (seed: number): PictureJob => ({
  subject: 'stamp',
  seed,
  view: {
    magnification: 1,
    effectiveFNumber: 16,
    pupilMagnification: 1,
    entrancePupilDistance: 100,
    focusHeight: 0,
    pitch: 0.01,
    columns: 8,
    rows: 8,
  },
});
const pixels = { columns: 1, rows: 1, rgba: new Uint8ClampedArray(4) };

function underTest() {
  const requests: RenderRequest[] = [];
  let replied: (reply: RenderReply) => void = () => undefined;
  let failed: (words: string) => void = () => undefined;
  const open = vi.fn<StartWorker>((onReply, onError) => {
    replied = onReply;
    failed = onError;
    return { send: (request) => requests.push(request), close: () => undefined };
  });
  const listener = { progress: vi.fn(), picture: vi.fn(), failed: vi.fn() };
  const prepared = new Preparation(open);
  const renderer = new Renderer(listener, open, 250, prepared);
  const done = () => replied({ id: requests.at(-1)!.id, kind: 'done', rendered: { picture: pixels } });
  return {
    renderer,
    prepared,
    requests,
    open,
    listener,
    done,
    hear: (reply: RenderReply) => replied(reply),
    breakDown: () => failed('gone'),
  };
}

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

describe('a renderer', () => {
  test('does not make the same picture twice, but anew when asked again, or after none was wanted', () => {
    const { renderer, requests, done } = underTest();
    expect(renderer.render(job(1))).toBe(true);
    done();
    expect(renderer.render(job(1))).toBe(false);
    expect(requests).toHaveLength(1);
    renderer.stop();
    renderer.again();
    expect(requests.at(-1)).toMatchObject({ job: job(1), fineness: { atOnce: true } });
    done();
    expect(renderer.render(undefined)).toBe(true);
    expect(renderer.render(job(1))).toBe(true);
    expect(requests.at(-1)).toMatchObject({ job: job(1), fineness: { atOnce: true } });
  });

  test('asks for a sketch at once and for the fine picture when the hand has rested', () => {
    const { renderer, requests, done, listener } = underTest();
    renderer.render(job(1));
    expect(requests.at(-1)).toMatchObject({ fineness: sketch });
    done();
    expect(listener.picture).toHaveBeenLastCalledWith({ picture: pixels }, true);
    vi.advanceTimersByTime(249);
    expect(requests).toHaveLength(1);
    vi.advanceTimersByTime(1);
    expect(requests.at(-1)).toMatchObject({ fineness: finished });
    done();
    expect(listener.picture).toHaveBeenLastCalledWith({ picture: pixels }, false);
  });

  test('has sketches and fine pictures made in two places, opened once', () => {
    const { renderer, open, done } = underTest();
    for (let seed = 1; seed <= 3; seed++) {
      renderer.render(job(seed));
      done();
      vi.advanceTimersByTime(250);
      done();
    }
    expect(open).toHaveBeenCalledTimes(2);
  });

  test('makes sketches coarser where they lag and finer where there is time, within bounds', () => {
    const { renderer, requests, done } = underTest();
    const coarsenessAfter = (milliseconds: number, sketches: number) => {
      for (let count = 0; count < sketches; count++) {
        renderer.render(job(requests.length + 1));
        vi.advanceTimersByTime(milliseconds);
        done();
      }
      return requests.at(-1)!.fineness!.coarseness;
    };
    expect(coarsenessAfter(1, 1)).toBe(sketch.coarseness);
    expect(coarsenessAfter(1, 5)).toBe(4);
    expect(coarsenessAfter(18, 5)).toBe(4);
    expect(coarsenessAfter(60, 4)).toBe(7);
    expect(coarsenessAfter(60, 20)).toBe(9);
  });

  test('lets a sketch finish however fast the hand is, and then asks for the newest only', () => {
    const { renderer, requests, done } = underTest();
    for (let seed = 1; seed <= 5; seed++) renderer.render(job(seed));
    expect(requests.map((request) => request.job?.seed)).toEqual([1]);
    done();
    expect(requests.map((request) => request.job?.seed)).toEqual([1, 5]);
  });

  test('leaves the fine picture off when another is wanted', () => {
    const { renderer, requests, done, listener, hear } = underTest();
    renderer.render(job(1));
    done();
    vi.advanceTimersByTime(250);
    const fine = requests.at(-1)!;
    hear({ id: fine.id, kind: 'progress', share: 0.5 });
    expect(listener.progress).toHaveBeenLastCalledWith(0.5);
    renderer.render(job(2));
    expect(requests.at(-1)).toMatchObject({ job: { seed: 2 }, fineness: { atOnce: true } });
    listener.picture.mockClear();
    hear({ id: fine.id, kind: 'done', rendered: { picture: pixels } });
    expect(listener.picture).not.toHaveBeenCalled();
  });

  test('stops when asked, and what comes late is not shown', () => {
    const { renderer, requests, listener, hear } = underTest();
    renderer.render(job(1));
    const [first] = requests;
    renderer.stop();
    expect(requests.at(-1)).not.toHaveProperty('job');
    hear({ id: first!.id, kind: 'done', rendered: { picture: pixels } });
    expect(listener.picture).not.toHaveBeenCalled();
    vi.advanceTimersByTime(1000);
    expect(requests).toHaveLength(2);
  });

  test('passes on why there is no picture, and works on', () => {
    const { renderer, requests, listener, hear, done } = underTest();
    renderer.render(job(1));
    hear({ id: requests.at(-1)!.id, kind: 'failed', words: 'inside the lens' });
    expect(listener.failed).toHaveBeenLastCalledWith('inside the lens');
    renderer.render(job(2));
    done();
    expect(listener.picture).toHaveBeenCalledTimes(1);
  });

  test('shows a picture that was made beforehand at once, without a sketch, and one that is under way when it is there', () => {
    const { renderer, requests, done, hear, listener, prepared } = underTest();
    prepared.want(job(1));
    prepared.want(job(2));
    prepared.want(job(2));
    expect(requests).toMatchObject([{ job: { seed: 1 }, fineness: finished }]);
    done();
    renderer.render(job(1));
    expect(listener.picture).toHaveBeenLastCalledWith({ picture: pixels }, false);
    renderer.render(job(2));
    hear({ id: requests.at(-1)!.id, kind: 'progress', share: 0.4 });
    expect(listener.progress).toHaveBeenLastCalledWith(0.4);
    done();
    expect(listener.picture).toHaveBeenCalledTimes(2);
    expect(requests.map((request) => request.fineness)).toEqual([finished, finished]);
  });

  test('has what is wanted now made before what may be wanted later', () => {
    const { renderer, requests, done, prepared } = underTest();
    for (const seed of [1, 2, 3]) prepared.want(job(seed));
    renderer.render(job(3));
    done();
    done();
    done();
    expect(requests.flatMap((request) => request.job?.seed ?? [])).toEqual([1, 3, 1, 2]);
    renderer.render(job(4));
    expect(requests.at(-1)).toMatchObject({ job: { seed: 4 }, fineness: sketch });
  });

  test('says so when the worker breaks down, and opens another for the next picture', () => {
    const { renderer, open, listener, breakDown } = underTest();
    renderer.render(job(1));
    breakDown();
    expect(listener.failed).toHaveBeenLastCalledWith('gone');
    renderer.render(job(2));
    expect(open).toHaveBeenCalledTimes(2);
  });
});
