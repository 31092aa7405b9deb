/** ring: tubing in which fluid can go round. */
import { commonPractice } from '../standards/source.ts';
import type { Tie } from '../system/fluid-graph.ts';
import { isOpenWay, pressureBodiesOf } from '../system/pressure-bodies.ts';
import { ringsOf } from '../system/rings.ts';
import type { System } from '../system/system.ts';
import { drumBrake, oneCircuit, run, singleMaster, stockLine } from './example-parts.ts';
import type { Rule } from './rule.ts';
import { listedUpTo, places } from './wording.ts';

const seat = '3/8-24 inverted-flare';

export const ring: Rule = {
  code: 'ring',
  severity: 'warning',
  acceptable: true,
  question: 'Is there one way only from part to part?',
  why: 'In a ring the fluid that is pumped in to bleed takes the shorter way round, and air stays in the longer one. A second way past a valve makes the valve useless.',
  source: commonPractice('a hydraulic brake circuit branches and does not come back; graph theory for the rest'),
  fires: [
    {
      title: 'two tubes between the same two tees',
      text: `${stockLine}${singleMaster}${drumBrake('front-left')}cross far { ports a, b, c, spare: ${seat} }
${run('one', 'split.left', 'far.a')}${run('two', 'split.right', 'far.b')}${run('on', 'far.c', 'front-left.cylinder.feed')}`,
    },
    {
      title: 'a tube past a proportioning valve',
      text: `${stockLine}${singleMaster}tee far { ports a, b, c: ${seat} }
proportioning-valve limiter { ports in, out: ${seat} }
${run('one', 'split.left', 'limiter.in')}${run('two', 'limiter.out', 'far.a')}${run('past', 'split.right', 'far.b')}`,
    },
  ],
  silent: [
    { title: 'a circuit that branches', text: oneCircuit },
    {
      title: 'a bridge tube between two cylinders',
      text: `${stockLine}${singleMaster}drum-brake front-left {
  cylinder lower { ports feed, bridge: ${seat} }
  cylinder upper { port bridge: ${seat}  bleeder {} }
  run bridge of line { from front-left.lower.bridge to front-left.upper.bridge }
}
${run('left-line', 'split.left', 'front-left.lower.feed')}`,
    },
    {
      title: 'two circuits that each go to the pistons of their own in both calipers',
      text: `${stockLine}${singleMaster.replaceAll('main', 'one').replaceAll('split', 'upper').replace('run feed', 'run upper-feed')}${singleMaster.replaceAll('main', 'two').replaceAll('split', 'lower').replace('run feed', 'run lower-feed')}${[
        'left',
        'right',
      ]
        .map(
          (side) => `disc-brake front-${side} { caliper { mounting fixed  ports upper, lower: ${seat}  bleeder {} } }
${run(`${side}-upper`, `upper.${side}`, `front-${side}.caliper.upper`)}${run(`${side}-lower`, `lower.${side}`, `front-${side}.caliper.lower`)}`,
        )
        .join('')}`,
    },
    {
      title: 'a check valve beside another valve',
      text: `${stockLine}${singleMaster}tee far { ports a, b, c: ${seat} }
metering-valve hold-off { ports in, out: ${seat} }
check-valve back { ports in, out: ${seat} }
${run('one', 'split.left', 'hold-off.in')}${run('two', 'hold-off.out', 'far.a')}${run('three', 'far.b', 'back.in')}${run('four', 'back.out', 'split.right')}`,
    },
  ],
  check: ({ system }) => {
    const { meetings } = pressureBodiesOf(system);
    const closed = new Set(meetings.map(({ id }) => id));
    const volumes = system.graph.volumes.filter(({ id, side }) => side === 'pressure' && !closed.has(id));
    return ringsOf(system.graph, volumes, waysIn(system)).flatMap(({ volumes: inRing, ways }) => {
      const parts = [...new Set(inRing.map(({ part }) => part))];
      const round = parts.flatMap((id) => system.partById.get(id) ?? []);
      const [first] = round;
      if (first === undefined) return [];
      const labels = round.map(({ label }) => label);
      const valve = round.find(({ id }) => inRing.filter(({ part }) => part === id).length > 1);
      const past = valve ? ` It goes past ${valve.label}, which then does nothing.` : '';
      const how = ways > 1 ? `${ways} ways round` : 'a ring';
      return [
        {
          message: `${listedUpTo(6, labels)} make ${how}: fluid can go round, and air stays in it when it is bled.${past} Take one of the tubes out, or plug it off.`,
          origin: first.nameOrigin,
          subject: first.id,
          also: parts.slice(1),
          related: places(round.slice(1), 6, (part) => `in the ring: ${part.label}`),
        },
      ];
    });
  },
};

/** A valve that passes one way only closes no ring; the same two ports joined twice are a slip that another rule names. */
function waysIn(system: System): readonly Tie[] {
  const seen = new Set<string>();
  return system.graph.ties.filter((tie) => {
    const { through } = tie;
    if (!isOpenWay(tie)) return false;
    if (through.kind === 'valve') return !oneWay.has(system.partById.get(through.part)?.kind ?? 'check-valve');
    if (through.kind !== 'joint') return false;
    const pair = [through.joint.a, through.joint.b].sort().join(' ');
    return !seen.has(pair) && seen.add(pair);
  });
}

const oneWay: ReadonlySet<string> = new Set(['check-valve', 'residual-valve']);
