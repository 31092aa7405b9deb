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
export const levers = fromMemory(
  'Limpert, Brake Design and Safety, ch. 5: push-rod force by the lever, line pressure = force / piston area',
);
export const valveLines = commonPractice('valve lines as their makers state them; a column of fluid adds its weight');
export const displacementAnalysis = fromMemory(
  'Limpert, Brake Design and Safety, ch. 5, fluid volume analysis; hoses by the limits of 49 CFR 571.106 Table I',
);
