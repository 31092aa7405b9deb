/** Pieces that the examples of several rules are put together from. */

const seat = '3/8-24 inverted-flare';

export const stockLine = `stock line {
  tube 3/16 in wall 0.028 in copper-nickel
  nut 3/8-24
  flare double-45
}
`;

/** A drum brake with one cylinder at one wheel. */
export const drumBrake = (name: string): string => `drum-brake ${name} {
  cylinder { port feed: ${seat}  bleeder {} }
}
`;

/** A master with one chamber, a tee and a run to it. */
export const singleMaster = `master main single { port out: ${seat} }
tee split { ports in, left, right: ${seat} }
run feed of line { from main.out to split.in }
`;

/** A master with two chambers and a tee and a run for each. */
const tandemMaster = `master main tandem {
  primary { port front: ${seat} }
  secondary { port rear: ${seat} }
}
tee front-tee { ports in, left, right: ${seat} }
tee rear-tee { ports in, left, right: ${seat} }
run front-feed of line { from main.primary.front to front-tee.in }
run rear-feed of line { from main.secondary.rear to rear-tee.in }
`;

export const run = (name: string, from: string, to: string): string =>
  `run ${name} of line { from ${from} to ${to} }\n`;

/** Both circuits of a car with drum brakes all round, one for each axle. */
export const splitCar = [
  stockLine,
  tandemMaster,
  ...['front-left', 'front-right', 'rear-left', 'rear-right'].map((wheel) => {
    const [axle, side] = wheel.split('-');
    return `${drumBrake(wheel)}${run(`${wheel}-line`, `${axle}-tee.${side}`, `${wheel}.cylinder.feed`)}`;
  }),
].join('');

/** One circuit to both wheels of one axle. */
export const oneCircuit = [
  stockLine,
  singleMaster,
  drumBrake('front-left'),
  drumBrake('front-right'),
  run('left-line', 'split.left', 'front-left.cylinder.feed'),
  run('right-line', 'split.right', 'front-right.cylinder.feed'),
].join('');
