/**
 * How each fact is found out at the vehicle, one row a fact, with the tool. Common practice throughout; a maker's manual
 * that says it otherwise comes first.
 */
import type { PartKind } from '../system/kinds/index.ts';

export interface MeasureHow {
  readonly tool: string;
  /** A sentence or two. */
  readonly how: string;
  /** For kinds where it is done otherwise. */
  readonly of?: Readonly<Partial<Record<PartKind | 'place', Omit<MeasureHow, 'of'>>>>;
}

const row = (tool: string, how: string, of?: MeasureHow['of']): MeasureHow => ({ tool, how, ...(of ? { of } : {}) });

const byMaker = row('papers', 'Take it from the maker’s manual or data sheet; it is not read off the part.');

/** By the key of the property. */
export const measureHows: Readonly<Record<string, MeasureHow>> = {
  height: row('tape, spirit level', 'Straight up from the datum of the file, vehicle level and at its usual load.'),
  dated: row('eye, lamp', 'Read the date printed, woven or embossed on the hose: month or quarter, and year.'),
  filled: row(
    'papers',
    'From the service book or a tag at the reservoir. If nobody knows, take the fluid as old and renew it.',
  ),
  volume: row(
    'measuring jug',
    'Fill it with clean brake fluid through one port, then pour that into a jug; or from the maker’s data.',
  ),
  ratio: row(
    'tape',
    'From the pivot of the pedal to the middle of the pad, and from the pivot to the push-rod pin; divide the one by the other. Check: travel at the pad over travel at the rod.',
  ),
  travel: row(
    'tape',
    'At the middle of the pad, from rest to the stop, along the path of the foot, with a bleeder open or the push-rod off.',
    {
      place: {
        tool: 'tape, stands',
        how: 'From full bump to full droop, at the axle, vehicle safely on stands; or from bump stop and rebound strap.',
      },
      'pedal-switch': { tool: 'rule', how: 'Travel of the pedal, at the pad, at which the lamps light.' },
    },
  ),
  'free-play': row('rule', 'At the pad, by hand, until the push-rod meets the piston.'),
  push: row('pedal force gauge', 'Any push that figures are wanted for; 300 N (about 70 lbf) is a firm stop.'),
  'return-force': row('spring balance', 'Pull on the pad with the push-rod off, until the pedal just moves.'),
  efficiency: row(
    'two gauges',
    'Force or pressure out over force or pressure in; without a bench, take a usual value as assumed.',
  ),
  gain: byMaker,
  knee: row(
    'pressure gauge, pedal force gauge',
    'Line pressure at which the pedal suddenly needs more force, engine running.',
  ),
  vacuum: row('vacuum gauge', 'Between engine and booster, engine warm and idling.'),
  site: row('eye', 'Follow the push-rod, the cable or the pipes and see where it sits.'),
  'lever-ratio': row('tape', 'Travel of the hand at the grip over travel of the cable, both from the first click.'),
  'hand-force': row('spring balance', 'Pull at the middle of the grip to the last click that holds.'),
  bore: row(
    'inside micrometer, or telescopic gauge and micrometer',
    'With the pistons out and the bore clean, where the cups do not run, in two directions. Never by the casting mark alone: castings were bored to several sizes and re-sleeved. Keep the parts of each cylinder together.',
    {
      hose: {
        tool: 'printing on the hose',
        how: 'Read it on the hose (1/8 in or 3.2 mm is usual); a drill shank only goes through the fitting.',
      },
      'feed-hose': { tool: 'callipers', how: 'Inside of the cut end, or outside of the spigot that it goes on.' },
      caliper: {
        tool: 'micrometer or callipers',
        how: 'Outside of a piston when it is out; over the dust boot it reads too much. Push pistons out with fluid, never with an air line.',
      },
      booster: { tool: 'inside micrometer', how: 'With the piston out and the bore clean, in two directions.' },
    },
  ),
  'second-bore': row(
    'inside micrometer',
    'As the bore, in the other end of the stepped cylinder; write down which end faces which shoe.',
  ),
  stroke: row(
    'depth gauge',
    'Push the piston from rest to its stop, port open, and measure how far the rod goes. In a tandem, each chamber by itself.',
  ),
  'cut-off': row(
    'depth gauge',
    'Blow softly through the outlet and push the piston until the air stops: the compensating port is closed.',
  ),
  residual: row(
    'low-pressure gauge',
    'Press and release the pedal; what the gauge keeps after a minute. Or look for a valve behind the seat of the outlet.',
  ),
  capacity: row('measuring jug', 'Fill to the full mark from empty, and pour or draw that into a jug.'),
  fluid: row(
    'eye, glass of water',
    'Cap and service book. A drop in water: glycol mixes, silicone floats. Green and oily may be mineral. If in doubt have it tested: the wrong fluid ruins every seal.',
  ),
  length: row(
    'soft wire or string, tape',
    'Lay soft wire along the way of the line from flare face to flare face, straighten it and measure it.',
    {
      hose: {
        tool: 'tape',
        how: 'End to end of the old hose, a banjo to the middle of its hole; then try the suspension through its travel and lock to lock.',
      },
      'feed-hose': { tool: 'tape', how: 'Along its way from spigot to spigot, with an inch or two for each spigot.' },
      cable: { tool: 'tape', how: 'Outer and inner both, from nipple to nipple and from ferrule to ferrule.' },
    },
  ),
  'bend-radius': row(
    'radius gauge or bender',
    'The mark on the former of your bender; it is the centre-line radius if the maker says so.',
  ),
  sleeve: row('tape', 'Length of tube that the guard covers.'),
  rating: row('printing', 'Read it on the part or in the maker’s data; without it there is none.'),
  expansion: row('eye, lamp', 'Printed on the hose: HR is regular, HL low expansion.'),
  'split-point': row(
    'two pressure gauges',
    'One before and one behind the valve: the inlet pressure from which the outlet lags behind.',
  ),
  slope: row('two pressure gauges', 'Above the split point: rise of the outlet over rise of the inlet.'),
  sensing: row('eye', 'A linkage to the axle means load, a knob or lever means adjustable, else fixed.'),
  holds: row(
    'low-pressure gauge, or stamping',
    'Stamped or by its colour band if known; else what the line keeps a minute after the pedal is released.',
  ),
  'opens-at': row('two pressure gauges', 'Inlet pressure at which the outlet begins to rise.'),
  'full-at': row('two pressure gauges', 'Inlet pressure from which both gauges read alike.'),
  'closes-at': row(
    'pressure gauge, test lamp',
    'Raise the pressure slowly until the lamp lights; read again as it falls.',
  ),
  cracking: row('low-pressure gauge', 'Raise the pressure at the inlet slowly until it passes.'),
  shoes: row(
    'eye',
    'Drum off: two anchors at one end, one cylinder at each shoe’s leading end, or a link between the shoes at the star wheel.',
  ),
  'shoe-clearance': row(
    'feeler gauge',
    'Between lining and drum at the middle of the lining, through the hole in the drum or backing plate, adjusted as for the road.',
  ),
  'brake-factor': byMaker,
  wheel: row('eye', 'Which corner it sits at, seen from the driver’s seat.'),
  diameter: row(
    'inside callipers or drum gauge',
    'Inside of the drum clear of the lip, in three directions: the largest counts.',
    { disc: { tool: 'callipers', how: 'Across the outside of the disc.' } },
  ),
  'max-diameter': row(
    'eye, wire brush',
    'Stamped or cast on the drum, outside or between the studs. Clean it and read the unit too.',
  ),
  width: row('rule or callipers', 'Of the surface that is rubbed.'),
  thickness: row(
    'callipers or depth gauge',
    'Lining or pad without its backing, at the thinnest place; above the rivet heads if riveted.',
    {
      disc: { tool: 'micrometer', how: 'At eight places, away from the lip: the least counts.' },
    },
  ),
  'least-thickness': row(
    'eye, papers',
    'Stamped on the disc, or from the maker’s manual. It is a limit, not a measure.',
  ),
  friction: row(
    'printing, papers',
    'Code letters on the edge of the lining or the maker’s data; without them take it as assumed.',
  ),
  'effective-radius': row(
    'rule',
    'From the hub’s centre to the middle of the pad’s rubbing face: half of inner plus outer radius.',
  ),
  ends: row('eye', 'Count the pistons of one cylinder: one, or two that go apart.'),
  expanders: row('eye', 'With the pistons out: thin metal cups behind the rubber ones, under the spring.'),
  'cup-gap': row('depth gauge', 'Pistons at rest: from cup to cup, or from the cup to the closed end.'),
  diaphragm: row('tape', 'Outside of the shell less the flange on both sides; or from the maker’s data.'),
  'axle-ratio': row(
    'chalk',
    'Mark shaft and wheel and count turns of the shaft for one turn of both wheels; or the plate on the axle.',
  ),
  compliance: row(
    'syringe, pressure gauge',
    'Gaps closed, fluid that goes in between two pressures, over their difference; without a bench, take it as assumed.',
  ),
  'push-out': row(
    'low-pressure gauge',
    'Raise the pressure slowly, wheel off the ground, until it just drags when turned by hand.',
  ),
  'pivot-radius': row('rule', 'From the middle of the hub to the middle of the pivot pin.'),
  'lever-arm': row(
    'rule, square',
    'From the pivot of the shoe at right angles to the line along which the piston pushes.',
  ),
  'lining-start': row('protractor', 'At the hub’s centre, from the pivot of the shoe to where its lining begins.'),
  'lining-end': row('protractor', 'At the hub’s centre, from the pivot of the shoe to where its lining ends.'),
  'lining-arc': row(
    'protractor, tape',
    'Length of the lining along its curve over the radius of the drum, in radians; or with a protractor at the hub’s centre.',
  ),
  'cylinder-offset': row('rule', 'From the hub’s centre straight up to the axis of the pistons.'),
  'adjuster-offset': row('rule', 'From the hub’s centre straight down to the adjuster’s axis.'),
  'anchor-offset': row('rule', 'From the hub’s centre straight up to the middle of the anchor pin.'),
  'static-friction': row('papers', 'From the maker’s data; without them take it as assumed.'),
  'inner-diameter': row('rule', 'Across the disc, between the inner edges of the bright band.'),
  pistons: row('eye', 'Count them on one side of the disc.'),
  mounting: row('eye', 'Pistons on both sides and bolted down: fixed. On one side and moving on pins: sliding.'),
  area: row('micrometer', 'From the diameter of the piston: π/4 × diameter².'),
  'star-pitch': row('feeler gauge or callipers', 'Turn the adjuster ten notches and divide how far it came by ten.'),
  hole: row('drill shanks', 'The largest shank that goes through by hand, the port clean.'),
  washers: row('eye', 'Count them as they come off, one on each side of every eye.'),
  'joint-type': row(
    'eye',
    'Undo one nut: a flared end is a flare joint, a loose ring or olive on a plain tube is a compression joint.',
  ),
  'pull-ratio': row('tape', 'Lengths of the lever in the brake: cable pin to pivot over pivot to shoe or strut.'),
  clearance: row('feeler gauge', 'Between pad and disc after the pedal was pressed and released, both sides added.'),
  class: row('papers', 'From the registration papers.'),
  'first-use': row('papers', 'Year of first registration or manufacture, from the papers or the plate.'),
  wheelbase: row('tape, plumb bob', 'Hub centre to hub centre, wheels straight, both sides.'),
  'track-front': row('tape', 'Middle of tyre to middle of tyre, at the ground.'),
  'track-rear': row('tape', 'Middle of tyre to middle of tyre, at the ground.'),
  'tyre-radius': row('tape', 'Ground to hub centre, loaded and at its pressure; or roll one turn and divide by 2π.'),
  'tyre-radius-front': row('tape', 'Ground to hub centre, loaded and at its pressure.'),
  'tyre-radius-rear': row('tape', 'Ground to hub centre, loaded and at its pressure.'),
  split: row('eye', 'Open one bleeder at a time while someone presses the pedal gently, and note which chamber loses.'),
  front: row('wheel scales or weighbridge', 'Both front wheels on, the vehicle level and loaded as the case says.'),
  rear: row('wheel scales or weighbridge', 'Both rear wheels on, the vehicle level and loaded as the case says.'),
  mass: row('weighbridge', 'All wheels on, loaded as the case says.'),
  'cg-height': row(
    'weighbridge, tape',
    'Weigh one axle level and again with the other axle raised a known height; or from the maker. Only on firm ground, chocked.',
  ),
  'cg-behind-front-axle': row('wheel scales', 'Mass on the rear axle times wheelbase over the whole mass.'),
};

