type Numbers = Readonly<Record<string, number>>;

/** Milliseconds in which a step's change is seen to happen. */
const duration = 900;

/** Slow, fast, slow: the eye finds what moves, follows it, and sees where it comes to rest. */
const eased = (share: number) => (share < 0.5 ? 4 * share ** 3 : 1 - (2 - 2 * share) ** 3 / 2);

/** A number on its way: by equal ratios where both ends are positive, as f-numbers and magnifications are counted, else by equal steps. */
export function between(from: number, to: number, share: number): number {
  if (share >= 1 || from === to) return to;
  return from > 0 && to > 0 ? from * (to / from) ** share : from + (to - from) * share;
}

/**
 * Moves numbers *from* their values *to* others before the reader's eyes; *show* gets them at every frame, the last time exactly *to*.
 * At once where the reader wants no motion, or where nothing moves. Returns the way to be there at once.
 */
export function glide<N extends Numbers>(from: N, to: N, show: (now: N) => void): () => void {
  const names = Object.keys(to).filter((name) => from[name] !== to[name]);
  const still = names.length === 0 || matchMedia('(prefers-reduced-motion: reduce)').matches;
  let frame = 0;
  const arrive = () => {
    cancelAnimationFrame(frame);
    if (frame !== 0) show(to);
    frame = 0;
  };
  if (still) {
    show(to);
    return arrive;
  }
  show(from);
  let start: number | undefined;
  const advance = (now: number) => {
    start ??= now;
    const share = (now - start) / duration;
    if (share >= 1) return arrive();
    const moved = names.map((name) => [name, between(from[name]!, to[name]!, eased(share))] as const);
    show({ ...to, ...(Object.fromEntries(moved) as Partial<N>) });
    frame = requestAnimationFrame(advance);
  };
  frame = requestAnimationFrame(advance);
  return arrive;
}
