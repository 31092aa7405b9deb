/** The facts that parts may have: one row each, shared by all kinds that have it. */
import type { Dimension } from '../../quantity/index.ts';
import type { MeasureRow, NoteRow, WordRow } from './kind-row.ts';

function measure<D extends Dimension>(key: string, dimension: D, meaning: string, example: string): MeasureRow<D> {
  return { value: 'measure', key, dimension, meaning, example };
}
const word = (key: string, words: readonly string[], meaning: string): WordRow => ({
  value: 'word',
  key,
  words,
  meaning,
});
const note = (value: 'date' | 'text', key: string, meaning: string, example: string): NoteRow => ({
  value,
  key,
  meaning,
  example,
});

export const height = measure('height', 'length', 'height above the datum of the file, upward', '410 mm');
export const partNumber = note('text', 'part-number', 'the number it is bought by', '"WC 7812"');
export const dated = note('date', 'dated', 'date of manufacture as marked, year and month', '2019-06');
export const filled = note('date', 'filled', 'when the fluid was filled in', '2025-05-10');
export const volume = measure('volume', 'volume', 'fluid that stands in it at rest', '4 mL');

export const ratio = measure('ratio', 'number', 'lever ratio: travel at the pad over travel at the push-rod', '6.2');
export const travel = measure('travel', 'length', 'full travel, measured at the pad', '190 mm');
export const freePlay = measure(
  'free-play',
  'length',
  'travel before the push-rod meets the piston, measured at the pad',
  '6 mm',
);
export const push = measure('push', 'force', 'push of the foot that figures are shown for', '300 N');
export const returnForce = measure(
  'return-force',
  'force',
  'force of the return spring: of a pedal at the pad, of a master at its piston',
  '20 N',
);
export const efficiency = measure('efficiency', 'number', 'share of the push that arrives', '0.9');

export const gain = measure('gain', 'number', 'output force over input force below the knee', '3.5');
export const knee = measure('knee', 'pressure', 'line pressure at which the assistance is used up', '60 bar');
export const vacuum = measure('vacuum', 'pressure', 'pressure below atmospheric that it works with', '0.67 bar');
export const diaphragm = measure(
  'diaphragm',
  'length',
  'working diameter of the diaphragm; of two in a row, of one that has the area of both',
  '9 in',
);
export const boosterSite = word('site', ['pedal', 'line'], 'between pedal and master, or in the line');

export const leverRatio = measure('lever-ratio', 'number', 'travel of the hand over travel of the cable', '7');
export const handForce = measure('hand-force', 'force', 'pull of the hand', '300 N');
export const axleRatio = measure(
  'axle-ratio',
  'number',
  'turns of the shaft that a brake on the transmission holds, for one turn of the wheels',
  '4.1',
);
export const parkingSite = word('site', ['wheels', 'transmission'], 'where it brakes');

export const bore = measure('bore', 'length', 'diameter of the bore', '7/8 in');
export const secondBore = measure(
  'second-bore',
  'length',
  'diameter of the second piston where the cylinder is stepped',
  '3/4 in',
);
export const stroke = measure('stroke', 'length', 'travel of the piston from rest to its stop', '16 mm');
export const cutOff = measure(
  'cut-off',
  'length',
  'travel of the piston until it closes the port to the reservoir',
  '1 mm',
);
export const builtInResidual = measure(
  'residual',
  'pressure',
  'pressure held by a residual valve inside the outlet',
  '10 psi',
);

export const capacity = measure('capacity', 'volume', 'fluid it holds at the full mark', '0.2 L');
export const fluidGrade = word(
  'fluid',
  ['dot-3', 'dot-4', 'dot-5', 'dot-5.1', 'mineral'],
  'the fluid in it, where it differs from the rest',
);

export const length = measure(
  'length',
  'length',
  'length from end to end: of a run from flare face to flare face along the tube',
  '52 in ± 1/2 in',
);
export const bendRadius = measure(
  'bend-radius',
  'length',
  'radius of the tube’s centre line in bends that do not say their own',
  '16 mm',
);
export const sleeve = measure('sleeve', 'length', 'length that is covered by a guard', '300 mm');
export const rating = measure('rating', 'pressure', 'highest working pressure that its maker gives', '200 bar');
export const expansion = word('expansion', ['regular', 'low'], 'expansion class of 49 CFR 571.106');

export const splitPoint = measure(
  'split-point',
  'pressure',
  'inlet pressure from which the outlet rises less',
  '30 bar',
);
export const slope = measure(
  'slope',
  'number',
  'rise of the outlet over rise of the inlet above the split point',
  '0.4',
);
export const sensing = word(
  'sensing',
  ['fixed', 'adjustable', 'load'],
  'whether the split point is fixed, set by hand or follows the load',
);
export const holds = measure(
  'holds',
  'pressure',
  'pressure that stays in the line when the pedal is released',
  '10 psi',
);
export const opensAt = measure('opens-at', 'pressure', 'inlet pressure at which it begins to pass', '5 bar');
export const fullAt = measure('full-at', 'pressure', 'inlet pressure from which it passes all', '25 bar');
export const closesAt = measure('closes-at', 'pressure', 'pressure at which the contact closes', '60 .. 120 psi');
export const crackingPressure = measure('cracking', 'pressure', 'pressure difference that opens it', '0.3 bar');

