/** `chamber.pressure-at-push` and `wheel.pressure-at-push`: gauge pressures under the stated push. */
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import { chamberArea } from './chamber.ts';
import type { FigureContext } from './context.ts';
import type { Figure, Input } from './figure.ts';
import { givenFact, givenFigure } from './given.ts';
import { type AtPush, atPushOn } from './pedal-push.ts';
import { unknownResult } from './result.ts';
import { levers, valveLines } from './sources.ts';
import { writeResult } from './write-result.ts';
import { bars, inFamilyOf, newtons } from './writing.ts';

/** In Pa; undefined for a chamber that no pedal works. */
export function chamberPressureAtPush(chamber: Part, context: FigureContext): Figure<'pressure'> | undefined {
  const at = atPushOn(chamber, context);
  const area = chamberArea(chamber, context);
  if (at === undefined || area === undefined) return undefined;
  const state = at.applied?.chambers.find(({ id }) => id === chamber.id);
  const force: readonly Input[] =
    at.applied === undefined
      ? []
      : [
          {
            name: 'force on the piston of the master',
            text: writeResult({ result: at.applied.pistonForce, written: forceWriting(at) }),
            origin: at.pedal.nameOrigin,
            source: undefined,
          },
        ];
  return {
    id: 'chamber.pressure-at-push',
    subject: chamber.id,
    title: 'pressure at the push',
    written: pressureWriting(at),
    result: state?.pressure ?? unknownResult('pressure', at.needs),
    formula: 'force on the piston / piston area, as long as the stroke lasts',
    inputs: [at.push.input, ...boosterInputs(chamber, at, context), ...force, givenFigure(area, chamber).input],
    source: levers,
    notes: at.applied?.pressureAssumptions ?? [],
  };
}

/** In Pa, in what the fluid moves at a wheel or clutch; undefined for what no pedal presses. */
export function wheelPressureAtPush(consumer: Part, context: FigureContext): Figure<'pressure'> | undefined {
  const at = atPushOn(consumer, context);
  if (at === undefined) return undefined;
  const { applied } = at;
  const reaches = context.system.circuits.flatMap((circuit) => {
    const reach = circuit.reachOf.get(consumer.id);
    return reach === undefined ? [] : [{ chamber: circuit.chamber, valves: reach.valves }];
  });
  const chambers = reaches.flatMap(({ chamber }): readonly Input[] => {
    const part = context.system.partById.get(chamber);
    const state = applied?.chambers.find(({ id }) => id === chamber);
    if (part === undefined || state === undefined) return [];
    const text = writeResult({ result: state.pressure, written: pressureWriting(at) });
    return [{ name: `pressure in ${part.label} at the push`, text, origin: part.nameOrigin, source: undefined }];
  });
  const valves = [...new Set(reaches.flatMap(({ valves: passed }) => passed))].flatMap((id): readonly Input[] => {
    const valve = context.system.partById.get(id);
    if (valve === undefined) return [];
    const behind = valve.ports.find(({ name }) => name === 'out');
    const result = behind && applied?.pressureAtPort(behind.id);
    const text = result === undefined ? 'passed on the way' : writeResult({ result, written: pressureWriting(at) });
    return [{ name: `pressure behind ${valve.label}`, text, origin: valve.nameOrigin, source: undefined }];
  });
  return {
    id: 'wheel.pressure-at-push',
    subject: consumer.id,
    title: 'pressure at the push',
    written: pressureWriting(at),
    result: applied?.pressureAt(consumer.id) ?? unknownResult('pressure', at.needs),
    formula: 'pressure in the chamber, through the valves on the way, + static head where heights are stated',
    inputs: [at.push.input, ...chambers, ...valves],
    source: valveLines,
    notes: applied?.pressureAssumptions ?? [],
  };
}

const pressureWriting = ({ push }: AtPush) => (push.kind === 'given' ? inFamilyOf(push.written, 'pressure') : bars);
const forceWriting = ({ push }: AtPush) => (push.kind === 'given' ? inFamilyOf(push.written, 'force') : newtons);

/** What the boosters before the master say of themselves. */
function boosterInputs(chamber: Part, { pedal }: AtPush, { system }: FigureContext): readonly Input[] {
  const pushed = new Set([pedal.id]);
  for (const from of pushed)
    for (const link of system.links) if (link.verb === 'pushes' && link.from === from) pushed.add(link.to);
  return [...pushed].flatMap((id) => {
    const booster = system.partById.get(id);
    if (booster?.kind !== 'booster' || booster.id === chamber.id) return [];
    return [properties.gain, properties.knee, properties.diaphragm, properties.vacuum]
      .filter(({ key }) => booster.facts.has(key))
      .map((row) => givenFact(booster, row).input);
  });
}
