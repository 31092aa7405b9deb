/** Where in the text a fact stands, so that everything said about it can point there. */

/** A stretch of one file, in UTF-16 offsets from its start; `end` is behind the last character. */
export interface Origin {
  readonly uri: string;
  readonly start: number;
  readonly end: number;
}

/** Whether two origins are the same stretch of the same file. */
export function sameOrigin(a: Origin, b: Origin): boolean {
  return a.uri === b.uri && a.start === b.start && a.end === b.end;
}
