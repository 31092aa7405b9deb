/** The order of work for one line: both nuts are on before the second flare, bends where hands and tools have room. */
import { type Estimate, estimateOf, sumEstimates, writeStated } from '../quantity/index.ts';
import { flareWords } from '../standards/flare-forms.ts';
import type { SourceKind } from '../standards/source.ts';
import { springBackOf } from '../standards/spring-back.ts';
import { straightBehindFlare } from '../standards/straight-needed.ts';
import { tubeNutTorque } from '../standards/torque.ts';
import { measureOf } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Line, LineEnd } from './lines-line.ts';
import { onTape, roughly, valueOnTape, writeTorque } from './lines-writing.ts';
import type { Item } from './sheet.ts';

/** When the second flare is made. */
export type SecondFlare =
  | { readonly kind: 'nothing-to-bend' }
  | { readonly kind: 'after-bending'; readonly room: 'ample' | 'narrow' | 'unknown' }
  | { readonly kind: 'before-bending' };

/** By the straight tube behind the last bend or coil: a bar and a nut have to find room there. */
function secondFlareOf({ bends, run }: Line): SecondFlare {
  const steps = run.route?.steps ?? [];
  const lastCoil = steps.findLastIndex(({ kind }) => kind === 'coil');
  if (lastCoil < 0 && (bends === undefined || bends.bends.length === 0)) return { kind: 'nothing-to-bend' };
  const coilIsLast = lastCoil > steps.findLastIndex(({ kind }) => kind === 'bend');
  const behind = coilIsLast ? straightFrom(steps.slice(lastCoil + 1)) : bends?.lastStraight;
  if (behind === undefined) return { kind: 'after-bending', room: 'unknown' };
  if (behind.low < straightBehindFlare.least - 1e-6) return { kind: 'before-bending' };
  const ample = behind.low >= straightBehindFlare.comfortable - 1e-6;
  return { kind: 'after-bending', room: ample ? 'ample' : 'narrow' };
}

function straightFrom(steps: NonNullable<Line['run']['route']>['steps']): Estimate<'length'> | undefined {
  const lengths = steps.map((step) => (step.kind === 'straight' ? estimateOf(step.length) : undefined));
  const known = lengths.flatMap((length) => length ?? []);
  return known.length === lengths.length ? sumEstimates('length', known) : undefined;
}

/** The steps, each a sentence or two, in the order in which they are done. */
export function stepsOf(line: Line): readonly Item[] {
  const [a, b] = line.ends;
  const second = secondFlareOf(line);
  const endB: readonly Item[] = [
    { text: `${guardWords(line)}${nutStep(b)} ${flareStep(b)}`, details: beforeSecondFlare(line, second) },
  ];
  const bend = bendSteps(line);
  return [
    cutStep(line),
    { text: `${nutStep(a)} ${flareStep(a)}` },
    ...(second.kind === 'before-bending' ? [...endB, ...bend] : [...bend, ...endB]),
  ];
}

/** What holds for every line, said once. */
export const everyLine: readonly Item[] = [
  { text: 'Deburr the bore, chamfer the outside a little and clean out all chips before anything goes on the tube.' },
  {
    text: 'Both nuts, and a guard where there is one, are on the tube before its second flare: no nut goes over a flare.',
  },
  { text: 'Tube stretches a little in bends: try a bent line in place and dress end B to fit before it is flared.' },
  { text: 'Look at each flare for cracks and for a head out of centre; it must look like your test flare.' },
  { text: 'Blow the finished line through and cap both ends until it is fitted.' },
  {
    text: 'Start both nuts by hand, several turns, before a spanner goes on; then tighten to the torque in the maker’s manual, with a flare-nut spanner and a second one to hold.',
  },
];

/** What holds for every line of one tube: how far it springs back, and the torques met. */
export function tubeWords(lines: readonly Line[]): readonly string[] {
  const [first] = lines;
  if (first === undefined) return [];
  const back = springBackOf(first.tube.material);
  const bent = lines.some(({ bends }) => (bends?.bends.length ?? 0) > 0);
  const percent = (share: number): string => String(Math.round(share * 100));
  const sprung =
    back === undefined
      ? 'Angles are those of the finished bend; bend a little past them for spring-back.'
      : `Angles are those of the finished bend; this tube springs back by ${percent(back.low)} to ${percent(back.high)} % of the angle (${saidBy[back.source.kind]}), so bend past by that.`;
  return [...(bent ? [sprung] : []), torqueWords(first)];
}

