/** `pedal.travel-at-push`: how far the pedal goes down under the stated push. */
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { FigureContext } from './context.ts';
import type { Figure, Input } from './figure.ts';
import { type Given, givenFact, inputsOf } from './given.ts';
import { atPushOf } from './pedal-push.ts';
import { unknownResult } from './result.ts';
import { displacementAnalysis } from './sources.ts';
import { writeResult } from './write-result.ts';
import { millimetres } from './writing.ts';

/** In m at the pad, free play included. */
export function pedalTravelAtPush(pedal: Part, context: FigureContext): Figure<'length'> {
  const { push, applied, needs } = atPushOf(pedal, context);
  const ratio = givenFact(pedal, properties.ratio);
  const freePlay = givenFact(pedal, properties.freePlay);
  const travel = givenFact(pedal, properties.travel);
  const written = writtenAs([freePlay, travel]);
  const strokes = (applied?.chambers ?? []).map(({ id, stroke }): Input => {
    const chamber = context.system.partById.get(id);
    const name = `stroke of ${chamber?.label ?? id} at the push`;
    return { name, text: writeResult({ result: stroke, written }), origin: chamber?.nameOrigin, source: undefined };
  });
  return {
    id: 'pedal.travel-at-push',
    subject: pedal.id,
    title: 'travel at the push',
    written,
    result: applied?.pedalTravel ?? unknownResult('length', needs),
    formula: 'free-play + ratio × strokes of the chambers added up, travel at most',
    inputs: [...inputsOf([push, ratio, freePlay]), ...strokes],
    source: displacementAnalysis,
    notes: applied?.assumptions ?? [],
  };
}

/** As the pedal’s own lengths are written. */
function writtenAs(lengths: readonly Given<'length'>[]) {
  const first = lengths.find((length) => length.kind === 'given');
  return first?.kind === 'given' ? first.written : millimetres;
}
