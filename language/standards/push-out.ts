/** The pressure at which linings begin to press, where the file does not state it. */

import type { Si } from '../quantity/dimension.ts';
import { fromMemory, type Source } from './source.ts';
import { megapascal } from './written-units.ts';

export interface PushOut {
  readonly low: Si<'pressure'>;
  readonly high: Si<'pressure'>;
  readonly source: Source;
}

const source = fromMemory(
  'brake handbooks: 0.03 MPa to 0.07 MPa in a disc brake (seals), 0.35 MPa to 0.7 MPa in a drum brake (return springs)',
);

export const usualPushOut = {
  'disc-brake': { low: megapascal(0.03), high: megapascal(0.07), source },
  'drum-brake': { low: megapascal(0.35), high: megapascal(0.7), source },
} as const satisfies Readonly<Record<string, PushOut>>;
