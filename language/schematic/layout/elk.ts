/** The only file that knows the layout library: plain graph in, library called, plain positions out. */
import type { ElkExtendedEdge, ElkNode } from 'elkjs/lib/elk-api.js';
import type { Edge, Point } from '../symbols/drawing.ts';
import { elkOptions, modeOptions, pictureOptions } from './elk-options.ts';
import type { Laid, LayoutAnswer, LayoutGraph } from './engine.ts';

/** More nodes than this take seconds and may exhaust the stack of the engine. */
export const largestLayout = 2500;

export interface Elk {
  layout(graph: LayoutGraph): Promise<LayoutAnswer>;
  knownOptionIds(): Promise<readonly string[]>;
}

/** Loads the library, which takes about a tenth of a second, and only then. */
export async function loadElk(): Promise<Elk> {
  const elk = await withMessageSlotKept(async () => {
    const { default: ELK } = await import('elkjs/lib/elk.bundled.js');
    return new ELK();
  });
  return {
    layout: async (graph) => {
      if (graph.nodes.length > largestLayout) return { kind: 'refused', reason: tooLarge(graph.nodes.length) };
      if (graph.nodes.length === 0) return { kind: 'laid', nodes: [], edges: [] };
      try {
        return readBack(graph, await elk.layout(transform(graph)));
      } catch (error) {
        return {
          kind: 'refused',
          reason: `The layout engine failed: ${error instanceof Error ? error.message : error}.`,
        };
      }
    },
    knownOptionIds: async () => (await elk.knownLayoutOptions()).flatMap((option) => option.id ?? []),
  };
}

const tooLarge = (count: number) =>
  `The picture would have ${count} parts and lines; up to ${largestLayout} can be drawn. Draw a smaller file.`;

/** In a worker the library takes over `onmessage` when it is made, where a language server may be listening. */
async function withMessageSlotKept<T>(load: () => Promise<T>): Promise<T> {
  const slot: unknown = Reflect.get(globalThis, 'onmessage');
  const loaded = await load();
  if (Reflect.get(globalThis, 'onmessage') !== slot) Reflect.set(globalThis, 'onmessage', slot);
  return loaded;
}

const sides: Readonly<Record<Edge, string>> = { top: 'NORTH', bottom: 'SOUTH', left: 'WEST', right: 'EAST' };

const alignments = { top: 'TOP', middle: 'CENTER' } as const;

/** A fresh graph each time: the library writes into what it is given. */
function transform(graph: LayoutGraph): ElkNode {
  return {
    id: 'picture',
    layoutOptions: elkOptions({ ...pictureOptions, ...modeOptions[graph.mode] }),
    children: graph.nodes.map((node) => ({
      id: node.id,
      width: node.width,
      height: node.height,
      x: node.x,
      y: node.y,
      layoutOptions: elkOptions({
        portConstraints: 'FIXED_POS',
        position: `(${node.x},${node.y})`,
        alignment: alignments[node.align],
      }),
      ports: node.ports.map((port) => ({
        id: portKey(node.id, port.id),
        x: port.x,
        y: port.y,
        width: 0,
        height: 0,
        layoutOptions: elkOptions({ portSide: sides[port.edge] }),
      })),
    })),
    edges: graph.edges.map((edge) => ({
      id: edge.id,
      sources: [portKey(edge.from.node, edge.from.port)],
      targets: [portKey(edge.to.node, edge.to.port)],
      layoutOptions: elkOptions({ straightness: String(edge.straightness) }),
    })),
  };
}

const portKey = (node: string, port: string) => `${node}\u0000${port}`;

function readBack(graph: LayoutGraph, root: ElkNode): Laid {
  const corners = new Map((root.children ?? []).map((node) => [node.id, { x: node.x ?? 0, y: node.y ?? 0 }]));
  const routes = new Map((root.edges ?? []).map((edge) => [edge.id, pointsOf(edge)]));
  return {
    kind: 'laid',
    nodes: graph.nodes.map(({ id }) => ({ id, ...(corners.get(id) ?? { x: 0, y: 0 }) })),
    edges: graph.edges.map(({ id }) => ({ id, points: routes.get(id) ?? [] })),
  };
}

function pointsOf(edge: ElkExtendedEdge): readonly Point[] {
  return (edge.sections ?? [])
    .flatMap((section) => [section.startPoint, ...(section.bendPoints ?? []), section.endPoint])
    .map(({ x, y }) => ({ x, y }));
}
