/** What is said of walls: of this name, whether it is up; or by notes, that they want to know. */
type Message = { readonly name: number; readonly isUp: boolean } | 'which';

const open = () =>
  'BroadcastChannel' in globalThis ? new BroadcastChannel('ring-and-ruler.evening-walls') : undefined;

/** Says to the notes in other windows that this one has the evening on the wall; returns the way to say that it has it no longer. */
export function raiseWall(): () => void {
  const others = open();
  const say = (isUp: boolean) => others?.postMessage({ name: performance.timeOrigin, isUp } satisfies Message);
  const [up, down] = [() => say(true), () => say(false)];
  const hear = ({ data }: MessageEvent<Message>) => {
    if (data === 'which') up();
  };
  others?.addEventListener('message', hear);
  // A window that is closed says so; one that the browser's own button brings back, too.
  window.addEventListener('pagehide', down);
  window.addEventListener('pageshow', up);
  up();
  return () => {
    window.removeEventListener('pagehide', down);
    window.removeEventListener('pageshow', up);
    down();
    others?.close();
  };
}

/** Tells at once, and whenever it changes, whether some window has the evening on the wall; nothing where windows cannot tell each other. Returns the way to stop. */
export function watchWalls(tell: (isUp: boolean) => void): () => void {
  const others = open();
  const walls = new Set<number>();
  const hear = ({ data }: MessageEvent<Message>) => {
    if (data === 'which') return;
    if (data.isUp) walls.add(data.name);
    else walls.delete(data.name);
    tell(walls.size > 0);
  };
  if (others) tell(false);
  others?.addEventListener('message', hear);
  others?.postMessage('which' satisfies Message);
  return () => others?.close();
}
