/** On whose word the figures of sizes and volumes stand. */
import { commonPractice, fromMemory } from '../standards/source.ts';

export const circles = fromMemory(
  'area of a circle and volume of a cylinder, as in the tables of Machinery’s Handbook',
);
export const development = fromMemory(
  'bending chapter of Machinery’s Handbook: straights + radius × angle of each bend, on the centre line',
);
export const asStated = commonPractice('as the file states it');
export const sum = commonPractice('the parts added up');
