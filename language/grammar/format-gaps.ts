/** How much space belongs between two words of a circuit text. */

export interface Item {
  readonly start: number;
  readonly end: number;
  readonly image: string;
  /** Name of the token; `unread` for characters that are none. */
  readonly type: string;
}

export interface Gap {
  readonly before: Item | undefined;
  readonly next: Item | undefined;
  /** The space as it is. */
  readonly text: string;
}

/** Goes along through the text. */
export interface LayoutState {
  depth: number;
  /** Open round brackets. */
  brackets: number;
  /** A block was opened on this line, so what follows on it are its statements. */
  opensOnLine: boolean;
}

const step = '  ';
/** A line that begins with one of these goes on with the statement of the line before. */
const goesOn: ReadonlySet<string> = new Set(['into', 'because', 'as']);
/** A line behind one of these goes on with its statement. */
const wantsMore: ReadonlySet<string> = new Set([',', ':', '.', '±', '+/-', '..']);
const comments: ReadonlySet<string> = new Set(['ML_COMMENT', 'SL_COMMENT']);

/** The space that belongs there, and the state behind it. */
export function gapBetween(gap: Gap, state: LayoutState, newline: string): string {
  const { before, next, text } = gap;
  enter(before, state);
  if (next === undefined) return before === undefined ? '' : newline;
  if (next.image === '}' && next.type !== 'unread') state.depth = Math.max(0, state.depth - 1);
  if (before === undefined) return '';
  const lines = text.split('\n').length - 1;
  if (lines === 0) return withinLine(gap, before, next, state);
  state.opensOnLine = false;
  const isEmptyBlock = before.image === '{' && next.image === '}';
  if (isEmptyBlock) return '';
  const besideBrace = before.image === '{' || next.image === '}';
  const isContinued = state.brackets > 0 || goesOn.has(next.image) || wantsMore.has(before.image);
  const indent = step.repeat(state.depth + (isContinued ? 1 : 0));
  return newline.repeat(lines > 1 && !besideBrace ? 2 : 1) + indent;
}

function enter(before: Item | undefined, state: LayoutState): void {
  if (before === undefined || before.type === 'unread' || comments.has(before.type)) return;
  if (before.image === '{') {
    state.depth += 1;
    state.opensOnLine = true;
  }
  if (before.image === '(') state.brackets += 1;
  if (before.image === ')') state.brackets = Math.max(0, state.brackets - 1);
}

function withinLine({ text }: Gap, before: Item, next: Item, state: LayoutState): string {
  if (before.type === 'unread' || next.type === 'unread') return text;
  if (comments.has(next.type)) return text.length >= 2 && !text.includes('\t') ? text : step;
  if (next.image === ',' || next.image === ':' || next.image === ')') return '';
  if (next.image === '.' || before.image === '.' || before.image === '(') return '';
  if (before.image === '{' && next.image === '}') return '';
  if (next.type === 'UNIT' && /^[%°]/.test(next.image)) return text === '' ? '' : ' ';
  // Two statements of a block on one line stay further apart than their words.
  const setsApart =
    state.opensOnLine && text.length >= 2 && before.image !== '{' && next.image !== '}' && before.image !== ',';
  return setsApart ? step : ' ';
}
