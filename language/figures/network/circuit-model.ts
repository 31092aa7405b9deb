/** One chamber's circuit, ready to be pressed: zones behind its valves, what takes up fluid in each, what is not known. */
import { type Si, si } from '../../quantity/index.ts';
import type { Fluid } from '../../standards/fluids.ts';
import type { Volume } from '../../system/fluid-graph.ts';
import { kindRow } from '../../system/kinds/index.ts';
import type { Part, PartId } from '../../system/part.ts';
import type { FigureContext } from '../context.ts';
import type { Need } from '../figure.ts';
import { once } from '../remembered.ts';
import { feedersOf } from './feeding.ts';
import { fluidOf, fluidTaking } from './fluid-taking.ts';
import { padGap, shoeGap } from './gap-taking.ts';
import { giveTaking } from './give-taking.ts';
import { toldLacks } from './lacks.ts';
import { hoseTaking, tubeTaking } from './line-taking.ts';
import { type Marks, marksOf } from './spread.ts';
import { type Lack, noTakings, type Taking, type Takings, takingsTogether } from './taking.ts';
import { lawsTogether, shareOf, type TakingLaw } from './taking-law.ts';
import { type ValveCurve, valveCurve } from './valve-curves.ts';
import { type PressedZones, zonesOf } from './zones.ts';

export interface ZoneModel {
  readonly feeds: readonly FeedModel[];
  readonly takings: readonly Taking[];
}

export interface FeedModel {
  readonly from: number;
  readonly valve: PartId;
  readonly curve: ValveCurve;
  /** Of a booster that has failed; the same for every other valve. */
  readonly failedCurve: ValveCurve;
}

export interface CircuitModel {
  readonly chamber: Part;
  readonly pressed: PressedZones;
  readonly zonesOfPart: ReadonlyMap<PartId, readonly number[]>;
  readonly zones: readonly ZoneModel[];
  /** By zone, those of all its takings, summed up. */
  readonly laws: readonly (readonly TakingLaw[])[];
  readonly lacks: readonly Lack[];
  /** The same as they are told. */
  readonly told: () => readonly Need[];
  readonly assumptions: readonly string[];
  readonly valveAssumptions: readonly string[];
  readonly marks: Marks;
  readonly fluid: Fluid | undefined;
  /** What lets its fluid out if it leaks: everything that it presses, and what feeds it. */
  readonly holders: ReadonlySet<PartId>;
  /** Why no pressure can be told; empty where nothing is in the way. */
  readonly faults: readonly Need[];
}

export function circuitModel(chamber: Part, context: FigureContext, meetings: readonly Volume[]): CircuitModel {
  const { system } = context;
  const pressed = zonesOf(chamber, system, meetings);
  const feeders = feedersOf(chamber, system);
  const fluid = fluidOf(feeders, system);
  const seen = new Set<PartId>();
  const inZones = pressed.zones.map(({ volumes }) =>
    takingsTogether(volumes.map((volume) => takingsOf(volume, { chamber, context, fluid, seen }))),
  );
  const feeds = pressed.zones.map((zone) =>
    zone.feeds.map(({ from, valve, backwards }): FeedModel => {
      const curve = valveCurve(valve, { backwards, failed: false });
      const failedCurve = valve.kind === 'booster' ? valveCurve(valve, { backwards, failed: true }) : curve;
      return { from, valve: valve.id, curve, failedCurve };
    }),
  );
  const all = takingsTogether(inZones);

  const noFluid = fluid === undefined ? [unknownFluid(chamber)] : [];
  const lacks = [...all.lacks, ...noFluid, ...unsaidWays(pressed, context)];
  const curves = feeds.flat().map(({ curve }) => curve);
  return {
    chamber,
    pressed,
    zonesOfPart: zonesOfParts(pressed),
    zones: inZones.map(({ takings }, index) => ({
      takings,
      feeds: feeds[index] ?? [],
    })),
    laws: inZones.map(({ takings }) => lawsTogether(takings.map(({ law }) => law))),
    lacks,
    told: once(() => toldLacks(lacks)),
    assumptions: all.assumptions,
    valveAssumptions: [...new Set(curves.flatMap(({ assumptions }) => assumptions))],
    marks: marksOf([...all.takings.map(({ marks }) => marks), ...curves.map(({ marks }) => marks)]),
    fluid,
    holders: holdersOf(pressed, feeders),
    faults: pressed.rivals.map((rival) => ({
      name: `a circuit of its own for ${chamber.label}, apart from ${system.partById.get(rival)?.label ?? rival}`,
      origin: chamber.nameOrigin,
    })),
  };
}

interface Surroundings {
  readonly chamber: Part;
  readonly context: FigureContext;
  readonly fluid: Fluid | undefined;
  /** Parts whose fluid is counted already: a valve has two sides. */
  readonly seen: Set<PartId>;
}

