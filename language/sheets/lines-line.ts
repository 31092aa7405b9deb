/** One line as the bench needs it: its ends with nut and flare, its tube, what to cut, its bends, what is not known. */
import { type BendTable, bendTable } from '../figures/bend-table.ts';
import type { Figures, Need } from '../figures/index.ts';
import { type Estimate, estimateOf, isKnown, type Si, si, writeStated } from '../quantity/index.ts';
import type { Finding } from '../rules/rule.ts';
import type { FlareForm } from '../standards/flare-forms.ts';
import { type Gender, seats } from '../standards/seats.ts';
import { type TubeMaterialName, tubeMaterials } from '../standards/tube-materials.ts';
import type { Part, Port } from '../system/part.ts';
import type { System } from '../system/system.ts';
import { type WorkAhead, workAhead } from '../system/work-ahead.ts';
import { type Bench, benchOf, roundedUp } from './lines-writing.ts';

export interface LineEnd {
  /** A is `from`. */
  readonly letter: 'A' | 'B';
  /** Path of the port that it goes to. */
  readonly meets: string | undefined;
  /** `3/8-24`; undefined where it is `?` or not stated. */
  readonly thread: string | undefined;
  readonly nutLength: 'long' | 'short' | undefined;
  /** Of the nut; undefined where the port's seat is not known. */
  readonly gender: Gender | undefined;
  readonly flare: FlareForm | undefined;
}

export interface LineTube {
  /** Equal for tube that is cut from the same stock. */
  readonly key: string;
  /** "3/16 in × 0.028 in 90/10 copper-nickel" */
  readonly words: string;
  readonly diameter: Estimate<'length'> | undefined;
  readonly wall: Estimate<'length'> | undefined;
  readonly material: TubeMaterialName | undefined;
}

export interface Cut {
  /** The figure, in m. */
  readonly computed: Estimate<'length'>;
  /** What the cutter is set to, in m: from the longest that the limits of the route allow, rounded up. */
  readonly length: Si<'length'>;
  /** `doubtful` rests on an `about` or an assumption: to be measured before tube is cut. */
  readonly certainty: 'sure' | 'within-limits' | 'doubtful';
}

export interface Line {
  readonly run: Part;
  /** By its own marks and records. */
  readonly work: WorkAhead;
  readonly bench: Bench;
  readonly ends: readonly [LineEnd, LineEnd];
  readonly tube: LineTube;
  /** Flare face to flare face. */
  readonly centreline: Estimate<'length'> | undefined;
  readonly cut: Cut | undefined;
  /** What the length waits for. */
  readonly waitsFor: readonly Need[];
  readonly bends: BendTable | undefined;
  /** What is said of its length. */
  readonly notes: readonly string[];
  /** Errors and warnings about it. */
  readonly findings: readonly Finding[];
}

export function lineOf(run: Part, system: System, figures: Figures, findings: readonly Finding[]): Line {
  const bench = benchOf(run);
  const centreline = lengthFigure(figures, run, 'run.centreline-length');
  const cut = lengthFigure(figures, run, 'run.cut-length');
  return {
    run,
    bench,
    work: workAhead(run),
    ends: [endOf(run, 'from', system), endOf(run, 'to', system)],
    tube: tubeOf(run),
    centreline: centreline.estimate,
    cut: cut.estimate && centreline.estimate && cutOf(cut.estimate, centreline.estimate, bench),
    waitsFor: cut.waitsFor,
    bends: bendTable(run),
    notes: centreline.notes,
    findings: findings.filter((finding) => isAbout(finding, run)),
  };
}

function lengthFigure(figures: Figures, run: Part, id: string) {
  const figure = figures.find(run.id, id);
  const notes = figure?.notes ?? [];
  if (figure === undefined || figure.result.kind === 'unknown' || !isKnown(figure.result.estimate)) {
    return { estimate: undefined, waitsFor: figure?.result.kind === 'unknown' ? figure.result.waitsFor : [], notes };
  }
  const { value, low, high, about, assumed } = figure.result.estimate;
  // The identity of the figure says that it is a length.
  const estimate = { value: si('length', value), low: si('length', low), high: si('length', high), about, assumed };
  return { estimate, waitsFor: [], notes };
}

/** Tube that is a little long can be dressed; tube that is short is scrap. */
function cutOf(computed: Estimate<'length'>, centreline: Estimate<'length'>, bench: Bench): Cut {
  const over = centreline.high - centreline.value;
  const doubtful = computed.about || computed.assumed;
  return {
    computed,
    length: roundedUp(si('length', computed.value + (doubtful ? 0 : over)), bench),
    certainty: doubtful ? 'doubtful' : over > 1e-9 ? 'within-limits' : 'sure',
  };
}

function endOf(run: Part, name: 'from' | 'to', system: System): LineEnd {
  const port = run.ports.find((each) => each.name === name);
  const other = port && otherSide(port, system);
  const seat = other?.connection.kind === 'threaded' ? other.connection.seat : undefined;
  const connection = port?.connection.kind === 'tube-end' ? port.connection : undefined;
  const flare = connection?.flare;
  return {
    letter: name === 'from' ? 'A' : 'B',
    meets: other?.id,
    thread: connection?.nut.kind === 'known' ? connection.nut.thread.name : undefined,
    nutLength: connection?.nutLength,
    gender: seat && seats[seat].nutGender,
    flare: flare === 'unknown' ? undefined : flare,
  };
}

function otherSide(port: Port, system: System): Port | undefined {
  const [joint] = system.jointsAt.get(port.id) ?? [];
  return joint && system.portById.get(joint.a === port.id ? joint.b : joint.a);
}

function tubeOf({ tube }: Part): LineTube {
  const diameter = tube && sizeOf(tube.diameter);
  const wall = tube?.wall && sizeOf(tube.wall);
  const material = tube?.material;
  const micrometres = (size: Estimate<'length'> | undefined): string =>
    size === undefined ? '?' : String(Math.round(size.value * 1e5));
  return {
    key: `${micrometres(diameter)} ${micrometres(wall)} ${material ?? '?'}`,
    words: [
      diameter === undefined || tube === undefined ? 'tube of a size not known' : writeStated(tube.diameter),
      ...(tube?.wall === undefined || wall === undefined ? [] : ['×', writeStated(tube.wall)]),
      ...(material === undefined ? [] : [tubeMaterials[material].words]),
    ].join(' '),
    diameter,
    wall,
    material,
  };
}

function sizeOf(stated: Parameters<typeof estimateOf<'length'>>[0]): Estimate<'length'> | undefined {
  const estimate = estimateOf(stated);
  return estimate !== undefined && isKnown(estimate) && estimate.value > 0 ? estimate : undefined;
}

/** What these say is about the circuit that a line is part of, whatever the line is like. */
const ofCircuit: ReadonlySet<string> = new Set([
  'two-chambers',
  'ring',
  'single-point-of-failure',
  'unfed-wheel',
  'no-bleeder',
  'mixed-fluid',
]);

/** A finding on stock that is used often names every line that it speaks for. */
function isAbout({ code, subject, also, severity }: Finding, { id }: Part): boolean {
  if ((severity !== 'error' && severity !== 'warning') || ofCircuit.has(code)) return false;
  return [subject, ...(also ?? [])].some((path) => path === id || path.startsWith(`${id}.`));
}
