/** Pictures of four vehicles of our own, for tests of the layout and the drawing. */
import type { PictureDetail } from '../../language/schematic/picture.ts';
import { type LineSketch, type NodeSketch, picture } from './sketch.ts';

const wheelSides = ['left', 'right'] as const;

function drum(
  id: string,
  side: 'left' | 'right',
  station: 'front' | 'rear',
  more: Partial<NodeSketch> = {},
): NodeSketch {
  return {
    id,
    symbol: 'drum-brake',
    side,
    station,
    ports: 'cylinder.feed',
    notes: ['drum 11 in', 'cylinder 1 in'],
    details: [detail(id, 'cylinder'), { id: `${id}.cylinder.bleeder`, kind: 'bleeder', label: 'bleeder' }],
    ...more,
  };
}

function disc(id: string, side: 'left' | 'right', station: 'front' | 'rear'): NodeSketch {
  return {
    id,
    symbol: 'disc-brake',
    side,
    station,
    ports: 'caliper.feed',
    notes: ['fixed, 2 × 48 mm'],
    details: [detail(id, 'caliper'), { id: `${id}.caliper.bleeder`, kind: 'bleeder', label: 'bleeder' }],
  };
}

const detail = (owner: string, kind: PictureDetail['kind'], name: string = kind): PictureDetail => ({
  id: `${owner}.${name}`,
  kind,
  label: name,
});

const chambers = (id: string) => [detail(id, 'chamber', 'primary'), detail(id, 'chamber', 'secondary')];

const actuation: readonly NodeSketch[] = [
  { id: 'pedal', symbol: 'pedal', station: 'actuation', notes: ['ratio 6.2'] },
  {
    id: 'reservoir',
    symbol: 'reservoir',
    station: 'actuation',
    notes: ['0.4 L'],
    ports: 'front rear',
    details: [detail('reservoir', 'compartment', 'front'), detail('reservoir', 'compartment', 'rear')],
  },
  {
    id: 'main',
    symbol: 'master-tandem',
    station: 'actuation',
    notes: ['bore 7/8 in', 'stroke 16 + 14 mm'],
    ports: 'primary.feed primary.a primary.b secondary.feed secondary.a secondary.b',
    details: chambers('main'),
  },
];

const actuationLines: readonly LineSketch[] = [
  { id: 'push-rod', from: 'pedal:rod', to: 'main:rod', kind: 'mechanical', label: '' },
  { id: 'feed-rear', from: 'reservoir:rear', to: 'main:primary.feed', kind: 'low-pressure-hose', notes: ['8 mm'] },
  { id: 'feed-front', from: 'reservoir:front', to: 'main:secondary.feed', kind: 'low-pressure-hose', notes: ['8 mm'] },
];

function axle(
  station: 'front' | 'rear',
  circuit: number,
  brake: typeof disc | typeof drum,
): { nodes: NodeSketch[]; lines: LineSketch[] } {
  const port = brake === disc ? 'caliper.feed' : 'cylinder.feed';
  return {
    nodes: wheelSides.flatMap((side): NodeSketch[] => [
      { id: `${station}-${side}-bracket`, symbol: 'bulkhead', ports: 'in out', notes: ['bulkhead'] },
      brake(`${station}-${side}`, side, station),
    ]),
    lines: wheelSides.flatMap((side): LineSketch[] => [
      {
        id: `${station}-${side}-pipe`,
        from: `${station}-tee:${side}`,
        to: `${station}-${side}-bracket:in`,
        circuit,
        notes: ['3/16 in · 28 1/2 in'],
      },
      {
        id: `${station}-${side}-hose`,
        from: `${station}-${side}-bracket:out`,
        to: `${station}-${side}:${port}`,
        kind: 'hose',
        circuit,
        notes: ['hose · 14 in'],
      },
    ]),
  };
}

/** Drum brakes all round, split front and rear; one axle hose to the rear tee. */
export function van() {
  const front = axle('front', 1, drum);
  return picture(
    [
      ...actuation,
      { id: 'front-tee', symbol: 'tee', ports: 'feed left right', notes: ['tee 3/8-24'] },
      { id: 'lamp-switch', symbol: 'switch', ports: 'port', notes: ['stop lamp'] },
      ...front.nodes,
      { id: 'axle-bracket', symbol: 'bulkhead', ports: 'in out' },
      { id: 'rear-tee', symbol: 'tee', ports: 'feed left right', mark: 'to-fit' },
      {
        id: 'residual',
        symbol: 'residual-valve',
        ports: 'in out',
        notes: ['10 psi'],
        findings: [{ code: 'x', severity: 'question', message: 'Which pressure?' }],
      },
      ...wheelSides.map((side) =>
        drum(
          `rear-${side}`,
          side,
          'rear',
          side === 'left'
            ? { findings: [{ code: 'y', severity: 'warning', message: 'No bleeder.' }], mark: 'to-fit' }
            : {},
        ),
      ),
    ],
    [
      ...actuationLines,
      {
        id: 'main-to-front-tee',
        from: 'main:secondary.b',
        to: 'front-tee:feed',
        circuit: 1,
        notes: ['3/16 in · 22 1/4 in'],
      },
      ...front.lines,
      { id: 'main-to-residual', from: 'main:primary.a', to: 'residual:in', circuit: 0, notes: ['3/16 in · 6 in'] },
      { id: 'lamp-line', from: 'lamp-switch:port', to: 'main:primary.c', circuit: 0, kind: 'screwed', label: '' },
      {
        id: 'long-line',
        from: 'residual:out',
        to: 'axle-bracket:in',
        circuit: 0,
        notes: ['3/16 in · 9 ft 4 in'],
        findings: [{ code: 'z', severity: 'error', message: 'Seat does not fit.' }],
      },
      {
        id: 'axle-hose',
        from: 'axle-bracket:out',
        to: 'rear-tee:feed',
        kind: 'hose',
        circuit: 0,
        notes: ['hose · 16 in'],
        mark: 'to-fit',
      },
      ...wheelSides.map(
        (side): LineSketch => ({
          id: `rear-${side}-pipe`,
          from: `rear-tee:${side}`,
          to: `rear-${side}:cylinder.feed`,
          circuit: 0,
          notes: ['3/16 in · 26 in'],
          mark: side === 'left' ? 'to-fit' : 'kept',
        }),
      ),
    ],
    ['rear, from the primary chamber', 'front, from the secondary chamber'],
  );
}

