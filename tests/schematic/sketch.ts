/** A short way to write pictures for tests, without a circuit file behind them. */
import type {
  LineKind,
  Mark,
  Picture,
  PictureDetail,
  PictureFinding,
  PictureLine,
  PictureNode,
  PicturePort,
  Side,
  Station,
  SymbolName,
} from '../../language/schematic/picture.ts';

export interface NodeSketch {
  readonly id: string;
  readonly symbol: SymbolName;
  readonly ports?: string;
  readonly label?: string;
  readonly notes?: readonly string[];
  readonly side?: Side;
  readonly station?: Station;
  readonly details?: readonly PictureDetail[];
  readonly mark?: Mark;
  readonly findings?: readonly PictureFinding[];
}

export interface LineSketch {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly kind?: LineKind;
  readonly circuit?: number;
  readonly label?: string;
  readonly notes?: readonly string[];
  readonly mark?: Mark;
  readonly findings?: readonly PictureFinding[];
}

export const node = (sketch: NodeSketch): PictureNode => ({
  id: sketch.id,
  symbol: sketch.symbol,
  label: sketch.label ?? sketch.id,
  notes: sketch.notes ?? [],
  description: `The ${sketch.id}.`,
  side: sketch.side ?? 'centre',
  station: sketch.station ?? 'junction',
  ports: (sketch.ports ?? '')
    .split(' ')
    .filter((id) => id !== '')
    .map((text) => portOf(text)),
  details: sketch.details ?? [],
  mark: sketch.mark ?? 'kept',
  findings: sketch.findings ?? [],
});

export function line(sketch: LineSketch): PictureLine {
  return {
    id: sketch.id,
    kind: sketch.kind ?? 'run',
    from: end(sketch.from),
    to: end(sketch.to),
    label: sketch.label ?? sketch.id,
    notes: sketch.notes ?? [],
    description: `From ${sketch.from} to ${sketch.to}.`,
    mark: sketch.mark ?? 'kept',
    findings: sketch.findings ?? [],
    ...(sketch.circuit === undefined ? {} : { circuit: sketch.circuit }),
  };
}

/** `feed`, or `front-in@1` for a port on the second way through the part. */
function portOf(text: string): PicturePort {
  const [id = '', channel] = text.split('@');
  return channel === undefined ? { id } : { id, channel: Number(channel) };
}

/** `tee:feed`, `rear-left:cylinder.feed`. */
function end(text: string) {
  const [owner = '', port = ''] = text.split(':');
  return { node: owner, port };
}

export function picture(
  nodes: readonly NodeSketch[],
  lines: readonly LineSketch[],
  circuits: readonly string[],
): Picture {
  return {
    title: 'Orchard delivery van',
    state: 'planned',
    description: `${nodes.length} parts and ${lines.length} lines.`,
    circuits: circuits.map((name) => ({ name })),
    nodes: nodes.map(node),
    lines: lines.map(line),
  };
}
