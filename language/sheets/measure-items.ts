/** What is still to be found out at the vehicle: all that the file leaves open, assumes, or says only roughly. */
import { type Stated, writeStated } from '../quantity/index.ts';
import type { Origin } from '../system/origin.ts';
import type { Fact, Part } from '../system/part.ts';
import { allParts, type FileReading, type System, type ToMeasure } from '../system/system.ts';

/** Whose fact it is. */
export type Owner =
  | { readonly kind: 'part'; readonly part: Part }
  | { readonly kind: 'vehicle' | 'load' | 'fluid'; readonly label: string }
  | { readonly kind: 'place'; readonly label: string };

export interface MeasureItem {
  readonly owner: Owner;
  readonly fact: string;
  readonly certainty: 'unknown' | 'assumed' | 'about';
  /** As the file says it: `?`, `? assume 7/8 in`, `about 0.3 mm`. */
  readonly said: string;
  readonly origin: Origin;
}

/** In the order of the text where it is known: what is open or assumed first, then what is about right. */
export function measureItems(reading: FileReading, system: System): readonly MeasureItem[] {
  const stated = allParts(system).flatMap(statedOf).concat(statedElsewhere(system));
  return [
    ...reading.toMeasure.flatMap((asked) => itemOf(asked, system, stated) ?? []),
    ...stated.flatMap(({ owner, fact, stated: value, origin }) =>
      value.kind === 'about' ? [{ owner, fact, certainty: 'about' as const, said: writeStated(value), origin }] : [],
    ),
  ];
}

/** Nothing for a part that is not in this state. */
function itemOf(asked: ToMeasure, system: System, stated: readonly StatedFact[]): MeasureItem | undefined {
  const owner = ownerOf(asked, system);
  if (owner === undefined) return undefined;
  const { assumed, origin } = asked;
  const fact = numbered(asked.fact, owner, origin);
  const alike = stated.filter((each) => labelOf(each.owner) === asked.part && each.fact === fact);
  const said = assumed ? alike.map((each) => each.stated).find(({ kind }) => kind === 'assumed') : undefined;
  return {
    owner,
    fact,
    certainty: assumed ? 'assumed' : 'unknown',
    said: said === undefined ? (assumed ? '? assume …' : '?') : writeStated(said),
    origin,
  };
}

/** Steps of a route have no names: "straight, step 3 of the route". */
function numbered(fact: string, owner: Owner, origin: Origin): string {
  const steps = owner.kind === 'part' ? (owner.part.route?.steps ?? []) : [];
  const index = steps.findIndex(
    (step) => step.origin.uri === origin.uri && step.origin.start <= origin.start && origin.end <= step.origin.end,
  );
  return index < 0 ? fact : `${fact}, step ${index + 1} of the route`;
}

function ownerOf({ part: label, fact }: ToMeasure, system: System): Owner | undefined {
  const part = allParts(system).find((each) => each.label === label);
  const place = system.vehicle?.places.find(({ name }) => name === label);
  if (place !== undefined && fact === 'travel' && !part?.facts.has('travel')) return { kind: 'place', label };
  if (part !== undefined) return { kind: 'part', part };
  if (label === 'the fluid') return { kind: 'fluid', label };
  if (label === system.vehicle?.name) return { kind: 'vehicle', label };
  return system.vehicle?.loads.some(({ name }) => label === `load ${name}`) ? { kind: 'load', label } : undefined;
}

export const labelOf = (owner: Owner): string => (owner.kind === 'part' ? owner.part.label : owner.label);

interface StatedFact {
  readonly owner: Owner;
  readonly fact: string;
  readonly stated: Stated;
  readonly origin: Origin;
}

/** Every quantity that is said of a part, under the words of the measuring list. */
function statedOf(part: Part): readonly StatedFact[] {
  const owner: Owner = { kind: 'part', part };
  const { tube, route, clip } = part;
  const said = (fact: string, stated: Stated | undefined, origin: Origin): readonly StatedFact[] =>
    stated === undefined ? [] : [{ owner, fact, stated, origin }];
  return [
    ...factsOf(part.facts, owner),
    ...(tube ? [...said('tube', tube.diameter, tube.origin), ...said('tube wall', tube.wall, tube.origin)] : []),
    ...(route?.steps ?? []).flatMap((step, index) => {
      const where = `, step ${index + 1} of the route`;
      return stepValues(step).flatMap(([fact, stated]) => said(`${fact}${where}`, stated, step.origin));
    }),
    ...(clip?.kind === 'every' ? said('clip spacing', clip.spacing, clip.origin) : []),
    ...(clip?.kind === 'at' ? clip.positions.flatMap((each) => said('clip position', each, clip.origin)) : []),
    ...part.ports.flatMap(({ name, connection, position, origin }) => [
      ...(connection.kind === 'banjo' ? said(`${name} banjo`, connection.hole, origin) : []),
      ...(connection.kind === 'barb' ? said(`${name} barb`, connection.size, origin) : []),
      ...(position?.kind === 'height' ? said(`${name} height`, position.height, position.origin) : []),
      ...(position?.kind === 'point'
        ? (['x', 'y', 'z'] as const).flatMap((axis) => said(`${name} ${axis}`, position.point[axis], position.origin))
        : []),
    ]),
  ];
}

type Step = NonNullable<Part['route']>['steps'][number];

function stepValues(step: Step): readonly (readonly [string, Stated | undefined])[] {
  switch (step.kind) {
    case 'straight':
    case 'corner':
      return [[step.kind, step.length]];
    case 'bend':
      return [
        ['bend', step.angle],
        ['bend radius', step.radius],
      ];
    case 'turn':
      return [['turn', step.angle]];
    case 'coil':
      return [
        ['coil turns', step.turns],
        ['coil diameter', step.diameter],
      ];
    case 'point':
      return [
        ['route point x', step.point.x],
        ['route point y', step.point.y],
        ['route point z', step.point.z],
        ['bend radius', step.radius],
      ];
  }
}

function statedElsewhere({ vehicle }: System): readonly StatedFact[] {
  if (vehicle === undefined) return [];
  return [
    ...factsOf(vehicle.facts, { kind: 'vehicle', label: vehicle.name }),
    ...vehicle.loads.flatMap(({ name, facts }) => factsOf(facts, { kind: 'load', label: `load ${name}` })),
    ...vehicle.places.flatMap(({ name, travel, origin }): readonly StatedFact[] =>
      travel ? [{ owner: { kind: 'place', label: name }, fact: 'travel', stated: travel, origin }] : [],
    ),
  ];
}

function factsOf(facts: ReadonlyMap<string, Fact>, owner: Owner): readonly StatedFact[] {
  return [...facts].flatMap(([fact, value]) =>
    value.kind === 'measure' ? [{ owner, fact, stated: value.stated, origin: value.origin }] : [],
  );
}
