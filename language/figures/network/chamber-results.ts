/** What a chamber comes to under a force, told as results: known, known in part, or waiting for something. */
import type { Need, Result } from '../figure.ts';
import { eachOnce, knownResult, unknownResult } from '../result.ts';
import type { ChamberState } from './application.ts';
import type { PushedChamber } from './chamber-push.ts';
import { essentialLacks, gapLacks } from './lacks.ts';
import { type Ends, type Marks, marksOf, spreadOf } from './spread.ts';

export interface ChamberUnder {
  readonly chamber: PushedChamber;
  readonly state: ChamberState;
  readonly pressure: Result<'pressure'>;
  /** What is not known of its circuit at this pressure. */
  readonly lacks: readonly Need[];
}

export interface Under {
  readonly force: Ends | undefined;
  readonly atFloor: boolean;
  readonly marks: Marks;
  /** What the force waits for. */
  readonly needs: readonly Need[];
  /** Of the whole train: at the floor each chamber’s pressure rests on all of them. */
  readonly all: readonly PushedChamber[];
}

export function chamberResults(chamber: PushedChamber, under: Under): ChamberUnder {
  const { model, pushed, open, pressing } = chamber;
  const { force, atFloor, marks } = under;
  const { id } = model.part;
  const gapsUnknown = open ? [] : gapLacks(model.circuit.lacks);
  if (pushed === undefined || force === undefined || model.area === undefined) {
    const needs = eachOnce([...under.needs, ...model.areaNeeds]);
    const pressure = unknownResult('pressure', needs);
    const state = { id, pressure, stroke: unknownResult('length', needs), bottomed: false, gapsUnknown, open };
    return { chamber, state, pressure, lacks: [] };
  }
  const lacks = [...pressing.needsAt(spreadOf('pressure', (end) => pushed.pressure(force, end), marks).value)];
  const told = [...lacks, ...model.circuit.told()];
  const bottomed = pushed.bottomed(force);
  const doubts = open ? [] : doubtsOf(chamber, { bottomed, atFloor, all: under.all, lacks });
  const fromForce = marksOf([marks, model.area]);
  const fromCircuit = marksOf([fromForce, model.circuit.marks, ...(model.cutOff ? [model.cutOff] : [])]);
  const resting = bottomed || atFloor ? fromCircuit : fromForce;
  const pressure: Result<'pressure'> =
    doubts.length > 0
      ? unknownResult('pressure', doubts)
      : knownResult(
          'pressure',
          spreadOf('pressure', (end) => pushed.pressure(force, end), open ? marksOf([]) : resting),
          model.part,
        );
  return {
    chamber,
    state: {
      id,
      pressure,
      stroke: strokeOf(chamber, { force, bottomed, told, marks: fromCircuit }),
      bottomed,
      gapsUnknown,
      open,
    },
    pressure,
    lacks: open ? [] : told,
  };
}

/** A pressure that follows from a stroke is known only if what takes up the fluid is. */
function doubtsOf(
  { model }: PushedChamber,
  at: {
    readonly bottomed: boolean;
    readonly atFloor: boolean;
    readonly all: readonly PushedChamber[];
    readonly lacks: readonly Need[];
  },
): readonly Need[] {
  if (!at.bottomed && !at.atFloor) return [];
  const circuits = at.atFloor ? at.all.filter(({ open }) => !open).map((each) => each.model.circuit) : [model.circuit];
  return eachOnce([...at.lacks, ...circuits.flatMap((circuit) => essentialLacks(circuit.lacks))]);
}

function strokeOf(
  { model, pushed, open }: PushedChamber,
  at: { readonly force: Ends; readonly bottomed: boolean; readonly told: readonly Need[]; readonly marks: Marks },
): Result<'length'> {
  const { force, bottomed, told } = at;
  if (pushed === undefined || (open && model.stroke === undefined)) return unknownResult('length', model.strokeNeeds);
  const { stroke } = model;
  const marks = (open || bottomed) && stroke !== undefined ? marksOf([stroke]) : at.marks;
  const noCutOff: readonly Need[] =
    model.cutOff === undefined ? [{ name: `cut-off of ${model.part.label}`, origin: model.part.nameOrigin }] : [];
  const result = knownResult(
    'length',
    spreadOf('length', (end) => pushed.stroke(force, end), marks),
    model.part,
  );
  return result.kind === 'unknown' || open || bottomed ? result : { ...result, leftOut: [...told, ...noCutOff] };
}
