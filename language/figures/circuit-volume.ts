/** `circuit.volume`: the fluid in everything that one chamber presses. */
import type { Circuit } from '../system/circuits.ts';
import { kindRow } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { FigureContext } from './context.ts';
import type { Figure, Need } from './figure.ts';
import { sum } from './sources.ts';
import { type Content, totalOf } from './total-volume.ts';
import { millilitres } from './writing.ts';

/** In m³. What is shared with another circuit, or reached only perhaps, is left out by name. */
export function circuitVolume(circuit: Circuit, context: FigureContext): Figure<'volume'> {
  const contents: Content[] = [];
  const missing: Need[] = [];
  for (const { part: id, doubtful } of circuit.reaches) {
    const part = context.system.partById.get(id);
    const figure = part && context.volumeOf(part);
    if (part === undefined) continue;
    if (saysNoPath(part)) missing.push({ name: `path of ${part.label}`, origin: part.nameOrigin });
    else if (figure === undefined || doubtful)
      continue; // behind a part whose path is missing, which is named
    else if (isWhollyIn(part, circuit)) contents.push({ part, figure });
    else missing.push({ name: `share of ${part.label} in this circuit`, origin: part.nameOrigin });
  }
  const { result, inputs } = totalOf(contents, missing);
  const chamber = context.system.partById.get(circuit.chamber);
  const paths = missing.filter(({ name }) => name.startsWith('path of '));
  return {
    id: 'circuit.volume',
    subject: chamber?.id ?? circuit.chamber,
    title: `fluid in circuit ${circuit.label}`,
    written: millilitres,
    result,
    formula: 'fluid in each part that the chamber reaches, added up, without the reservoir',
    inputs,
    source: sum,
    notes: [
      'The chamber counts with the fluid of its full stroke.',
      ...(paths.length > 0
        ? ['What lies behind a part that does not say which ports share fluid is not counted.']
        : []),
    ],
  };
}

/** A part of which the file does not say which of its ports share fluid. */
function saysNoPath(part: Part): boolean {
  return kindRow(part.kind).fluid === 'paths' && part.paths.length === 0;
}

/** A part with separate ways through it can belong to two circuits; nothing says how much of it to each. */
function isWhollyIn(part: Part, circuit: Circuit): boolean {
  return part.ports.every(({ id, connection }) => connection.kind === 'barb' || circuit.ports.has(id));
}
