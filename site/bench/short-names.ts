import { printNumber } from '#core/quantity/print.ts';
import type { Link } from '#site/chain/chain.ts';
import { numberIn } from '#site/kit/part.ts';

/** What a part is called inside a drawing, where names in full find no room. */
export function shortName({ thing, turned }: Link): string {
  const { kind, part } = thing;
  const number = (key: string, as: 'focal-length' | 'extension') => printNumber(as, numberIn(part, key)!).number;
  switch (kind) {
    case 'camera':
    case 'reversing-ring':
    case 'coupling-ring':
      return '';
    case 'lens':
      return `${number('focal-length', 'focal-length')} mm${turned ? ', turned' : ''}`;
    case 'ring':
      return number('extension', 'extension');
    case 'bellows':
      return 'bellows';
    case 'close-up-lens':
      return `+${numberIn(part, 'close-up-power')!}`;
    case 'converter':
      return `×${numberIn(part, 'converter-factor')!}`;
    case 'tube-lens':
      return 'tube lens';
    case 'objective':
    case 'finite-objective':
      return `${numberIn(part, 'objective-magnification')!}×`;
  }
}
