/** One thing that may be written at a place. */
export interface Offer {
  readonly label: string;
  readonly kind:
    | 'part'
    | 'port'
    | 'kind'
    | 'fact'
    | 'word'
    | 'unit'
    | 'stock'
    | 'place'
    | 'rule'
    | 'keyword'
    | 'thread';
  /** A few words beside the label. */
  readonly detail?: string;
  /** A sentence or two. */
  readonly documentation?: string;
  /** Smaller comes first. */
  readonly rank: number;
}
