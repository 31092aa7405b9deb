/** Writes a circuit file of any size: a trunk of crosses, each feeding two wheel brakes through a run and a hose. */

/** What the head of the file and one section of the trunk add to the count of parts, sub-parts included. */
const head = 4;
const section = 18;

/** A file of about `parts` parts (within one section of it), the same text for the same number. */
export function largeCircuit(parts: number): string {
  const sections = Math.max(1, Math.round((parts - head) / section));
  return [opening, ...Array.from({ length: sections }, (_, index) => sectionOf(index + 1)), ending(sections)].join(
    '\n',
  );
}

const opening = `// A trunk line with a cross at every axle, as long as it has to be.
vehicle trial-rig "Trial rig" {
  class light-goods
  first-use 1964
  wheelbase 3.2 m
  fixed frame
  sprung axle on frame travel 120 mm
}

fluid dot-4 { filled 2026-03 }

stock line run {
  tube 3/16 in wall 0.028 in copper-nickel
  nut 3/8-24
  flare double-45
  bend-radius 1 in
  clip every 12 in
}

stock flexible hose {
  bore 1/8 in
  expansion regular
  from: 3/8-24 female inverted-flare fixed
  to: 3/8-24 male washer fixed
}

pedal brake-pedal on frame {
  ratio 5
  travel 150 mm
  pushes main
}

master main single on frame {
  bore 1 in
  stroke 1-3/8 in
  port out: 3/8-24 inverted-flare
  reservoir { capacity 0.4 L }
}
`;

function sectionOf(n: number): string {
  return `// ---- Axle ${n} ----
cross cross-${n} on frame {
  ports feed, left, right, on: 3/8-24 inverted-flare
  hole 3 mm
}

run trunk-${n} of line {
  from ${n === 1 ? 'main' : `cross-${n - 1}.on`}
  to cross-${n}.feed
  route straight 3 in, bend 90 deg, straight 2 ft 4 1/2 in, turn 90 deg, bend 90 deg, straight 5 in
}

${brake(n, 'left')}
${brake(n, 'right')}`;
}

function brake(n: number, side: 'left' | 'right'): string {
  return `run pipe-${side}-${n} of line {
  from cross-${n}.${side}
  to hose-${side}-${n}.from
  route straight 2 in, bend 90 deg, straight 14 1/4 in
}

hose hose-${side}-${n} of flexible on frame {
  to brake-${side}-${n}
  length 13 in
  dated 2019-08
}

drum-brake brake-${side}-${n} on axle {
  shoes leading-trailing
  drum { diameter 10 in  width 1 3/4 in }
  linings { friction 0.38  thickness 4 mm }
  cylinder {
    bore 7/8 in
    ends double
    cup-gap 9/16 in
    port feed: 3/8-24 washer
    bleeder { height 430 mm }
    2026-03-02 reseal
  }
  adjuster {}
}
`;
}

function ending(sections: number): string {
  return `plug last-plug on frame { port thread: 3/8-24 male inverted-flare }
screw last-plug into cross-${sections}.on
`;
}
