/** valve-direction: a valve that stands the wrong way round, or that shuts pressure in behind it. */
import { commonPractice } from '../standards/source.ts';
import type { Circuit } from '../system/circuits.ts';
import type { Tie } from '../system/fluid-graph.ts';
import { kindRow } from '../system/kinds/index.ts';
import { type Part, type PartId, portIdOf } from '../system/part.ts';
import { isOpenWay } from '../system/pressure-bodies.ts';
import { allParts, type System } from '../system/system.ts';
import { drumBrake, run, stockLine } from './example-parts.ts';
import type { Remark, Rule } from './rule.ts';
import { listedUpTo } from './wording.ts';

const withValve = (kind: string, first: string, second: string) => `${stockLine}master main single {
  port out: 3/8-24 inverted-flare
}
${kind} valve { ports in, out: 3/8-24 inverted-flare }
${drumBrake('rear-left')}${run('feed', 'main.out', `valve.${first}`)}${run('line', `valve.${second}`, 'rear-left.cylinder.feed')}`;

export const valveDirection: Rule = {
  code: 'valve-direction',
  severity: 'error',
  acceptable: true,
  question: 'Does the pressure of the master come to the inlet of every valve, and can it go again?',
  why: 'A valve that stands the wrong way round does not do its work and may pass no pressure at all; one that passes fluid one way only holds the brake behind it on.',
  source: commonPractice('valves are marked for the way of the flow, or have two different threads for it'),
  fires: [
    {
      title: 'a proportioning valve the wrong way round',
      text: withValve('proportioning-valve', 'out', 'in'),
    },
    { title: 'a check valve towards the master', text: withValve('check-valve', 'out', 'in') },
    { title: 'a brake behind a check valve: a warning', text: withValve('check-valve', 'in', 'out') },
  ],
  silent: [
    {
      title: 'a proportioning valve with its inlet to the master',
      text: withValve('proportioning-valve', 'in', 'out'),
    },
    { title: 'a residual valve with its inlet to the master', text: withValve('residual-valve', 'in', 'out') },
    {
      title: 'a valve that no master reaches',
      text: withValve('metering-valve', 'out', 'in').replace(run('feed', 'main.out', 'valve.out'), ''),
    },
  ],
  check: ({ system }) => {
    const valves = allParts(system).filter(({ kind }) => kindRow(kind).fluid === 'valve');
    if (valves.length === 0) return [];
    return system.circuits.flatMap((circuit) => {
      const cameBy = waysFrom(circuit, system);
      return valves.flatMap((valve) => remarksOn(valve, { circuit, cameBy, system }));
    });
  },
};

interface Ways {
  readonly circuit: Circuit;
  /** By volume, the tie that pressure first came to it by; none for the chamber itself. */
  readonly cameBy: ReadonlyMap<string, Tie | undefined>;
  readonly system: System;
}

/** A walk outward from the chamber over all that is certain; linear in the circuit. */
function waysFrom(circuit: Circuit, { graph }: System): ReadonlyMap<string, Tie | undefined> {
  const isPressed = new Set(graph.volumes.filter(({ side }) => side === 'pressure').map(({ id }) => id));
  const start = graph.volumes.find(({ part, side }) => part === circuit.chamber && side === 'pressure');
  const cameBy = new Map<string, Tie | undefined>(start ? [[start.id, undefined]] : []);
  for (const here of cameBy.keys()) {
    for (const tie of (graph.tiesAt.get(here) ?? []).filter(isOpenWay)) {
      const next = tie.a === here ? tie.b : tie.a;
      if (!cameBy.has(next) && isPressed.has(next)) cameBy.set(next, tie);
    }
  }
  return cameBy;
}

function remarksOn(valve: Part, { circuit, cameBy, system }: Ways): readonly Remark[] {
  const inlet = system.graph.volumeOfPort.get(portIdOf(valve.id, 'in'))?.id;
  const outlet = system.graph.volumes.find(({ id, part }) => part === valve.id && id !== inlet)?.id;
  if (inlet === undefined || outlet === undefined || valve.paths.length > 0) return [];
  const [toInlet, toOutlet] = [cameBy.get(inlet), cameBy.get(outlet)];
  const isThrough = (tie: Tie | undefined) => tie?.through.kind === 'valve' && tie.through.part === valve.id;
  const isReversed = toOutlet !== undefined && !isThrough(toOutlet) && (toInlet === undefined || isThrough(toInlet));
  if (isReversed) {
    const effect =
      valve.kind === 'check-valve'
        ? 'No pressure passes that way.'
        : 'It does not do its work that way, or passes nothing.';
    const message = `${valve.label} stands the wrong way round: the pressure of ${circuit.label} comes to its outlet first. ${effect} Turn it, or exchange its in and out here if the names are wrong.`;
    return [{ message, origin: valve.nameOrigin, subject: valve.id, also: [circuit.chamber] }];
  }
  return valve.kind === 'check-valve' && isThrough(toOutlet) ? shutIn(valve, circuit, system) : [];
}

/** Fluid goes to what lies behind a check valve and does not come back. */
function shutIn(valve: Part, circuit: Circuit, system: System): readonly Remark[] {
  const held = circuit.reaches
    .filter(({ valves }) => valves.includes(valve.id))
    .flatMap(({ part }) => consumerOf(part, system));
  if (held.length === 0) return [];
  const names = listedUpTo(
    4,
    held.map(({ label }) => label),
  );
  const message = `${valve.label} lets fluid go to ${names} and not come back, so the pressure stays on when the pedal is let go. A valve that keeps a little pressure is a residual-valve; take any other out of the line.`;
  return [
    { severity: 'warning', message, origin: valve.nameOrigin, subject: valve.id, also: held.map(({ id }) => id) },
  ];
}

function consumerOf(id: PartId, system: System): readonly Part[] {
  const part = system.partById.get(id);
  return part !== undefined && kindRow(part.kind).fluid === 'consumer' ? [part] : [];
}
