/** Where in the text a fact stands, so that everything said about it can point there. */

/** A stretch of one file, in UTF-16 offsets from its start; `end` is behind the last character. */
export interface Origin {
  readonly uri: string;
  readonly start: number;
  readonly end: number;
}
