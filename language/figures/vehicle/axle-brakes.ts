/** The brake force of each axle for a pressure in the master: all its wheel brakes over the radius of its tyres. */
import { type Estimate, scaleEstimate, si, sumEstimates, writeEstimate } from '../../quantity/index.ts';
import { factOrigin, measureOf } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { PartId } from '../../system/part.ts';
import type { System } from '../../system/system.ts';
import { wheelBrakesOf } from '../../system/wheel-brakes.ts';
import type { Axle } from '../../system/wheels.ts';
import { type BrakeLaw, brakeLaw, type ReadyLaw } from '../brakes/brake-law.ts';
import type { FigureContext } from '../context.ts';
import type { Input, Need } from '../figure.ts';
import { type Given, givenSize, inputsOf, needsOf } from '../given.ts';
import { eachOnce } from '../result.ts';
import { inFamilyOf, millimetres } from '../writing.ts';
import { type BrakeCurve, brakeCurve } from './brake-curve.ts';
import { type LinePressures, linePressures } from './line-pressures.ts';
import type { AxleForces } from './statics.ts';

export interface ReadyAxles {
  readonly kind: 'ready';
  /** Going forward. */
  readonly curve: BrakeCurve;
  readonly lines: LinePressures;
  readonly inputs: readonly Input[];
  readonly notes: readonly string[];
  /** All that the forces rest on: whether it is wide, rough or assumed. */
  readonly from: readonly Estimate[];
}

export type AxleBrakes =
  | ReadyAxles
  | { readonly kind: 'waits'; readonly needs: readonly Need[]; readonly inputs: readonly Input[] };

/** The radius of the tyres of an axle: its own where stated, else that of all. */
export function tyreRadius({ vehicle }: System, axle: Axle): Given<'length'> {
  const own = axle === 'front' ? properties.tyreRadiusFront : properties.tyreRadiusRear;
  const row = vehicle?.facts.has(own.key) ? own : properties.tyreRadius;
  const name = `${row.key} of ${vehicle?.name ?? 'the vehicle'}`;
  if (vehicle === undefined) {
    const input: Input = { name, text: 'not known', origin: undefined, source: undefined };
    return { kind: 'missing', needs: [{ name, origin: undefined }], input };
  }
  return givenSize({ name, stated: measureOf(vehicle, row), origin: factOrigin(vehicle, row) ?? vehicle.nameOrigin });
}

const bar = 1e5;

/** Undefined where no wheel brake is applied by fluid. `without` leaves valves out, for what they are worth. */
export function axleBrakes(context: FigureContext, without: ReadonlySet<PartId>): AxleBrakes | undefined {
  const { system } = context;
  const brakes = wheelBrakesOf(system).flatMap(({ brake, wheel, actuated }) => {
    const law = actuated.length > 0 ? brakeLaw(brake, 'forward') : undefined;
    return law === undefined ? [] : [{ brake, axle: wheel.axle, law }];
  });
  if (brakes.length === 0) return undefined;
  const tyres = { front: tyreRadius(system, 'front'), rear: tyreRadius(system, 'rear') };
  const axles = [...new Set(brakes.flatMap(({ axle }) => axle ?? []))];
  const radii = axles.map((axle) => tyres[axle]);
  const consumers = new Set(
    brakes.flatMap(({ law }) => (law.kind === 'ready' ? law.pressed.map(({ part }) => part.id) : [])),
  );
  const lines = linePressures({ context, consumers, without });
  const placeless = brakes
    .filter(({ axle }) => axle === undefined)
    .map(({ brake }) => ({ name: `wheel of ${brake.label}`, origin: brake.nameOrigin }));
  const unfed = brakes
    .filter(({ law }) => law.kind === 'ready' && !law.pressed.some(({ part }) => lines.pressed.has(part.id)))
    .map(({ brake }) => ({ name: `a line that presses ${brake.label}`, origin: brake.nameOrigin }));
  const needs = eachOnce([
    ...placeless,
    ...unfed,
    ...brakes.flatMap(({ law }) => (law.kind === 'waits' ? law.needs : [])),
    ...needsOf(radii),
    ...lines.needs,
  ]);
  const inputs = [...brakes.flatMap(({ law }) => inputOf(law)), ...inputsOf(radii)];
  if (needs.length > 0) return { kind: 'waits', needs, inputs };
  const ready = brakes.flatMap(({ axle, law }) => (axle !== undefined && law.kind === 'ready' ? [{ axle, law }] : []));
  const estimates = [
    ...ready.flatMap(({ law }) => [law.pushOut, ...law.pressed.map(({ perPascal }) => perPascal)]),
    ...radii.flatMap((radius) => (radius.kind === 'given' ? [radius.estimate] : [])),
  ];
  const forcesAt = (master: number): AxleForces => {
    const pressures = lines.at(master);
    const sums = { front: 0, rear: 0 };
    for (const { axle, law } of ready) sums[axle] += torqueAt(law, pressures);
    const force = (axle: Axle) => si('force', tyreForce(sums[axle], tyres[axle]));
    return { front: force('front'), rear: force('rear') };
  };
  return {
    kind: 'ready',
    curve: brakeCurve(forcesAt),
    lines,
    inputs,
    notes: [...new Set([...ready.flatMap(({ law }) => law.notes), ...lines.assumptions])],
    from: [...estimates, ...lines.from],
  };
}

/** What a brake gives, in one line; how it comes about is told at the brake itself. */
function inputOf(law: BrakeLaw): readonly Input[] {
  if (law.kind === 'waits') return [];
  const perBar = scaleEstimate(
    sumEstimates(
      'torque',
      law.pressed.map(({ perPascal }) => perPascal),
    ),
    bar,
  );
  const { brake, pushOut } = law;
  const [torque, from] = [
    writeEstimate(perBar, { like: inFamilyOf(millimetres, 'torque') }),
    writeEstimate(pushOut, { like: inFamilyOf(millimetres, 'pressure') }),
  ];
  const text = `${torque} for each bar above ${from}`;
  return [{ name: `torque of ${brake.label}`, text, origin: brake.nameOrigin, source: undefined }];
}

function tyreForce(torque: number, radius: Given<'length'>): number {
  return radius.kind === 'given' ? torque / radius.estimate.value : 0;
}

function torqueAt({ pressed, pushOut }: ReadyLaw, pressures: ReadonlyMap<PartId, number>): number {
  return pressed.reduce((sum, { part, perPascal }) => {
    return sum + perPascal.value * Math.max(0, (pressures.get(part.id) ?? 0) - pushOut.value);
  }, 0);
}
