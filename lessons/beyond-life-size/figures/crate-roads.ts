import type { Road } from './roads.ts';

/** Roads that the crate's gear makes past life size: what each is set to, and in how few words a plot can name it. */
export const crateRoads: readonly {
  readonly key: string;
  readonly name: string;
  readonly short: string;
  readonly set: Readonly<Record<string, string | number>> & { readonly route: Road };
}[] = [
  {
    key: 'rings-90',
    name: '90 mm macro on 72 mm of rings',
    short: '90 + rings',
    set: { route: 'rings', extension: 72 },
  },
  {
    key: 'rings-50',
    name: '50 mm on 72 mm of rings',
    short: '50 + rings',
    set: { route: 'rings', lens: 'lens-50', extension: 72 },
  },
  {
    key: 'bellows-50',
    name: '50 mm on bellows, 150 mm',
    short: '50 + bellows',
    set: { route: 'rings', lens: 'lens-50', extension: 150 },
  },
  { key: 'reversed-28', name: '28 mm turned round', short: '28 turned', set: { route: 'reversed' } },
  {
    key: 'reversed-18',
    name: 'zoom at 18 mm turned round',
    short: '18 turned',
    set: { route: 'reversed', turned: 'lens-18' },
  },
  {
    key: 'coupled-100-50',
    name: '50 mm turned round on 100 mm',
    short: '50 on 100',
    set: { route: 'coupled', main: 'lens-100' },
  },
  { key: 'coupled-200-50', name: '50 mm turned round on 200 mm', short: '50 on 200', set: { route: 'coupled' } },
  {
    key: 'coupled-200-28',
    name: '28 mm turned round on 200 mm',
    short: '28 on 200',
    set: { route: 'coupled', front: 'lens-28', 'reversed-lens.f-number': 2.8 },
  },
  { key: 'converter-90', name: '90 mm macro on a ×2 converter', short: '90 + ×2', set: { route: 'converter' } },
  {
    key: 'converter-90-ring',
    name: '90 mm macro, 36 mm ring and ×2 converter',
    short: '90 + ring + ×2',
    set: { route: 'converter', 'front-ring.extension': 36 },
  },
  {
    key: 'objective-4',
    name: '4× objective on 200 mm',
    short: '4× on 200',
    set: { route: 'objective', objective: 'objective-4' },
  },
  {
    key: 'objective-10-100',
    name: '10× objective on 100 mm',
    short: '10× on 100',
    set: { route: 'objective', main: 'lens-100' },
  },
  { key: 'objective-10', name: '10× objective on 200 mm', short: '10× on 200', set: { route: 'objective' } },
];
