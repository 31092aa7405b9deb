import fc from 'fast-check';
import Graph from 'graphology';
import { connectedComponents } from 'graphology-components';
import { describe, expect, it } from 'vitest';
import { pressureBodiesOf } from '../../language/system/pressure-bodies.ts';
import { readCircuit } from '../support/read.ts';
import { type RandomCircuit, randomCircuit, thingName, writeCircuit } from './random-circuit.ts';

const seat = '3/8-24 inverted-flare';
const bodiesOf = (text: string) => pressureBodiesOf(readCircuit(text).planned);

/** The parts of each body in groups, in the order that sorting gives. */
const grouped = (groups: readonly (readonly string[])[]) => groups.map((group) => [...group].sort()).sort();

/** The same plumbing in graphology (general-purpose graph library). */
function graphOf(circuit: RandomCircuit): Graph {
  const graph = new Graph({ multi: true });
  for (let index = 0; index < circuit.chambers + circuit.junctions; index++) graph.addNode(thingName(circuit, index));
  for (const [index, [a, b]] of circuit.runs.entries()) {
    graph.addNode(`r${index}`);
    graph.addEdge(thingName(circuit, a), `r${index}`);
    graph.addEdge(`r${index}`, thingName(circuit, b));
  }
  return graph;
}

describe('A body of fluid under pressure', () => {
  it('is a connected component of the plumbing, as graphology finds them', () => {
    fc.assert(
      fc.property(randomCircuit, (circuit) => {
        const { bodies } = bodiesOf(writeCircuit(circuit));
        expect(grouped(bodies.map(({ parts }) => parts))).toEqual(grouped(connectedComponents(graphOf(circuit))));
      }),
      { numRuns: 60 },
    );
  });

  it('names the chambers in it, and a leak anywhere in it is a leak for all that graphology reaches from there', () => {
    fc.assert(
      fc.property(randomCircuit, (circuit) => {
        const { bodies } = bodiesOf(writeCircuit(circuit));
        const whole = connectedComponents(graphOf(circuit));
        for (const { chambers, parts } of bodies) {
          const component = whole.find((names) => parts.some((part) => names.includes(part))) ?? [];
          expect([...chambers].sort()).toEqual(component.filter((name) => name.startsWith('m')).sort());
        }
      }),
      { numRuns: 60 },
    );
  });

  it('ends at the piston: the two sides of a spool are two bodies', () => {
    const text = `pressure-differential-valve spool {
      ports a, b, c, d: ${seat}
      path a, b
      path c, d
    }`;
    expect(bodiesOf(text).bodies).toHaveLength(2);
  });

  it('goes on through a valve', () => {
    const text = `proportioning-valve limiter { ports in, out: ${seat} }`;
    expect(bodiesOf(text).bodies).toHaveLength(1);
  });

  const twin = (inside: string) => `
    master main tandem { primary { port a: ${seat} } secondary { port b: ${seat} } }
    run one { from main.primary.a to front-left.caliper.upper }
    run two { from main.secondary.b to front-left.caliper.lower }
    disc-brake front-left { caliper { ports upper, lower: ${seat} ${inside} } }`;

  it('ends at a caliper where two chambers arrive and the paths are not said', () => {
    const { bodies, meetings } = bodiesOf(twin(''));
    expect(meetings.map(({ part }) => part)).toEqual(['front-left.caliper']);
    expect(bodies.map(({ chambers }) => chambers)).toEqual([['main.primary'], ['main.secondary']]);
  });

  it('has two halves in a caliper that says its paths', () => {
    const { bodies, meetings } = bodiesOf(twin('path upper path lower'));
    expect(meetings).toEqual([]);
    expect(bodies).toHaveLength(2);
  });

  it('goes on from cylinder to cylinder over a bridge', () => {
    const text = `
      master main single { port a: ${seat} }
      run feed { from main.a to rear.lower.in }
      drum-brake rear {
        cylinder lower { ports in, out: ${seat} }
        cylinder upper { port in: ${seat} }
        run bridge { from rear.lower.out to rear.upper.in }
      }`;
    expect(bodiesOf(text).bodies.map(({ parts }) => parts)).toEqual([
      ['main', 'feed', 'rear.lower', 'rear.bridge', 'rear.upper'],
    ]);
  });
});
