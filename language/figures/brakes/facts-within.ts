/** What a wheel brake is given to compute with: facts of its drum, disc, linings and pads, and the usual where it is silent. */
import {
  type Dimension,
  type Estimate,
  exactly,
  scaleEstimate,
  si,
  sumEstimates,
  writeEstimate,
} from '../../quantity/index.ts';
import { usualPushOut } from '../../standards/push-out.ts';
import { type MeasureRow, type PartKind, properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import type { Input } from '../figure.ts';
import { type Given, givenFact, givenFromZero } from '../given.ts';
import { inFamilyOf, millimetres } from '../writing.ts';

/** A fact of the first sub-part of a kind; missing by name where there is no such sub-part. */
export function givenWithin<D extends Dimension>(brake: Part, kind: PartKind, row: MeasureRow<D>): Given<D> {
  const inner = brake.parts.find((part) => part.kind === kind);
  if (inner !== undefined) return givenFact(inner, row);
  const name = `${row.key} of ${brake.label} ${kind}`;
  const input: Input = { name, text: 'not known', origin: brake.nameOrigin, source: undefined };
  return { kind: 'missing', needs: [{ name, origin: brake.nameOrigin }], input };
}

/** Of the linings or pads; `at rest` is their static friction where that is stated, else the same. */
export function givenFriction(brake: Part, when: 'rubbing' | 'at rest'): Given<'number'> {
  const kind = brake.kind === 'disc-brake' ? 'pads' : 'linings';
  const rubbing = givenWithin(brake, kind, properties.friction);
  if (when === 'rubbing') return rubbing;
  const resting = givenWithin(brake, kind, properties.staticFriction);
  return resting.kind === 'given' ? resting : rubbing;
}

export interface Assisted<D extends Dimension> {
  readonly estimate: Estimate<D>;
  readonly inputs: readonly Input[];
  readonly notes: readonly string[];
}

/** As stated, else the middle of what is usual for its kind, which makes everything that follows "about". */
export function pushOutOf(brake: Part): Assisted<'pressure'> {
  const stated = givenFromZero(brake, properties.pushOut);
  if (stated.kind === 'given') return { estimate: stated.estimate, inputs: [stated.input], notes: [] };
  const usual = usualPushOut[brake.kind === 'disc-brake' ? 'disc-brake' : 'drum-brake'];
  const middle = scaleEstimate(sumEstimates('pressure', [exactly(usual.low), exactly(usual.high)]), 0.5);
  const estimate = { ...middle, about: true };
  const text = `${writeEstimate(estimate, { like: inFamilyOf(millimetres, 'pressure') })}, as is usual`;
  const input: Input = { name: `push-out of ${brake.label}`, text, origin: brake.nameOrigin, source: usual.source };
  return {
    estimate,
    inputs: [input],
    notes: ['The file states no push-out pressure of the brake: the usual one of its kind is taken.'],
  };
}

/** Of a cylinder or caliper: as stated, else nothing is taken off for the friction of its seals. */
export function efficiencyOf(part: Part): Assisted<'number'> {
  const stated = givenFact(part, properties.efficiency);
  if (stated.kind === 'given') return { estimate: stated.estimate, inputs: [stated.input], notes: [] };
  return {
    estimate: exactly(si('number', 1)),
    inputs: [],
    notes: ['Nothing is taken off for the friction of seals and pistons, commonly 2 % to 4 %.'],
  };
}
