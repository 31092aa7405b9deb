/** The area of a round piston from the bore that it runs in, shared by everything that has one. */
import { circleArea, mapEstimate } from '../quantity/index.ts';
import type { Part } from '../system/part.ts';
import type { Figure } from './figure.ts';
import type { Given } from './given.ts';
import { needsOf } from './given.ts';
import { knownResult, unknownResult } from './result.ts';
import { circles } from './sources.ts';
import { inFamilyOf, squareMillimetres } from './writing.ts';

/** In m²: π d² / 4, for any bore above zero. */
export function pistonArea(
  part: Part,
  bore: Given<'length'>,
  names: { readonly id: string; readonly title: string },
): Figure<'area'> {
  return {
    ...names,
    subject: part.id,
    written: areaWriting(bore),
    result:
      bore.kind === 'given'
        ? knownResult('area', mapEstimate('area', circleArea, bore.estimate), part)
        : unknownResult('area', needsOf([bore])),
    formula: 'π/4 × bore²',
    inputs: [bore.input],
    source: circles,
    notes: [],
  };
}

/** Square inches for a bore in inches. */
export const areaWriting = (bore: Given<'length'>) =>
  bore.kind === 'given' ? inFamilyOf(bore.written, 'area') : squareMillimetres;