function takingsOf(volume: Volume, around: Surroundings): Takings {
  const { context, fluid, seen } = around;
  const part = context.system.partById.get(volume.part);
  if (part === undefined) return noTakings;
  const bodies = bodiesOf(part, context);
  const squeeze = fluid === undefined || seen.has(part.id) ? noTakings : fluidTaking(part, context, { fluid, bodies });
  const first = !seen.has(part.id);
  seen.add(part.id);
  return takingsTogether([first ? movementOf(part, bodies, around) : noTakings, squeeze]);
}

function movementOf(part: Part, bodies: number, { chamber, context }: Surroundings): Takings {
  const { partById } = context.system;
  const holder = part.parent === undefined ? undefined : partById.get(part.parent);
  switch (part.kind) {
    case 'run':
      return tubeTaking(part, context);
    case 'hose':
      return hoseTaking(part);
    case 'cylinder':
      return takingsTogether([evenly(shoeGap(part, holder), part, bodies), giveOfBrake(part, holder, bodies)]);
    case 'caliper':
      return takingsTogether([evenly(padGap(part, holder), part, bodies), giveOfBrake(part, holder, bodies)]);
    case 'clutch-slave':
    case 'actuator': {
      const need = { name: `pressure that moves ${part.label}`, origin: part.nameOrigin };
      return { takings: [], lacks: [{ weight: 'gap', need }], assumptions: [] };
    }
    default:
      if (part.id !== chamber.id) return noTakings;
      return giveTaking(part, holder ?? part, { what: 'master', among: chambersIn(holder ?? part) });
  }
}

const chambersIn = (master: Part): number =>
  Math.max(1, master.parts.filter(({ kind }) => kind === 'primary' || kind === 'secondary').length);

function giveOfBrake(part: Part, brake: Part | undefined, bodies: number): Takings {
  const consumers = (brake ?? part).parts.filter(({ kind }) => kind === 'cylinder' || kind === 'caliper');
  return giveTaking(part, brake ?? part, { what: 'brake', among: Math.max(1, consumers.length) * bodies });
}

/** Of one with a circuit for each half, half for each. */
function evenly(takings: Takings, part: Part, bodies: number): Takings {
  if (bodies <= 1) return takings;
  return {
    takings: takings.takings.map((taking) => ({ ...taking, law: shareOf(taking.law, 1 / bodies) })),
    lacks: takings.lacks,
    assumptions: [...takings.assumptions, `The circuits of ${part.label} move an even share of its pistons each.`],
  };
}

/** Bodies of fluid under pressure in a part that keep apart. */
function bodiesOf(part: Part, { system }: FigureContext): number {
  if (part.paths.length === 0 || kindRow(part.kind).fluid === 'valve') return 1;
  const ids = part.ports.flatMap(({ id }) => system.graph.volumeOfPort.get(id) ?? []);
  return Math.max(1, new Set(ids.filter(({ side }) => side === 'pressure')).size);
}

function unknownFluid(chamber: Part): Lack {
  return { weight: 'brake', need: { name: `fluid of ${chamber.label}`, origin: chamber.nameOrigin } };
}

function unsaidWays({ unstated, meetings }: PressedZones, { system }: FigureContext): readonly Lack[] {
  const parts = new Set([...unstated, ...[...meetings.keys()].flatMap(({ part }) => system.partById.get(part) ?? [])]);
  return [...parts].map((part) => ({
    weight: 'gap',
    need: { name: `path of ${part.label}`, origin: part.nameOrigin },
  }));
}

function zonesOfParts({ zones, meetings }: PressedZones): ReadonlyMap<PartId, readonly number[]> {
  const found = new Map<PartId, number[]>();
  const put = ({ part }: Volume, zone: number) => {
    const list = found.get(part);
    if (list === undefined) found.set(part, [zone]);
    else if (!list.includes(zone)) list.push(zone);
  };
  zones.forEach(({ volumes }, zone) => {
    for (const volume of volumes) put(volume, zone);
  });
  for (const [volume, zone] of meetings) put(volume, zone);
  return found;
}

function holdersOf({ chamber, zones, meetings }: PressedZones, feeders: readonly Part[]): ReadonlySet<PartId> {
  const pressed = [...zones.flatMap(({ volumes }) => volumes), ...meetings.keys()].map(({ part }) => part);
  return new Set([chamber, ...pressed, ...feeders.map(({ id }) => id)]);
}

/** Gauge pressure in each zone, undefined where a valve before it is not known. */
export function zonePressures(
  { zones }: Pick<CircuitModel, 'zones'>,
  chamber: Si<'pressure'>,
  curveOutlet: (feed: FeedModel, inlet: Si<'pressure'>) => Si<'pressure'> | undefined,
): readonly (Si<'pressure'> | undefined)[] {
  const found: (Si<'pressure'> | undefined)[] = [];
  zones.forEach(({ feeds }, index) => {
    if (index === 0) {
      found.push(chamber);
      return;
    }
    const outlets = feeds.map((feed) => {
      const inlet = found[feed.from];
      return inlet === undefined ? undefined : curveOutlet(feed, inlet);
    });
    const known = outlets.filter((outlet) => outlet !== undefined);
    found.push(known.length < outlets.length ? undefined : si('pressure', Math.max(...known)));
  });
  return found;
}
