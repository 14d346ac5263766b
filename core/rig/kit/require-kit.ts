import { FaultyPrescription } from '../faulty-prescription.ts';
import { closestMagnification, lensInUse } from '../lens-in-use.ts';
// A kit may hold lenses that are traced.
import '../prescription-in-use.ts';
import type { Focusing } from '../lens.ts';
import type { Prescription } from '../prescription.ts';
import { FaultyKit, type KitLens, type KitRow } from './kit.ts';

type Numbers = Readonly<Record<string, readonly [least: number, most: number, open?: boolean]>>;

const positive = [0, Infinity, true] as const;
const notNegative = [0, Infinity] as const;

/** What every kind of row has to hold, and in which range. A camera needs the mount’s register, a lens carries it too. */
const numbersOf: Readonly<Record<KitRow['part'], Numbers>> = {
  camera: {
    registerDistance: positive,
    sensorWidth: positive,
    sensorHeight: positive,
    circleOfConfusion: positive,
  },
  lens: { maxAperture: positive, smallestAperture: positive },
  ring: { extension: notNegative },
  'reversing ring': { extension: notNegative },
  converter: { converterFactor: [1, Infinity, true], converterLength: positive },
  'close-up lens': { closeUpPower: positive },
  'coupling ring': { extension: notNegative },
};

/** What says where a converter bends light, together or not at all. */
const pointNumbers: Numbers = {
  focalLength: [-Infinity, 0, true],
  principalSeparation: [-Infinity, Infinity, true],
  frontPrincipalDepth: [-Infinity, Infinity, true],
};

/** What a lens has to hold; in which range, the engine knows. */
const lensNumbers = [
  'focalLength',
  'principalSeparation',
  'frontPrincipalDepth',
  'pupilMagnification',
  'registerDistance',
] as const;

const withoutMount: readonly KitRow['part'][] = ['close-up lens', 'coupling ring'];

/** Throws {@link FaultyKit} for what is missing, contradictory or unphysical in a kit. */
export function requireKit(kit: readonly KitRow[]): void {
  const ids = new Map<string, number>();
  const registers = new Map<string, { register: number; row: number }>();
  const zooms = new Map<string, { mount: string; row: number }>();
  kit.forEach((item, row) => {
    requireNumbers(item, row);
    const before = ids.get(item.id);
    if (before !== undefined) throw new FaultyKit(row, `'${item.id}' is the id of row ${before} already`);
    ids.set(item.id, row);
    if (item.part === 'lens') requireUsableLens(item, row);
    if (item.part !== 'camera' && item.part !== 'lens') return;
    const register = item.part === 'camera' ? item.registerDistance : item.lens.registerDistance;
    const known = registers.get(item.mount);
    if (known && known.register !== register) {
      throw new FaultyKit(
        row,
        `mount '${item.mount}' has a register distance of ${register} here, and of ${known.register} in row ${known.row}`,
      );
    }
    registers.set(item.mount, { register, row });
    if (item.part !== 'lens' || item.zoom === undefined) return;
    const zoom = zooms.get(item.zoom);
    if (zoom && zoom.mount !== item.mount) {
      throw new FaultyKit(
        row,
        `zoom '${item.zoom}' has the mount '${item.mount}' here, and '${zoom.mount}' in row ${zoom.row}`,
      );
    }
    zooms.set(item.zoom, { mount: item.mount, row });
  });
  if (!kit.some(({ part }) => part === 'camera')) throw new FaultyKit(null, 'there is no camera');
  if (!kit.some(({ part }) => part === 'lens')) throw new FaultyKit(null, 'there is no lens');
}

function requireNumbers(item: KitRow, row: number): void {
  requireObject('the row', item, row);
  const part: unknown = item.part;
  if (typeof part !== 'string' || !Object.hasOwn(numbersOf, part)) {
    throw new FaultyKit(row, `the part is ${String(part)}; accepted: ${Object.keys(numbersOf).join(', ')}`);
  }
  const values = item as unknown as Readonly<Record<string, unknown>>;
  const texts = withoutMount.includes(item.part) ? ['id'] : ['id', 'mount'];
  if (values['zoom'] !== undefined) texts.push('zoom');
  for (const name of texts) {
    if (typeof values[name] !== 'string' || values[name] === '') {
      throw new FaultyKit(row, `'${name}' is ${JSON.stringify(values[name])}; accepted: a text that is not empty`);
    }
  }
  const numbers: Numbers = { price: notNegative, ...numbersOf[item.part] };
  for (const [name, range] of Object.entries(numbers)) requireNumber(name, values[name], range, row);
  if (item.part === 'close-up lens') {
    if (item.clearAperture !== undefined) requireNumber('clearAperture', item.clearAperture, positive, row);
    if (item.seat !== undefined) requireNumber('seat', item.seat, notNegative, row);
  }
  if (item.part === 'converter' && item.points !== undefined) {
    requireObject('points', item.points, row);
    for (const [name, range] of Object.entries(pointNumbers)) {
      requireNumber(name, (item.points as unknown as Readonly<Record<string, unknown>>)[name], range, row);
    }
  }
  const coupled = values['coupled'];
  if (coupled !== undefined) requireOneOf('coupled', coupled, [true, false], row);
}

