/** What one row of the table of part kinds says; a new kind of part is a new row. */
import type { Dimension } from '../../quantity/index.ts';

export type PartKind =
  | 'pedal'
  | 'clutch-pedal'
  | 'booster'
  | 'parking-brake'
  | 'master'
  | 'primary'
  | 'secondary'
  | 'reservoir'
  | 'compartment'
  | 'run'
  | 'hose'
  | 'feed-hose'
  | 'tee'
  | 'wye'
  | 'cross'
  | 'block'
  | 'union'
  | 'bulkhead'
  | 'adapter'
  | 'banjo-bolt'
  | 'plug'
  | 'residual-valve'
  | 'proportioning-valve'
  | 'metering-valve'
  | 'check-valve'
  | 'pressure-differential-valve'
  | 'modulator'
  | 'pressure-switch'
  | 'pedal-switch'
  | 'warning-switch'
  | 'drum-brake'
  | 'disc-brake'
  | 'clutch-slave'
  | 'actuator'
  | 'drum'
  | 'disc'
  | 'linings'
  | 'pads'
  | 'cylinder'
  | 'caliper'
  | 'adjuster'
  | 'bleeder'
  | 'parking-lever'
  | 'cable'
  | 'equaliser';

/** A quantity that a part may have. */
export interface MeasureRow<D extends Dimension = Dimension> {
  readonly value: 'measure';
  readonly key: string;
  readonly dimension: D;
  readonly meaning: string;
  /** An example as it is written. */
  readonly example: string;
}

/** A word out of a closed list. */
export interface WordRow {
  readonly value: 'word';
  readonly key: string;
  readonly words: readonly string[];
  readonly meaning: string;
}

/** A date, or free text in quotes. */
export interface NoteRow {
  readonly value: 'date' | 'text';
  readonly key: string;
  readonly meaning: string;
  readonly example: string;
}

export type PropertyRow = MeasureRow | WordRow | NoteRow;

/**
 * How fluid stands in a part.
 * `joined`: one volume behind all ports. `chamber`: one volume, pressed by a master piston. `consumer`: one volume that moves
 * a piston. `valve`: ports in and out, with the valve between. `paths`: only what the file joins with `path`.
 * `parts`: in its sub-parts. `none`: no fluid.
 */
export type FluidRule = 'joined' | 'chamber' | 'consumer' | 'valve' | 'paths' | 'parts' | 'none';

/** How many ports the kind has; `named` gives the names that the kind needs. */
export interface PortRule {
  readonly least: number;
  readonly most: number;
  readonly named?: readonly string[];
}

export type SymbolName =
  | 'pedal'
  | 'booster'
  | 'parking-brake'
  | 'master'
  | 'reservoir'
  | 'junction'
  | 'block'
  | 'union'
  | 'bulkhead'
  | 'adapter'
  | 'banjo-bolt'
  | 'plug'
  | 'residual-valve'
  | 'proportioning-valve'
  | 'metering-valve'
  | 'check-valve'
  | 'pressure-differential-valve'
  | 'modulator'
  | 'switch'
  | 'drum-brake'
  | 'disc-brake'
  | 'clutch-slave'
  | 'actuator'
  | 'line'
  | 'none';

export interface KindRow {
  readonly keyword: PartKind;
  /** In a sentence, with its article: "a tee". */
  readonly title: string;
  /** What it is and does, one or two sentences, for hover and the language reference. */
  readonly about: string;
  /** Where it may stand: by itself, or inside these kinds. */
  readonly within: readonly (PartKind | 'file')[];
  readonly variants?: readonly string[];
  readonly properties: readonly PropertyRow[];
  readonly ports: PortRule;
  readonly fluid: FluidRule;
  readonly symbol: SymbolName;
  /** The property that a short form fills: `drum 11 in` is a drum with that diameter. */
  readonly short?: MeasureRow;
}
