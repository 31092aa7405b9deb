/** The few words under a part's or line's name: what a person at the bench looks for first, as the file states it. */
import { type Figures, writeResult } from '../../figures/index.ts';
import { writeStated } from '../../quantity/index.ts';
import { kindRow, type PartKind } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';

interface Wanted {
  /** Kind of the sub-part that has the fact; the part itself if absent. */
  readonly of?: PartKind;
  readonly fact: string;
  /** What stands before the value. */
  readonly word: string;
}

const wanted: Readonly<Partial<Record<PartKind, readonly Wanted[]>>> = {
  pedal: [{ fact: 'ratio', word: 'ratio' }],
  'clutch-pedal': [{ fact: 'ratio', word: 'ratio' }],
  booster: [{ fact: 'gain', word: 'gain' }],
  'parking-brake': [{ fact: 'lever-ratio', word: 'lever' }],
  master: [{ fact: 'bore', word: 'bore' }],
  reservoir: [{ fact: 'capacity', word: '' }],
  'residual-valve': [{ fact: 'holds', word: 'holds' }],
  'proportioning-valve': [
    { fact: 'split-point', word: 'split' },
    { fact: 'slope', word: 'slope' },
  ],
  'metering-valve': [{ fact: 'opens-at', word: 'opens at' }],
  'check-valve': [{ fact: 'cracking-pressure', word: 'opens at' }],
  'pressure-switch': [{ fact: 'closes-at', word: 'closes at' }],
  'drum-brake': [
    { of: 'drum', fact: 'diameter', word: 'drum' },
    { of: 'cylinder', fact: 'bore', word: 'cylinder' },
  ],
  'disc-brake': [
    { of: 'disc', fact: 'diameter', word: 'disc' },
    { of: 'caliper', fact: 'bore', word: 'caliper' },
  ],
  'clutch-slave': [{ fact: 'bore', word: 'bore' }],
  actuator: [{ fact: 'bore', word: 'bore' }],
};

export function notesOfPart(part: Part): readonly string[] {
  return [...factNotes(part), ...builtIn(part)];
}

/** Valves inside a block or master have no symbol of their own; words say that they are there. */
function builtIn(part: Part): readonly string[] {
  const valves = part.parts.filter(({ kind }) => kindRow(kind).fluid === 'valve');
  return [...new Set(valves.map(({ kind }) => `with ${kindRow(kind).title}`))];
}

function factNotes(part: Part): readonly string[] {
  return (wanted[part.kind] ?? []).flatMap(({ of, fact, word }) => {
    const owners = of === undefined ? [part] : part.parts.filter(({ kind }) => kind === of);
    const values = owners.flatMap((owner) => factText(owner, fact) ?? []);
    const said = [...new Set(values)].join(', ');
    return said === '' ? [] : [word === '' ? said : `${word} ${said}`];
  });
}

function factText(part: Part, name: string): string | undefined {
  const fact = part.facts.get(name);
  return fact?.kind === 'measure' ? writeStated(fact.stated) : undefined;
}

/** `3/16 in · cut 54 1/32 in`: the size of the tube and its length, or the length of a hose as it is stated. */
export function notesOfLine(line: Part, figures: Figures): readonly string[] {
  const texts = [sizeOf(line), lengthOf(line, figures)].filter((text) => text !== undefined);
  return texts.length === 0 ? [] : [texts.join(' · ')];
}

function sizeOf(line: Part): string | undefined {
  if (line.kind === 'run') return line.tube === undefined ? undefined : writeStated(line.tube.diameter);
  return line.kind === 'hose' ? 'hose' : 'low-pressure hose';
}

/** On the paper the middle value has to do; its limits stand in the description. */
function lengthOf(line: Part, figures: Figures): string | undefined {
  const known = knownLength(line, figures);
  if (known === undefined) return factText(line, 'length') ?? (line.kind === 'run' ? 'length ?' : undefined);
  const { word, figure, estimate } = known;
  const middle = { ...estimate, low: estimate.value, high: estimate.value };
  return `${word} ${writeResult({ ...figure, result: { ...figure.result, estimate: middle } })}`;
}

const lengths = [
  { id: 'run.cut-length', word: 'cut' },
  { id: 'run.centreline-length', word: 'centreline' },
] as const;

/** The length to cut; where the flares are not known, the length along the middle of the tube. */
function knownLength(line: Part, figures: Figures) {
  for (const { id, word } of lengths) {
    const figure = figures.find(line.id, id);
    if (figure?.result.kind !== 'known') continue;
    const { result } = figure;
    return { word, figure: { ...figure, result }, estimate: result.estimate };
  }
  return undefined;
}

/** With all its limits, for the description. */
export function fullLengthOf(line: Part, figures: Figures): string | undefined {
  const known = knownLength(line, figures);
  return known === undefined ? factText(line, 'length') : `${known.figure.title} ${writeResult(known.figure)}`;
}