function requireNumber(name: string, value: unknown, [least, most, open = false]: Numbers[string], row: number): void {
  if (typeof value === 'number' && value < most && (open ? value > least : value >= least)) return;
  const range =
    least === -Infinity
      ? most === Infinity
        ? ''
        : ` below ${most}`
      : open
        ? ` above ${least}`
        : ` of ${least} or above`;
  throw new FaultyKit(row, `'${name}' is ${String(value)}; accepted: a finite number${range}`);
}

function requireObject(name: string, value: unknown, row: number): void {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new FaultyKit(row, `${name} is ${JSON.stringify(value)}; accepted: an object`);
  }
}

function requireOneOf(name: string, value: unknown, accepted: readonly unknown[], row: number): void {
  if (accepted.includes(value)) return;
  throw new FaultyKit(row, `'${name}' is ${JSON.stringify(value)}; accepted: ${accepted.join(', ')}`);
}

/** The engine knows what no lens can have; here its complaint gets its row. */
function requireUsableLens({ lens, maxAperture, smallestAperture }: KitLens, row: number): void {
  if (maxAperture > smallestAperture) {
    throw new FaultyKit(
      row,
      `it opens to f/${maxAperture}, which is less than the f/${smallestAperture} it stops down to`,
    );
  }
  requireObject('its lens', lens, row);
  for (const name of lensNumbers) requireNumber(name, lens[name], [-Infinity, Infinity], row);
  requireFocusing(lens.focusing, row);
  if (lens.prescription !== undefined) requireListed(lens.prescription, row);
  requireOneOf('apertureControl', lens.apertureControl, ['lens', 'camera'], row);
  for (const name of ['rearProtrusion', 'fixedProtrusion'] as const) {
    if (lens[name] !== undefined) requireNumber(name, lens[name], notNegative, row);
  }
  try {
    const closest = closestMagnification(lens);
    for (const setting of [0, closest / 2, closest]) {
      const { focalLength, frontPrincipalDepth, entrancePupil } = lensInUse(lens, setting, maxAperture);
      if (!(focalLength > 0 && Number.isFinite(frontPrincipalDepth) && entrancePupil > 0)) {
        throw new FaultyKit(row, `set to ${setting} it would have a focal length of ${focalLength}`);
      }
    }
  } catch (error) {
    if (error instanceof RangeError || error instanceof FaultyPrescription) throw new FaultyKit(row, error.message);
    throw error;
  }
}

/** Lists and their rows; what stands in them is the prescription’s own to refuse. */
function requireListed(prescription: Prescription, row: number): void {
  requireObject('its prescription', prescription, row);
  for (const [name, list] of [
    ['surfaces', prescription.surfaces],
    ['settings', prescription.settings ?? []],
  ] as const) {
    if (!Array.isArray(list)) throw new FaultyKit(row, `'${name}' is ${JSON.stringify(list)}; accepted: a list`);
    for (const one of list) requireObject(`one of its ${name}`, one, row);
  }
  for (const { thickness } of prescription.settings ?? []) requireObject('thickness', thickness, row);
}

function requireFocusing(focusing: Focusing, row: number): void {
  requireObject('its focusing', focusing, row);
  requireOneOf('by', focusing.by, ['unit', 'internal', 'states', 'prescription'], row);
  if (focusing.by === 'prescription') return;
  if (focusing.by === 'states') {
    if (!Array.isArray(focusing.states)) {
      throw new FaultyKit(row, `'states' is ${JSON.stringify(focusing.states)}; accepted: a list`);
    }
    for (const state of focusing.states) requireObject('a state', state, row);
    return;
  }
  requireNumber('closestMagnification', focusing.closestMagnification, notNegative, row);
  if (focusing.by === 'internal')
    requireOneOf('keeps', focusing.keeps, ['entrance-pupil', 'f-number', 'iris-and-rear-group'], row);
}
