/** taper-in-straight: a tapered pipe thread and a straight thread at one joint. */
import { fromMemory } from '../standards/source.ts';
import { misfitRule } from './joints/misfit-rule.ts';

const switchIn = (port: string): string => `master main single {
  bore 3/4 in
  port out: 3/8-24 inverted-flare
  port lamp: ${port}
}

pressure-switch stop-lamp { port thread: 1/8 NPT male taper }
screw stop-lamp.thread into main.lamp
`;

export const taperInStraight = misfitRule({
  code: 'taper-in-straight',
  cause: 'taper',
  question: 'Does a tapered pipe thread meet a tapered one?',
  why: 'A pipe thread seals by wedging along its whole length. In a straight thread it touches on a turn or two, and more force splits the casting instead of stopping the leak.',
  severity: 'error',
  source: fromMemory('ASME B1.20.1 and ISO 7-1 taper pipe threads'),
  acceptable: true,
  fires: [
    { title: 'a pipe-thread switch in a straight port', text: switchIn('3/8-24 inverted-flare') },
    { title: 'a pipe-thread switch in a parallel pipe thread', text: switchIn('1/8 BSP washer') },
  ],
  silent: [
    { title: 'a pipe-thread switch in its own thread', text: switchIn('1/8 NPT taper') },
    { title: 'a port that is still to be measured', text: switchIn('?') },
  ],
});
