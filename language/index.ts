/** The façade of the language: all that the server and the command may import. */

export { saySource } from './figures/explain.ts';
export type { Input, Need, Result } from './figures/figure.ts';
export { explainFigure, type Figure, type Figures, figuresOf, sayFigure, writeResult } from './figures/index.ts';
export { LinewrightGeneratedModule, LinewrightGeneratedSharedModule } from './grammar/generated/module.ts';
export * from './quantity/index.ts';
export * from './rules/index.ts';
export {
  type CircuitSharedAddition,
  type CircuitSharedServices,
  circuitModule,
  circuitSharedModule,
  createLinewrightServices,
  type Services,
} from './services.ts';
export type { Source } from './standards/source.ts';
export { findKind, type KindRow, kindRow, kindRows, type PartKind } from './system/kinds/index.ts';
export * from './system/origin.ts';
export * from './system/part.ts';
export * from './system/presence.ts';
export * from './system/problem.ts';
export type { UseFailure } from './system/read/uses.ts';
export * from './system/system.ts';
export * from './workspace/single-file.ts';
export * from './workspace/text-limits.ts';
export { type TextProblem, textProblems } from './workspace/text-problems.ts';
