import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { Developer, type OpenShop } from './developer.ts';
import { finished, sketch, type PictureJob } from './job.ts';
import type { Order, Report } from './messages.ts';

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

function workshop() {
  const orders: Order[] = [];
  let heard: (report: Report) => void = () => undefined;
  let broken: (words: string) => void = () => undefined;
  const open = vi.fn<OpenShop>((onheard, onbroken) => {
    heard = onheard;
    broken = onbroken;
    return { send: (order) => orders.push(order), close: () => undefined };
  });
  const told = { progress: vi.fn(), picture: vi.fn(), failed: vi.fn() };
  const developer = new Developer(told, open, 250);
  const done = () => heard({ id: orders.at(-1)!.id, kind: 'done', developed: { picture: pixels } });
  return {
    developer,
    orders,
    open,
    told,
    done,
    hear: (report: Report) => heard(report),
    breakDown: () => broken('gone'),
  };
}

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

describe('a developer', () => {
  test('does not make the same picture twice, but anew when asked again, or after none was wanted', () => {
    const { developer, orders, done } = workshop();
    expect(developer.order(job(1))).toBe(true);
    done();
    expect(developer.order(job(1))).toBe(false);
    expect(orders).toHaveLength(1);
    developer.stop();
    developer.again();
    expect(orders.at(-1)).toMatchObject({ job: job(1), fineness: { atOnce: true } });
    done();
    expect(developer.order(undefined)).toBe(true);
    expect(developer.order(job(1))).toBe(true);
    expect(orders.at(-1)).toMatchObject({ job: job(1), fineness: { atOnce: true } });
  });

  test('sends for a sketch at once and for the fine picture when the hand has rested', () => {
    const { developer, orders, done, told } = workshop();
    developer.order(job(1));
    expect(orders.at(-1)).toMatchObject({ fineness: sketch });
    done();
    expect(told.picture).toHaveBeenLastCalledWith({ picture: pixels }, true);
    vi.advanceTimersByTime(249);
    expect(orders).toHaveLength(1);
    vi.advanceTimersByTime(1);
    expect(orders.at(-1)).toMatchObject({ fineness: finished });
    done();
    expect(told.picture).toHaveBeenLastCalledWith({ picture: pixels }, false);
  });

  test('has sketches and fine pictures made in two places, opened once', () => {
    const { developer, open, done } = workshop();
    for (let seed = 1; seed <= 3; seed++) {
      developer.order(job(seed));
      done();
      vi.advanceTimersByTime(250);
      done();
    }
    expect(open).toHaveBeenCalledTimes(2);
  });

  test('makes sketches coarser where they lag and finer where there is time, within bounds', () => {
    const { developer, orders, done } = workshop();
    const coarsenessAfter = (milliseconds: number, sketches: number) => {
      for (let count = 0; count < sketches; count++) {
        developer.order(job(orders.length + 1));
        vi.advanceTimersByTime(milliseconds);
        done();
      }
      return orders.at(-1)!.fineness!.coarseness;
    };
    expect(coarsenessAfter(1, 1)).toBe(sketch.coarseness);
    expect(coarsenessAfter(1, 5)).toBe(4);
    expect(coarsenessAfter(18, 5)).toBe(4);
    expect(coarsenessAfter(60, 4)).toBe(7);
    expect(coarsenessAfter(60, 20)).toBe(9);
  });

  test('lets a sketch finish however fast the hand is, and then sends for the newest only', () => {
    const { developer, orders, done } = workshop();
    for (let seed = 1; seed <= 5; seed++) developer.order(job(seed));
    expect(orders.map((order) => order.job?.seed)).toEqual([1]);
    done();
    expect(orders.map((order) => order.job?.seed)).toEqual([1, 5]);
  });

  test('leaves the fine picture off when another is wanted', () => {
    const { developer, orders, done, told, hear } = workshop();
    developer.order(job(1));
    done();
    vi.advanceTimersByTime(250);
    const fine = orders.at(-1)!;
    hear({ id: fine.id, kind: 'progress', share: 0.5 });
    expect(told.progress).toHaveBeenLastCalledWith(0.5);
    developer.order(job(2));
    expect(orders.at(-1)).toMatchObject({ job: { seed: 2 }, fineness: { atOnce: true } });
    told.picture.mockClear();
    hear({ id: fine.id, kind: 'done', developed: { picture: pixels } });
    expect(told.picture).not.toHaveBeenCalled();
  });

  test('stops when asked, and what comes late is not shown', () => {
    const { developer, orders, told, hear } = workshop();
    developer.order(job(1));
    const [first] = orders;
    developer.stop();
    expect(orders.at(-1)).not.toHaveProperty('job');
    hear({ id: first!.id, kind: 'done', developed: { picture: pixels } });
    expect(told.picture).not.toHaveBeenCalled();
    vi.advanceTimersByTime(1000);
    expect(orders).toHaveLength(2);
  });

  test('passes on why there is no picture, and works on', () => {
    const { developer, orders, told, hear, done } = workshop();
    developer.order(job(1));
    hear({ id: orders.at(-1)!.id, kind: 'failed', words: 'inside the lens' });
    expect(told.failed).toHaveBeenLastCalledWith('inside the lens');
    developer.order(job(2));
    done();
    expect(told.picture).toHaveBeenCalledTimes(1);
  });

  test('says so when the worker breaks down, and opens another for the next picture', () => {
    const { developer, open, told, breakDown } = workshop();
    developer.order(job(1));
    breakDown();
    expect(told.failed).toHaveBeenLastCalledWith('gone');
    developer.order(job(2));
    expect(open).toHaveBeenCalledTimes(2);
  });
});
