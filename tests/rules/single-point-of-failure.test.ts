import fc from 'fast-check';
import Graph from 'graphology';
import { connectedComponents } from 'graphology-components';
import { describe, expect, it } from 'vitest';
import { oneCircuit, splitCar } from '../../language/rules/example-parts.ts';
import { findingsOf } from '../support/findings.ts';
import { type RandomCircuit, randomCircuit, thingName, writeCircuit } from '../system/random-circuit.ts';

const code = 'single-point-of-failure';
const seat = '3/8-24 inverted-flare';

describe('A single point of failure', () => {
  it('is one finding for the whole circuit, with the count of parts and the hoses first', () => {
    const text = oneCircuit.replace(
      'run left-line of line { from split.left to front-left.cylinder.feed }',
      `hose left-hose { from split.left: ${seat} male fixed to front-left.cylinder.feed: ${seat} male swivel }`,
    );
    const findings = findingsOf(code, text);
    expect(findings).toHaveLength(1);
    const [finding] = findings;
    expect(finding?.subject).toBe('circuit');
    expect(finding?.severity).toBe('warning');
    expect(finding?.message).toContain(
      'A leak anywhere from main on, in any of 7 parts, leaves none of 2 wheels braked',
    );
    expect(finding?.related?.map(({ message }) => message)).toContain('a leak here takes all brakes: left-hose');
    expect(finding?.related?.[0]?.message).toContain('left-hose');
  });

  it('is an error where the vehicle says that it is split', () => {
    const vehicle = (split: string) => `vehicle van { split ${split} }\n${oneCircuit}`;
    expect(findingsOf(code, vehicle('front-rear')).map(({ severity }) => severity)).toEqual(['error']);
    expect(findingsOf(code, vehicle('none')).map(({ severity }) => severity)).toEqual(['warning']);
  });

  it('is a warning as found where the split is still planned', () => {
    const text = `vehicle van { split front-rear }\n${oneCircuit}`;
    expect(findingsOf(code, text, 'found').map(({ severity }) => severity)).toEqual(['warning']);
  });

  it('is an error with a tandem master that feeds all wheels from one chamber', () => {
    const text = oneCircuit
      .replace(`{ port out: ${seat} }`, `{ primary { port out: ${seat} } secondary { port b: ${seat} plugged } }`)
      .replace('main single', 'main tandem')
      .replace('main.out', 'main.primary.out');
    expect(findingsOf(code, text).map(({ severity }) => severity)).toEqual(['error']);
  });

  it('is silenced by an accept on the circuit', () => {
    const text = `${oneCircuit}accept ${code} on circuit 2026-03-05 because "one circuit as built"\n`;
    expect(findingsOf(code, text)).toEqual([]);
    expect(findingsOf('stale-accept', text)).toEqual([]);
  });

  it('is not claimed of a tandem whose chambers are not written', () => {
    const text = oneCircuit.replace('main single', 'main tandem');
    expect(findingsOf(code, text)).toEqual([]);
    expect(findingsOf('unstated-paths', text)).toHaveLength(1);
  });

  it('is not claimed where an opaque unit may keep the circuits apart', () => {
    const unit = splitCar
      .replace('to front-tee.in', 'to unit.a')
      .replace('to rear-tee.in', 'to unit.b')
      .concat(
        `modulator unit { ports a, b, c, d: ${seat} }\n`,
        'run three of line { from unit.c to front-tee.in }\nrun four of line { from unit.d to rear-tee.in }\n',
      );
    expect(findingsOf(code, unit)).toEqual([]);
    expect(findingsOf('unfed-wheel', unit)).toEqual([]);
  });

  it('is not seen in two circuits that share calipers and do not say their paths', () => {
    const caliper = (side: string) => `disc-brake front-${side} { caliper { ports upper, lower: ${seat}  bleeder {} } }
run upper-${side} { from upper.${side} to front-${side}.caliper.upper }
run lower-${side} { from lower.${side} to front-${side}.caliper.lower }
`;
    const text = `master main tandem { primary { port a: ${seat} } secondary { port b: ${seat} } }
tee upper { ports in, left, right: ${seat} }
tee lower { ports in, left, right: ${seat} }
run one { from main.primary.a to upper.in }
run two { from main.secondary.b to lower.in }
${caliper('left')}${caliper('right')}`;
    expect(findingsOf(code, text)).toEqual([]);
    expect(findingsOf('two-chambers', text).map(({ severity }) => severity)).toEqual(['question', 'question']);
    expect(findingsOf('ring', text)).toEqual([]);
  });
});

