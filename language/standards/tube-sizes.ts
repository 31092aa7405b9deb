/** The sizes of brake tube and when two of them are the same to a nut. Sources: SAE J526/J527 trade sizes, ISO 4038. */

import type { Si } from '../quantity/dimension.ts';
import { fromMemory, published, type Source } from './source.ts';
import { inch, mm } from './written-units.ts';

export interface TubeSize {
  /** As it is asked for over the counter. */
  readonly name: string;
  readonly od: Si<'length'>;
  /** Usual walls, the most usual first. */
  readonly walls: readonly Si<'length'>[];
  readonly source: Source;
}

const j526 = published('SAE J526 tube sizes, as printed by a tube maker');
const metric = published('trade lists of brake tube sizes in cars');

export const tubeSizes: readonly TubeSize[] = [
  { name: '1/8 in', od: inch(1 / 8), walls: [inch(0.025), inch(0.028)], source: fromMemory('trade sizes') },
  { name: '3/16 in', od: inch(3 / 16), walls: [inch(0.028), inch(0.035)], source: j526 },
  { name: '1/4 in', od: inch(1 / 4), walls: [inch(0.028), inch(0.035)], source: j526 },
  { name: '5/16 in', od: inch(5 / 16), walls: [inch(0.028), inch(0.035)], source: j526 },
  { name: '3/8 in', od: inch(3 / 8), walls: [inch(0.028), inch(0.035)], source: j526 },
  { name: '7/16 in', od: inch(7 / 16), walls: [inch(0.035)], source: fromMemory('trade sizes') },
  { name: '1/2 in', od: inch(1 / 2), walls: [inch(0.035)], source: fromMemory('trade sizes') },
  { name: '4.75 mm', od: mm(4.75), walls: [mm(0.7), mm(0.71), mm(0.9)], source: metric },
  { name: '6 mm', od: mm(6), walls: [mm(0.7), mm(1)], source: metric },
  { name: '8 mm', od: mm(8), walls: [mm(0.7), mm(1)], source: metric },
  { name: '10 mm', od: mm(10), walls: [mm(0.7), mm(1)], source: fromMemory('trade sizes') },
];

/** Whether one nut fits both (metres): 3/16 in and 4.75 mm are one size, as are 5/16 in and 8 mm; 1/4 in and 6 mm are not. */
export const sameTubeSize = (a: Si<'length'>, b: Si<'length'>): boolean => Math.abs(a - b) <= 0.00007;

/** The tabled size with this outside diameter (metres), the nearest first when inch and metric coincide. */
export function tubeSizeOf(od: Si<'length'>): TubeSize | undefined {
  const off = (size: TubeSize) => Math.abs(size.od - od);
  return [...tubeSizes].sort((a, b) => off(a) - off(b)).find((size) => sameTubeSize(size.od, od));
}
