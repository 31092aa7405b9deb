/** How two threads that are not one thread behave at the bench, told from their sizes. */
import { defaultUnitFor, writeQuantity } from '../../quantity/index.ts';
import type { Gender } from '../../standards/seats.ts';
import { sameThread, startsAndStrips, type Thread } from '../../standards/threads.ts';
import type { ThreadFact } from '../../system/connection.ts';

export interface ThreadSide {
  readonly thread: Thread;
  /** Undefined where the file does not say. */
  readonly gender: Gender | undefined;
}

/** Both threads, where both are known and are not the same one. */
export function differing(a: ThreadFact, b: ThreadFact): readonly [Thread, Thread] | undefined {
  if (a.kind !== 'known' || b.kind !== 'known' || sameThread(a.thread, b.thread)) return undefined;
  return [a.thread, b.thread];
}

/**
 * Both threads with their sizes, in one way of measuring so that they can be compared: "3/8-24 (3/8 in across, 24 threads
 * to the inch)" where both are inch threads, else "M10x1 (10 mm across, pitch 1 mm)".
 */
export function threadWords(threads: readonly [Thread, Thread]): readonly [string, string] {
  const [a, b] = threads;
  const sized = threads.some(({ form }) => form === 'metric') ? inMillimetres : inInches;
  return [`${a.name} (${sized(a)})`, `${b.name} (${sized(b)})`];
}

/** A whole sentence: what happens when one is turned into the other. Lengths in metres; depth of thread 1.0825 pitch, ISO 68-1. */
export function atTheBench(a: ThreadSide, b: ThreadSide): string {
  const pair = startsAndStrips(a.thread, b.thread);
  if (pair) return `${sentence(pair.why)} It may hold until the first hard push of the pedal.`;
  const [male, female] = a.gender === 'female' || b.gender === 'male' ? [b.thread, a.thread] : [a.thread, b.thread];
  if (a.gender === undefined && b.gender === undefined) return 'They do not go into one another.';
  const core = female.majorDiameter - 1.0825 * female.pitch;
  if (male.majorDiameter <= core) return 'It drops in without catching a thread.';
  if (male.majorDiameter > female.majorDiameter * 1.02) return 'It is too big to start.';
  if (Math.abs(male.pitch / female.pitch - 1) > 0.005)
    return 'It binds after a turn or two; forced further, the threads strip.';
  if (male.majorDiameter < female.majorDiameter * 0.98) return 'It goes in loose and hangs by the tips of its threads.';
  return 'The flanks of their threads stand at different angles, so they bear on one edge only.';
}

function inMillimetres({ majorDiameter, pitch }: Thread): string {
  const unit = defaultUnitFor('length', 'metric');
  const across = writeQuantity(majorDiameter, { unit });
  return `${across} across, pitch ${writeQuantity(pitch, { unit, precision: { significant: 3 } })}`;
}

function inInches({ majorDiameter, pitch }: Thread): string {
  const steps = (majorDiameter / 0.0254) * 32;
  const precision = Math.abs(steps - Math.round(steps)) < 1e-6 ? { fraction: 32 } : { significant: 3 };
  const across = writeQuantity(majorDiameter, { unit: defaultUnitFor('length', 'inch'), precision });
  return `${across} across, ${Math.round(0.0254 / pitch)} threads to the inch`;
}

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
