/** Puts in the braces that the layout of the lines shows to be missing, and takes out those that close nothing. */
import { type Fault, faultAt, type Repaired, type RepairInput, type Token, virtualToken } from './repair.ts';

/** Words that open a declaration of their own, beside the kinds of parts. */
const declarations: ReadonlySet<string> = new Set([
  'vehicle',
  'fluid',
  'stock',
  'mirror',
  'screw',
  'accept',
  'use',
  'to-fit',
  'to-remove',
]);
/** Declarations that may have a block. */
const withBlock: ReadonlySet<string> = new Set(['vehicle', 'fluid', 'stock', 'mirror', 'to-fit', 'to-remove']);
/** Words that open a statement inside a block and nothing else. */
const members: ReadonlySet<string> = new Set([
  'port',
  'ports',
  'from',
  'to',
  'tube',
  'nut',
  'flare',
  'route',
  'clip',
  'path',
  'feeds',
  'pushes',
  'acts-on',
  'load',
  'sprung',
  'rubber-mounted',
]);

/** Whether the word may open a declaration of its own. */
export const opensDeclaration = (token: Token, kinds: ReadonlySet<string>): boolean =>
  declarations.has(token.image) || kinds.has(token.image);

/** Whether the word opens a statement inside a block and can be nothing else there. */
export const opensMember = (token: Token): boolean => members.has(token.image);

/** Deeper than any vehicle, and shallow enough for the parser. */
const deepest = 40;

interface Open {
  /** The first words of what the block belongs to: "drum-brake rear-left". */
  readonly owner: string;
  /** Column at which its line begins. */
  readonly indent: number;
  readonly brace: Token;
}

