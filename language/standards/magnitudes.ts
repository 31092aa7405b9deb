/**
 * What size each kind of property has on real vehicles, so that a slip of the pen (3 m for 3 mm) can be asked about.
 * The ranges are wide on purpose: motorcycles to light trucks, a century of them, lie inside. Common practice throughout.
 */

import { type Dimension, type Si, si } from '../quantity/dimension.ts';
import { megapascal, mm, psi } from './written-units.ts';

/** Low and high are in the SI unit of the dimension; `why` says what lies at the ends. */
export interface Magnitude<D extends Dimension = Dimension> {
  readonly words: string;
  readonly dimension: D;
  readonly low: Si<D>;
  readonly high: Si<D>;
  readonly why: string;
}

export type Oddity<D extends Dimension = Dimension> =
  | { readonly kind: 'smaller-than-any'; readonly limit: Si<D>; readonly why: string }
  | { readonly kind: 'larger-than-any'; readonly limit: Si<D>; readonly why: string };

const count = (value: number) => si('number', value);
const newton = (value: number) => si('force', value);
const kilogram = (value: number) => si('mass', value);
const litre = (value: number) => si('volume', value / 1000);
const kilopascal = (value: number) => megapascal(value / 1000);

const length = (words: string, low: Si<'length'>, high: Si<'length'>, why: string) =>
  between('length', words, low, high, why);
const pressure = (words: string, low: Si<'pressure'>, high: Si<'pressure'>, why: string) =>
  between('pressure', words, low, high, why);
const number = (words: string, low: number, high: number, why: string) =>
  between('number', words, count(low), count(high), why);

function between<D extends Dimension>(dimension: D, words: string, low: Si<D>, high: Si<D>, why: string): Magnitude<D> {
  return { words, dimension, low, high, why };
}

