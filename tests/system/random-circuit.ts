/** Random plumbing in the notation, for checks against a general graph library. */
import fc from 'fast-check';

export interface RandomCircuit {
  readonly junctions: number;
  readonly chambers: number;
  /** Each run joins two of the things, counted from the chambers on; a thing may be joined to itself. */
  readonly runs: readonly (readonly [number, number])[];
}

/** Blocks and up to three single masters, with runs between any two of them. */
export const randomCircuit: fc.Arbitrary<RandomCircuit> = fc
  .record({ junctions: fc.integer({ min: 1, max: 9 }), chambers: fc.integer({ min: 0, max: 3 }) })
  .chain(({ junctions, chambers }) => {
    const thing = fc.nat({ max: junctions + chambers - 1 });
    return fc.record({
      junctions: fc.constant(junctions),
      chambers: fc.constant(chambers),
      runs: fc.array(fc.tuple(thing, thing), { maxLength: 14 }),
    });
  });

/** The name of a thing: `m0` for a chamber, `b3` for a block. */
export const thingName = ({ chambers }: RandomCircuit, index: number): string =>
  index < chambers ? `m${index}` : `b${index}`;

/** The circuit as a file; every run has ports of its own at both ends. */
export function writeCircuit(circuit: RandomCircuit): string {
  const count = circuit.junctions + circuit.chambers;
  const things = Array.from({ length: count }, (_, index) => {
    const ports = [
      'spare',
      ...circuit.runs.flatMap(([a, b], run) => [
        ...(a === index ? [`f${run}`] : []),
        ...(b === index ? [`t${run}`] : []),
      ]),
    ];
    const name = thingName(circuit, index);
    const head = index < circuit.chambers ? `master ${name} single` : `block ${name}`;
    return `${head} { ports ${ports.join(', ')}: 3/8-24 inverted-flare }`;
  });
  const runs = circuit.runs.map(([a, b], run) => {
    const [from, to] = [`${thingName(circuit, a)}.f${run}`, `${thingName(circuit, b)}.t${run}`];
    return `run r${run} { from ${from} to ${to} }`;
  });
  return [...things, ...runs].join('\n');
}
