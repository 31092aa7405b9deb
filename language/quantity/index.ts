/** Quantities: branded SI numbers, units, and the reading and writing of what a mechanic says about them. */

export { type Amount, type ReadAmount, readAmount, type Term, type WrittenUnit, writtenIn } from './amount.ts';
export {
  add,
  arcLength,
  circleArea,
  circleDiameter,
  cylinderVolume,
  negated,
  overArea,
  ratioOf,
  scale,
  subtract,
  sweptLength,
  timesArea,
  timesArm,
} from './arithmetic.ts';
export type { Precision } from './digits.ts';
export { type Dimension, dimensionExamples, dimensions, dimensionWords, type Si, si, siSymbols } from './dimension.ts';
export {
  combineEstimates,
  differenceOf,
  type Estimate,
  estimateOf,
  exactly,
  isKnown,
  mapEstimate,
  scaleEstimate,
  sumEstimates,
} from './estimate.ts';
export { type NumberProblem, numberPattern, type ReadNumber, readNumber } from './number.ts';
export type { QuantityProblem, QuantityProblemCode } from './problem.ts';
export { unitWords } from './refused-units.ts';
export { type Known, type ReadStated, readStated, type Stated, type StatedParts } from './stated.ts';
export { findUnit, fromSi, plainUnit, toSi, type Unit, units } from './units.ts';
export {
  defaultUnitFor,
  type EstimateWriting,
  notKnown,
  type QuantityWriting,
  writeEstimate,
  writeLowerLimit,
  writeQuantity,
  writeStated,
} from './write.ts';
