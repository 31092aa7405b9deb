/** The picture of one system in one state: what is to be drawn, before anybody knows where. */

export type Side = 'left' | 'centre' | 'right';

/** Where along the vehicle a part belongs; `front` and `rear` are for what sits at the wheels. */
export type Station = 'actuation' | 'junction' | 'front' | 'rear';

/** What the work record says about a part: it stays, it is still to be fitted, or it is to be taken off. */
export type Mark = 'kept' | 'to-fit' | 'to-remove';

export type Severity = 'error' | 'warning' | 'information' | 'question';

export type SymbolName =
  | 'pedal'
  | 'booster'
  | 'inline-booster'
  | 'master-single'
  | 'master-tandem'
  | 'reservoir'
  | 'parking-brake'
  | 'tee'
  | 'cross'
  | 'block'
  | 'union'
  | 'bulkhead'
  | 'adapter'
  | 'banjo-bolt'
  | 'plug'
  | 'joint'
  | 'open-end'
  | 'bleeder'
  | 'residual-valve'
  | 'check-valve'
  | 'proportioning-valve'
  | 'metering-valve'
  | 'pressure-differential-valve'
  | 'opaque-block'
  | 'switch'
  | 'drum-brake'
  | 'disc-brake'
  | 'clutch-slave'
  | 'actuator';

export interface PictureFinding {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
}

/** A port as the picture names it: its path below the node, `feed`, `primary.a` or `cylinder.feed`. */
export interface PicturePort {
  readonly id: string;
  /** Index into `Picture.circuits`; absent where no chamber reaches. */
  readonly circuit?: number;
  /** Which of several ways through the part it belongs to, counted from 0 at the left; absent where there is only one. */
  readonly channel?: number;
  /** Closed on purpose, by a plug or because the file says so. */
  readonly plugged?: true;
}

/** A sub-part that shows inside the symbol of its owner. */
export interface PictureDetail {
  readonly id: string;
  readonly kind: 'cylinder' | 'caliper' | 'bleeder' | 'parking-brake' | 'chamber' | 'compartment';
  readonly label: string;
}

interface Drawn {
  /** Path of the part or run in the system; unique in the picture. */
  readonly id: string;
  readonly label: string;
  readonly notes: readonly string[];
  /** One sentence for those who cannot see the picture. */
  readonly description: string;
  readonly mark: Mark;
  readonly findings: readonly PictureFinding[];
}

export interface PictureNode extends Drawn {
  readonly symbol: SymbolName;
  readonly side: Side;
  readonly station: Station;
  readonly ports: readonly PicturePort[];
  readonly details: readonly PictureDetail[];
}

/** `feed` is a reservoir that sits on the chamber it feeds. */
export type LineKind = 'run' | 'hose' | 'low-pressure-hose' | 'feed' | 'screwed' | 'mechanical';

export interface LineEnd {
  readonly node: string;
  readonly port: string;
}

export interface PictureLine extends Drawn {
  readonly kind: LineKind;
  readonly from: LineEnd;
  readonly to: LineEnd;
  readonly circuit?: number;
}

interface PictureCircuit {
  readonly name: string;
}

export interface Picture {
  readonly title: string;
  readonly state: 'found' | 'planned';
  /** A few sentences that say what the picture shows. */
  readonly description: string;
  readonly circuits: readonly PictureCircuit[];
  readonly nodes: readonly PictureNode[];
  readonly lines: readonly PictureLine[];
}