export const shoes = word('shoes', ['leading-trailing', 'two-leading', 'servo'], 'how the shoes are arranged');
export const shoeClearance = measure(
  'shoe-clearance',
  'length',
  'gap between lining and drum at rest, at the middle of the lining',
  '0.3 mm',
);
export const compliance = measure(
  'compliance',
  'volume-per-pressure',
  'fluid that it takes for each unit of pressure, beyond what closes the gaps, because it gives way',
  '0.15 cc/MPa',
);
export const brakeFactor = measure(
  'brake-factor',
  'number',
  'friction force at the drum over force of one piston',
  '2.2',
);
export const pushOut = measure(
  'push-out',
  'pressure',
  'pressure in the brake at which its linings begin to press, against return springs and seals',
  '5 bar',
);
export const pivotRadius = measure(
  'pivot-radius',
  'length',
  'distance from the middle of the drum to the pivot of a shoe',
  '100 mm',
);
export const leverArm = measure(
  'lever-arm',
  'length',
  'arm of the piston’s force about the pivot of its shoe',
  '170 mm',
);
export const liningStart = measure(
  'lining-start',
  'angle',
  'where the lining of a pivoted shoe begins, at the middle of the drum, counted from the pivot',
  '20 deg',
);
export const liningEnd = measure('lining-end', 'angle', 'where it ends, counted the same way', '125 deg');
export const liningArc = measure('lining-arc', 'angle', 'angle that the lining of a servo shoe covers', '110 deg');
export const cylinderOffset = measure(
  'cylinder-offset',
  'length',
  'height of the pistons’ axis above the middle of a servo drum brake',
  '100 mm',
);
export const adjusterOffset = measure(
  'adjuster-offset',
  'length',
  'depth of the adjuster below the middle of a servo drum brake',
  '100 mm',
);
export const anchorOffset = measure(
  'anchor-offset',
  'length',
  'height of the anchor above the middle of a servo drum brake',
  '110 mm',
);
export const wheel = word(
  'wheel',
  ['front-left', 'front-right', 'rear-left', 'rear-right', 'front', 'rear'],
  'where it sits, unless its name says so',
);
export const diameter = measure('diameter', 'length', 'working diameter', '11 in');
export const maxDiameter = measure('max-diameter', 'length', 'largest diameter, as stamped', '11.060 in');
export const width = measure('width', 'length', 'width of the working surface', '2 in');
export const thickness = measure('thickness', 'length', 'thickness', '5 mm');
export const leastThickness = measure('least-thickness', 'length', 'thickness at which it is worn out', '1.5 mm');
export const friction = measure('friction', 'number', 'coefficient of friction of the lining', '0.38');
export const staticFriction = measure(
  'static-friction',
  'number',
  'coefficient of friction of the lining at rest, for the parking brake',
  '0.40',
);
export const innerDiameter = measure(
  'inner-diameter',
  'length',
  'inner diameter of the band of the disc that the pads rub',
  '150 mm',
);
export const effectiveRadius = measure('effective-radius', 'length', 'radius at which the pads’ force acts', '110 mm');
export const ends = word('ends', ['single', 'double'], 'one piston or two opposed ones');
export const expanders = word('expanders', ['yes', 'no'], 'cup expanders behind the cups');
export const cupGap = measure(
  'cup-gap',
  'length',
  'distance between the cups, or from cup to closed end, at rest',
  '14 mm',
);
export const pistons = measure('pistons', 'number', 'pistons, counted on one side of the disc', '2');
export const mounting = word(
  'mounting',
  ['fixed', 'sliding'],
  'fixed to the upright with pistons on both sides, or sliding with pistons on one',
);
export const area = measure('area', 'area', 'area of the piston', '4 cm²');
export const padArea = measure('area', 'area', 'area of one pad on the disc', '38 cm²');
export const pitch = measure('star-pitch', 'length', 'advance of the adjuster for one notch', '0.05 mm');
export const hole = measure('hole', 'length', 'least hole inside', '3 mm');
export const washers = measure('washers', 'number', 'washers at its eyes: one on each side of each eye', '2');
export const jointType = word(
  'joint-type',
  ['flare', 'compression'],
  'how it holds tube: by flares, or by rings squeezed onto plain tube',
);
export const pullRatio = measure('pull-ratio', 'number', 'force on the shoes over pull of the cable', '4');
export const clearance = measure('clearance', 'length', 'travel of the piston before the pads touch', '0.15 mm');

export const vehicleClass = word('class', ['car', 'light-goods', 'other'], 'the class that rules depend on');
export const firstUse = measure('first-use', 'number', 'year of first use, which rules depend on', '1961');
export const wheelbase = measure('wheelbase', 'length', 'distance between the axles', '2.64 m');
export const trackFront = measure('track-front', 'length', 'distance between the front wheels', '1.42 m');
export const trackRear = measure('track-rear', 'length', 'distance between the rear wheels', '1.40 m');
export const tyreRadius = measure('tyre-radius', 'length', 'loaded radius of the tyres', '345 mm');
export const tyreRadiusFront = measure(
  'tyre-radius-front',
  'length',
  'loaded radius of the front tyres where it differs',
  '330 mm',
);
export const tyreRadiusRear = measure(
  'tyre-radius-rear',
  'length',
  'loaded radius of the rear tyres where it differs',
  '345 mm',
);
export const split = word(
  'split',
  ['none', 'front-rear', 'diagonal', 'front-and-one-rear', 'other'],
  'how the circuits are meant to share the wheels',
);
export const datum = note(
  'text',
  'datum',
  'what heights and points are measured from',
  '"ground, unladen; middle of the front axle"',
);

export const front = measure('front', 'mass', 'mass on the front axle', '690 kg');
export const rear = measure('rear', 'mass', 'mass on the rear axle', '560 kg');
export const mass = measure('mass', 'mass', 'mass of the whole vehicle', '1250 kg');
export const gravityHeight = measure(
  'cg-height',
  'length',
  'height of the centre of gravity above the ground',
  '0.68 m',
);
export const gravityBehindFront = measure(
  'cg-behind-front-axle',
  'length',
  'distance of the centre of gravity behind the front axle',
  '1.2 m',
);
