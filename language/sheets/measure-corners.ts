/** Where on the vehicle a thing is measured, so that one walk round it is enough. */
import type { Part } from '../system/part.ts';
import { outermost, type System } from '../system/system.ts';
import { wheelOf, wheelWords } from '../system/wheels.ts';
import type { Owner } from './measure-items.ts';

/** "Front left", "On frame", "Lines", "The vehicle". */
export function cornerOf(owner: Owner, system: System): string {
  return owner.kind === 'part'
    ? cornerOfPart(owner.part, system)
    : owner.kind === 'fluid'
      ? 'The fluid'
      : 'The vehicle';
}

export function cornerOfPart(part: Part, system: System): string {
  const whole = outermost(system, part);
  const wheel = wheelOf(whole);
  const words = wheelWords(wheel);
  if (words !== undefined && wheel.axle !== undefined && wheel.side !== undefined) return capital(words);
  if (part.place !== undefined) return `On ${part.place}`;
  if (whole.kind === 'run' || whole.kind === 'hose' || whole.kind === 'feed-hose') return 'Lines';
  return 'Elsewhere';
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
