/** A small car of our own for the tests of totals and laws: tandem master, front discs, rear drums, all of it stated. */

const stock = `stock line {
  tube 3/16 in wall 0.028 in copper-nickel
  flare double-45
  nut 3/8-24
}`;

/** One text for each declaration, so that a test may shuffle them. */
export const smallCar: readonly string[] = [
  stock,
  'fluid dot-4',
  `master main tandem {
    bore 7/8 in
    primary { stroke 16 mm port a: 3/8-24 inverted-flare }
    secondary { stroke 14 mm port b: 3/8-24 inverted-flare }
  }`,
  `reservoir pot {
    compartment front { capacity 120 mL feeds main.primary }
    compartment rear { capacity 60 mL feeds main.secondary }
  }`,
  'tee front-tee { volume 0.4 mL ports feed, left, right: 3/8-24 inverted-flare }',
  'tee rear-tee { volume 0.4 mL ports feed, left, right: 3/8-24 inverted-flare }',
  'run to-front of line { from main.primary.a to front-tee.feed length 400 mm ± 5 mm }',
  `run to-front-left of line {
    bend-radius 16 mm
    from front-tee.left
    to front-left.grip.feed
    route straight 300 mm, bend 90 deg, turn 45 deg, bend 60 deg, straight 200 mm
  }`,
  'run to-front-right of line { from front-tee.right to front-right.grip.feed length about 900 mm }',
  'run to-rear of line { from main.secondary.b to rear-tee.feed length 11 ft 4 in }',
  `hose to-rear-left {
    bore 1/8 in length 12 in
    from rear-tee.left: 3/8-24 male inverted-flare fixed
    to rear-left.cylinder.feed: 3/8-24 male inverted-flare swivel
  }`,
  `run to-rear-right of line { from rear-tee.right to rear-right.cylinder.feed route corner 500 mm, bend 90 deg radius 20 mm, corner 700 mm }`,
  'disc-brake front-left { caliper grip { bore 54 mm pistons 1 volume 30 mL port feed: 3/8-24 inverted-flare } }',
  'disc-brake front-right { caliper grip { bore 54 mm pistons 1 volume 30 mL port feed: 3/8-24 inverted-flare } }',
  `drum-brake rear-left { cylinder { bore 3/4 in ends double cup-gap 14 mm port feed: 3/8-24 inverted-flare } }`,
  `drum-brake rear-right { cylinder { bore ? assume 3/4 in ends double cup-gap 14 mm port feed: 3/8-24 inverted-flare } }`,
];
