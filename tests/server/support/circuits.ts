/** Small circuits of our own that the tests of the server open. */

export const stock = `stock line run {
  tube 3/16 in wall 0.028 in steel
  nut 3/8-24
  flare double-45
}
`;

/** One master, one line, one wheel cylinder, on the shelf of the file beside it. */
export const van = `use "stock.circuit"

vehicle van "Trial van" {
  class light-goods
  first-use 1961
  fixed frame
}

fluid dot-4

master main single on frame {
  bore 7/8 in
  stroke 1 in
  port out: 3/8-24 inverted-flare
}

run front of line {
  from main.out
  to left.cylinder.feed
  length 40 in
  clip every 12 in
}

drum-brake left on frame {
  drum 11 in
  cylinder {
    bore 1 in
    port feed: 3/8-24 inverted-flare
    bleeder {}
  }
}
`;
