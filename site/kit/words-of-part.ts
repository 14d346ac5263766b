import { planOf, listedKinds, type Kind } from './kinds.ts';
import { printField } from './field.ts';
import type { Kit, KitPart, NewPart } from './part.ts';

/** What is said of a part, field by field, as a list shows it. */
export function factsOf(
  part: KitPart,
): readonly { readonly key: string; readonly label: string; readonly words: string }[] {
  return planOf(part.kind).fields.flatMap((field) => {
    const value = part[field.key];
    return value === undefined ? [] : [{ key: field.key, label: field.label, words: printField(field, value) }];
  });
}

/** What a part is called whose owner gives it no name. */
export function usualName(part: NewPart): string {
  const printed = (key: string) => {
    const field = planOf(part.kind).fields.find((one) => one.key === key);
    const value = part[key];
    return field && value !== undefined ? printField(field, value).replace(/ ±.*/, '') : '';
  };
  const { one, fields } = planOf(part.kind);
  const noun = one.replace(/^an? /, '');
  if (part.kind === 'camera') return `${printed('sensor-width')} × ${printed('sensor-height')} camera`;
  if (part.kind === 'lens') return `${printed('focal-length')} ${printed('max-aperture')}`;
  // The trade says the number alone: it is in metres.
  if (part.kind === 'flash') return `flash, GN ${printed('guide-number').replace(/\s*m$/, '')}`;
  if (part.kind === 'bellows') return 'bellows';
  if (part.kind === 'support') return printed('support').replace(/^an? /, '');
  // Of one factor there are several: what is known of its planes tells them apart.
  const planes = part.kind === 'converter' && part['focal-length'] !== undefined;
  return `${printed(fields[0]!.key)} ${noun}${planes ? `, f −${printed('focal-length')}` : ''}`;
}

/** What a kit holds, kind by kind: `2 cameras, 3 lenses`. */
export function countsOf({ parts }: Kit): string {
  const counts = listedKinds.map((kind: Kind): string => {
    const count = parts.filter((part) => part.kind === kind).length;
    const { one, several } = planOf(kind);
    if (count === 0) return '';
    return count === 1 ? one : `${count} ${several.toLowerCase()}`;
  });
  return counts.filter((words) => words !== '').join(', ');
}
