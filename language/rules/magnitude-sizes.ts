/** Which property of which kind of part is judged by which range of sizes, and all such values in a system. */
import type { Stated } from '../quantity/index.ts';
import { type Magnitude, magnitudes as m } from '../standards/magnitudes.ts';
import { type PartKind, properties as p } from '../system/kinds/index.ts';
import type { Origin } from '../system/origin.ts';
import type { Fact, Part } from '../system/part.ts';
import type { Point } from '../system/route.ts';
import { allParts, type System } from '../system/system.ts';

export interface Size {
  readonly size: Magnitude;
  readonly stated: Stated;
  /** "bore of main" */
  readonly name: string;
  readonly origin: Origin;
  readonly subject: string;
}

interface Row {
  readonly key: string;
  readonly size: Magnitude;
  /** Absent where it holds for every kind that has the property. */
  readonly kinds?: readonly PartKind[];
}

const masters: readonly PartKind[] = ['master', 'primary', 'secondary'];

/** The first row that fits counts. */
const partRows: readonly Row[] = [
  { key: p.bore.key, size: m.masterBore, kinds: masters },
  { key: p.bore.key, size: m.pistonBore, kinds: ['caliper'] },
  { key: p.bore.key, size: m.hoseBore, kinds: ['hose', 'feed-hose'] },
  { key: p.bore.key, size: m.cylinderBore, kinds: ['cylinder', 'clutch-slave'] },
  { key: p.secondBore.key, size: m.pistonBore, kinds: ['caliper'] },
  { key: p.secondBore.key, size: m.cylinderBore },
  { key: p.stroke.key, size: m.masterStroke, kinds: masters },
  { key: p.stroke.key, size: m.actuatorStroke },
  { key: p.ratio.key, size: m.pedalRatio },
  { key: p.travel.key, size: m.pedalTravel },
  { key: p.freePlay.key, size: m.pedalFreePlay },
  { key: p.push.key, size: m.pedalForce },
  { key: p.gain.key, size: m.boosterGain },
  { key: p.vacuum.key, size: m.vacuum },
  { key: p.leverRatio.key, size: m.parkingRatio },
  { key: p.builtInResidual.key, size: m.residualPressure },
  { key: p.holds.key, size: m.residualPressure },
  { key: p.splitPoint.key, size: m.splitPoint },
  { key: p.slope.key, size: m.valveSlope },
  { key: p.opensAt.key, size: m.meteringPressure },
  { key: p.fullAt.key, size: m.linePressure },
  { key: p.closesAt.key, size: m.switchPressure },
  { key: p.capacity.key, size: m.reservoirVolume },
  { key: p.length.key, size: m.runLength, kinds: ['run'] },
  { key: p.length.key, size: m.hoseLength, kinds: ['hose', 'feed-hose'] },
  { key: p.bendRadius.key, size: m.bendRadius },
  { key: p.rating.key, size: m.hoseRating },
  { key: p.diameter.key, size: m.drumDiameter },
  { key: p.maxDiameter.key, size: m.drumDiameter },
  { key: p.width.key, size: m.drumWidth, kinds: ['drum', 'linings'] },
  { key: p.thickness.key, size: m.liningThickness, kinds: ['linings', 'pads'] },
  { key: p.friction.key, size: m.liningFriction },
  { key: p.shoeClearance.key, size: m.shoeClearance },
  { key: p.clearance.key, size: m.padClearance },
  { key: p.pistons.key, size: m.pistonCount },
  { key: p.effectiveRadius.key, size: m.discRadius },
  { key: p.height.key, size: m.height },
];

const vehicleRows: readonly Row[] = [
  { key: p.firstUse.key, size: m.firstUse },
  { key: p.wheelbase.key, size: m.wheelbase },
  { key: p.trackFront.key, size: m.track },
  { key: p.trackRear.key, size: m.track },
  { key: p.tyreRadius.key, size: m.tyreRadius },
  { key: p.tyreRadiusFront.key, size: m.tyreRadius },
  { key: p.tyreRadiusRear.key, size: m.tyreRadius },
];

const loadRows: readonly Row[] = [
  { key: p.front.key, size: m.axleLoad },
  { key: p.rear.key, size: m.axleLoad },
  { key: p.mass.key, size: m.vehicleMass },
  { key: p.gravityHeight.key, size: m.gravityHeight },
];

const readingSizes: Readonly<Record<string, Magnitude>> = { 'line-pressure': m.linePressure };

