/** What is wrong with a file as text, one problem for each place, in the form in which everything else is reported. */
import type { AstNode, LangiumDocument, ParseResult } from 'langium';
import type { Fault, Token } from '../grammar/repair.ts';
import type { Mend, Problem } from '../system/problem.ts';

/** A problem with the text; no model could be read at this place. */
export interface TextProblem extends Omit<Problem, 'code'> {
  readonly code: 'syntax';
}

/** In the order of the text. Behind the first error of a line the others are echoes of it and are left out. */
export function textProblems(document: LangiumDocument): readonly TextProblem[] {
  const uri = document.uri.toString();
  const faults = lexerProblems(document.parseResult, uri);
  const taken = new Set(faults.map(({ line }) => line));
  const parsed: Placed[] = [];
  for (const error of document.parseResult.parserErrors) {
    const previous = 'previousToken' in error && isToken(error.previousToken) ? error.previousToken : undefined;
    const { start, end, line } = placeOf(error.token, previous, document);
    if (taken.has(line)) continue;
    taken.add(line);
    parsed.push({ line, problem: { code: 'syntax', message: error.message, origin: { uri, start, end } } });
  }
  const all = [...faults, ...parsed].map(({ problem }) => problem);
  return all.sort((a, b) => a.origin.start - b.origin.start || a.origin.end - b.origin.end);
}

interface Placed {
  readonly line: number;
  readonly problem: TextProblem;
}

function lexerProblems({ lexerErrors }: ParseResult<AstNode>, uri: string): readonly Placed[] {
  return lexerErrors.map((error: Fault) => {
    const start = error.offset;
    const mends = error.mends?.map(
      (mend): Mend => ({ title: mend.title, edits: [{ uri, start: mend.start, end: mend.end, text: mend.text }] }),
    );
    const origin = { uri, start, end: start + error.length };
    return {
      line: error.line ?? 1,
      problem: { code: 'syntax', message: error.message, origin, ...(mends ? { mends } : {}) },
    };
  });
}

function placeOf(token: Token, previous: Token | undefined, document: LangiumDocument) {
  if (Number.isFinite(token.startOffset) && token.tokenType.name !== 'EOF') {
    return { start: token.startOffset, end: token.startOffset + token.image.length, line: token.startLine ?? 1 };
  }
  if (previous !== undefined && Number.isFinite(previous.startOffset)) {
    const end = previous.startOffset + previous.image.length;
    return { start: previous.startOffset, end, line: previous.endLine ?? 1 };
  }
  const end = document.textDocument.getText().trimEnd().length;
  return { start: Math.max(0, end - 1), end, line: document.textDocument.positionAt(end).line + 1 };
}

function isToken(value: unknown): value is Token {
  return typeof value === 'object' && value !== null && 'image' in value && 'startOffset' in value;
}
