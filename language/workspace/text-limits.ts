/** Says which texts are too large, or no text at all, to be read as a circuit file. */

/** Far above any circuit written by hand; larger text is not parsed. */
export const largestText = 4 * 1024 * 1024;

/** Why the text is not read, as a sentence; undefined where it is. */
export function whyUnreadable(text: string): string | undefined {
  if (text.length > largestText) return tooLarge(text.length);
  if (text.includes('\u0000')) return 'This is not a text file, so it is not read as a circuit.';
  return undefined;
}

/** The sentence for a text of that many characters or bytes. */
export function tooLarge(size: number): string {
  const megabytes = (bytes: number) => (bytes / 1024 / 1024).toFixed(1);
  return `This file has ${megabytes(size)} MB; circuit files are read up to ${megabytes(largestText)} MB. Split it and take the parts in with “use”.`;
}
