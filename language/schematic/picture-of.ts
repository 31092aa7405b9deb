/** System to picture: what is drawn of a circuit in one state, with its findings and the figures on its labels. */
import type { Figures } from '../figures/index.ts';
import type { PortId } from '../system/part.ts';
import { stateWords } from '../system/presence.ts';
import type { System } from '../system/system.ts';
import type { Picture } from './picture.ts';
import { findingsBy, type SubjectFinding } from './reading/findings.ts';
import { linesOf } from './reading/lines.ts';
import { nodesOf } from './reading/nodes.ts';

export interface PictureFacts {
  readonly findings: readonly SubjectFinding[];
  readonly figures: Figures;
}

/** Total: what the file does not say is left out of the picture, open ends are shown open. */
export function pictureOf(system: System, { findings, figures }: PictureFacts): Picture {
  const circuitByPort = new Map<PortId, number>();
  system.circuits.forEach((circuit, index) => {
    for (const port of circuit.ports) if (!circuitByPort.has(port)) circuitByPort.set(port, index);
  });
  const parts = new Set<string>(system.partById.keys());
  const context = {
    system,
    findings: findingsBy(findings, (path) => parts.has(path)),
    circuitOf: (port: PortId) => circuitByPort.get(port),
    figures,
  };
  const drawn = linesOf(context);
  const nodes = [...nodesOf(context), ...drawn.nodes];
  return {
    title: system.vehicle?.caption ?? system.vehicle?.name ?? 'Hydraulic circuit',
    state: system.state,
    description: describe(system, nodes.length, drawn.lines.length),
    circuits: system.circuits.map(({ label }) => ({ name: label })),
    nodes,
    lines: drawn.lines,
  };
}

function describe({ circuits, state }: System, nodes: number, lines: number): string {
  const named = circuits.map(({ label }) => label);
  const list = named.length === 0 ? 'No chamber presses anything yet' : `Circuits: ${named.join(', ')}`;
  return `The circuit ${stateWords[state]}, ${nodes} parts and ${lines} lines. ${list}.`;
}
