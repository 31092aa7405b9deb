/** How a shoe on a fixed pivot brakes its drum: rigid shoe and drum, lining pressure as the sine of the angle. */
import { type Si, si } from '../../quantity/index.ts';
import { fromMemory } from '../../standards/source.ts';

/** Angles at the middle of the drum, counted from the pivot; sizes in m and rad. */
export interface PivotedShoe {
  readonly drumRadius: Si<'length'>;
  readonly pivotRadius: Si<'length'>;
  /** Of the piston's force about the pivot. */
  readonly leverArm: Si<'length'>;
  readonly liningStart: Si<'angle'>;
  readonly liningEnd: Si<'angle'>;
}

/** A leading shoe is drawn into the drum by its own friction, a trailing one is pushed off. */
export type ShoeDirection = 'leading' | 'trailing';

export const pivotedShoeSource = fromMemory(
  'Shigley, Mechanical Engineering Design, chapter 16, equations of the internal shoe; as worked in Bhandari, Design of Machine Elements, example 12.8',
);

/**
 * Friction force at the drum over the piston's force; 0 for no friction. Valid for 0 ≤ start < end ≤ π and a bedded
 * lining; real shoes lie up to 15 % off. NaN for a shoe that jams by itself and for sizes that make no shoe.
 */
export function shoeFactor(shoe: PivotedShoe, direction: ShoeDirection, friction: Si<'number'>): Si<'number'> {
  const { normal, rubbing, torque } = momentsOf(shoe, friction);
  const resisting = direction === 'leading' ? normal - rubbing : normal + rubbing;
  if (!isShoe(shoe) || !(resisting > 0)) return si('number', Number.NaN);
  return si('number', (torque * shoe.leverArm) / (resisting * shoe.drumRadius));
}

/** Whether the leading shoe needs no force of the piston any more: it grabs and stays. */
export function jams(shoe: PivotedShoe, friction: Si<'number'>): boolean {
  const { normal, rubbing } = momentsOf(shoe, friction);
  return isShoe(shoe) && normal <= rubbing;
}

function isShoe({ drumRadius, pivotRadius, leverArm, liningStart, liningEnd }: PivotedShoe): boolean {
  const lies = liningStart >= 0 && liningStart < liningEnd && liningEnd <= Math.PI;
  return lies && drumRadius > 0 && pivotRadius > 0 && leverArm > 0;
}

/** About the pivot, and of the friction about the middle of the drum, each over pressure × width. */
function momentsOf({ drumRadius: r, pivotRadius: a, liningStart, liningEnd }: PivotedShoe, friction: Si<'number'>) {
  const arc = (liningEnd - liningStart) / 2 - (Math.sin(2 * liningEnd) - Math.sin(2 * liningStart)) / 4;
  const chord = Math.cos(liningStart) - Math.cos(liningEnd);
  const rise = Math.sin(liningEnd) ** 2 - Math.sin(liningStart) ** 2;
  return {
    normal: a * r * arc,
    rubbing: friction * r * (r * chord - (a / 2) * rise),
    torque: friction * r * r * chord,
  };
}
