/**
 * Keeps the screen from going dark, for as long as the page is seen, until the function returned is called. A browser that
 * cannot, or a battery that forbids it, leaves all as it is.
 */
export function keepAwake(): () => void {
  let lock: WakeLockSentinel | undefined;
  let released = false;
  const ask = async () => {
    if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
    try {
      lock = await navigator.wakeLock.request('screen');
      if (released) await lock.release();
    } catch {
      // Refused: the screen goes dark when the system says so.
    }
  };
  void ask();
  // A page that was hidden has lost its lock.
  document.addEventListener('visibilitychange', ask);
  return () => {
    released = true;
    document.removeEventListener('visibilitychange', ask);
    void lock?.release();
  };
}

/** Fills the screen with the page, or gives the screen back. */
export function toggleFullScreen(): void {
  const asked = document.fullscreenElement ? document.exitFullscreen() : document.documentElement.requestFullscreen();
  // A browser may forbid it: the view then stays in its window.
  asked.catch(() => undefined);
}
