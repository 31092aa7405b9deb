/** The pressure at each part and port of the circuits that a push presses. */
import { type Estimate, si } from '../../quantity/index.ts';
import { estimateFact } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part, PartId, PortId } from '../../system/part.ts';
import type { System } from '../../system/system.ts';
import type { Need, Result } from '../figure.ts';
import { once } from '../remembered.ts';
import { knownResult, unknownResult } from '../result.ts';
import type { PushedChamber } from './chamber-push.ts';
import { type End, marksOf, spreadOf } from './spread.ts';
import { staticHead } from './valve-laws.ts';

export interface PressedChamber {
  readonly chamber: PushedChamber;
  readonly pressure: Result<'pressure'>;
}

export interface Pressures {
  at(part: PartId): Result<'pressure'> | undefined;
  atPort(port: PortId): Result<'pressure'> | undefined;
}

export function pressuresIn(system: System, chambers: readonly PressedChamber[]): Pressures {
  const circuits = chambers.map((each) => ({ ...each, zones: once(() => zoneResults(each)) }));
  return {
    at: (id) => {
      const part = system.partById.get(id);
      if (part === undefined) return undefined;
      const found = circuits.flatMap(({ chamber, zones, pressure }) =>
        (chamber.model.circuit.zonesOfPart.get(id) ?? []).flatMap((zone) =>
          withHead(zones()[zone] ?? pressure, part, chamber, system),
        ),
      );
      return highest(found);
    },
    atPort: (id) => {
      const port = system.portById.get(id);
      const part = port && system.partById.get(port.part);
      const volume = system.graph.volumeOfPort.get(id);
      if (part === undefined || volume === undefined) return undefined;
      const found = circuits.flatMap(({ chamber, zones, pressure }) => {
        const { zoneOf, meetings } = chamber.model.circuit.pressed;
        const zone = zoneOf.get(volume.id) ?? meetings.get(volume);
        return zone === undefined ? [] : withHead(zones()[zone] ?? pressure, part, chamber, system);
      });
      return highest(found);
    },
  };
}

function zoneResults({ chamber, pressure }: PressedChamber): readonly Result<'pressure'>[] {
  const { circuit } = chamber.model;
  if (pressure.kind === 'unknown' || chamber.open) return circuit.zones.map(() => pressure);
  const { estimate } = pressure;
  const at = (end: End) => chamber.pressing.zones(estimate[end], end);
  const ends = { low: at('low'), value: at('value'), high: at('high') };
  return circuit.zones.map(({ feeds }, zone): Result<'pressure'> => {
    const [low, value, high] = [ends.low[zone], ends.value[zone], ends.high[zone]];
    if (low === undefined || value === undefined || high === undefined) {
      return unknownResult('pressure', needsBehind(chamber, estimate));
    }
    const marks = marksOf([estimate, ...feeds.map(({ curve }) => curve.marks)]);
    return knownResult(
      'pressure',
      spreadOf('pressure', (end) => ({ low, value, high })[end], marks),
      chamber.model.part,
    );
  });
}

/** At any of the ends: a valve may be known at one pressure and not at another. */
function needsBehind({ pressing }: PushedChamber, { low, value, high }: Estimate<'pressure'>): readonly Need[] {
  return [value, low, high].flatMap((each) => pressing.needsAt(each));
}

/** The column of fluid between chamber and part, where the file states how high both are. */
function withHead(result: Result<'pressure'>, part: Part, chamber: PushedChamber, system: System): Result<'pressure'> {
  const { fluid } = chamber.model.circuit;
  if (result.kind === 'unknown' || chamber.open || fluid === undefined) return result;
  const [from, to] = [heightOf(chamber.model.part, system), heightOf(part, system)];
  if (from === undefined || to === undefined) return result;
  const density = si('density', (fluid.density.low + fluid.density.high) / 2);
  const head = staticHead(density, si('length', from - to));
  const { estimate } = result;
  return knownResult(
    'pressure',
    spreadOf('pressure', (end) => estimate[end] + head, estimate),
    part,
  );
}

/** m above the datum, of the part or of what holds it. */
function heightOf(part: Part, system: System): number | undefined {
  const own = estimateFact(part, properties.height);
  if (own !== undefined) return own.value;
  const holder = part.parent === undefined ? undefined : system.partById.get(part.parent);
  return holder && heightOf(holder, system);
}

function highest(found: readonly Result<'pressure'>[]): Result<'pressure'> | undefined {
  const [first, ...more] = found;
  if (first === undefined) return undefined;
  const unknown = found.find(({ kind }) => kind === 'unknown');
  if (unknown !== undefined) return unknown;
  return more.reduce((most, each) => (measureIn(each) > measureIn(most) ? each : most), first);
}

const measureIn = (result: Result<'pressure'>): number => (result.kind === 'known' ? result.estimate.value : 0);