/** Every value of the system that has a range, in the order of the text. */
export function sizesOf(system: System): readonly Size[] {
  const { vehicle } = system;
  const ofVehicle = vehicle
    ? [
        ...factSizes(vehicle.facts, vehicleRows, { label: vehicle.name, subject: 'circuit' }),
        ...vehicle.loads.flatMap(({ facts, name }) =>
          factSizes(facts, loadRows, { label: `load ${name}`, subject: 'circuit' }),
        ),
        ...vehicle.places.flatMap(({ name, travel, origin }) =>
          travel
            ? [{ size: m.springTravel, stated: travel, name: `travel of ${name}`, origin, subject: 'circuit' }]
            : [],
        ),
        ...readingSizesOf(vehicle.readings, { label: vehicle.name, subject: 'circuit' }),
      ]
    : [];
  return [...ofVehicle, ...allParts(system).flatMap(partSizes)];
}

interface Owner {
  readonly label: string;
  readonly subject: string;
}

function partSizes(part: Part): readonly Size[] {
  const rows = partRows.filter(({ kinds }) => kinds === undefined || kinds.includes(part.kind));
  const owner = { label: part.label, subject: part.id };
  return [
    ...factSizes(part.facts, rows, owner),
    ...tubeSizes(part, owner),
    ...routeSizes(part, owner),
    ...positionSizes(part, owner),
    ...readingSizesOf(part.readings, owner),
  ];
}

function factSizes(facts: ReadonlyMap<string, Fact>, rows: readonly Row[], { label, subject }: Owner): readonly Size[] {
  return [...facts].flatMap(([key, fact]) => {
    const row = rows.find((candidate) => candidate.key === key);
    if (row === undefined || fact.kind !== 'measure' || fact.dimension !== row.size.dimension) return [];
    return [{ size: row.size, stated: fact.stated, name: `${key} of ${label}`, origin: fact.origin, subject }];
  });
}

function tubeSizes({ tube }: Part, { label, subject }: Owner): readonly Size[] {
  if (tube === undefined) return [];
  const { diameter, wall, origin } = tube;
  return [
    { size: m.tubeOd, stated: diameter, name: `tube of ${label}`, origin, subject },
    ...(wall ? [{ size: m.tubeWall, stated: wall, name: `wall of ${label}`, origin, subject }] : []),
  ];
}

function routeSizes({ route, clip }: Part, { label, subject }: Owner): readonly Size[] {
  const steps = (route?.steps ?? []).flatMap((step): Size[] => {
    const { origin } = step;
    const lengths = step.kind === 'straight' || step.kind === 'corner' ? [step.length] : [];
    const radius = step.kind === 'bend' || step.kind === 'point' ? step.radius : undefined;
    return [
      ...lengths.map((stated) => ({ size: m.measure, stated, name: `${step.kind} of ${label}`, origin, subject })),
      ...(radius ? [{ size: m.bendRadius, stated: radius, name: `bend radius of ${label}`, origin, subject }] : []),
      ...(step.kind === 'point' ? pointSizes(step.point, { label, subject }, origin) : []),
    ];
  });
  const spacing = clip?.kind === 'every' ? clip.spacing : undefined;
  if (clip === undefined || spacing === undefined) return steps;
  return [
    ...steps,
    { size: m.clipDistance, stated: spacing, name: `clip spacing of ${label}`, origin: clip.origin, subject },
  ];
}

function positionSizes({ ports }: Part, { label, subject }: Owner): readonly Size[] {
  return ports.flatMap(({ name, position }) => {
    if (position === undefined) return [];
    const owner = { label: `${label} ${name}`, subject };
    if (position.kind === 'point') return pointSizes(position.point, owner, position.origin);
    return [
      { size: m.height, stated: position.height, name: `height of ${owner.label}`, origin: position.origin, subject },
    ];
  });
}

function pointSizes(point: Point, { label, subject }: Owner, origin: Origin): readonly Size[] {
  return (['x', 'y', 'z'] as const).map((axis) => ({
    size: m.place,
    stated: point[axis],
    name: `${axis} of ${label}`,
    origin,
    subject,
  }));
}

function readingSizesOf(readings: Part['readings'], { label, subject }: Owner): readonly Size[] {
  return readings.flatMap(({ quantity, value, origin }) => {
    const size = readingSizes[quantity];
    if (size === undefined || value.dimension !== size.dimension) return [];
    return [{ size, stated: value.stated, name: `${quantity} of ${label}`, origin, subject }];
  });
}
