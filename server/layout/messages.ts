/** What the layout thread and its owner say to each other. */
import type { LayoutAnswer, LayoutGraph } from '../../language/schematic/layout/engine.ts';

export type ToWorker =
  | { readonly kind: 'layout'; readonly id: number; readonly graph: LayoutGraph }
  | { readonly kind: 'warm-up'; readonly id: number };

export interface FromWorker {
  readonly id: number;
  readonly answer: LayoutAnswer;
}
