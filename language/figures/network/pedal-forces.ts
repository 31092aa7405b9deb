/** The forces of a pedal train: in the push-rod of the pedal, and on the piston of the master behind a booster. */
import { circleArea, type Estimate, si } from '../../quantity/index.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part, PartId } from '../../system/part.ts';
import type { Need } from '../figure.ts';
import { boosted, helpAtKnee, rodForceOf, vacuumHelp } from './pedal-laws.ts';
import type { PedalTrain } from './pedal-train.ts';
import { amountOf, needOf, sizeOf } from './sizes.ts';
import { against, type End, type Ends, endsOf, type Marks, marksOf } from './spread.ts';

export interface PedalForces {
  /** N in the push-rod; undefined where the lever is not known. */
  readonly rod: Ends | undefined;
  /** N on the piston, its spring and losses taken off. */
  readonly piston: Ends | undefined;
  readonly rodMarks: Marks;
  readonly pistonMarks: Marks;
  readonly rodNeeds: readonly Need[];
  readonly pistonNeeds: readonly Need[];
  readonly assumptions: readonly string[];
}

interface ForceOptions {
  readonly failed: ReadonlySet<PartId>;
  /** Of the chamber whose pressure counts for the knee of a booster. */
  readonly primaryArea: Estimate<'area'> | undefined;
  /** What it waits for where it is not known. */
  readonly areaNeeds: readonly Need[];
}

export function pedalForces(train: PedalTrain, push: Estimate<'force'>, options: ForceOptions): PedalForces {
  const { pedal, master } = train;
  const ratio = sizeOf(pedal, properties.ratio);
  const efficiency = sizeOf(pedal, properties.efficiency);
  const spring = amountOf(pedal, properties.returnForce);
  const rodMarks = marksIn([push, ratio, efficiency, spring]);
  const rod =
    ratio &&
    endsOf((end) =>
      rodForceOf(push[end], {
        ratio: ratio[end],
        efficiency: efficiency?.[end] ?? si('number', 1),
        returnForce: spring?.[against[end]] ?? si('force', 0),
      }),
    );
  const loss = sizeOf(master, properties.efficiency);
  const pistonSpring = amountOf(master, properties.returnForce);
  const behind = helpedBy(train, options);
  const reach = (force: number, end: End) =>
    Math.max(0, force * (loss?.[end] ?? 1) - (pistonSpring?.[against[end]] ?? 0));
  const helped = behind.output;
  return {
    rod,
    piston: rod && helped && endsOf((end) => reach(helped(rod[end], end), end)),
    rodMarks,
    pistonMarks: marksOf([rodMarks, behind.marks, marksIn([loss, pistonSpring])]),
    rodNeeds: ratio === undefined ? [needOf(pedal, properties.ratio)] : [],
    pistonNeeds: behind.needs,
    assumptions: [
      ...(efficiency === undefined ? [`No loss in the linkage of ${pedal.label}: its efficiency is not stated.`] : []),
      ...behind.assumptions,
    ],
  };
}

interface Help {
  /** N behind the boosters from N before them. */
  readonly output: ((force: number, end: End) => number) | undefined;
  readonly needs: readonly Need[];
  readonly marks: Marks;
  readonly assumptions: readonly string[];
}

function helpedBy(train: PedalTrain, options: ForceOptions): Help {
  const steps = train.boosters.map((booster) => helpOf(booster, train.master, options));
  const outputs = steps.flatMap(({ output }) => output ?? []);
  return {
    output:
      outputs.length < steps.length
        ? undefined
        : (force, end) => outputs.reduce((reached, output) => output(reached, end), force),
    needs: steps.flatMap(({ needs }) => needs),
    marks: marksOf(steps.map(({ marks }) => marks)),
    assumptions: steps.flatMap(({ assumptions }) => assumptions),
  };
}

function helpOf(booster: Part, master: Part, { failed, primaryArea, areaNeeds }: ForceOptions): Help {
  if (failed.has(booster.id)) {
    const assumptions = [`${booster.label} passes the push on without helping and without holding it back.`];
    return { output: (force) => force, needs: [], marks: marksOf([]), assumptions };
  }
  const gain = sizeOf(booster, properties.gain);
  const limit = greatestHelp(booster, master, primaryArea);
  if (gain === undefined || limit.help === undefined) {
    const noArea = limit.help === undefined && limit.needs.length === 0 ? areaNeeds : [];
    const needs = [...(gain === undefined ? [needOf(booster, properties.gain)] : []), ...limit.needs, ...noArea];
    return { output: undefined, needs, marks: marksOf([]), assumptions: [] };
  }
  const { help } = limit;
  return {
    output: (force, end) => boosted(si('force', force), gain[end], si('force', help(gain[end], end))),
    needs: [],
    marks: marksOf([gain, limit.marks]),
    assumptions: [
      `${booster.label} helps from the first push on; its cut-in force and first step are not counted.`,
      ...limit.assumptions,
    ],
  };
}

interface Limit {
  readonly help: ((gain: Estimate<'number'>['value'], end: End) => number) | undefined;
  readonly needs: readonly Need[];
  readonly marks: Marks;
  readonly assumptions: readonly string[];
}

/** N: from the line pressure at which the help ends, else from diaphragm and vacuum. */
function greatestHelp(booster: Part, master: Part, area: Estimate<'area'> | undefined): Limit {
  const knee = sizeOf(booster, properties.knee);
  const loss = sizeOf(master, properties.efficiency);
  const spring = amountOf(master, properties.returnForce);
  if (knee !== undefined && area !== undefined) {
    const force = (end: End) => (knee[end] * area[end] + (spring?.[end] ?? 0)) / (loss?.[end] ?? 1);
    return {
      help: (gain, end) => helpAtKnee(si('force', force(end)), gain),
      needs: [],
      marks: marksIn([knee, area]),
      assumptions: [],
    };
  }
  const diaphragm = sizeOf(booster, properties.diaphragm);
  const vacuum = sizeOf(booster, properties.vacuum);
  const efficiency = sizeOf(booster, properties.efficiency);
  if (diaphragm === undefined || vacuum === undefined) {
    // The area of the chamber is asked for with the chamber.
    const needs = knee === undefined ? [needOf(booster, properties.knee)] : [];
    return { help: undefined, needs, marks: marksOf([]), assumptions: [] };
  }
  const used = efficiency ?? usualBoosterEfficiency;
  return {
    help: (_, end) => vacuumHelp(vacuum[end], circleArea(diaphragm[end]), used[end]),
    needs: [],
    marks: marksIn([diaphragm, vacuum, efficiency]),
    assumptions: [
      `The vacuum of ${booster.label} is there in full when the pedal goes down.`,
      ...(efficiency === undefined ? [`${booster.label} loses 5 % to 10 % of its help, as is usual.`] : []),
    ],
  };
}

/** Common practice for vacuum boosters: 0.90 to 0.95; the weaker one counts. */
const usualBoosterEfficiency = { low: si('number', 0.9), value: si('number', 0.9), high: si('number', 0.95) };

function marksIn(estimates: readonly (Estimate | undefined)[]): Marks {
  return marksOf(estimates.filter((estimate) => estimate !== undefined));
}
