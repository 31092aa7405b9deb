/**
 * What braking standards ask of a vehicle by its class and year: how hard it stops, with what push, which axle locks
 * first, what grade its parking brake holds. For information beside a figure; none of it is a certificate.
 */

import { type Si, si } from '../quantity/dimension.ts';
import { fromMemory, published, type Source } from './source.ts';
import { meanDeceleration, steadyDeceleration } from './stopping.ts';

export type VehicleClass = 'car' | 'light-goods';

/** A deceleration that a test asks for. */
export interface StopRule {
  readonly deceleration: Si<'acceleration'>;
  /** The rule as it is worded: a distance, or a mean. */
  readonly words: string;
  readonly source: Source;
}

export interface PushRule {
  readonly most: Si<'force'>;
  readonly source: Source;
}

export interface GradeRule {
  /** Rise over run. */
  readonly grade: Si<'number'>;
  readonly hand: Si<'force'>;
  readonly foot: Si<'force'>;
  readonly source: Source;
}

/** Between two braking ratios the front axle has to lock before the rear one, or with it. */
export interface LockRule {
  readonly from: number;
  readonly to: number;
  readonly source: Source;
}

/** For adhesion k used between two values the braking ratio is to be at least `base + slope × (k − from)`. */
export interface UtilisationRule {
  readonly from: number;
  readonly to: number;
  readonly base: number;
  readonly slope: number;
  readonly source: Source;
}

export interface BrakingStandard {
  readonly name: string;
  readonly classes: readonly VehicleClass[];
  /** Years of first use, both included; of the year of change both standards may hold. */
  readonly from: number;
  readonly to?: number;
  /** To whom it applies, in the middle of a sentence. */
  readonly binds: string;
  readonly service?: StopRule;
  readonly circuitFailed?: StopRule;
  readonly push?: PushRule;
  readonly lockOrder?: LockRule;
  readonly utilisation?: UtilisationRule;
  readonly parking?: GradeRule;
  /** That the vehicle, its class and its years stand in the standard. */
  readonly source: Source;
}

const poundForce = (pounds: number): Si<'force'> => si('force', pounds * 4.448_221_615_260_5);
const newton = (force: number): Si<'force'> => si('force', force);
const feet = (length: number): Si<'length'> => si('length', length * 0.3048);
const sixtyMph = si('speed', 60 * 0.447_04);
const grade = (share: number): Si<'number'> => si('number', share);

const us = 'for new vehicles in the United States';

const brakingStandards: readonly BrakingStandard[] = [
  {
    name: '49 CFR 571.105 as first issued',
    classes: ['car'],
    from: 1968,
    to: 1975,
    binds: us,
    service: {
      deceleration: si('acceleration', 20 * 0.3048),
      words: '20 ft/s² from 60 mph',
      source: published('NHTSA letter of 29 April 1970 on 571.105'),
    },
    source: fromMemory('32 FR 2408: cars built from 1 January 1968'),
  },
  {
    name: '49 CFR 571.105',
    classes: ['car'],
    from: 1976,
    to: 2000,
    binds: us,
    service: {
      deceleration: meanDeceleration(sixtyMph, feet(204)),
      words: '204 ft from 60 mph',
      source: fromMemory('49 CFR 571.105 S5.1.1, Table II column II, row (a)'),
    },
    circuitFailed: {
      deceleration: meanDeceleration(sixtyMph, feet(456)),
      words: '456 ft from 60 mph',
      source: fromMemory('49 CFR 571.105 S5.1.2, Table II column IV, row (a)'),
    },
    push: { most: poundForce(150), source: published('49 CFR 571.105 S6.13') },
    parking: {
      grade: grade(0.3),
      hand: poundForce(90),
      foot: poundForce(125),
      source: published('49 CFR 571.105 S5.2(a) and S5.2.1'),
    },
    source: published('49 CFR 571.105 S3; cars went over to 571.135 by 1 September 2000 (60 FR 6434)'),
  },
  {
    name: '49 CFR 571.105',
    classes: ['light-goods'],
    from: 1983,
    to: 2002,
    binds: us,
    circuitFailed: {
      deceleration: meanDeceleration(sixtyMph, feet(517)),
      words: '517 ft from 60 mph',
      source: fromMemory('49 CFR 571.105 S5.1.2, Table II column IV, rows (b) and (c)'),
    },
    push: { most: poundForce(150), source: published('49 CFR 571.105 S6.13') },
    parking: {
      grade: grade(0.2),
      hand: poundForce(90),
      foot: poundForce(125),
      source: published('49 CFR 571.105 S5.2(a) and S5.2.3'),
    },
    source: fromMemory('49 CFR 571.105: trucks with hydraulic brakes from 1 September 1983'),
  },
  ...fmvss135('car', 2000, 'cars built from 1 September 2000'),
  ...fmvss135('light-goods', 2002, 'trucks up to 3500 kg built from 1 September 2002'),
  {
    name: 'UN Regulation No. 13-H',
    classes: ['car', 'light-goods'],
    from: 1998,
    binds: 'where a vehicle is approved to it',
    service: stop(0.006, fromMemory('UN R13-H Annex 3, 2.1.1')),
    circuitFailed: stop(0.0158, fromMemory('UN R13-H Annex 3, 2.2')),
    push: { most: newton(500), source: fromMemory('UN R13-H Annex 3, 2.1.1') },
    lockOrder: { from: 0.15, to: 0.8, source: fromMemory('UN R13-H Annex 5, 3.1') },
    utilisation: { from: 0.2, to: 0.8, base: 0.1, slope: 0.7, source: fromMemory('UN R13-H Annex 5, 3.1') },
    parking: {
      grade: grade(0.2),
      hand: newton(400),
      foot: newton(500),
      source: fromMemory('UN R13-H Annex 3, 2.3'),
    },
    source: fromMemory('UN R13-H: vehicles of categories M1 and N1, in force from 1998'),
  },
];

