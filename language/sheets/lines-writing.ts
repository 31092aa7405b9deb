/** Writes the measures of a line as the bench reads them: thirty-seconds of an inch or millimetres, degrees, turns. */
import { lengthWriting } from '../figures/run-route.ts';
import {
  defaultUnitFor,
  type Estimate,
  exactly,
  findUnit,
  isKnown,
  notKnown,
  type Precision,
  type Si,
  scaleEstimate,
  si,
  type Unit,
  type WrittenUnit,
  writeEstimate,
  writeQuantity,
  writtenIn,
} from '../quantity/index.ts';
import type { TorqueRange } from '../standards/torque.ts';
import type { Part } from '../system/part.ts';

/** How the tape of the one who made the run is divided. */
export interface Bench {
  readonly family: 'metric' | 'inch';
  readonly like: WrittenUnit;
  /** What a tape shows. */
  readonly tape: Precision;
  /** What callipers and calculators show. */
  readonly decimals: Precision;
  /** Cut lengths are rounded up to this, in m. */
  readonly step: number;
}

const inches: Bench = {
  family: 'inch',
  like: writtenIn(defaultUnitFor('length', 'inch')),
  tape: { fraction: 32 },
  decimals: { decimals: 3 },
  step: 0.0254 / 32,
};
const millimetres: Bench = {
  family: 'metric',
  like: writtenIn(defaultUnitFor('length', 'metric')),
  tape: { decimals: 0 },
  decimals: { decimals: 1 },
  step: 0.001,
};

/** By the unit in which the run is written. */
export function benchOf(run: Part): Bench {
  return lengthWriting(run).unit.family === 'inch' ? inches : millimetres;
}

/** Up to the next mark of the tape, in m; noise of the arithmetic adds none. */
export function roundedUp(length: Si<'length'>, { step }: Bench): Si<'length'> {
  return si('length', Math.ceil(length / step - 1e-6) * step);
}

/** As the tape shows it: `54 5/16 in`, `1379 mm`. */
export function onTape(length: Estimate<'length'> | undefined, { like, tape }: Bench): string {
  return length === undefined ? notKnown : writeEstimate(length, { like, precision: tape });
}

export function valueOnTape(length: Si<'length'>, { like, tape }: Bench): string {
  return writeQuantity(length, { unit: like.unit, precision: tape });
}

/** With more digits than a tape has: `54.283 in`, `1378.8 mm`. */
export function inDecimals(length: Si<'length'>, { like, decimals }: Bench): string {
  return writeQuantity(length, { unit: like.unit, precision: decimals });
}

/** A length of stock: `25 ft`, `7.62 m`. */
export function ofStock(length: Si<'length'>, { family, tape }: Bench): string {
  if (family === 'metric') return writeQuantity(length, { unit: metre, precision: { decimals: 2 } });
  return writeEstimate(exactly(length), { like: feet, precision: tape });
}

/** For what nobody measures to the mark: to the nearest half inch or half centimetre. */
export function roughly(length: Si<'length'>, { family, like }: Bench): string {
  if (family === 'inch') return writeQuantity(length, { unit: like.unit, precision: { fraction: 2 } });
  return writeQuantity(si('length', Math.round(length * 200) / 200), { unit: like.unit });
}

const unitOf = (symbol: 'm' | 'ft'): Unit => {
  const unit = findUnit(symbol);
  if (unit === undefined) throw new Error(`no unit is spelt ${symbol}`);
  return unit;
};
const metre = unitOf('m');
const feet = writtenIn(unitOf('ft'));

const degrees: WrittenUnit = { ...writtenIn(defaultUnitFor('angle', 'metric')), word: '°' };

/** `90°`, `about 37.4°`. */
export function inDegrees(angle: Estimate<'angle'> | undefined): string {
  if (angle === undefined || !isKnown(angle)) return notKnown;
  return writeEstimate(angle, { like: degrees, precision: { decimals: 1 } }).replaceAll(' °', '°');
}

const halfTurn = Math.PI;
/** Less than a tenth of a degree is no turn. */
const noTurn = Math.PI / 1800;

/** The roll from the bend before: `none`, `90° clockwise`, `180°`. */
export function inTurns(rotation: Estimate<'angle'> | undefined): string {
  if (rotation === undefined || !isKnown(rotation)) return notKnown;
  const size = Math.abs(rotation.value);
  const exact = rotation.high - rotation.low < noTurn;
  if (exact && size < noTurn) return 'none';
  if (exact && halfTurn - size < noTurn) return '180°';
  return rotation.value < 0
    ? `${inDegrees(scaleEstimate(rotation, -1))} anticlockwise`
    : `${inDegrees(rotation)} clockwise`;
}

/** `13 to 21 N·m (10 to 15 lbf·ft)` */
export function writeTorque({ low, high }: TorqueRange): string {
  const [metric, inch] = (['metric', 'inch'] as const).map((family) => {
    const unit = defaultUnitFor('torque', family);
    const [least, most] = [low, high].map((torque) => writeQuantity(torque, { unit, precision: { decimals: 0 } }));
    return `${least?.split(' ')[0]} to ${most}`;
  });
  return `${metric} (${inch})`;
}