function torqueWords({ tube: { diameter } }: Line): string {
  if (diameter === undefined) return 'Torque: the maker’s manual has it.';
  const range = tubeNutTorque(diameter.value);
  return range === undefined
    ? 'For nuts of this size no torque is known here: the maker’s manual has it.'
    : `Torque: the maker’s manual first. Seen in public service manuals for nuts of this size, each for its own vehicle: ${writeTorque(range)}.`;
}

const saidBy: Readonly<Record<SourceKind, string>> = {
  published: 'published',
  'from-memory': 'from memory; your calibration bend shows it',
  'common-practice': 'common practice; your calibration bend shows it',
};

function cutStep(line: Line): Item {
  const { cut, bench, waitsFor } = line;
  if (cut === undefined) {
    const needs = waitsFor.map(({ name }) => name);
    return {
      text: `Do not cut yet: the length is not known.${needs.length > 0 ? ` It waits for ${needs.join(', ')}.` : ''}`,
      details: ['Lay a soft wire along the way that the line will take, straighten it and measure it.'],
    };
  }
  const length = valueOnTape(cut.length, bench);
  if (cut.certainty === 'doubtful') {
    const why = cut.computed.assumed ? 'assumed' : 'only about right';
    return { text: `Measure first: the length is ${why}. If it is right, cut ${length}.` };
  }
  return {
    text: `Cut ${length}, square, with a wheel cutter in light turns.`,
    ...(cut.certainty === 'within-limits'
      ? { details: ['That is the longest that its limits allow. Try it in place before flare B and trim it there.'] }
      : {}),
  };
}

function nutStep({ thread, nutLength, gender, flare, letter }: LineEnd): string {
  if (flare === 'none') return `End ${letter} takes no flare; see its joint for what goes on it.`;
  const sleeved = flare === 'single-37' ? ', then its sleeve' : '';
  if (thread === undefined) {
    return `Slide on the nut for end ${letter}${sleeved}. Its thread is not stated: try it in the port first.`;
  }
  const words = [thread, nutLength, gender === 'female' ? 'female' : undefined].filter((word) => word !== undefined);
  return `Slide on the ${words.join(' ')} nut, its thread toward end ${letter}${sleeved}.`;
}

function flareStep({ flare, letter }: LineEnd): string {
  if (flare === undefined)
    return `Flare end ${letter}: the form is not stated, so look into the port before you flare.`;
  return flare === 'none' ? `Leave end ${letter} square and plain.` : `Form ${flareWords[flare]} on end ${letter}.`;
}

function guardWords({ run }: Line): string {
  const guard = measureOf(run, properties.sleeve);
  if (guard === undefined) return '';
  return `Slide on the guard${guard.kind === 'unknown' ? '' : `, ${writeStated(guard)} of it`}. `;
}

function beforeSecondFlare({ bench, bends }: Line, second: SecondFlare): readonly string[] {
  const behind = bends?.lastStraight && onTape(bends.lastStraight, bench);
  const [least, ample] = [straightBehindFlare.least, straightBehindFlare.comfortable].map((length) =>
    roughly(length, bench),
  );
  switch (second.kind) {
    case 'nothing-to-bend':
      return [];
    case 'before-bending':
      return [
        `${behind === undefined ? 'Too little' : `Only ${behind}`} of straight tube stays behind the last bend, so it cannot be flared there afterwards, nor trimmed: try your bender on scrap first.`,
      ];
    case 'after-bending':
      return [
        ...(second.room === 'narrow'
          ? [
              `${behind} of straight tube stays behind the last bend; bars want ${least} to ${ample}. If yours cannot hold it, put nut B on and flare end B before you bend.`,
            ]
          : []),
        ...(second.room === 'unknown'
          ? [
              `How much straight tube stays behind the last bend is not known; with less than ${ample}, put nut B on and flare end B before you bend.`,
            ]
          : []),
      ];
  }
}

function bendSteps({ bends, run }: Line): readonly Item[] {
  const coils = (run.route?.steps ?? []).filter(({ kind }) => kind === 'coil').length;
  const count = bends?.bends.length ?? 0;
  if (run.route === undefined) {
    return [{ text: 'Bend it by the old line or by a template of soft wire: the file gives no bends.' }];
  }
  if (count === 0 && coils === 0) return [];
  const words = [
    ...(count > 0 ? [`${count === 1 ? 'the bend' : `the ${count} bends`} of the table`] : []),
    ...(coils > 0 ? [coils === 1 ? 'the coil' : `the ${coils} coils`] : []),
  ];
  return [
    {
      text: `Mark and make ${words.join(' and ')}${count + coils > 1 ? ', in order from end A' : ''}, nut A kept back against its flare.`,
    },
  ];
}
