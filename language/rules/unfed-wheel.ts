/** unfed-wheel: a wheel brake that no chamber of a master reaches. */
import { published } from '../standards/source.ts';
import type { Part, PartId, PortId } from '../system/part.ts';
import { type PressureBody, pressureBodiesOf } from '../system/pressure-bodies.ts';
import type { FileReading, System } from '../system/system.ts';
import { type WheelBrake, wheelBrakesOf, within } from '../system/wheel-brakes.ts';
import { drumBrake, oneCircuit, run, singleMaster, stockLine } from './example-parts.ts';
import type { Remark, Rule } from './rule.ts';
import { isMeantByMisspelling, namesSomethingMissing } from './unresolved.ts';
import { listed, listedUpTo } from './wording.ts';

export const unfedWheel: Rule = {
  code: 'unfed-wheel',
  severity: 'error',
  acceptable: false,
  question: 'Does pressure from the master reach every wheel brake?',
  why: 'A brake that nothing feeds does nothing, and the vehicle pulls to the other side.',
  source: published('49 CFR 571.105 S5.1 and 571.135 S5.1: the service brake acts on all wheels'),
  fires: [
    {
      title: 'a wheel whose line was forgotten',
      text: `${stockLine}${singleMaster}${drumBrake('front-left')}${drumBrake('front-right')}${run('left-line', 'split.left', 'front-left.cylinder.feed')}`,
    },
    {
      title: 'a line that begins at a tee that nothing feeds',
      text: `${oneCircuit.replace(run('feed', 'main.out', 'split.in'), '')}`,
    },
    {
      title: 'a low-pressure feed hose in the line',
      text: `${stockLine}master main single { port out: barb 6 mm }
tee split { port in: barb 6 mm  ports left, right: 3/8-24 inverted-flare }
feed-hose link { from main.out to split.in }
${drumBrake('front-left')}${run('left-line', 'split.left', 'front-left.cylinder.feed')}`,
    },
    {
      title: 'one of two cylinders left out',
      text: `${stockLine}${singleMaster}${run('line-left', 'split.left', 'front-left.upper.feed')}drum-brake front-left {
  cylinder upper { port feed: 3/8-24 inverted-flare  bleeder {} }
  cylinder lower { port feed: 3/8-24 inverted-flare  bleeder {} }
}
`,
    },
    {
      title: 'a brake of which nothing is said that could apply it',
      text: `${oneCircuit}drum-brake rear-left { drum 10 in }\n`,
    },
  ],
  silent: [
    { title: 'every wheel reached', text: oneCircuit },
    { title: 'a file without a master: others may use its brakes', text: drumBrake('front-left') },
    {
      title: 'a way through a modulator that does not say its paths',
      text: `${stockLine}master main single { port out: 3/8-24 inverted-flare }
modulator unit { ports in, out: 3/8-24 inverted-flare }
${drumBrake('front-left')}${run('feed', 'main.out', 'unit.in')}${run('left-line', 'unit.out', 'front-left.cylinder.feed')}`,
    },
    {
      title: 'a rear brake that a rod works',
      text: `${oneCircuit}drum-brake rear-left { drum 10 in  parking-lever {} }\n`,
    },
  ],
  check: ({ reading, system }) => {
    if (system.circuits.length === 0) return [];
    const fed = new Set<PortId>(system.circuits.flatMap(({ ports }) => [...ports]));
    const bodyOf = new Map(pressureBodiesOf(system).bodies.flatMap((body) => body.parts.map((part) => [part, body])));
    return wheelBrakesOf(system).flatMap((wheel) => remarksOn(wheel, { reading, system, fed, bodyOf }));
  },
};

interface Plumbing {
  readonly reading: FileReading;
  readonly system: System;
  /** Ports that a chamber reaches. */
  readonly fed: ReadonlySet<PortId>;
  readonly bodyOf: ReadonlyMap<PartId, PressureBody>;
}

