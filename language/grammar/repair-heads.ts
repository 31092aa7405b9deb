/** Mends the head of a declaration that breaks off at the end of its line, so that it does not take the next one's first word for its name. */
import { type Fault, faultAt, type Repaired, type RepairInput, type Token, virtualToken } from './repair.ts';
import { opensDeclaration } from './repair-braces.ts';

/** What is missing, and what is done about it: a word put in, the loose word or the whole head left out. */
interface Lack {
  readonly what: string;
  readonly mend: 'put-in' | 'leave-out' | 'leave-out-all';
}

const marks: ReadonlySet<string> = new Set(['to-fit', 'to-remove']);
const links: ReadonlySet<string> = new Set(['of', 'on']);

export function headsOf(tokens: readonly Token[], { types, vocabulary: { kinds } }: RepairInput): Repaired {
  const idType = types['ID'];
  if (idType === undefined) throw new Error('The grammar has no ID.');
  const kept: Token[] = [];
  const errors: Fault[] = [];
  let depth = 0;
  let head: Token[] = [];
  for (const [index, token] of tokens.entries()) {
    const next = tokens[index + 1];
    if (token.image === '{') depth++;
    if (token.image === '}') depth = Math.max(0, depth - 1);
    kept.push(token);
    if (depth > 0 || token.image === '}') {
      head = [];
      continue;
    }
    if (token.startColumn === 1) head = [];
    head.push(token);
    if (next === undefined || next.startLine === token.endLine) continue;
    if (next.startColumn !== 1 || !opensDeclaration(next, kinds)) continue;
    const isText = token.tokenType.name === 'STRING';
    const words = isText ? head.slice(0, -1) : head;
    const lack = lackOf(words, kinds, isText);
    const last = words.at(-1);
    if (lack === undefined || last === undefined) continue;
    errors.push(faultAt(last, `Behind “${last.image}” ${lack.what} is expected.`));
    if (isText) kept.pop();
    if (lack.mend === 'put-in') kept.push(virtualToken(idType, last.image));
    else kept.splice(lack.mend === 'leave-out' ? -1 : -words.length);
  }
  return { tokens: kept, errors };
}

/** What the words of a head lack at their end; nothing where they may end there. */
function lackOf(words: readonly Token[], kinds: ReadonlySet<string>, textBehind: boolean): Lack | undefined {
  const head = words.map((token) => token.image).filter((word, index) => index > 0 || !marks.has(word));
  const [first = ''] = head;
  const [before = '', last = ''] = head.slice(-2).length === 2 ? head.slice(-2) : ['', first];
  const place: Lack = { what: last === 'of' ? 'the name of stock' : 'the name of a place', mend: 'leave-out' };
  if (first === 'use') {
    const what = 'the path of a file in quotes, for instance "stock.circuit",';
    return !textBehind && head.length === 1 ? { what, mend: 'leave-out' } : undefined;
  }
  if (first === 'mirror') {
    if (head.length < 3) return { what: 'the part, “as” and the name of the other side', mend: 'leave-out-all' };
    if (head.length === 3 && last === 'as') return { what: 'the name of the other side', mend: 'put-in' };
    return head.length === 5 && last === 'on' ? place : undefined;
  }
  if (first === 'screw') {
    if (!head.includes('into', 2))
      return { what: 'a part, “into” and the port that it goes into', mend: 'leave-out-all' };
    if (last === '.') return { what: 'the name of a port', mend: 'put-in' };
    return last === 'into' && before !== 'into' && before !== '.' ? { what: 'a port', mend: 'put-in' } : undefined;
  }
  if (!kinds.has(first)) return undefined;
  if (head.length === 1) return { what: 'a name', mend: 'put-in' };
  return head.length > 2 && links.has(last) && !links.has(before) ? place : undefined;
}
