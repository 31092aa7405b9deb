/** The graph for the layout engine: boxes with their wished places, lines between their ports, guides for the wheels. */
import type { Picture } from '../picture.ts';
import type { Placement } from '../placed.ts';
import type { Point } from '../symbols/drawing.ts';
import { acrossOf } from './across.ts';
import { boxesOf, lineIn, lineOut, portName, type VertexBox, type WordSide } from './boxes.ts';
import type { LayoutEdge, LayoutGraph, LayoutNode, LayoutPort } from './engine.ts';
import { type Guide, guidesOf } from './guides.ts';
import { ranksOf } from './rank.ts';
import { type Flow, type Structure, structureOf } from './structure.ts';

export interface Plan {
  readonly structure: Structure;
  readonly boxes: readonly VertexBox[];
  /** Where vertices lay before, by id; empty for a fresh picture. */
  readonly kept: ReadonlyMap<string, Point>;
  readonly graph: LayoutGraph;
}

/** Far enough apart that no two layers overlap, whatever stands in them. */
const layerPitch = 4000;
const freshPitch = 1000;
/** Parts in one place keep the order of the text. */
const textOrder = 0.01;
/** Lines farther left than this have their words on the left. */
const leftOfMiddle = -0.004;
const nearMiddle = 0.3;

export function planOf(picture: Picture, previous: Placement | undefined): Plan {
  const structure = structureOf(picture);
  const balanced = acrossOf(structure, new Map());
  const kept = keptPivots(structure, previous);
  const settled = kept.size > 0;
  const across = settled ? acrossOf(structure, new Map([...kept].map(([id, { x }]) => [id, x]))) : balanced;
  const ranks = ranksOf(structure);
  const boxes = boxesOf(structure, across, wordSides(structure, balanced));
  const guides = guidesOf(structure, ranks);
  const bending = { branching: branchingOf(structure), guided: new Set(guides.map(({ below }) => below)) };
  return {
    structure,
    boxes,
    kept,
    graph: {
      mode: settled ? 'settled' : 'fresh',
      nodes: boxes.map((box, i): LayoutNode => {
        const x = across[i] ?? 0;
        return {
          id: vertexKey(structure, i),
          width: box.width,
          height: box.height,
          x: toHundredth(settled ? x - box.pivot : x * freshPitch + i * textOrder),
          y: (ranks[i] ?? 0) * layerPitch,
          align: box.members.some(({ node }) => node.station !== 'junction') ? 'top' : 'middle',
          ports: [...box.seats.map(({ id, edge, at }) => ({ id, edge, x: at.x, y: at.y })), ...guidePorts(box)],
        };
      }),
      edges: [
        ...structure.flows.flatMap((flow) => edgesOf(flow, structure, bending)),
        ...guides.map((guide) => guideEdge(guide, structure)),
      ],
    },
  };
}

/** The old places, unless most of the picture is new. */
function keptPivots({ vertices }: Structure, previous: Placement | undefined): ReadonlyMap<string, Point> {
  const known = new Map(Object.entries(previous?.pivots ?? {}));
  const kept = new Map<string, Point>();
  for (const { id } of vertices) {
    const at = known.get(id);
    if (at !== undefined) kept.set(id, at);
  }
  return kept.size * 2 > vertices.length ? kept : new Map();
}

/** Words stand on the outer side of a line; where lines run side by side down the middle, away from their neighbours. */
function wordSides({ vertices, arcs }: Structure, balanced: readonly number[]): readonly WordSide[] {
  const bias = vertices.map(() => 0);
  for (const { from, to, fromBias, toBias } of arcs) {
    bias[from] = (bias[from] ?? 0) + toBias;
    bias[to] = (bias[to] ?? 0) + fromBias;
  }
  return vertices.map(({ kind }, i) => {
    const x = balanced[i] ?? 0;
    const lean = bias[i] ?? 0;
    const measure = kind === 'line' && lean !== 0 && Math.abs(x) < nearMiddle ? lean : x - leftOfMiddle;
    return measure < 0 ? 'left' : 'right';
  });
}

/** Unique even where a run and a part share a name. */
const vertexKey = ({ vertices }: Structure, index: number) => `${index}\u0001${vertices[index]?.id ?? ''}`;

export const toHundredth = (value: number): number => Math.round(value * 100) / 100;

/** The engine's edge for a half of a line, or for the whole of it. */
export const edgeId = (line: string, half?: typeof lineIn | typeof lineOut): string =>
  half === undefined ? line : `${line}\u0001${half}`;

/** How much lines want to be straight: the plumb line of the wheels most, then a chain of parts, branches least. */
const straightness = { guide: 16, chain: 12, cable: 1, branch: 2 } as const;

/** Vertices that more than two lines meet. */
function branchingOf({ arcs }: Structure): ReadonlySet<number> {
  const count = new Map<number, number>();
  for (const { from, to } of arcs) for (const i of [from, to]) count.set(i, (count.get(i) ?? 0) + 1);
  return new Set([...count].flatMap(([i, lines]) => (lines > 2 ? [i] : [])));
}

/** Where lines may bend without loss: at branches, and where a line comes over to the column of its wheel. */
interface Bending {
  readonly branching: ReadonlySet<number>;
  readonly guided: ReadonlySet<number>;
}

function edgesOf(flow: Flow, structure: Structure, { branching, guided }: Bending): readonly LayoutEdge[] {
  if (flow.kind !== 'through') return [];
  const { id } = flow.line;
  const up = structure.vertexOfNode.get(flow.up.node) ?? 0;
  const down = structure.vertexOfNode.get(flow.down.node) ?? 0;
  const from = { node: vertexKey(structure, up), port: portName(flow.up.node, flow.up.port) };
  const to = { node: vertexKey(structure, down), port: portName(flow.down.node, flow.down.port) };
  const middle = structure.vertexOfLine.get(id);
  if (middle === undefined) {
    const branch = branching.has(up) && branching.has(down) ? straightness.branch : straightness.chain;
    return [{ id: edgeId(id), from, to, straightness: flow.line.kind === 'mechanical' ? straightness.cable : branch }];
  }
  const node = vertexKey(structure, middle);
  const pull = (bends: boolean) => (bends ? straightness.branch : straightness.chain);
  const enter = pull(branching.has(up) || guided.has(middle));
  const leave = pull(branching.has(down) || guided.has(down));
  return [
    { id: edgeId(id, lineIn), from, to: { node, port: portName(id, lineIn) }, straightness: enter },
    { id: edgeId(id, lineOut), from: { node, port: portName(id, lineOut) }, to, straightness: leave },
  ];
}

const guideAbove = 'guide-above';
const guideBelow = 'guide-below';

/** Where a guide holds on to a box. */
const guidePorts = ({ pivot, height }: VertexBox): readonly LayoutPort[] => [
  { id: guideAbove, x: pivot, y: 0, edge: 'top' },
  { id: guideBelow, x: pivot, y: height, edge: 'bottom' },
];

const guideEdge = ({ above, below }: Guide, structure: Structure): LayoutEdge => ({
  id: `guide\u0001${above}\u0001${below}`,
  from: { node: vertexKey(structure, above), port: guideBelow },
  to: { node: vertexKey(structure, below), port: guideAbove },
  straightness: straightness.guide,
});
