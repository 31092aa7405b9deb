/** Applies the edits of a mend to a text. */
import type { Mend } from '../../language/system/problem.ts';

/** The text after the mend; edits that overlap are an error, edits in another file are too. */
export function mended(text: string, mend: Mend, uri: string): string {
  const edits = [...mend.edits].sort((a, b) => a.start - b.start || a.end - b.end);
  let result = '';
  let at = 0;
  for (const edit of edits) {
    if (edit.uri !== uri) throw new Error(`“${mend.title}” edits ${edit.uri}`);
    if (edit.start < at) throw new Error(`“${mend.title}” edits the same words twice`);
    result += text.slice(at, edit.start) + edit.text;
    at = edit.end;
  }
  return result + text.slice(at);
}