export function bracesOf(tokens: readonly Token[], { types, vocabulary }: RepairInput): Repaired {
  const count = (image: string): number => tokens.reduce((sum, token) => sum + (token.image === image ? 1 : 0), 0);
  const { kinds, needs } = vocabulary;
  const kept: Token[] = [];
  const errors: Fault[] = [];
  const stack: Open[] = [];
  let missing = count('{') - count('}');
  let head: Token[] = [];
  let lineIndent = 1;
  /** Tokens before this index are in a block that is not read. */
  let skipTo = 0;
  const fault = (...of: Parameters<typeof faultAt>): void => void errors.push(faultAt(...of));

  for (const [index, token] of tokens.entries()) {
    if (index < skipTo) continue;
    const before = tokens[index - 1];
    const next = tokens[index + 1];
    const opensLine = before === undefined || before.endLine !== token.startLine;
    if (opensLine) lineIndent = token.startColumn ?? 1;
    if (token.image === '}') {
      close(token, before, opensLine);
      continue;
    }
    if (opensLine && stack.length > 0 && missing > 0 && token.startColumn === 1 && opensDeclaration(token, kinds)) {
      while (stack.length > 0) putClose(before ?? token, token);
      head = [];
    }
    if (token.image === '{' && stack.length >= deepest) {
      fault(token, `Blocks stand at most ${deepest} deep in one another; what is in this one is not read.`);
      skipTo = behindBlock(index);
      continue;
    }
    const [first] = head;
    if (stack.length === 0 && opensLine && first !== undefined && first !== token && lacksBlock(first, token))
      putOpen(before ?? token);
    if (missing < 0 && stack.length === 1 && opensLine && first?.image === 'load' && head.length === 2)
      putOpen(before ?? token);
    if (opensLine && (stack.length === 0 ? opensDeclaration(token, kinds) : true) && !continues(before)) head = [];
    if (stack.length > 0 && before?.image === '{') head = [];
    if (token.image === '{') {
      stack.push({ owner: ownerOf(head), indent: lineIndent, brace: token });
      head = [];
    } else head.push(token);
    kept.push(token);
    if (stack.length > 0 && opensLine && isBareKind(token, next) && !continues(before)) bare(token, next);
  }
  const last = tokens.at(-1);
  while (last !== undefined && stack.length > 0) putClose(last, undefined);
  return { tokens: kept, errors };

  function close(token: Token, before: Token | undefined, opensLine: boolean): void {
    head = [];
    if (isStray(token, opensLine)) {
      missing++;
      faultOfStray(token);
      return;
    }
    if (stack.length === 0) {
      faultOfStray(token);
      return;
    }
    // A brace that stands further left than the line that opened the innermost block closes an outer one.
    while (opensLine && missing > 0 && stack.length > 1 && (token.startColumn ?? 1) < (stack.at(-1)?.indent ?? 1)) {
      putClose(before ?? token, token);
    }
    stack.pop();
    kept.push(token);
  }

  /** Where there are too many, one that stands neither on the line of its { nor below where that line begins. */
  function isStray(token: Token, opensLine: boolean): boolean {
    const open = stack.at(-1);
    if (missing >= 0 || open === undefined || open.brace.startLine === token.startLine) return false;
    return !opensLine || token.startColumn !== open.indent;
  }

  function faultOfStray(token: Token): void {
    fault(token, 'This } closes nothing; take it out, or write the { that it belongs to.', [
      { title: 'Take the } out', start: token.startOffset, end: token.startOffset + 1, text: '' },
    ]);
  }

  function putClose(after: Token, beside: Token | undefined): void {
    const open = stack.pop();
    if (open === undefined) return;
    missing--;
    kept.push(virtual('}'));
    const where =
      beside === undefined ? 'at the end of the file' : `before “${beside.image}” on line ${beside.startLine}`;
    const end = after.startOffset + after.image.length;
    fault(open.brace, `The block of ${open.owner} is not closed: a } is missing ${where}.`, [
      { title: 'Write the missing }', start: end, end, text: `\n${' '.repeat(open.indent - 1)}}` },
    ]);
  }

  function putOpen(after: Token): void {
    const owner = ownerOf(head);
    stack.push({ owner, indent: head[0]?.startColumn ?? 1, brace: after });
    missing++;
    kept.push(virtual('{'));
    head = [];
    const end = after.startOffset + after.image.length;
    fault(after, `The block of ${owner} is not opened: a { is missing at the end of this line.`, [
      { title: 'Write the missing {', start: end, end, text: ' {' },
    ]);
  }

  function behindBlock(index: number): number {
    let level = 0;
    for (let at = index; at < tokens.length; at++) {
      const image = tokens[at]?.image;
      if (image === '{') level++;
      if (image === '}' && --level === 0) return at + 1;
    }
    return tokens.length;
  }

  /** A sub-part without block and name: what it is said of follows on the next line, or nothing does. */
  function bare(token: Token, next: Token | undefined): void {
    const opened = missing < 0 && next !== undefined && next.image !== '}';
    if (opened) {
      putOpen(token);
      return;
    }
    kept.push(virtual('{'), virtual('}'));
    head = [];
    const end = token.startOffset + token.image.length;
    fault(token, `\`${token.image}\` needs a block here, if only an empty one: ${token.image} { }.`, [
      { title: `Write ${token.image} { }`, start: end, end, text: ' { }' },
    ]);
  }

  function isBareKind(token: Token, next: Token | undefined): boolean {
    if (!kinds.has(token.image)) return false;
    return next === undefined || next.image === '}' || (next.startLine !== token.endLine && next.image !== '{');
  }

  function lacksBlock(first: Token, token: Token): boolean {
    if (!withBlock.has(first.image) && !kinds.has(first.image)) return false;
    if (opensDeclaration(token, kinds)) return false;
    return members.has(token.image) || needs.has(token.image) || token.tokenType.name === 'DATE';
  }

  function virtual(image: '{' | '}'): Token {
    const tokenType = types[image];
    if (tokenType === undefined) throw new Error(`The grammar has no ${image}.`);
    return virtualToken(tokenType, image);
  }
}

/** Whether the line before goes on here. */
function continues(before: Token | undefined): boolean {
  return before !== undefined && [',', '.', ':'].includes(before.image);
}

/** "drum-brake rear-left", "cylinder", or "this part" where nothing says. */
function ownerOf(head: readonly Token[]): string {
  const words = head
    .filter((token) => !['to-fit', 'to-remove', 'mirror'].includes(token.image))
    .map((token) => token.image);
  return words.length === 0 ? 'this part' : words.slice(0, 2).join(' ');
}
