/** The parser behind completion, built with the first completion: building it takes as long as opening a file. */
import { createParser, type Grammar, LangiumCompletionParser, type Lexer } from 'langium';
import type { LangiumServices } from 'langium/lsp';

export class LateCompletionParser extends LangiumCompletionParser {
  private readonly grammarToBuild: Grammar;
  private readonly words: Lexer['definition'];
  private isBuilt = false;

  constructor(services: LangiumServices) {
    super(services);
    this.grammarToBuild = services.Grammar;
    this.words = services.parser.Lexer.definition;
  }

  override parse(input: string): ReturnType<LangiumCompletionParser['parse']> {
    if (!this.isBuilt) {
      createParser(this.grammarToBuild, this, this.words);
      this.finalize();
      this.isBuilt = true;
    }
    return super.parse(input);
  }
}