function remarksOn({ brake, actuated }: WheelBrake, plumbing: Plumbing): readonly Remark[] {
  const { fed } = plumbing;
  if (actuated.length === 0) return withoutCylinder(brake);
  const dry = actuated.filter((part) => isDry(part, fed) && !isInDoubt(part, plumbing));
  const halves = actuated.filter((part) => !dry.includes(part)).flatMap((part) => dryHalves(part, fed));
  const [first, ...others] = dry;
  if (first === undefined) return halves;
  if (others.length > 0 && dry.length === actuated.length) {
    const message = `Nothing feeds ${brake.label}: no chamber of a master reaches ${listed(dry.map(({ name }) => name))}. ${nextStep(first, plumbing)}`;
    return [{ message, origin: brake.nameOrigin, subject: brake.id, also: dry.map(({ id }) => id) }, ...halves];
  }
  return [
    ...dry.map((part) => ({
      message: `Nothing feeds ${part.label}: no chamber of a master reaches it. ${nextStep(part, plumbing)}`,
      origin: dry.length === actuated.length ? brake.nameOrigin : part.nameOrigin,
      subject: part.id,
    })),
    ...halves,
  ];
}

const isDry = (part: Part, fed: ReadonlySet<PortId>): boolean => part.ports.every(({ id }) => !fed.has(id));

/** A line on the way to it that names a port that is not there may well lead to a chamber. */
function isInDoubt(part: Part, { reading, system, bodyOf }: Plumbing): boolean {
  if (reading.problems.length === 0) return false;
  const around = (bodyOf.get(part.id)?.parts ?? [part.id]).flatMap((id) => system.partById.get(id) ?? []);
  return isMeantByMisspelling(part, reading) || around.some((each) => namesSomethingMissing(each, reading));
}

/** Of a caliper with two circuits, the ports of the circuit that nothing feeds. */
function dryHalves(part: Part, fed: ReadonlySet<PortId>): readonly Remark[] {
  return part.paths.flatMap((path) => {
    const ports = part.ports.filter(({ name }) => path.includes(name));
    const [first] = ports;
    if (first === undefined || ports.some(({ id }) => fed.has(id))) return [];
    const names = listed(ports.map(({ name }) => name));
    const message = `Nothing feeds the half of ${part.label} behind ${names}: no chamber of a master reaches it. Join it to a circuit with a run or hose.`;
    return [{ message, origin: first.origin, subject: part.id }];
  });
}

/** A brake worked by cable or rod alone is as it should be; otherwise the file does not say what applies it. */
function withoutCylinder(brake: Part): readonly Remark[] {
  if (within(brake).some(({ kind }) => kind === 'parking-lever')) return [];
  const inside = brake.kind === 'disc-brake' ? 'caliper' : 'cylinder';
  const message = `Nothing is said that applies ${brake.label}. Write its ${inside}, or its parking-lever if a cable or rod works it.`;
  return [{ severity: 'question', message, origin: brake.nameOrigin, subject: brake.id }];
}

/** Low-pressure hoses that are joined to the part: pressure never comes over them. */
function feedHosesAt(part: Part | undefined, { jointsAt, portById, partById }: System): readonly Part[] {
  return (part?.ports ?? []).flatMap(({ id }) =>
    (jointsAt.get(id) ?? []).flatMap(({ a, b }) => {
      const other = portById.get(a === id ? b : a);
      const owner = other && partById.get(other.part);
      return owner?.kind === 'feed-hose' ? [owner] : [];
    }),
  );
}

/** Where the way from the cylinder ends, so that the gap can be looked for there. */
function nextStep(part: Part, { system, bodyOf }: Plumbing): string {
  if (part.ports.length === 0) return 'Give it a port, and join that to a circuit with a run or hose.';
  const others = (bodyOf.get(part.id)?.parts ?? []).filter((id) => id !== part.id);
  const labels = others.flatMap((id) => system.partById.get(id)?.label ?? []);
  if (labels.length === 0) return 'Join its port to a circuit with a run or hose.';
  const feed = others.flatMap((id) => feedHosesAt(system.partById.get(id), system))[0];
  if (feed !== undefined)
    return `On the way lies ${feed.label}, a low-pressure feed hose: it belongs between reservoir and master and bursts under the pressure of the pedal. Put a brake hose or a run there.`;
  return `From there fluid gets to ${listedUpTo(4, labels)}, and no chamber is joined to ${labels.length === 1 ? 'that' : 'these'}: look for the gap there.`;
}
