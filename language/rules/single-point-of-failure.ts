/** single-point-of-failure: a leak that leaves no braked wheel, or only one wheel of an axle. */
import { published } from '../standards/source.ts';
import { wordOf } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part, PartId } from '../system/part.ts';
import { type PressureBodies, type PressureBody, pressureBodiesOf } from '../system/pressure-bodies.ts';
import { outermost, type System } from '../system/system.ts';
import { type WheelBrake, wheelBrakesOf } from '../system/wheel-brakes.ts';
import { wheelWords } from '../system/wheels.ts';
import { oneCircuit, splitCar } from './example-parts.ts';
import type { Remark, Rule, Severity } from './rule.ts';
import { counted, listed, places } from './wording.ts';

const threeAndOne = splitCar
  .replace('run rear-right-line of line { from rear-tee.right ', 'run rear-right-line of line { from front-tee.extra ')
  .replace('tee front-tee { ports in, left, right:', 'cross front-tee { ports in, left, right, extra:')
  .replace('tee rear-tee { ports in, left, right:', 'union rear-tee { ports in, left:');

export const singlePointOfFailure: Rule = {
  code: 'single-point-of-failure',
  severity: 'warning',
  acceptable: true,
  question: 'Does a leak anywhere leave wheels that still brake?',
  why: 'A hose bursts or a tube rusts through without warning. What is left then has to stop the vehicle.',
  source: published(
    '49 CFR 571.105 S4 and S5.1.2: a leak in one subsystem of a split system must not impair another; shared housings and mechanical parts are excepted',
  ),
  fires: [
    { title: 'one circuit for all wheels, as old vehicles were built', text: oneCircuit },
    { title: 'a tandem master of which one chamber feeds all wheels', text: oneChamberOfTwo() },
    { title: 'a split that leaves one wheel', text: threeAndOne },
  ],
  silent: [
    { title: 'a circuit for each axle', text: splitCar },
    { title: 'a circuit that works no brake', text: clutch() },
    {
      title: 'rear brakes that rods work, and hydraulic ones in front',
      text: `${oneCircuit}drum-brake rear-left { parking-lever {} }\ndrum-brake rear-right { parking-lever {} }\n`,
    },
  ],
  check: ({ system }) => {
    if (system.circuits.some(({ chamber }) => isUnsplitTandem(system.partById.get(chamber)))) return [];
    const bodies = pressureBodiesOf(system);
    const pressed = pressedParts(bodies);
    const brakes = wheelBrakesOf(system);
    // What a cable or rod works brakes on after any leak.
    if (brakes.some(({ actuated }) => actuated.length === 0)) return [];
    const wheels = brakes
      .map((wheel) => ({ wheel, fedBy: new Set(wheel.actuated.flatMap(({ id }) => pressed.get(id) ?? [])) }))
      .filter(({ fedBy }) => fedBy.size > 0);
    return bodies.bodies
      .filter(({ chambers }) => chambers.length > 0)
      .filter((body) => wheels.some(({ fedBy }) => fedBy.has(body)))
      .flatMap((body) => remarksOn(body, wheels, system));
  },
};

function oneChamberOfTwo(): string {
  return oneCircuit
    .replace(
      'master main single { port out: 3/8-24 inverted-flare }',
      'master main tandem { primary { port out: 3/8-24 inverted-flare }  secondary { port blind: 3/8-24 inverted-flare plugged } }',
    )
    .replace('main.out', 'main.primary.out');
}

function clutch(): string {
  return `master clutch single { port out: 3/8-24 inverted-flare }
clutch-slave slave { port feed: 3/8-24 inverted-flare  bleeder {} }
run line { tube 3/16 in  from clutch.out to slave.feed }
`;
}

/** A tandem of which the chambers are not written: which port belongs to which cannot be known. */
const isUnsplitTandem = (chamber: Part | undefined): boolean => chamber?.variant === 'tandem';

interface FedWheel {
  readonly wheel: WheelBrake;
  /** The bodies with a chamber that press it, or might by ways that the file does not state. */
  readonly fedBy: ReadonlySet<PressureBody>;
}

/** By part, the bodies with a chamber that it has to do with. */
function pressedParts({ bodies, around }: PressureBodies): ReadonlyMap<PartId, readonly PressureBody[]> {
  const found = new Map<PartId, PressureBody[]>();
  for (const body of bodies) {
    const pressing = around(body).filter(({ chambers }) => chambers.length > 0);
    for (const part of body.parts) found.set(part, [...(found.get(part) ?? []), ...pressing]);
  }
  return found;
}

