/** The façade of the language: all that the server and the command may import. */

export type { Card, CardLine } from './editing/card.ts';
export { cardAt, type HoverStates } from './editing/hover.ts';
export type { Offer } from './editing/offer.ts';
export { type OfferSite, offersFor, type Wanted } from './editing/offers.ts';
export { type OpenEnd, openEnds } from './editing/other-end.ts';
export { saySource } from './figures/explain.ts';
export type { Input, Need, Result } from './figures/figure.ts';
export { explainFigure, type Figure, type Figures, figuresOf, writeResult } from './figures/index.ts';
export { type FormatEdit, formatEdits } from './grammar/format.ts';
export { LinewrightGeneratedModule, LinewrightGeneratedSharedModule } from './grammar/generated/module.ts';
export * from './quantity/index.ts';
export * from './rules/index.ts';
export { type Block, blockAt, declarationStart } from './scoping/block.ts';
export { type Lendings, lendingsOf } from './scoping/lendings.ts';
export { type OutlineEntry, outlineOf } from './scoping/outline.ts';
export { type Renameable, type Renamed, Renaming } from './scoping/renaming.ts';
export { type Standing, standingAt } from './scoping/standing.ts';
export { type Tone, type TonedWord, tonesOf } from './scoping/tones.ts';
export {
  type CircuitSharedAddition,
  type CircuitSharedServices,
  circuitModule,
  circuitSharedModule,
  createLinewrightServices,
  type Services,
} from './services.ts';
export * from './sheets/index.ts';
export * from './single-file.ts';
export type { Source } from './standards/source.ts';
export { type KindRow, kindRow, type PartKind } from './system/kinds/index.ts';
export * from './system/origin.ts';
export * from './system/part.ts';
export * from './system/presence.ts';
export * from './system/problem.ts';
export type { UseFailure } from './system/read/uses.ts';
export * from './system/system.ts';
export * from './workspace/text-limits.ts';
export { type TextProblem, textProblems } from './workspace/text-problems.ts';
