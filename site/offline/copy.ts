import { stored } from '#site/state/stored.ts';
import { copyPrefix } from './worker-source.ts';

/** Whether the reader wants a copy of the course on this device; no until they have asked for its removal. */
const unwanted = stored<boolean>({
  key: 'copy-unwanted',
  words: 'choice about the copy for use without a network',
  renewed: 'The next visit saves it anew.',
  fallback: false,
  isValid: (value) => typeof value === 'boolean',
});

/** How the copy on this device stands. */
export type CopyState =
  | { readonly kind: 'impossible' }
  | { readonly kind: 'none' }
  | { readonly kind: 'fetching' }
  | { readonly kind: 'failed' }
  | { readonly kind: 'kept'; readonly size: CopySize | undefined; readonly newer: boolean };

export interface CopySize {
  readonly files: number;
  readonly bytes: number;
}

const base = import.meta.env.BASE_URL.replace(/\/?$/, '/');

const isPossible = import.meta.env.PROD && 'serviceWorker' in navigator && 'caches' in window;

/**
 * Keeps the course on this device from the first visit on, unless the reader removed it; *told* hears how it stands, now and whenever that
 * changes.
 */
export async function keepCopy(told: (state: CopyState) => void): Promise<void> {
  if (!isPossible) return told({ kind: 'impossible' });
  if (unwanted.read().value) return told({ kind: 'none' });
  try {
    const registration = await navigator.serviceWorker.register(`${base}worker.js`, { updateViaCache: 'none' });
    const tell = async () => told(await stateOf(registration));
    const watch = () =>
      registration.installing?.addEventListener('statechange', ({ target }) => {
        const isLost = (target as ServiceWorker).state === 'redundant' && !registration.active;
        if (isLost) told({ kind: 'failed' });
        else void tell();
      });
    registration.addEventListener('updatefound', () => {
      watch();
      void tell();
    });
    watch();
    await tell();
  } catch {
    told({ kind: 'failed' });
  }
}

async function stateOf({ active, waiting }: ServiceWorkerRegistration): Promise<CopyState> {
  if (!active) return { kind: 'fetching' };
  return { kind: 'kept', size: await sizeOfCopy(active), newer: waiting !== null };
}

async function namesOfCopies(): Promise<readonly string[]> {
  return (await caches.keys()).filter((name) => name.startsWith(copyPrefix(base)));
}

/**
 * How large the copy in use is, as the worker that keeps it knows: nothing of it is read for that. Nothing where a worker of an earlier
 * edition does not answer.
 */
function sizeOfCopy(worker: ServiceWorker): Promise<CopySize | undefined> {
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    setTimeout(() => done(undefined), 2000);
    port1.onmessage = ({ data }: MessageEvent<CopySize>) => done(data);
    worker.postMessage('size', [port2]);
  });
}

/** Looks for a newer edition. False where the network did not answer in *patience* milliseconds; the copy stays as it is then. */
export async function lookForNewer(patience = 10_000): Promise<boolean> {
  const registration = await navigator.serviceWorker.getRegistration(base);
  const late = new Promise<false>((done) => setTimeout(() => done(false), patience));
  const asked = registration?.update().then(
    () => true,
    () => false,
  );
  return Promise.race([asked ?? false, late]);
}

/** Lets the newer edition that waits take over, and shows this page from it. */
export async function showNewer(): Promise<void> {
  const registration = await navigator.serviceWorker.getRegistration(base);
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload());
  registration?.waiting?.postMessage('take-over');
}

/** Removes the copy and keeps none until {@link wantCopy} is called. */
export async function removeCopy(): Promise<void> {
  unwanted.write(true);
  const registration = await navigator.serviceWorker.getRegistration(base);
  await registration?.unregister();
  for (const name of await namesOfCopies()) await caches.delete(name);
}

export function wantCopy(): void {
  unwanted.write(false);
}