function remarksOn(body: PressureBody, wheels: readonly FedWheel[], system: System): readonly Remark[] {
  const left = wheels.filter(({ fedBy }) => [...fedBy].some((other) => other !== body)).map(({ wheel }) => wheel);
  const lost = wheels.length - left.length;
  const [only, ...more] = left;
  if (only === undefined) return [noneLeft(body, lost, system)];
  const alone = only.wheel.side !== 'centre' && (only.wheel.side !== undefined || wheels.length > 2);
  return more.length === 0 && lost > 0 && alone ? [oneLeft(body, only, system)] : [];
}

function noneLeft(body: PressureBody, wheels: number, system: System): Remark {
  const { severity, advice } = claimOf(system);
  const parts = partsOf(body.parts, system);
  const master = masterOf(body, system);
  const left =
    wheels === 1
      ? 'leaves the only wheel brake here without pressure.'
      : `leaves none of ${wheels} wheels braked: they share one body of fluid.`;
  const what = `A leak anywhere from ${labelsOf(body, system)} on, in any of ${counted(parts.length, 'part')}, ${left}`;
  return {
    severity,
    message: `${what} ${advice}`,
    origin: (master ?? system.vehicle)?.nameOrigin ?? { uri: system.uri, start: 0, end: 0 },
    subject: 'circuit',
    also: body.chambers,
    related: places(likeliestFirst(parts), 6, (part) => `a leak here takes all brakes: ${part.label}`),
  };
}

function oneLeft(body: PressureBody, only: WheelBrake, system: System): Remark {
  const parts = partsOf(body.parts, system);
  const wheel = wheelWords(only.wheel);
  const isNamed = wheel === undefined || only.brake.label.replaceAll('-', ' ') === wheel;
  const where = isNamed ? only.brake.label : `${only.brake.label}, at the ${wheel}`;
  const master = masterOf(body, system);
  return {
    severity: 'warning',
    message: `A leak anywhere from ${labelsOf(body, system)} on, in any of ${counted(parts.length, 'part')}, leaves only one wheel braked: ${where}. The vehicle then stops late and pulls to that side. Share the wheels out so that a leak leaves both wheels of an axle, or one at each end.`,
    origin: master?.nameOrigin ?? only.brake.nameOrigin,
    subject: body.chambers[0] ?? only.brake.id,
    also: [...body.chambers.slice(1), only.brake.id],
    related: [{ message: 'the wheel that is left', origin: only.brake.nameOrigin }],
  };
}

/** Whether the brakes claim to be split, and so what to do. */
function claimOf(system: System): { readonly severity: Severity; readonly advice: string } {
  const split = system.vehicle && wordOf(system.vehicle, properties.split);
  const masters = new Set(system.circuits.map(({ chamber }) => masterPart(chamber, system)));
  const tandem = [...masters].some((master) => master?.variant === 'tandem');
  const stated = split !== undefined && split !== 'none' && system.state === 'planned';
  if (split !== 'none' && (tandem || stated)) {
    const claim = tandem ? 'there is a tandem master' : `the vehicle says split ${split}`;
    return {
      severity: 'error',
      advice: `The brakes are meant to be split (${claim}), and they are not: join each chamber to wheels of its own.`,
    };
  }
  return {
    severity: 'warning',
    advice:
      'If it was built so, accept this with a reason, and keep a parking brake that works alone. To split it takes a tandem master and a line for each circuit.',
  };
}

/** Hoses burst first, then tube rusts; the rest seldom leaks. */
function likeliestFirst(parts: readonly Part[]): readonly Part[] {
  const rank = ({ kind }: Part): number => (kind === 'hose' ? 0 : kind === 'run' ? 1 : 2);
  return [...parts].sort((a, b) => rank(a) - rank(b));
}

const partsOf = (ids: readonly PartId[], system: System): readonly Part[] =>
  ids.flatMap((id) => system.partById.get(id) ?? []);

const labelsOf = ({ chambers }: PressureBody, system: System): string =>
  listed(partsOf(chambers, system).map(({ label }) => label));

const masterPart = (chamber: PartId, system: System): Part | undefined => {
  const part = system.partById.get(chamber);
  return part && outermost(system, part);
};

const masterOf = ({ chambers }: PressureBody, system: System): Part | undefined =>
  chambers[0] === undefined ? undefined : masterPart(chambers[0], system);
