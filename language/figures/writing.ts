/** In which unit a figure is written where no stated length stands behind it. */
import { type Dimension, defaultUnitFor, type WrittenUnit, writtenIn } from '../quantity/index.ts';

/**
 * Brake fluid is measured out, drawn off and marked on its bottles in millilitres wherever tube is sold in inches too,
 * so volumes that are worked out are written in them for everybody.
 */
export const millilitres: WrittenUnit = writtenIn(defaultUnitFor('volume', 'metric'));

/** Flare allowances are tabled in millimetres. */
export const millimetres: WrittenUnit = writtenIn(defaultUnitFor('length', 'metric'));

/** The usual unit of a dimension for a writer who writes sizes like this one: mm² for millimetres, in² for inches. */
export function inFamilyOf(written: WrittenUnit, dimension: Dimension): WrittenUnit {
  return writtenIn(defaultUnitFor(dimension, written.unit.family));
}

export const bars: WrittenUnit = writtenIn(defaultUnitFor('pressure', 'metric'));
export const newtons: WrittenUnit = writtenIn(defaultUnitFor('force', 'metric'));
export const squareMillimetres: WrittenUnit = writtenIn(defaultUnitFor('area', 'metric'));
