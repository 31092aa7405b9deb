/** Mends single words: a fact without its value, a number with a unit that does not exist, a kind of part that does not. */
import { type Fault, faultAt, type Repaired, type RepairInput, retyped, type Token, virtualToken } from './repair.ts';
import { opensMember } from './repair-braces.ts';

/** Behind these a line goes on. */
const goesOn: ReadonlySet<string> = new Set([',', '.', ':', '(', '±', '+/-', '..']);

export function wordsOf(tokens: readonly Token[], { text, types, vocabulary }: RepairInput): Repaired {
  const { kinds, needs, nearest } = vocabulary;
  const idType = types['ID'];
  const isWord = (token: Token | undefined): token is Token =>
    token !== undefined && /^[^\W\d]|^[\u00C0-\uD7FF]/.test(token.image);
  const isPlain = (token: Token | undefined): boolean => token?.tokenType.name === 'ID';
  const kept: Token[] = [];
  const errors: Fault[] = [];
  const fault = (...of: Parameters<typeof faultAt>): void => void errors.push(faultAt(...of));
  const rename = (token: Token, words: readonly string[]): Fault['mends'] =>
    words.map((word) => ({
      title: `Write ${word}`,
      start: token.startOffset,
      end: token.startOffset + token.image.length,
      text: word,
    }));
  let depth = 0;
  /** Tokens before this index belong to a declaration that is left out. */
  let skipTo = 0;
  for (const [index, token] of tokens.entries()) {
    if (index < skipTo) continue;
    const before = tokens[index - 1];
    const next = tokens[index + 1];
    const opensLine = before === undefined || before.endLine !== token.startLine;
    const endsLine = next === undefined || next.startLine !== token.endLine || next.image === '}';
    if (token.image === '{') depth++;
    if (token.image === '}') depth = Math.max(0, depth - 1);
    if (isUnknownUnit(token, before, next, endsLine)) {
      // The reading of quantities says what is wrong with the unit, and what dimension belongs there.
      kept.push(retyped(token, types['UNIT']));
      continue;
    }
    if (isPlain(token) && /^M\d+(\.\d+)?$/.test(token.image) && (before?.image === ':' || before?.image === 'nut')) {
      // A metric size without its pitch: the reading of threads says what is missing.
      kept.push(retyped(token, types['METRIC_THREAD']));
      continue;
    }
    const opensStatement = opensLine ? !goesOn.has(before?.image ?? '') : before?.image === '{';
    if (token.image === '.' && endsLine && isWord(before) && before.endLine === token.startLine) {
      fault(token, `Behind “${before.image}.” the name of a port or sub-part is expected.`);
      continue;
    }
    const opensPart = opensStatement || before?.image === 'to-fit' || before?.image === 'to-remove';
    if (depth === 0 && idType !== undefined && opensPart && lacksName(index)) {
      fault(token, `The ${token.image} needs a name, for instance ${token.image} front-left.`);
      kept.push(token, virtualToken(idType, token.image));
      continue;
    }
    const need = needs.get(token.image);
    if (depth > 0 && opensStatement && endsLine && need !== undefined && !kinds.has(token.image) && !isValue(next)) {
      fault(token, `\`${token.image}\` needs ${need}.`);
      continue;
    }
    const head = opensStatement && isPlain(token) && !needs.has(token.image) ? kindHead(index) : undefined;
    if (head !== undefined) {
      const close = nearest(token.image, kinds);
      const [only] = close;
      const hint =
        close.length > 0
          ? `Did you mean ${close.join(' or ')}?`
          : 'Kinds are words such as master, run, hose, tee or drum-brake.';
      fault(token, `“${token.image}” is no kind of part. ${hint}`, rename(token, close));
      const type = only === undefined ? undefined : Object.values(types).find((each) => each.PATTERN === only);
      if (type !== undefined) kept.push(retyped(token, type));
      else skipTo = endOfBlock(index);
      continue;
    }
    kept.push(token);
  }
  return { tokens: kept, errors };

  function isUnknownUnit(token: Token, before: Token | undefined, next: Token | undefined, endsLine: boolean): boolean {
    if (before?.tokenType.name !== 'NUMBER' || !isPlain(token) || needs.has(token.image)) return false;
    if (before.endLine !== token.startLine) return false;
    if (!/^[ \t]*$/.test(text.slice(before.startOffset + before.image.length, token.startOffset))) return false;
    // A word with a value of its own behind it is another fact on the same line.
    return (
      endsLine || !(next?.tokenType.name === 'NUMBER' || next?.image === '?' || next?.image === 'about' || isWord(next))
    );
  }

  /** `tee on frame {`: a place or stock right behind the kind of a part that stands by itself. */
  function lacksName(index: number): boolean {
    const [kind, link, name, after] = [tokens[index], tokens[index + 1], tokens[index + 2], tokens[index + 3]];
    if (kind === undefined || !kinds.has(kind.image) || !['on', 'of'].includes(link?.image ?? '')) return false;
    if (!isWord(name) || name.startLine !== kind.startLine || ['on', 'of'].includes(name.image)) return false;
    return after === undefined || after.image === '{' || after.startLine !== kind.startLine;
  }

  /** Whether the next line goes on with the value that is looked for, rather than with a statement of its own. */
  function isValue(next: Token | undefined): boolean {
    return (
      next !== undefined && next.image !== '}' && !needs.has(next.image) && !kinds.has(next.image) && !opensMember(next)
    );
  }

  /** Whether an unknown word stands where a kind belongs: before a block, or at the head of a declaration. */
  function kindHead(index: number): true | undefined {
    const [first, second] = [tokens[index + 1], tokens[index + 2]];
    const line = tokens[index]?.startLine;
    if (first?.image === '{' && first.startLine === line) return true;
    if (first === undefined || first.startLine !== line || !isWord(first)) return undefined;
    if (second?.image === '{' && second.startLine === line) return true;
    if (depth > 0) return undefined;
    return isWord(second) && second?.startLine === line && ['on', 'of', 'single', 'tandem', 'as'].includes(second.image)
      ? true
      : undefined;
  }

  /** The index behind a declaration: behind its block, or at the next line where it has none. */
  function endOfBlock(index: number): number {
    const line = tokens[index]?.startLine;
    let level = 0;
    for (let at = index + 1; at < tokens.length; at++) {
      const token = tokens[at];
      if (token === undefined) break;
      if (level === 0 && token.startLine !== line) return at;
      if (token.image === '{') level++;
      if (token.image === '}') {
        level--;
        if (level <= 0) return level < 0 ? at : at + 1;
      }
    }
    return tokens.length;
  }
}
