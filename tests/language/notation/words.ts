/** The words that the grammar and the units have, taken from the grammar and the table of units themselves. */
import { AstUtils, GrammarAST } from 'langium';
import { unitWords } from '../../../language/quantity/index.ts';
import { createLinewrightServices } from '../../../language/services.ts';

const grammar = createLinewrightServices().language.Grammar;

/** A word that a name can be: it begins with a letter and holds letters, digits and hyphens. */
const isWord = (text: string): boolean => /^[A-Za-z_]/.test(text);

/** Every keyword of the grammar, in its order, punctuation too. */
export const keywords: readonly string[] = [
  ...new Set(
    AstUtils.streamAllContents(grammar)
      .filter(GrammarAST.isKeyword)
      .map((keyword) => keyword.value),
  ),
];

/** The keywords of one rule of the grammar. */
export function keywordsOf(ruleName: string): readonly string[] {
  const rule = grammar.rules.find((candidate) => candidate.name === ruleName);
  if (rule === undefined) throw new Error(`The grammar has no rule ${ruleName}.`);
  return AstUtils.streamAllContents(rule)
    .filter(GrammarAST.isKeyword)
    .map((keyword) => keyword.value)
    .toArray();
}

export const keywordsThatAreWords = keywords.filter(isWord);

/** Unit words that are written with letters, digits and hyphens alone; `mm²` and `N·m` are no words. */
export const unitsThatAreWords = unitWords.filter((word) => /^[A-Za-z_][\w-]*$/.test(word));
