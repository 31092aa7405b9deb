/** From the hand to the tyres: what the pull on a parking brake comes to at each axle, by lever, cables and shoes. */
import { type Estimate, exactly, scaleEstimate, si, sumEstimates, writeEstimate } from '../../quantity/index.ts';
import { usualParkingEfficiency } from '../../standards/parking-efficiency.ts';
import { wordOf } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import type { System } from '../../system/system.ts';
import { type Axle, wheelOf } from '../../system/wheels.ts';
import { brakeArm, type Rotation } from '../brakes/brake-arm.ts';
import type { Input, Need } from '../figure.ts';
import { type Given, givenFact, inputsOf, needsOf } from '../given.ts';
import { eachOnce } from '../result.ts';
import { tyreRadius } from './axle-brakes.ts';
import { inputsOnce, plainWriting } from './rough.ts';

export type ParkingChain =
  | {
      readonly kind: 'ready';
      /** N at the tyres of each axle for each N of the hand. */
      readonly perNewton: Readonly<Record<Axle, number>>;
      readonly from: readonly Estimate[];
      readonly inputs: readonly Input[];
      readonly notes: readonly string[];
    }
  | { readonly kind: 'waits'; readonly needs: readonly Need[]; readonly inputs: readonly Input[] };

/** How the wheels would turn if they were not held. The brakes share the pull evenly, as an equaliser makes them. */
export function parkingChain(parking: Part, system: System, rotation: Rotation): ParkingChain {
  const brakes = system.links
    .filter(({ verb, from }) => verb === 'acts-on' && from === parking.id)
    .flatMap(({ to }) => system.partById.get(to) ?? []);
  const lever = givenFact(parking, properties.leverRatio);
  const losses = lossesOf(parking);
  const ratio = axleRatioOf(parking);
  const held = brakes.map((brake) => heldBrake(brake, { parking, system, rotation }));
  const givens = [lever, ...(ratio ? [ratio] : [])];
  const inputs = inputsOnce([...inputsOf(givens), ...losses.inputs, ...held.flatMap((each) => each.inputs)]);
  const needs = eachOnce([
    ...(brakes.length === 0 ? [{ name: `brakes that ${parking.label} acts on`, origin: parking.nameOrigin }] : []),
    ...needsOf(givens),
    ...held.flatMap((each) => each.needs),
  ]);
  if (needs.length > 0 || lever.kind === 'missing' || ratio?.kind === 'missing')
    return { kind: 'waits', needs, inputs };
  const turns = ratio?.estimate ?? exactly(si('number', 1));
  const common = (lever.estimate.value * losses.estimate.value * turns.value) / brakes.length;
  const on = (axle: Axle): number =>
    held.reduce((sum, each) => (each.axle === axle ? sum + each.perPull * common : sum), 0);
  return {
    kind: 'ready',
    perNewton: { front: on('front'), rear: on('rear') },
    from: [lever.estimate, losses.estimate, turns, ...held.flatMap((each) => each.from)],
    inputs,
    notes: [...new Set([...losses.notes, ...held.flatMap((each) => each.notes)])],
  };
}

interface HeldBrake {
  readonly axle: Axle | undefined;
  /** N at the tyre for each N of its cable. */
  readonly perPull: number;
  readonly from: readonly Estimate[];
  readonly inputs: readonly Input[];
  readonly needs: readonly Need[];
  readonly notes: readonly string[];
}

function heldBrake(
  brake: Part,
  { parking, system, rotation }: { readonly parking: Part; readonly system: System; readonly rotation: Rotation },
): HeldBrake {
  const arm = brakeArm(brake, { rotation, friction: 'at rest' });
  const { axle } = wheelOf(brake);
  const tyre = axle === undefined ? undefined : tyreRadius(system, axle);
  const pull = shoePull(brake, parking);
  const givens = [pull, ...(tyre ? [tyre] : [])];
  const needs: readonly Need[] = [
    ...needsOf(givens),
    ...(axle === undefined ? [{ name: `wheel of ${brake.label}`, origin: brake.nameOrigin }] : []),
    ...(arm?.kind === 'waits' ? arm.needs : []),
  ];
  const inputs = inputsOf([...givens, ...(arm?.givens ?? [])]);
  if (arm?.kind !== 'ready' || pull.kind === 'missing' || tyre?.kind !== 'given') {
    return { axle, perPull: 0, from: [], inputs, needs, notes: [] };
  }
  const static_ = brake.parts.some((part) => part.facts.has(properties.staticFriction.key));
  return {
    axle,
    perPull: (pull.estimate.value * arm.arm.value) / tyre.estimate.value,
    from: [pull.estimate, arm.arm, tyre.estimate],
    inputs,
    needs,
    notes: [
      ...arm.notes,
      ...(static_
        ? []
        : ['Friction at rest is taken as that of the rubbing lining; it is often higher, wet or cold lower.']),
    ],
  };
}

/** Force on a shoe or pad over the pull of its cable: the lever in the brake, else what the parking brake states for all. */
function shoePull(brake: Part, parking: Part): Given<'number'> {
  const calipers = brake.parts.filter(({ kind }) => kind === 'caliper');
  const lever = [brake, ...calipers].flatMap(({ parts }) => parts).find(({ kind }) => kind === 'parking-lever');
  const own = lever && givenFact(lever, properties.leverRatio);
  if (own?.kind === 'given') return own;
  const common = givenFact(parking, properties.pullRatio);
  return common.kind === 'given' || own === undefined ? common : own;
}

/** A brake on the transmission turns faster than the wheels, and holds so much more. */
function axleRatioOf(parking: Part): Given<'number'> | undefined {
  return wordOf(parking, properties.parkingSite) === 'transmission'
    ? givenFact(parking, properties.axleRatio)
    : undefined;
}

/** Of lever and cable as far as stated, else what is usual of all together. */
function lossesOf(parking: Part) {
  const cables = parking.parts.filter(({ kind }) => kind === 'cable');
  const stated = [parking, ...cables.slice(0, 1)].flatMap((part) => {
    const given = givenFact(part, properties.efficiency);
    return given.kind === 'given' ? [given] : [];
  });
  const product = stated.reduce((all, { estimate }) => all * estimate.value, 1);
  if (stated.length > 0) {
    const rough = stated.some(({ estimate }) => estimate.about || estimate.low < estimate.high);
    const assumed = stated.some(({ estimate }) => estimate.assumed);
    return {
      estimate: { ...exactly(si('number', product)), about: rough, assumed },
      inputs: inputsOf(stated),
      notes: [],
    };
  }
  const { low, high, source } = usualParkingEfficiency;
  const middle = { ...scaleEstimate(sumEstimates('number', [exactly(low), exactly(high)]), 0.5), about: true };
  const text = `${writeEstimate(middle, { like: plainWriting })}, as is usual`;
  const input: Input = { name: `efficiency of ${parking.label}`, text, origin: parking.nameOrigin, source };
  return {
    estimate: middle,
    inputs: [input],
    notes: ['The file states no efficiency of the parking brake: the usual one is taken.'],
  };
}
