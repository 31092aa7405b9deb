/** `chamber.stroke-at-push` and `chamber.reserve`: how far a master’s piston goes under the stated push, and what is left. */
import { differenceOf, type Estimate, exactly, si, sumEstimates, writeEstimate } from '../quantity/index.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import { chamberArea } from './chamber.ts';
import type { FigureContext } from './context.ts';
import type { Figure, Input } from './figure.ts';
import { givenFact, givenFigure, inputsOf } from './given.ts';
import type { Applied, ChamberState, TakingKind } from './network/application.ts';
import { type AtPush, atPushOn } from './pedal-push.ts';
import { knownResult, unknownResult } from './result.ts';
import { displacementAnalysis } from './sources.ts';
import { writeResult } from './write-result.ts';
import { bars, inFamilyOf, millilitres, millimetres } from './writing.ts';

/** In m; undefined for a chamber that no pedal works. */
export function chamberStrokeAtPush(chamber: Part, context: FigureContext): Figure<'length'> | undefined {
  const at = atPushOn(chamber, context);
  const area = chamberArea(chamber, context);
  if (at === undefined || area === undefined) return undefined;
  const state = stateOf(chamber, at.applied);
  return {
    id: 'chamber.stroke-at-push',
    subject: chamber.id,
    title: 'stroke at the push',
    written: lengthWriting(chamber),
    result: state?.stroke ?? unknownResult('length', at.needs),
    formula: 'cut-off + fluid that the circuit takes up at the pressure / piston area, stroke at most',
    inputs: [
      at.push.input,
      ...pressureInput(chamber, state, at),
      givenFigure(area, chamber).input,
      ...inputsOf([properties.cutOff, properties.stroke].filter(stands(chamber)).map((row) => givenFact(chamber, row))),
      ...takenInputs(chamber, at.applied),
    ],
    source: displacementAnalysis,
    notes: [...(state?.bottomed ? [`${chamber.label} has met its stop.`] : []), ...(at.applied?.assumptions ?? [])],
  };
}

/** In m; waits where what closes the gaps is not known, and says "at most" where something smaller is not. */
export function chamberReserve(chamber: Part, context: FigureContext): Figure<'length'> | undefined {
  const used = chamberStrokeAtPush(chamber, context);
  if (used === undefined) return undefined;
  const stroke = givenFact(chamber, properties.stroke);
  const { result } = used;
  const state = stateOf(chamber, atPushOn(chamber, context)?.applied);
  const gaps = state?.gapsUnknown ?? [];
  const without = result.kind === 'known' ? result.leftOut : [];
  const unknown = [
    ...(stroke.kind === 'missing' ? stroke.needs : []),
    ...(result.kind === 'unknown' ? result.waitsFor : []),
    ...gaps,
  ];
  return {
    id: 'chamber.reserve',
    subject: chamber.id,
    title: without.length > 0 ? 'stroke left at the push, at most' : 'stroke left at the push',
    written: used.written,
    result:
      stroke.kind === 'given' && result.kind === 'known' && unknown.length === 0
        ? knownResult('length', leftOf(stroke.estimate, result.estimate), chamber)
        : unknownResult('length', unknown),
    formula: 'stroke − stroke at the push',
    inputs: [stroke.input, givenFigure(used, chamber).input],
    source: displacementAnalysis,
    notes: [
      ...(without.length > 0 ? [`Less is left by what takes fluid and is not known: ${listed(without)}.`] : []),
      ...used.notes,
    ],
  };
}

function leftOf(stroke: Estimate<'length'>, used: Estimate<'length'>): Estimate<'length'> {
  const left = differenceOf(stroke, used);
  const least = (value: number) => si('length', Math.max(0, value));
  return { ...left, value: least(left.value), low: least(left.low), high: least(left.high) };
}

const mostNames = 4;

function listed(needs: readonly { readonly name: string }[]): string {
  const names = needs.slice(0, mostNames).map(({ name }) => name);
  return [...names, ...(needs.length > mostNames ? [`${needs.length - mostNames} more`] : [])].join(', ');
}

const stateOf = ({ id }: Part, applied: Applied | undefined): ChamberState | undefined =>
  applied?.chambers.find((each) => each.id === id);

const stands = (part: Part) => (row: { readonly key: string }) => part.facts.has(row.key);

function lengthWriting(chamber: Part) {
  const stroke = givenFact(chamber, properties.stroke);
  return stroke.kind === 'given' ? stroke.written : millimetres;
}

function pressureInput(chamber: Part, state: ChamberState | undefined, { push }: AtPush): readonly Input[] {
  if (state === undefined) return [];
  const written = push.kind === 'given' ? inFamilyOf(push.written, 'pressure') : bars;
  const text = writeResult({ result: state.pressure, written });
  return [{ name: `pressure in ${chamber.label} at the push`, text, origin: chamber.nameOrigin, source: undefined }];
}

const kindWords: Readonly<Record<TakingKind, string>> = {
  gap: 'fluid that closes the gaps',
  brake: 'fluid for calipers, pads, drums and shoes giving way',
  hose: 'fluid for the hoses swelling',
  tube: 'fluid for the tubes stretching',
  fluid: 'fluid for the fluid being squeezed',
  master: 'fluid for the master giving way',
  air: 'fluid for the air being squeezed',
  leak: 'fluid lost',
};

/** Where the fluid goes, by what takes it, the most first. */
function takenInputs({ id, nameOrigin }: Part, applied: Applied | undefined): readonly Input[] {
  const byKind = new Map<TakingKind, Estimate<'volume'>>();
  for (const { chamber, what, volume } of applied?.contributors ?? []) {
    if (chamber !== id) continue;
    byKind.set(what, sumEstimates('volume', [byKind.get(what) ?? exactly(si('volume', 0)), volume]));
  }
  return [...byKind]
    .sort(([, a], [, b]) => b.value - a.value)
    .map(([what, volume]) => ({
      name: kindWords[what],
      text: writeEstimate(volume, { like: millilitres }),
      origin: nameOrigin,
      source: undefined,
    }));
}
