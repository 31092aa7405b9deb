/** Whether a move of the cursor should show in the picture: only what a person did by mouse or keyboard, and only one place. */
export interface CursorMove {
  readonly kind: number | undefined;
  readonly selections: readonly unknown[];
}

/** The editor's own numbers for where a selection came from; moves made by a command, ours among them, have others. */
const byKeyboard = 1;
const byMouse = 2;

export function asksForHighlight(move: CursorMove, marking: unknown): boolean {
  return marking === true && move.selections.length === 1 && (move.kind === byKeyboard || move.kind === byMouse);
}