describe('Half of one axle', () => {
  it('is named, with the chamber whose leak leaves it', () => {
    const text = splitCar
      .replace('{ from rear-tee.right ', '{ from front-tee.extra ')
      .replace('tee front-tee { ports in, left, right:', 'cross front-tee { ports in, left, right, extra:');
    const [finding, ...more] = findingsOf(code, text);
    expect(more).toEqual([]);
    expect(finding?.severity).toBe('warning');
    expect(finding?.subject).toBe('main.primary');
    expect(finding?.message).toContain('leaves only one wheel braked: rear-left. The vehicle');
  });

  it('is not the one wheel of a motorcycle', () => {
    const wheel = (name: string) => `master ${name}-master single { port out: ${seat} }
disc-brake ${name} { wheel ${name}  caliper { port feed: ${seat}  bleeder {} } }
run ${name}-line { from ${name}-master.out to ${name}.caliper.feed }
`;
    expect(findingsOf(code, wheel('front') + wheel('rear'))).toEqual([]);
  });
});

describe('On random circuits', () => {
  const withWheels = randomCircuit.chain((circuit) =>
    fc.record({
      circuit: fc.constant(circuit),
      wheels: fc.array(fc.nat({ max: circuit.junctions + circuit.chambers - 1 }), { minLength: 1, maxLength: 5 }),
    }),
  );

  /** Wheels by the component of the plumbing that feeds them, as graphology finds it; components without a chamber left out. */
  function fedComponents(circuit: RandomCircuit, wheels: readonly number[]) {
    const graph = new Graph({ multi: true });
    for (let index = 0; index < circuit.chambers + circuit.junctions; index++) graph.addNode(thingName(circuit, index));
    for (const [a, b] of circuit.runs) graph.addEdge(thingName(circuit, a), thingName(circuit, b));
    for (const [index, at] of wheels.entries()) {
      graph.addNode(`w${index}`);
      graph.addEdge(thingName(circuit, at), `w${index}`);
    }
    return connectedComponents(graph).map((names) => ({
      chambers: names.filter((name) => name.startsWith('m')),
      wheels: names.filter((name) => name.startsWith('w')),
    }));
  }

  function write(circuit: RandomCircuit, wheels: readonly number[]): string {
    const plumbing = wheels.reduce((text, at, index) => {
      const name = thingName(circuit, at);
      const head = new RegExp(`((?:master ${name} single|block ${name}) \\{ ports )`);
      return text.replace(head, `$1w${index}, `);
    }, writeCircuit(circuit));
    const brakes = wheels.map(
      (at, index) => `drum-brake w${index} { cylinder { port feed: ${seat}  bleeder {} } }
run to-w${index} { from ${thingName(circuit, at)}.w${index} to w${index}.cylinder.feed }`,
    );
    return [plumbing, ...brakes].join('\n');
  }

  it('the wheels that a leak leaves are those in the other components (graphology)', () => {
    fc.assert(
      fc.property(withWheels, ({ circuit, wheels }) => {
        const pressed = fedComponents(circuit, wheels).filter(({ chambers }) => chambers.length > 0);
        const fed = pressed.flatMap((component) => component.wheels).length;
        const left = pressed
          .filter((component) => component.wheels.length > 0)
          .map((component) => fed - component.wheels.length);
        const findings = findingsOf(code, write(circuit, wheels));
        expect(findings.filter(({ subject }) => subject === 'circuit')).toHaveLength(
          left.filter((count) => count === 0).length,
        );
        expect(findings.filter(({ subject }) => subject !== 'circuit')).toHaveLength(
          fed > 2 ? left.filter((count) => count === 1).length : 0,
        );
      }),
      { numRuns: 60 },
    );
  });

  it('circuits are joined, and wheels unfed, where graphology says so', () => {
    fc.assert(
      fc.property(withWheels, ({ circuit, wheels }) => {
        const components = fedComponents(circuit, wheels);
        const text = write(circuit, wheels);
        const joined = components.filter(({ chambers }) => chambers.length > 1);
        expect(findingsOf('two-chambers', text)).toHaveLength(joined.length);
        const dry = components.filter(({ chambers }) => chambers.length === 0).flatMap((component) => component.wheels);
        expect(findingsOf('unfed-wheel', text).map(({ subject }) => subject)).toEqual(
          circuit.chambers > 0 ? dry.sort().map((wheel) => `${wheel}.cylinder`) : [],
        );
      }),
      { numRuns: 60 },
    );
  });
});
