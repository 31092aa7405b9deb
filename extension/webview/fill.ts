/** Puts values into the places `{0}`, `{1}` of a sentence. */
export function fill(sentence: string, ...values: readonly (string | number)[]): string {
  return sentence.replace(/\{(\d+)\}/g, (place, index) => String(values[Number(index)] ?? place));
}
