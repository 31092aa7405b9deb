/** Reads and compares threads as mechanics name them; sizes outside the table are worked out from the name. */

import { commonPractice } from './source.ts';
import { type StrippingPair, strippingPairs } from './stripping-pairs.ts';
import { type Thread, threads } from './thread-table.ts';
import { degrees, inch, mm } from './written-units.ts';

export type { Thread, ThreadForm } from './thread-table.ts';

export type ThreadReading =
  | { readonly thread: Thread; readonly problem?: undefined }
  | { readonly thread?: undefined; readonly problem: string };

/**
 * The thread that `text` names, or what is wrong with the name. Case, spaces, `x` or `×`, trailing zeros, unified series
 * letters and classes of fit (`3/8-24 UNF-2B`) make no difference. Inch sizes up to 4 in, metric up to 100 mm.
 */
export function readThread(text: string): ThreadReading {
  if (text.length > 40) return { problem: 'This is too long for the name of a thread; write it like 3/8-24 or M10x1.' };
  const key = keyOf(text);
  const known = byKey.get(key);
  if (known) return { thread: known };
  return (
    readMetric(key) ??
    readInch(key) ?? {
      problem: `“${text.trim()}” is not the name of a thread; write it like 3/8-24, M10x1 or 1/8 NPT.`,
    }
  );
}

/** Whether two threads are one thread: same form, taper, diameter and pitch, however each was spelled. */
export function sameThread(a: Thread, b: Thread): boolean {
  const near = (x: number, y: number) => Math.abs(x - y) < 1e-6;
  return a.form === b.form && a.taper === b.taper && near(a.majorDiameter, b.majorDiameter) && near(a.pitch, b.pitch);
}

/** The pair's entry when the two are known to start into one another and strip, in either order. */
export function startsAndStrips(a: Thread, b: Thread): StrippingPair | undefined {
  return strippingPairs.find(
    ({ threads: [first, second] }) =>
      (a.name === first && b.name === second) || (a.name === second && b.name === first),
  );
}

/** One spelling for all that differ only in dress: upper case, no spaces, `x` for `×`, no zeros after the point. */
function keyOf(text: string): string {
  return text
    .trim()
    .toUpperCase()
    .replace(/[×*]/g, 'X')
    .replace(/[‐‑–−]/g, '-')
    .replace(/^(\d+) +(\d+\/)/, '$1+$2')
    .replace(/^(\d+)-(\d+\/\d+-)/, '$1+$2')
    .replace(/[\s"]/g, '')
    .replace(/(\.\d*?)0+(?!\d)/g, '$1')
    .replace(/\.(?!\d)/g, '')
    .replace(/^(\d+\/\d+)X(\d)/, '$1-$2')
    .replace(/TPI/, '')
    .replace(/-(6[A-Z]{1,2}|[123][AB])$/, '');
}

const byKey: ReadonlyMap<string, Thread> = new Map(
  threads.flatMap((thread) => [thread.name, ...thread.spellings].map((spelling) => [keyOf(spelling), thread] as const)),
);

function readMetric(key: string): ThreadReading | undefined {
  const [, diameterText, pitchText] = /^M(\d+(?:\.\d+)?)(?:[X-](\d+(?:\.\d+)?))?$/.exec(key) ?? [];
  if (diameterText === undefined) return undefined;
  if (pitchText === undefined) {
    return { problem: `M${diameterText} alone does not say the pitch; write both, for instance M${diameterText}x1.` };
  }
  const diameter = Number(diameterText);
  const pitch = Number(pitchText);
  if (!(diameter >= 1 && diameter <= 100)) return { problem: `A thread of ${diameter} mm is outside 1 mm to 100 mm.` };
  if (!(pitch >= 0.2 && pitch <= diameter / 3)) {
    return {
      problem: `A pitch of ${pitch} mm cannot be cut on ${diameter} mm; metric brake threads have 1 mm to 1.5 mm.`,
    };
  }
  return taken({
    name: `M${diameter}x${pitch}`,
    spellings: [],
    form: 'metric',
    majorDiameter: mm(diameter),
    pitch: mm(pitch),
    flankAngle: degrees(60),
    taper: 'straight',
    listed: false,
    source: commonPractice('diameter and pitch read from the name of the thread'),
  });
}

function readInch(key: string): ThreadReading | undefined {
  const [, sizeText, perInchText, series] =
    /^((?:\d+\+)?\d+\/\d+|\d*\.\d+|[1-4])-(\d{1,3})(UN[A-Z]{0,2}|BSF)?$/.exec(key) ?? [];
  if (sizeText === undefined || perInchText === undefined) return undefined;
  const size = sizeText.replace('+', ' ');
  const diameter = inchesOf(sizeText);
  const perInch = Number(perInchText);
  if (!(diameter >= 0.05 && diameter <= 4)) return { problem: `A thread of ${size} in is outside 1/16 in to 4 in.` };
  if (/^[1-4]$/.test(sizeText) && perInch > 20) return undefined; // a number size such as 4-40, not inches
  if (!(perInch >= 4 && perInch <= 80 && diameter * perInch >= 3)) {
    return { problem: `${perInch} threads to the inch cannot be cut on ${size} in.` };
  }
  const whitworth = series === 'BSF';
  return taken({
    name: whitworth ? `${size}-${perInch} BSF` : `${size}-${perInch}`,
    spellings: [],
    form: whitworth ? 'bsf' : 'unified',
    majorDiameter: inch(diameter),
    pitch: inch(1 / perInch),
    flankAngle: degrees(whitworth ? 55 : 60),
    taper: 'straight',
    listed: false,
    source: commonPractice('diameter and threads to the inch read from the name of the thread'),
  });
}

/** `0.375-24` names the tabled 3/8-24 just as well. */
function taken(thread: Thread): ThreadReading {
  return { thread: threads.find((known) => sameThread(known, thread)) ?? thread };
}

function inchesOf(text: string): number {
  const [fraction = '', whole = '0'] = text.split('+').reverse();
  const [numerator = '', denominator = '1'] = fraction.split('/');
  return Number(whole) + Number(numerator) / Number(denominator);
}
