/** The tube of a run as its volume and its flares need it. */
import type { Part } from '../system/part.ts';
import { type Given, givenSize } from './given.ts';

export function givenDiameter(run: Part): Given<'length'> {
  const name = run.tube === undefined ? `tube of ${run.label}` : `diameter of tube ${run.label}`;
  return givenSize({ name, stated: run.tube?.diameter, origin: run.tube?.origin ?? run.nameOrigin });
}

export function givenWall(run: Part): Given<'length'> {
  const name = `wall of tube ${run.label}`;
  return givenSize({ name, stated: run.tube?.wall, origin: run.tube?.origin ?? run.nameOrigin });
}
