/** A master, one line and a wheel cylinder: the circuit in which the rules about joints show what they mean. */

export interface ExampleLine {
  /** The master's port. */
  readonly port: string;
  readonly tube?: string;
  readonly nut: string;
  readonly flare: string;
  /** What stands behind `from main.out`. */
  readonly atMain?: string;
}

/** The text of the circuit; the wheel cylinder's port always fits the line. */
export function exampleLine({ port, tube = '3/16 in', nut, flare, atMain = '' }: ExampleLine): string {
  const seat = flare === 'bubble' ? 'bubble' : flare === 'single-37' ? '37-degree' : 'inverted-flare';
  return `master main single {
  bore 3/4 in
  port out: ${port}
}

run line {
  tube ${tube} wall 0.028 in steel
  nut ${nut}
  flare ${flare}
  from main.out${atMain === '' ? '' : ` ${atMain}`}
  to left.cylinder.feed
}

drum-brake left {
  cylinder {
    port feed: ${nut} ${seat}
    bleeder {}
  }
}
`;
}