/** Facts that are no properties, by the end of the words under which they stand on the measuring list. */
export const otherHows: Readonly<Record<string, MeasureHow>> = {
  thread: row(
    'thread gauge, callipers',
    'Callipers over the male thread, gauge in its flanks; for a port use its old nut, or a tap or nut of a known thread by hand. 3/8-24 and M10x1 look alike: a nut that starts is no proof.',
  ),
  flare: row(
    'eye, lens',
    'Undo the nut and look at the end: cone of two layers, rounded bubble, or one layer; look into the port for a cone or a funnel too.',
  ),
  tube: row(
    'callipers',
    'Outside diameter on clean straight tube, paint and rust off: 4.75 or 4.76 mm is 3/16 in, 6.00 is 6 mm, 6.35 is 1/4 in.',
  ),
  'tube wall': row('micrometer', 'On a cut end, deburred, away from any flare.'),
  straight: row('tape', 'From tangent to tangent: where one bend ends to where the next begins.'),
  corner: row('tape', 'From corner to corner, where the straights would meet.'),
  bend: row('protractor or bevel', 'The angle that the tube turns through, against the straight before it.'),
  'bend radius': row('radius gauge', 'On the inside of the bend, and half the tube added.'),
  turn: row(
    'protractor',
    'Lay the first bend flat; how far the next one stands out of that plane, seen along the tube.',
  ),
  'coil turns': row('eye', 'Count them.'),
  'coil diameter': row('callipers', 'Across the coil outside, less one tube.'),
  'clip spacing': row('tape', 'From clip to clip along the tube.'),
  'clip position': row('tape', 'Along the tube from its from end.'),
  banjo: row('callipers', 'The hole in the eye; the bolt is a little smaller.'),
  barb: row('callipers', 'Outside of the spigot, clear of its bead.'),
  x: row('tape, plumb bob', 'Forward from the datum of the file, dropped to the floor with a plumb bob.'),
  y: row('tape, plumb bob', 'To the left from the datum of the file, dropped to the floor with a plumb bob.'),
  z: row('tape, spirit level', 'Up from the datum of the file.'),
  height: row('tape, spirit level', 'Straight up from the datum of the file, vehicle level.'),
  'pedal-travel': row('tape, pedal force gauge', 'From rest to the held push, along the path of the pad.'),
  'second-stroke': row('tape, pedal force gauge', 'Release, and at once press again to the same push.'),
  'pedal-drop': row('tape, clock', 'Hold the push steadily; how far the pedal sinks in the time.'),
  'pedal-height': row('tape', 'From the floor to the middle of the pad at rest.'),
  'line-pressure': row(
    'pressure gauge with bleeder adapter',
    'At a bleed screw, at the named push; bleed again afterwards.',
  ),
  drawn: row('jar', 'What came out at this bleeder until it was clear.'),
  push: row('pedal force gauge', 'At the middle of the pad.'),
  time: row('clock', 'From the moment that the push is held.'),
};

/** The row for a fact of the measuring list: by its whole words, else by their end (`from end nut thread`). */
export function howToMeasure(fact: string, kind: PartKind | 'place' | undefined): Omit<MeasureHow, 'of'> | undefined {
  const words = fact.replace(/, step \d+ of the route$/, '').split(' ');
  const endings = words.map((_, index) => words.slice(index).join(' '));
  const found = measureHows[fact] ?? endings.map((ending) => otherHows[ending]).find((each) => each !== undefined);
  return (kind && found?.of?.[kind]) ?? found;
}
