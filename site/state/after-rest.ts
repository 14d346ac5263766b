/**
 * A call that acts once calls have stopped for *pause* milliseconds: for what nobody can follow while the hand moves. What there is to do is
 * done piece by piece, so that a hand that comes back is not kept waiting; it is then all done anew.
 *
 * One timer runs however often it is called: setting a timer anew at every movement costs more than looking at the time.
 */
export function afterRest(
  pause: number,
  ...pieces: readonly (() => void)[]
): { readonly call: () => void; readonly stop: () => void } {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let due = 0;
  let next = 0;

  function look() {
    const wait = due - performance.now();
    if (wait <= 0) pieces[next++]?.();
    timer = wait > 0 || next < pieces.length ? setTimeout(look, Math.max(0, wait)) : undefined;
  }

  return {
    call() {
      due = performance.now() + pause;
      next = 0;
      timer ??= setTimeout(look, pause);
    },
    stop() {
      clearTimeout(timer);
      timer = undefined;
    },
  };
}
