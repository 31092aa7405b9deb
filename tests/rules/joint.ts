/** Small circuits with one joint to look at, for the tests of the rules about joints. */
import { type Finding, judge } from '../../language/rules/index.ts';
import { readCircuit } from '../support/read.ts';

const aboutTheJoint = [
  'gender-mismatch',
  'thread-mismatch',
  'taper-in-straight',
  'seat-mismatch',
  'flare-mismatch',
  'seat-and-thread',
];

/** What is said of the fit of joints in this circuit as planned. */
export function misfitsIn(text: string): readonly Finding[] {
  return judge(readCircuit(text), 'planned').findings.filter(({ code }) => aboutTheJoint.includes(code));
}

/** What one rule says of the circuit. */
export function findingsOf(code: string, text: string, state: 'found' | 'planned' = 'planned'): readonly Finding[] {
  return judge(readCircuit(text), state).findings.filter((finding) => finding.code === code);
}

export interface TubeInPort {
  readonly port: string;
  readonly tube?: string;
  readonly nut: string;
  readonly flare: string;
}

/** A tube whose one end goes into the port of a master. */
export function tubeInPort({ port, tube = '3/16 in', nut, flare }: TubeInPort): string {
  return `master main single { bore 3/4 in  port out: ${port} }
run line { tube ${tube} steel  nut ${nut}  flare ${flare}  from main.out }
`;
}

/** A hose whose one end goes into the port of a master. */
export function hoseInPort(port: string, end: string): string {
  return `master main single { bore 3/4 in  port out: ${port} }
hose line { length 300 mm  from main.out: ${end} }
`;
}
