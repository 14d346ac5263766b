/**
 * A call that acts once calls have stopped for *pause* milliseconds: for what nobody can follow while the hand moves.
 *
 * One timer runs however often it is called: setting a timer anew at every movement costs more than looking at the time.
 */
export function afterRest(pause: number, act: () => void): { readonly call: () => void; readonly stop: () => void } {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let due = 0;

  function look() {
    const wait = due - performance.now();
    timer = wait > 0 ? setTimeout(look, wait) : undefined;
    if (timer === undefined) act();
  }

  return {
    call() {
      due = performance.now() + pause;
      timer ??= setTimeout(look, pause);
    },
    stop() {
      clearTimeout(timer);
      timer = undefined;
    },
  };
}
