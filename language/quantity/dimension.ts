/** What kinds of quantity there are, and numbers that carry their kind in the type: SI inside, nothing else. */

/** Base units by dimension: see `siSymbols`. Pressures are gauge pressures, angles radians. */
export type Dimension =
  | 'number'
  | 'length'
  | 'area'
  | 'volume'
  | 'angle'
  | 'mass'
  | 'force'
  | 'pressure'
  | 'torque'
  | 'time'
  | 'speed'
  | 'acceleration'
  | 'temperature'
  | 'temperature-difference'
  | 'density'
  | 'force-per-length'
  | 'volume-per-length'
  | 'volume-per-pressure'
  | 'voltage';

declare const dimensionOf: unique symbol;

/** A number in the SI unit of its dimension. A plain number does not pass for one; `si` is the only general maker. */
export type Si<D extends Dimension> = number & { readonly [dimensionOf]: D };

/** Says that `value` is in the SI unit of `dimension`. Whoever calls this vouches for the unit. */
export function si<D extends Dimension>(_dimension: D, value: number): Si<D> {
  // The brand exists in the type only, so here and below is where numbers become quantities.
  return value as Si<D>;
}

/** Says that `value` is in the same SI unit as `model`: for results that keep their operand's dimension. */
export function alike<D extends Dimension>(_model: Si<D>, value: number): Si<D> {
  return value as Si<D>;
}

/** How a message names each dimension. */
export const dimensionWords: Readonly<Record<Dimension, string>> = {
  number: 'a plain number',
  length: 'a length',
  area: 'an area',
  volume: 'a volume',
  angle: 'an angle',
  mass: 'a mass',
  force: 'a force',
  pressure: 'a pressure',
  torque: 'a torque',
  time: 'a time',
  speed: 'a speed',
  acceleration: 'an acceleration',
  temperature: 'a temperature',
  'temperature-difference': 'a temperature difference',
  density: 'a density',
  'force-per-length': 'a force per length',
  'volume-per-length': 'a volume per length',
  'volume-per-pressure': 'a volume per pressure',
  voltage: 'a voltage',
};

/** One thing a writer might put where that dimension belongs. */
export const dimensionExamples: Readonly<Record<Dimension, string>> = {
  number: '0.38',
  length: '52 in',
  area: '380 mm²',
  volume: '0.4 L',
  angle: '90 deg',
  mass: '690 kg',
  force: '90 lbf',
  pressure: '1200 psi',
  torque: '15 N.m',
  time: '30 s',
  speed: '50 km/h',
  acceleration: '6 m/s²',
  temperature: '20 °C',
  'temperature-difference': '20 K',
  density: '1060 kg/m³',
  'force-per-length': '12 N/mm',
  'volume-per-length': '0.66 cc/ft',
  'volume-per-pressure': '0.5 cc/bar',
  voltage: '12 V',
};

/** The SI unit in which values of that dimension are held. */
export const siSymbols: Readonly<Record<Dimension, string>> = {
  number: '1',
  length: 'm',
  area: 'm²',
  volume: 'm³',
  angle: 'rad',
  mass: 'kg',
  force: 'N',
  pressure: 'Pa',
  torque: 'N·m',
  time: 's',
  speed: 'm/s',
  acceleration: 'm/s²',
  temperature: 'K',
  'temperature-difference': 'K',
  density: 'kg/m³',
  'force-per-length': 'N/m',
  'volume-per-length': 'm³/m',
  'volume-per-pressure': 'm³/Pa',
  voltage: 'V',
};

/** All dimensions, in the order of the table. */
export const dimensions: readonly Dimension[] = [
  'number',
  'length',
  'area',
  'volume',
  'angle',
  'mass',
  'force',
  'pressure',
  'torque',
  'time',
  'speed',
  'acceleration',
  'temperature',
  'temperature-difference',
  'density',
  'force-per-length',
  'volume-per-length',
  'volume-per-pressure',
  'voltage',
];
