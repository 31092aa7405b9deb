/** The port behind which the layout engine sits: plain data in, plain data out, so that it may run on another thread. */
import type { Edge, Point } from '../symbols/drawing.ts';

export interface LayoutPort {
  readonly id: string;
  /** From the corner of the node. */
  readonly x: number;
  readonly y: number;
  readonly edge: Edge;
}

export interface LayoutNode {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  /** Where the node should come to lie: decides its layer and its place in the layer, and in a settled layout its position. */
  readonly x: number;
  readonly y: number;
  readonly ports: readonly LayoutPort[];
  /** Where it stands in its layer when others there are taller. */
  readonly align: 'top' | 'middle';
}

export interface LayoutEdge {
  readonly id: string;
  readonly from: { readonly node: string; readonly port: string };
  readonly to: { readonly node: string; readonly port: string };
  /** How much this edge wants to be straight. */
  readonly straightness: number;
}

export interface LayoutGraph {
  /** `fresh` balances the picture; `settled` leaves the nodes where they wish to be. */
  readonly mode: 'fresh' | 'settled';
  readonly nodes: readonly LayoutNode[];
  readonly edges: readonly LayoutEdge[];
}

export interface Laid {
  readonly kind: 'laid';
  readonly nodes: readonly ({ readonly id: string } & Point)[];
  readonly edges: readonly { readonly id: string; readonly points: readonly Point[] }[];
}

/** `superseded`: a newer graph in the same lane came first; `refused`: too big, or the engine failed, and why. */
export type LayoutAnswer =
  | Laid
  | { readonly kind: 'superseded' }
  | { readonly kind: 'refused'; readonly reason: string };

interface LayoutRequest {
  /** Requests in one lane replace each other while they wait; one lane for each picture that is kept up to date. */
  readonly lane: string;
}

export interface LayoutEngine {
  /** Never rejects: what went wrong comes back as `refused`. */
  layout(graph: LayoutGraph, request: LayoutRequest): Promise<LayoutAnswer>;
  /** Loads what the first layout would have to load. */
  warmUp(): Promise<void>;
  dispose(): Promise<void>;
}