function fmvss135(vehicleClass: VehicleClass, from: number, words: string): readonly BrakingStandard[] {
  const section = (name: string): Source => published(`49 CFR 571.135 ${name}`);
  return [
    {
      name: '49 CFR 571.135',
      classes: [vehicleClass],
      from,
      binds: us,
      service: stop(0.006, section('S7.5.3')),
      circuitFailed: stop(0.0158, section('S7.10.4')),
      push: { most: newton(500), source: section('S7.5') },
      lockOrder: { from: 0.15, to: 0.8, source: section('S7.2.1') },
      parking: { grade: grade(0.2), hand: newton(400), foot: newton(500), source: section('S7.12.2') },
      source: published(`49 CFR 571.135 S3: ${words}`),
    },
  ];
}

/** S = 0.10 V + k V², V in km/h. */
function stop(k: number, source: Source): StopRule {
  return { deceleration: steadyDeceleration(k), words: `S = 0.10 V + ${k.toFixed(4)} V² (m, km/h)`, source };
}

export interface Applying {
  readonly standard: BrakingStandard;
  /** `of its year`: it stood when the vehicle came into use. `later`: none did; this is the first that came. */
  readonly standing: 'of its year' | 'later';
}

/** For a class and a year of first use; none for classes that the table does not know. */
export function brakingStandardsFor(vehicle: {
  readonly vehicleClass: string;
  readonly year: number;
}): readonly Applying[] {
  const ofClass = brakingStandards.filter(({ classes }) => classes.some((each) => each === vehicle.vehicleClass));
  const held = ofClass.filter(({ from, to }) => from <= vehicle.year && vehicle.year <= (to ?? vehicle.year));
  if (held.length > 0) return held.map((standard) => ({ standard, standing: 'of its year' }));
  const [first] = ofClass.filter(({ from }) => from > vehicle.year).sort((a, b) => a.from - b.from);
  return first === undefined ? [] : [{ standard: first, standing: 'later' }];
}

/**
 * Roads that first locks are told for. 0.9 is the surface of 49 CFR 571.135 S6.2, at its best; tyres of older make and
 * worn roads give less.
 */
export const roads = [
  { id: 'dry', words: 'a dry road', adhesion: 0.8 },
  { id: 'slippery', words: 'a slippery road', adhesion: 0.3 },
] as const;

export const roadsSource = fromMemory(
  'adhesion of 0.8 on dry and 0.3 on wet, worn or greasy roads, as handbooks reckon',
);
