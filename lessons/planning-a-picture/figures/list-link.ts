import { bench } from '../bench.svelte.ts';
import { plan } from './planned.svelte.ts';

/** What the list asks of chains, by the input of the plan that answers it. */
const asked = {
  'subject-width': 'subject-width',
  'subject-depth': 'subject-depth',
  'subject-speed': 'subject-speed',
  'nearest.working-distance': 'flight-distance',
  'least.frame-fill': 'frame-fill',
  'sensor-width': 'sensor-width',
  iso: 'iso',
} as const;

/** Where the lesson on choosing ranks all chains of a kit for what is planned here. */
export function listLink(): string {
  const { frames, light } = plan.decided;
  const isStack = frames === 'stack' || frames === 'too-slow';
  const entries = {
    ...Object.fromEntries(Object.entries(asked).map(([there, here]) => [there, `${bench.inputs[here]}`])),
    ...(light === 'flash' ? { light: 'flash' } : { luminance: `${bench.inputs.luminance}` }),
    ...(isStack && { as: 'stack' }),
  };
  return `../choosing-kit/?${new URLSearchParams(entries).toString()}`;
}
