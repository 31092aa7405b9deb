/** `clutch-slave.area` and `actuator.area`: what the fluid presses on in the other consumers. */
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { Figure } from './figure.ts';
import { givenFact } from './given.ts';
import { pistonArea } from './piston-area.ts';
import { knownResult } from './result.ts';
import { asStated } from './sources.ts';

/** In m². */
export function slaveArea(slave: Part): Figure<'area'> {
  return pistonArea(slave, givenFact(slave, properties.bore), { id: 'clutch-slave.area', title: 'piston area' });
}

/** In m²: the stated area, else that of the bore. */
export function actuatorArea(actuator: Part): Figure<'area'> {
  const area = givenFact(actuator, properties.area);
  const fromBore = pistonArea(actuator, givenFact(actuator, properties.bore), {
    id: 'actuator.area',
    title: 'piston area',
  });
  if (area.kind === 'missing') return fromBore;
  return {
    ...fromBore,
    written: area.written,
    result: knownResult('area', area.estimate, actuator),
    formula: 'the stated area',
    inputs: [area.input],
    source: asStated,
  };
}
