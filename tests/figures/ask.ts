/** Asks a circuit written in a test for its figures, as planned. */
import { type Figure, type Figures, figuresOf, writeResult } from '../../language/figures/index.ts';
import type { Estimate } from '../../language/quantity/index.ts';
import { parseErrors, readCircuit } from '../support/read.ts';

/** The figures of a text that has to be faultless. */
export function figuresIn(text: string): Figures {
  const complaints = [...parseErrors(text), ...readCircuit(text).problems.map(({ message }) => message)];
  if (complaints.length > 0) throw new Error(complaints.join('\n'));
  return figuresOf(readCircuit(text).planned);
}

export function figure(figures: Figures, subject: string, id: string): Figure {
  const found = figures.find(subject, id);
  if (found === undefined) throw new Error(`${subject} has no ${id}`);
  return found;
}

/** In SI. */
export function estimate(figures: Figures, subject: string, id: string): Estimate {
  const { result } = figure(figures, subject, id);
  if (result.kind === 'known') return result.estimate;
  throw new Error(`${subject} ${id} waits for ${result.waitsFor.map(({ name }) => name).join(', ')}`);
}

export const value = (figures: Figures, subject: string, id: string): number => estimate(figures, subject, id).value;

export const shown = (figures: Figures, subject: string, id: string): string =>
  writeResult(figure(figures, subject, id));

/** What it waits for, or what a total is without. */
export function lacks(figures: Figures, subject: string, id: string): readonly string[] {
  const { result } = figure(figures, subject, id);
  return (result.kind === 'unknown' ? result.waitsFor : result.leftOut).map(({ name }) => name);
}
