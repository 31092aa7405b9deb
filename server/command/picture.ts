/** The schematic of a circuit file as SVG text. */

import { figuresOf, type State } from '../../language/index.ts';
import { pictureOf } from '../../language/schematic/picture-of.ts';
import { place } from '../../language/schematic/place.ts';
import { svgOf } from '../../language/schematic/svg.ts';
import type { ThemeName } from '../../language/schematic/themes.ts';
import { inlineEngine } from '../layout/inline.ts';
import type { CircuitFile } from './circuit-file.ts';
import { checkFile } from './findings.ts';

export interface PictureChoice {
  readonly state: State;
  readonly theme: ThemeName;
}

/** `refused` carries a sentence: nothing to draw, or too much. */
export type DrawnFile =
  | { readonly kind: 'drawn'; readonly svg: string }
  | { readonly kind: 'refused'; readonly reason: string };

export async function drawFile(circuit: CircuitFile, { state, theme }: PictureChoice): Promise<DrawnFile> {
  const system = circuit.reading[state];
  if (system.parts.length === 0) return { kind: 'refused', reason: 'There is no part in it to draw.' };
  const { findings } = checkFile(circuit, state);
  const picture = pictureOf(system, { findings, figures: figuresOf(system) });
  const engine = inlineEngine();
  try {
    const result = await place(picture, engine);
    if (result.kind === 'placed') return { kind: 'drawn', svg: svgOf(result.placed, { theme }) };
    const reason = result.kind === 'refused' ? result.reason : 'Its layout was interrupted.';
    return { kind: 'refused', reason };
  } finally {
    await engine.dispose();
  }
}
