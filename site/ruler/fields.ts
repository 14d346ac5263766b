import { expectedWords } from '#core/quantity/expected.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { readQuantity } from '#core/quantity/read.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { ranges } from './photograph.ts';

/** Something typed of a photograph. */
export interface RulerField {
  readonly key: keyof typeof ranges;
  readonly label: string;
  /** The quantity whose writing and units it has. */
  readonly as: QuantityName;
  readonly hint: string;
  /** Only for one way of measuring. */
  readonly by?: 'marks' | 'places';
}

export const fields: readonly RulerField[] = [
  {
    key: 'spacing',
    label: 'From mark to mark',
    as: 'subject-width',
    by: 'marks',
    hint: '1 mm on most rulers. Every found mark has to lie on one of the ruler’s.',
  },
  {
    key: 'distance',
    label: 'Between the two places',
    as: 'subject-width',
    by: 'places',
    hint: 'As the ruler says: 40 mm from mark 10 to mark 50.',
  },
  {
    key: 'sensorWidth',
    label: 'Sensor, longer side',
    as: 'sensor-width',
    hint: 'From the manual, to a tenth: 0.1 mm of 36 mm changes everything by 0.3 %.',
  },
  {
    key: 'focalLength',
    label: 'Focal length, roughly',
    as: 'focal-length',
    hint: 'As engraved: it makes a drift an angle.',
  },
  {
    key: 'pupilMagnification',
    label: 'P, pupil magnification',
    as: 'pupil-magnification',
    hint: 'If you know it. Otherwise 1 is assumed, and said to be.',
  },
  { key: 'fNumber', label: 'f-number', as: 'f-number', hint: 'For the depth of field.' },
  { key: 'extension', label: 'Rings between', as: 'extension', hint: '0 without.' },
  {
    key: 'workingDistance',
    label: 'Rim of the lens to ruler',
    as: 'working-distance',
    hint: 'If you measured it. It says where H is.',
  },
];

const rangeOf = ({ key }: RulerField) => ({ least: ranges[key][0], most: ranges[key][1] });

/** What became of a text: nothing there, a number, or why it cannot be used. */
export type TypedField =
  | { readonly kind: 'blank' }
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'refused'; readonly message: string };

/** Reads what is typed into a field; no text makes this throw. */
export function readTyped(field: RulerField, text: string): TypedField {
  const reading = readQuantity(field.as, text, rangeOf(field));
  if (reading.kind === 'blank' || reading.kind === 'value') return reading;
  const written = Array.from(text.trim()).slice(0, 24).join('');
  return {
    kind: 'refused',
    message: `“${written}” cannot be used. “${field.label}” takes ${expectedWords(field.as, rangeOf(field))}. It is as it was.`,
  };
}

/** A value as it stands in its field. */
export const typedOf = (field: RulerField, value: number | undefined): string =>
  value === undefined ? '' : printQuantity(field.as, value, { figures: 8, exact: true });