/** Discs in front, drums behind a proportioning valve, booster, warning valve. */
export function car() {
  const front = axle('front', 1, disc);
  const rear = axle('rear', 0, drum);
  return picture(
    [
      ...actuation,
      { id: 'booster', symbol: 'booster', station: 'actuation', notes: ['gain 4'] },
      {
        id: 'warning-valve',
        symbol: 'pressure-differential-valve',
        ports: 'front-in@1 front-out@1 rear-in@0 rear-out@0',
      },
      { id: 'front-tee', symbol: 'tee', ports: 'feed left right' },
      { id: 'rear-tee', symbol: 'tee', ports: 'feed left right' },
      { id: 'proportioner', symbol: 'proportioning-valve', ports: 'in out', notes: ['split 30 bar', 'slope 0.35'] },
      ...front.nodes,
      ...rear.nodes,
    ],
    [
      { id: 'pedal-rod', from: 'pedal:rod', to: 'booster:rod', kind: 'mechanical', label: '' },
      { id: 'booster-rod', from: 'booster:out', to: 'main:rod', kind: 'mechanical', label: '' },
      ...actuationLines.slice(1),
      { id: 'rear-feed', from: 'main:primary.a', to: 'warning-valve:rear-in', circuit: 0, notes: ['4.75 mm · 240 mm'] },
      {
        id: 'front-feed',
        from: 'main:secondary.b',
        to: 'warning-valve:front-in',
        circuit: 1,
        notes: ['4.75 mm · 260 mm'],
      },
      {
        id: 'front-main',
        from: 'warning-valve:front-out',
        to: 'front-tee:feed',
        circuit: 1,
        notes: ['4.75 mm · 310 mm'],
      },
      {
        id: 'rear-main',
        from: 'warning-valve:rear-out',
        to: 'proportioner:in',
        circuit: 0,
        notes: ['4.75 mm · 420 mm'],
      },
      { id: 'rear-long', from: 'proportioner:out', to: 'rear-tee:feed', circuit: 0, notes: ['4.75 mm · 2 610 mm'] },
      ...front.lines,
      ...rear.lines,
    ],
    ['rear', 'front'],
  );
}

/** Diagonal split: each chamber feeds one front and the opposite rear wheel. */
export function diagonal() {
  const wheels = [
    ['front', 'left', 0, 'a'],
    ['rear', 'right', 0, 'b'],
    ['front', 'right', 1, 'a'],
    ['rear', 'left', 1, 'b'],
  ] as const;
  return picture(
    [
      ...actuation,
      ...wheels.map(([station, side]) => (station === 'front' ? disc : drum)(`${station}-${side}`, side, station)),
    ],
    [
      ...actuationLines,
      ...wheels.map(
        ([station, side, circuit, outlet]): LineSketch => ({
          id: `${station}-${side}-line`,
          from: `main:${circuit === 0 ? 'primary' : 'secondary'}.${outlet}`,
          to: `${station}-${side}:${station === 'front' ? 'caliper' : 'cylinder'}.feed`,
          circuit,
          notes: ['4.75 mm · 1 200 mm'],
        }),
      ),
    ],
    ['front left and rear right', 'front right and rear left'],
  );
}

/** One pedal, one chamber, one slave. */
export function clutch() {
  return picture(
    [
      { id: 'clutch-pedal', symbol: 'pedal', station: 'actuation', notes: ['ratio 5'] },
      { id: 'clutch-master', symbol: 'master-single', station: 'actuation', ports: 'feed out', notes: ['bore 5/8 in'] },
      { id: 'pot', symbol: 'reservoir', station: 'actuation', ports: 'out' },
      { id: 'slave', symbol: 'clutch-slave', ports: 'feed', notes: ['bore 7/8 in'] },
      { id: 'bracket', symbol: 'union', ports: 'in out' },
    ],
    [
      { id: 'rod', from: 'clutch-pedal:rod', to: 'clutch-master:rod', kind: 'mechanical', label: '' },
      { id: 'pot-hose', from: 'pot:out', to: 'clutch-master:feed', kind: 'low-pressure-hose' },
      { id: 'pipe', from: 'clutch-master:out', to: 'bracket:in', circuit: 0, notes: ['1/4 in · 31 in'] },
      { id: 'hose', from: 'bracket:out', to: 'slave:feed', kind: 'hose', circuit: 0, notes: ['hose · 12 in'] },
    ],
    ['clutch'],
  );
}
