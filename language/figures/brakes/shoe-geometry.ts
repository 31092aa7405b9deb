/** The brake factor of a drum brake from what the file says of its shoes. */
import { wordOf } from '../../system/fact-of.ts';
import { type MeasureRow, properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import type { BrakeArm } from './brake-arm.ts';
import { pivotedArm } from './pivoted-arm.ts';
import { servoArm } from './servo-arm.ts';
import type { ShoeQuestion } from './shoe-question.ts';

const pivotRows = [properties.pivotRadius, properties.leverArm, properties.liningStart, properties.liningEnd];
const servoRows = [properties.cylinderOffset, properties.adjusterOffset, properties.anchorOffset, properties.liningArc];

/** Whether any fact of the geometry that its arrangement of shoes needs is stated. */
export function statesGeometry(brake: Part): boolean {
  return rowsFor(brake).some(({ key }) => brake.facts.has(key));
}

/** Waits for each size that is missing; undefined geometry (a shoe that jams) waits for sizes that work. */
export function geometryArm(brake: Part, question: ShoeQuestion): BrakeArm {
  switch (wordOf(brake, properties.shoes)) {
    case 'leading-trailing':
    case 'two-leading':
      return pivotedArm(brake, question);
    case 'servo':
      return servoArm(brake, question);
    default: {
      const need = { name: `shoes of ${brake.label}`, origin: brake.nameOrigin };
      return { kind: 'waits', needs: [need], givens: [] };
    }
  }
}

function rowsFor(brake: Part): readonly MeasureRow[] {
  return wordOf(brake, properties.shoes) === 'servo' ? servoRows : pivotRows;
}
