import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { afterRest } from './after-rest.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

test('acts once, when the calls have stopped for the pause', () => {
  const act = vi.fn();
  const rest = afterRest(200, act);
  for (let call = 0; call < 10; call++) {
    rest.call();
    vi.advanceTimersByTime(150);
  }
  expect(act).not.toHaveBeenCalled();
  vi.advanceTimersByTime(50);
  expect(act).toHaveBeenCalledTimes(1);
  vi.advanceTimersByTime(1000);
  expect(act).toHaveBeenCalledTimes(1);
});

test('acts again after a later call', () => {
  const act = vi.fn();
  const rest = afterRest(200, act);
  rest.call();
  vi.advanceTimersByTime(200);
  rest.call();
  vi.advanceTimersByTime(200);
  expect(act).toHaveBeenCalledTimes(2);
});

test('does not act once stopped', () => {
  const act = vi.fn();
  const rest = afterRest(200, act);
  rest.call();
  rest.stop();
  vi.advanceTimersByTime(1000);
  expect(act).not.toHaveBeenCalled();
});

test('does what there is to do piece by piece, and all of it anew when a hand comes back between', () => {
  const [first, second] = [vi.fn(), vi.fn()];
  const rest = afterRest(200, first, second);
  rest.call();
  vi.advanceTimersByTime(200);
  expect(first).toHaveBeenCalledTimes(1);
  expect(second).not.toHaveBeenCalled();
  rest.call();
  vi.advanceTimersByTime(100);
  expect(second).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1000);
  expect(first).toHaveBeenCalledTimes(2);
  expect(second).toHaveBeenCalledTimes(1);
});
