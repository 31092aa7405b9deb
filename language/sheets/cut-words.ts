/** What the cutter is set to for a run, in the few words that an editor has room for: the number of the lines sheet. */
import type { Figures } from '../figures/index.ts';
import type { Part } from '../system/part.ts';
import type { System } from '../system/system.ts';
import { lineOf } from './lines-line.ts';
import { valueOnTape } from './lines-writing.ts';

/** `9 5/16 in`, `1379 mm, assumed`, `52 in, at the long limit`; undefined where the length is not known. */
export function cutWords(run: Part, system: System, figures: Figures): string | undefined {
  const { cut, bench } = lineOf(run, system, figures, []);
  if (cut === undefined) return undefined;
  const { length, computed, certainty } = cut;
  const doubt = {
    sure: '',
    'within-limits': ', at the long limit',
    doubtful: computed.assumed ? ', assumed' : ', about',
  };
  return `${valueOnTape(length, bench)}${doubt[certainty]}`;
}
