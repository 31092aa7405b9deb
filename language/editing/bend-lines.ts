/** The bends of a run in short: each with its turn, angle, radius and where it begins, as they are worked from the `from` end. */
import { bendTable } from '../figures/bend-table.ts';
import { lengthWriting } from '../figures/run-route.ts';
import {
  type Dimension,
  defaultUnitFor,
  type Estimate,
  type EstimateWriting,
  isKnown,
  notKnown,
  scaleEstimate,
  type WrittenUnit,
  writeEstimate,
} from '../quantity/index.ts';
import type { Part } from '../system/part.ts';
import { type CardLine, fact } from './card.ts';

const degrees: WrittenUnit = { unit: defaultUnitFor('angle', 'metric'), word: '°', style: 'decimal' };
/** In rad; a smaller roll is none. */
const noTurn = Math.PI / 1800;

/** Nothing for a run without bends. */
export function bendLines(run: Part): readonly CardLine[] {
  const table = bendTable(run);
  if (table === undefined || table.bends.length === 0) return [];
  const like = lengthWriting(run);
  const length = (estimate: Estimate<'length'> | undefined): string => written(estimate, { like });
  return [
    fact('Bends, marked from the face of the flare at the from end:'),
    ...table.bends.map(
      ({ number, start, end, rotation, angle, radius }): CardLine => ({
        kind: 'detail',
        text: `${number}: ${number === 1 ? '' : turnWords(rotation)}${inDegrees(angle)} about radius ${length(radius)}, begins at ${length(start)}, ends at ${length(end)}`,
      }),
    ),
  ];
}

/** The roll from the plane of the bend before, seen along the tube from the `from` end. */
function turnWords(rotation: Estimate<'angle'> | undefined): string {
  if (rotation === undefined || !isKnown(rotation)) return 'turn not known, then ';
  const size = rotation.value < 0 ? scaleEstimate(rotation, -1) : rotation;
  const exact = size.high - size.low < noTurn;
  if (exact && size.value < noTurn) return 'in the same plane ';
  if (exact && Math.PI - size.value < noTurn) return 'turn 180°, then ';
  return `turn ${inDegrees(size)} ${rotation.value < 0 ? 'anticlockwise' : 'clockwise'}, then `;
}

const inDegrees = (angle: Estimate<'angle'> | undefined): string =>
  written(angle, { like: degrees, precision: { decimals: 1 } }).replaceAll(' °', '°');

function written<D extends Dimension>(estimate: Estimate<D> | undefined, options: EstimateWriting): string {
  return estimate === undefined || !isKnown(estimate) ? notKnown : writeEstimate(estimate, options);
}
