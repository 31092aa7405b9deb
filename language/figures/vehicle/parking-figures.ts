/** `load.parking-grade-uphill`, `load.parking-grade-downhill`, `load.parking-pull`: what the parking brake holds. */
import { exactly, si } from '../../quantity/index.ts';
import { roads, roadsSource } from '../../standards/braking-standards.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import type { FigureContext } from '../context.ts';
import type { Figure, Input } from '../figure.ts';
import { givenFact } from '../given.ts';
import { eachOnce, unknownResult } from '../result.ts';
import { newtons } from '../writing.ts';
import { askedOf, sectionOf, standing } from './asked.ts';
import { forceOnGrade, gradeSource, type Heading, heldGrade } from './grade.ts';
import { type LoadFacts, loadedCase } from './load-case.ts';
import { type ParkingChain, parkingChain } from './parking-chain.ts';
import { knownOf, loadSubject, percent, plainWriting, roughly } from './rough.ts';

const [dry] = roads;
const wording = {
  uphill: { words: 'its front up the grade', rotation: 'reverse' },
  downhill: { words: 'its front down the grade', rotation: 'forward' },
} as const;

/** Rise over run. Undefined where the file has no parking brake. */
export function parkingGrade(facts: LoadFacts, context: FigureContext, heading: Heading): Figure<'number'> | undefined {
  const parking = parkingBrake(context);
  if (parking === undefined) return undefined;
  const pull = givenFact(parking, properties.handForce);
  const chain = parkingChain(parking, context.system, wording[heading].rotation);
  const loaded = loadedCase(facts);
  const [asked] = gradesAsked(context);
  const frame = {
    id: `load.parking-grade-${heading}`,
    subject: loadSubject(facts),
    title: `grade that the parking brake holds, ${wording[heading].words}`,
    written: plainWriting,
    formula: 'rise over run at which weight × sine of the grade reaches what brakes and tyres hold',
    inputs: [pull.input, ...chain.inputs, ...loaded.inputs, adhesionInput],
    source: gradeSource,
  };
  const information = asked
    ? [`${percent(asked.rule.grade)} is asked by ${sectionOf(asked.rule.source)}.`, standing(asked)]
    : [];
  if (chain.kind === 'waits' || loaded.kind === 'waits' || pull.kind === 'missing') {
    const needs = eachOnce([
      ...(pull.kind === 'missing' ? pull.needs : []),
      ...(chain.kind === 'waits' ? chain.needs : []),
      ...(loaded.kind === 'waits' ? loaded.needs : []),
    ]);
    return { ...frame, notes: information, result: unknownResult('number', needs) };
  }
  const hand = pull.estimate.value;
  const { front, rear } = chain.perNewton;
  const held = heldGrade(loaded.loaded, {
    forces: { front: si('force', front * hand), rear: si('force', rear * hand) },
    adhesion: dry.adhesion,
    heading,
  });
  const from = [pull.estimate, ...chain.from, ...loaded.from];
  const beyond = held.limit === 'grip' ? 'the tyres of the braked axle slip' : 'the brake lets the wheels turn';
  return {
    ...frame,
    notes: [
      `${percent(held.grade)}; beyond it ${beyond}.`,
      ...chain.notes,
      ...information,
      'Never trust a figure with a vehicle on a slope: chock the wheels.',
    ],
    result: knownOf('number', roughly(si('number', held.grade), from), facts),
  };
}

/** In N at the hand, for the grade that is asked of its class and year, the worse way round. Else undefined. */
export function parkingPull(facts: LoadFacts, context: FigureContext): Figure<'force'> | undefined {
  const parking = parkingBrake(context);
  const [asked] = gradesAsked(context);
  if (parking === undefined || asked === undefined) return undefined;
  const chains = [wording.uphill, wording.downhill].map(({ rotation }) =>
    parkingChain(parking, context.system, rotation),
  );
  const loaded = loadedCase(facts);
  const { rule } = asked;
  const frame = {
    id: 'load.parking-pull',
    subject: loadSubject(facts),
    title: `pull at the hand that holds a grade of ${percent(rule.grade)}`,
    written: newtons,
    formula: 'weight × sine of the grade / force at the tyres for each newton of pull',
    inputs: [...(chains[0]?.inputs ?? []), ...loaded.inputs],
    source: gradeSource,
  };
  const notes = [
    `${percent(rule.grade)} with a pull of at most ${Math.round(rule.hand)} N (by foot ${Math.round(rule.foot)} N) is asked by ${sectionOf(rule.source)}.`,
    standing(asked),
  ];
  const ready = chains.filter((chain) => chain.kind === 'ready');
  if (ready.length < chains.length || loaded.kind === 'waits') {
    const needs = [
      ...chains.flatMap((chain) => (chain.kind === 'waits' ? chain.needs : [])),
      ...(loaded.kind === 'waits' ? loaded.needs : []),
    ];
    return { ...frame, notes, result: unknownResult('force', needs) };
  }
  const weakest = Math.min(...ready.map(forEachNewton));
  const pull = forceOnGrade(loaded.loaded, rule.grade) / weakest;
  const from = [exactly(si('force', pull)), ...ready.flatMap((chain) => chain.from), ...loaded.from];
  return {
    ...frame,
    notes: [
      'As long as the tyres of the braked axle do not slip.',
      ...new Set(ready.flatMap((chain) => chain.notes)),
      ...notes,
    ],
    result: knownOf('force', roughly(si('force', pull), from), facts),
  };
}

const forEachNewton = ({ perNewton }: ParkingChain & { readonly kind: 'ready' }): number =>
  perNewton.front + perNewton.rear;

const parkingBrake = ({ system }: FigureContext): Part | undefined =>
  system.parts.find(({ kind }) => kind === 'parking-brake');

const gradesAsked = ({ system }: FigureContext) =>
  askedOf(
    system,
    ({ parking }) => parking,
    ({ grade }) => grade,
  );

const adhesionInput: Input = {
  name: `adhesion of ${dry.words}`,
  text: `${dry.adhesion}`,
  origin: undefined,
  source: roadsSource,
};