export const magnitudes = {
  // the vehicle
  firstUse: number('year of first use', 1885, 2100, 'from the first motor car to the end of this century'),
  wheelbase: length('wheelbase', mm(900), mm(7500), 'from a small motorcycle to a long lorry'),
  track: length('track', mm(500), mm(2600), 'from a cyclecar to a lorry'),
  tyreRadius: length('loaded tyre radius', mm(130), mm(750), 'from a scooter’s wheel to a lorry’s'),
  axleLoad: between('mass', 'axle load', kilogram(40), kilogram(14_000), 'from a motorcycle to a heavy lorry’s axle'),
  vehicleMass: between('mass', 'mass of the vehicle', kilogram(80), kilogram(45_000), 'from a moped to a heavy lorry'),
  gravityHeight: length('height of the centre of gravity', mm(150), mm(2500), 'from a racing car to a loaded lorry'),
  springTravel: length('spring travel', mm(5), mm(600), 'from a kart to a desert racer'),
  // the driver’s end
  pedalRatio: number('pedal ratio', 1.5, 15, 'from a hanging pedal with a booster to a hand lever'),
  pedalTravel: length('pedal travel', mm(15), mm(300), 'from a race pedal to a long lorry pedal'),
  pedalFreePlay: length('free play at the pedal', mm(0), mm(80), 'from none to a clutch pedal badly out of adjustment'),
  pedalForce: between(
    'force',
    'push on the pedal',
    newton(5),
    newton(2500),
    'from a touch to twice the push of a strong adult',
  ),
  boosterGain: number('booster gain', 1, 15, 'from none to a strong vacuum booster'),
  parkingRatio: number('parking brake ratio', 1, 60, 'from a plain cable to a long lever with an equaliser'),
  // cylinders
  masterBore: length('master cylinder bore', mm(8), mm(65), 'from a motorcycle’s lever to a lorry’s pedal'),
  masterStroke: length('master cylinder stroke', mm(3), mm(120), 'from one chamber of a tandem to a lorry'),
  cylinderBore: length('cylinder bore', mm(9), mm(80), 'from a small slave cylinder to a lorry’s wheel cylinder'),
  pistonBore: length('caliper piston bore', mm(12), mm(110), 'from a four-piston motorcycle caliper to a truck’s'),
  pistonCount: number('pistons on one side', 1, 8, 'from one to eight a side'),
  actuatorStroke: length('actuator stroke', mm(1), mm(1000), 'from a clutch slave to a tipping ram'),
  // wheel brakes
  drumDiameter: length('drum diameter', mm(75), mm(560), 'from a moped’s hub to a lorry’s drum'),
  drumWidth: length('drum width', mm(10), mm(300), 'from a moped’s hub to a lorry’s drum'),
  liningThickness: length('lining thickness', mm(0.3), mm(30), 'from worn out to a lorry’s new lining'),
  liningFriction: number('lining friction', 0.1, 0.8, 'from oiled asbestos to a race pad'),
  shoeClearance: length('shoe clearance', mm(0), mm(4), 'from dragging to badly out of adjustment'),
  padClearance: length('pad clearance', mm(0), mm(3), 'from touching to knocked back by a loose bearing'),
  discRadius: length('effective disc radius', mm(45), mm(300), 'from a scooter’s disc to a lorry’s'),
  // lines
  tubeOd: length('outside diameter of the tube', mm(2.9), mm(19.5), 'from 1/8 in brake tube to 3/4 in supply tube'),
  tubeWall: length('wall of the tube', mm(0.3), mm(3), 'from thin fuel tube to thick hydraulic tube'),
  runLength: length('length of a run', mm(15), mm(16_000), 'from a bridge tube to a line down a coach'),
  bendRadius: length('bend radius', mm(4), mm(1500), 'from a tight loop to a sweep along a frame'),
  clipDistance: length('distance between clips', mm(20), mm(3000), 'from two clips at a bend to a line left hanging'),
  hoseBore: length('hose bore', mm(1.4), mm(20), 'from braided race hose to a reservoir’s feed hose'),
  hoseLength: length('hose length', mm(50), mm(4000), 'from a jumper to a full race line'),
  hoseRating: pressure(
    'rated pressure of a hose',
    kilopascal(20),
    megapascal(150),
    'from a reservoir’s feed to spiral hydraulic hose',
  ),
  flareHead: length('width of a flare head', mm(3.5), mm(30), 'from 1/8 in tube to 3/4 in tube'),
  // valves and switches
  residualPressure: pressure(
    'residual pressure',
    kilopascal(5),
    kilopascal(350),
    'from a 2 psi valve to an old drum system',
  ),
  splitPoint: pressure('split point', kilopascal(200), megapascal(15), 'from a light trailer to a heavy saloon'),
  valveSlope: number('slope of a proportioning valve', 0, 1, 'from a plain limiter to no reduction at all'),
  meteringPressure: pressure(
    'opening pressure of a metering valve',
    kilopascal(50),
    megapascal(4),
    'from a light car to a truck',
  ),
  switchPressure: pressure(
    'operating pressure of a switch',
    kilopascal(10),
    megapascal(10),
    'from a low-pressure stop-lamp switch to a warning switch',
  ),
  linePressure: pressure(
    'line pressure',
    kilopascal(0),
    psi(4000),
    'from rest to the proof of a brake hose, 4000 psi (49 CFR 571.106 S5.3.2)',
  ),
  // reservoirs, places
  reservoirVolume: between(
    'volume',
    'reservoir volume',
    litre(0.005),
    litre(10),
    'from a motorcycle’s cup to a hydraulic tank',
  ),
  vacuum: pressure('vacuum', kilopascal(0), kilopascal(101.4), 'from none to all of the atmosphere'),
  place: length('place along an axis', mm(-16_000), mm(16_000), 'inside or close to one vehicle'),
  height: length('height above the datum', mm(-2000), mm(4000), 'from below the frame to a lorry’s roof'),
  measure: length('length', mm(0), mm(20_000), 'anything on one vehicle'),
} as const;

export type MagnitudeName = keyof typeof magnitudes;

/** Whether a value (SI) lies outside what the property has on any real vehicle; undefined when it does not. */
export function oddity<D extends Dimension>(magnitude: Magnitude<D>, value: Si<NoInfer<D>>): Oddity<D> | undefined {
  if (value < magnitude.low) return { kind: 'smaller-than-any', limit: magnitude.low, why: magnitude.why };
  if (value > magnitude.high) return { kind: 'larger-than-any', limit: magnitude.high, why: magnitude.why };
  return undefined;
}
