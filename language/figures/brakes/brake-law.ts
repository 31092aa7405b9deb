/** What a wheel brake makes of the pressure in it: nothing up to the push-out pressure, from there in proportion. */
import { combineEstimates, type Estimate } from '../../quantity/index.ts';
import { commonPractice, type Source } from '../../standards/source.ts';
import { wordOf } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import { caliperArea } from '../caliper-area.ts';
import { cylinderArea, isStepped } from '../cylinder-area.ts';
import type { Input, Need } from '../figure.ts';
import { type Given, givenFigure, inputsOf, needsOf } from '../given.ts';
import { type BrakeArm, brakeArm, type ReadyArm, type Rotation } from './brake-arm.ts';
import { efficiencyOf, pushOutOf } from './facts-within.ts';

/** A cylinder or caliper and what its pressure adds. */
export interface Pressed {
  readonly part: Part;
  /** N·m for each Pa above the push-out pressure. */
  readonly perPascal: Estimate<'torque'>;
}

export interface ReadyLaw {
  readonly kind: 'ready';
  readonly brake: Part;
  /** What each part is worth; the torque is their sum. */
  readonly pressed: readonly Pressed[];
  readonly pushOut: Estimate<'pressure'>;
  readonly inputs: readonly Input[];
  readonly formula: string;
  readonly source: Source;
  readonly notes: readonly string[];
}

export type BrakeLaw =
  | ReadyLaw
  | {
      readonly kind: 'waits';
      readonly brake: Part;
      /** What would press it, all the same. */
      readonly actuated: readonly Part[];
      readonly needs: readonly Need[];
      readonly inputs: readonly Input[];
      readonly source: Source;
    };

const torqueSource = commonPractice('force of the pistons × the arm on which it brakes');

/** Undefined for a part that is no wheel brake, and for one that no fluid applies. Never a guess at a size. */
export function brakeLaw(brake: Part, rotation: Rotation): BrakeLaw | undefined {
  const arm = brakeArm(brake, { rotation, friction: 'rubbing' });
  const actuated = brake.parts.filter(({ kind }) => kind === 'cylinder' || kind === 'caliper');
  if (arm === undefined || actuated.length === 0) return undefined;
  return brake.kind === 'drum-brake' ? drumLaw(brake, actuated, arm) : discLaw(brake, actuated, arm);
}

function discLaw(brake: Part, calipers: readonly Part[], arm: BrakeArm): BrakeLaw {
  const areas = calipers.map((caliper) => ({ part: caliper, area: givenFigure(caliperArea(caliper), caliper) }));
  return lawOf({ brake, areas, arm, share: 1, needs: [], formula: 'area on one side × efficiency × arm' });
}

function drumLaw(brake: Part, cylinders: readonly Part[], arm: BrakeArm): BrakeLaw {
  const areas = cylinders.map((cylinder) => ({ part: cylinder, area: givenFigure(cylinderArea(cylinder), cylinder) }));
  const twin = wordOf(brake, properties.shoes) === 'two-leading';
  const needs = unclearShares(brake, cylinders, twin);
  // The factor is that of the whole brake: where each of two cylinders works one shoe, each is worth half of it.
  const share = twin ? 1 / cylinders.length : 1;
  const formula = twin && cylinders.length > 1 ? 'half of the arm × area × efficiency' : 'arm × area × efficiency';
  return lawOf({ brake, areas, arm, share, needs, formula });
}

/** Arrangements in which nothing says how much of the brake each piston works. */
function unclearShares(brake: Part, cylinders: readonly Part[], twin: boolean): readonly Need[] {
  const origin = brake.nameOrigin;
  const most = twin ? 2 : 1;
  const tooMany = cylinders.length > most;
  const stepped = cylinders.filter(isStepped);
  return [
    ...(tooMany ? [{ name: `how ${cylinders.length} cylinders of ${brake.label} share its shoes`, origin }] : []),
    ...stepped.map((cylinder) => ({
      name: `which shoe of ${brake.label} the first piston of ${cylinder.label} works`,
      origin: cylinder.nameOrigin,
    })),
  ];
}

interface LawParts {
  readonly brake: Part;
  readonly areas: readonly { readonly part: Part; readonly area: Given<'area'> }[];
  readonly arm: BrakeArm;
  readonly share: number;
  readonly needs: readonly Need[];
  readonly formula: string;
}

function lawOf({ brake, areas, arm, share, needs, formula }: LawParts): BrakeLaw {
  const pushOut = pushOutOf(brake);
  const efficiencies = areas.map(({ part }) => efficiencyOf(part));
  const inputs = [
    ...inputsOf(areas.map(({ area }) => area)),
    ...inputsOf(arm.givens),
    ...efficiencies.flatMap((efficiency) => efficiency.inputs),
    ...pushOut.inputs,
  ];
  const missing = [...needsOf(areas.map(({ area }) => area)), ...(arm.kind === 'waits' ? arm.needs : []), ...needs];
  if (arm.kind === 'waits' || missing.length > 0) {
    return {
      kind: 'waits',
      brake,
      actuated: areas.map(({ part }) => part),
      needs: missing,
      inputs,
      source: torqueSource,
    };
  }
  const pressed = areas.flatMap(({ part, area }, index): readonly Pressed[] => {
    const efficiency = efficiencies[index];
    return area.kind === 'given' && efficiency
      ? [{ part, perPascal: worth(area.estimate, efficiency.estimate, arm, share) }]
      : [];
  });
  return {
    kind: 'ready',
    brake,
    pressed,
    pushOut: pushOut.estimate,
    inputs,
    formula: `(pressure − push-out) × ${formula}; arm = ${arm.formula}`,
    source: arm.source,
    notes: eachOnce([...arm.notes, ...pushOut.notes, ...efficiencies.flatMap((each) => each.notes)]),
  };
}

function worth(area: Estimate<'area'>, efficiency: Estimate<'number'>, { arm }: ReadyArm, share: number) {
  return combineEstimates('torque', (across, part, lever) => share * across * part * lever, area, efficiency, arm);
}

const eachOnce = (notes: readonly string[]): readonly string[] => [...new Set(notes)];
