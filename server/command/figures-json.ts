/** Writes figures as JSON in SI units; `schemas/figures.schema.json` describes it. */

import {
  type Figure,
  type Input,
  type Need,
  type Origin,
  type Result,
  type Source,
  siSymbols,
  writeResult,
} from '../../language/index.ts';
import { gapsIn } from './broken-text.ts';
import { type Place, titleOf } from './circuit-file.ts';
import type { FiguresReport } from './figures-text.ts';
import { measuringJson, written } from './json-parts.ts';

const figuresSchema = 'linewright/figures/1';

type PlaceOf = (origin: Origin) => Place;

export function figuresJson({ circuit, state, figures }: FiguresReport): string {
  const placeOf: PlaceOf = circuit.placeOf;
  return written({
    schema: figuresSchema,
    circuit: state,
    file: circuit.file,
    title: titleOf(circuit),
    complete: gapsIn(circuit).length === 0,
    figures: figures.map((figure) => figureJson(figure, placeOf)),
    toMeasure: measuringJson(circuit),
  });
}

function figureJson(figure: Figure, placeOf: PlaceOf) {
  const { id, subject, title, formula, notes } = figure;
  return {
    id,
    subject,
    title,
    result: resultJson(figure.result, placeOf),
    shown: writeResult(figure),
    formula,
    inputs: figure.inputs.map((input) => inputJson(input, placeOf)),
    source: sourceJson(figure.source),
    notes,
  };
}

function resultJson(result: Result, placeOf: PlaceOf) {
  const { dimension } = result;
  const unit = siSymbols[dimension];
  if (result.kind === 'unknown') {
    return { kind: 'unknown', dimension, unit, waitsFor: result.waitsFor.map((need) => needJson(need, placeOf)) };
  }
  const { value, low, high, about, assumed } = result.estimate;
  const leftOut = result.leftOut.map((need) => needJson(need, placeOf));
  return { kind: 'known', dimension, unit, value, low, high, about, assumed, leftOut };
}

function needJson({ name, origin }: Need, placeOf: PlaceOf) {
  return { name, ...(origin === undefined ? {} : { at: placeOf(origin) }) };
}

function inputJson({ name, text, origin, source }: Input, placeOf: PlaceOf) {
  return {
    name,
    text,
    ...(origin === undefined ? {} : { at: placeOf(origin) }),
    ...(source === undefined ? {} : { source: sourceJson(source) }),
  };
}

function sourceJson({ kind, text }: Source) {
  return { kind, text };
}
