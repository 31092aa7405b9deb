/** Renames what a word names, in every file that speaks of it, or says why that cannot be. */
import type { AstNode, LangiumCoreServices, LangiumDocument } from 'langium';
import { AstUtils, CstUtils } from 'langium';
import * as ast from '../grammar/generated/ast.ts';
import type { Origin } from '../system/origin.ts';
import type { UsableFiles } from '../system/read/uses.ts';
import { familyOf } from './families.ts';
import { fileNames } from './file-names.ts';
import { membersOf } from './members.ts';

export type Renameable =
  | { readonly kind: 'possible'; readonly origin: Origin; readonly name: string }
  | { readonly kind: 'refused'; readonly reason: string };

export type Renamed =
  /** Every place that has to carry the new name. */
  | { readonly kind: 'renamed'; readonly places: readonly Origin[] }
  | { readonly kind: 'refused'; readonly reason: string };

export class Renaming {
  private readonly services: LangiumCoreServices;
  private readonly files: () => UsableFiles;

  constructor(services: LangiumCoreServices, files: () => UsableFiles) {
    this.services = services;
    this.files = files;
  }

  /** Whether the word at the offset can get another name. */
  at(document: LangiumDocument, offset: number): Renameable {
    const found = this.declarationAt(document, offset);
    if (found === undefined) return refused('Nothing here has a name that could be changed.');
    const reason = whyFixed(found.declaration);
    if (reason !== undefined) return refused(reason);
    return { kind: 'possible', origin: found.origin, name: found.word };
  }

  rename(document: LangiumDocument, offset: number, newName: string): Renamed {
    const found = this.declarationAt(document, offset);
    if (found === undefined) return refused('Nothing here has a name that could be changed.');
    const { declaration, word } = found;
    const reason = whyFixed(declaration) ?? this.whyNoName(newName);
    if (reason !== undefined) return refused(reason);
    const family = familyOf(declaration, this.services);
    const clash =
      newName === word
        ? undefined
        : family.map((each) => this.clashOf(each, newName)).find((each) => each !== undefined);
    if (clash !== undefined) return refused(clash);
    const places = new Map<string, Origin>();
    for (const each of family) {
      const references = this.services.references.References.findReferences(each, { includeDeclaration: true });
      for (const { sourceUri, segment } of references) {
        const place = { uri: sourceUri.toString(), start: segment.offset, end: segment.end };
        places.set(`${place.uri} ${place.start}`, place);
      }
    }
    return { kind: 'renamed', places: [...places.values()] };
  }

  private declarationAt(document: LangiumDocument, offset: number) {
    const root = document.parseResult.value.$cstNode;
    const leaf = CstUtils.findDeclarationNodeAtOffset(root, offset, this.services.parser.GrammarConfig.nameRegexp);
    const [declaration] = leaf === undefined ? [] : this.services.references.References.findDeclarations(leaf);
    if (leaf === undefined || declaration === undefined) return undefined;
    return {
      declaration,
      word: leaf.text,
      origin: { uri: document.uri.toString(), start: leaf.offset, end: leaf.end },
    };
  }

  /** Any single word is a name, words of the notation and units included. */
  private whyNoName(name: string): string | undefined {
    const { tokens, errors, hidden } = this.services.parser.Lexer.tokenize(name, { mode: 'partial' });
    const [token, ...more] = tokens;
    const nameType = this.services.parser.Lexer.definition['NAME'];
    const isWord =
      token !== undefined &&
      token.image === name &&
      nameType !== undefined &&
      (token.tokenType.CATEGORIES ?? []).includes(nameType);
    if (isWord && more.length === 0 && errors.length === 0 && hidden.length === 0 && !name.includes('.'))
      return undefined;
    return `“${name}” cannot be a name: a name is one word that begins with a letter, with letters, digits and hyphens, for instance front-left.`;
  }

  /** What would have the same name then, as a sentence. */
  private clashOf(declaration: AstNode, newName: string): string | undefined {
    const container = declaration.$container;
    if (ast.isPort(declaration) || (ast.isPart(declaration) && !ast.isFile(container))) {
      const owner = ast.isPortGroup(container) ? container.$container : container;
      const taken = owner && membersOf(owner).has(newName);
      return taken ? `There is a port or sub-part called ${newName} in the same part already.` : undefined;
    }
    const taken = this.documentsWith(declaration).some((document) => {
      const file = document.parseResult.value;
      if (!ast.isFile(file)) return false;
      const names = fileNames(file, document.uri.toString(), this.files());
      const beside = ast.isStock(declaration)
        ? names.stocks
        : ast.isPlaceDeclaration(declaration)
          ? names.places
          : names.parts;
      return beside.has(newName);
    });
    if (!taken || ast.isVehicle(declaration) || ast.isLoad(declaration)) return undefined;
    const what = ast.isStock(declaration) ? 'stock' : ast.isPlaceDeclaration(declaration) ? 'a place' : 'a part';
    return `There is ${what} called ${newName} already.`;
  }

  private documentsWith(declaration: AstNode): readonly LangiumDocument[] {
    const documents = new Set([AstUtils.getDocument(declaration)]);
    const references = this.services.references.References.findReferences(declaration, { includeDeclaration: false });
    for (const { sourceUri } of references) {
      const document = this.services.shared.workspace.LangiumDocuments.getDocument(sourceUri);
      if (document !== undefined) documents.add(document);
    }
    return [...documents];
  }
}

/** Why this has no name that could be changed; undefined where it has one. */
function whyFixed(declaration: AstNode): string | undefined {
  if (ast.isPart(declaration) && declaration.name === undefined) {
    return `This ${declaration.kind} has no name of its own and is addressed by its kind. Write a name behind ${declaration.kind} first.`;
  }
  if (ast.isEnd(declaration))
    return `“${declaration.side}” is a word of the notation: every run and hose has these two ends.`;
  if (ast.isProperty(declaration))
    return `“${declaration.key}” is the kind of this sub-part, written short, and no name.`;
  return undefined;
}

function refused(reason: string) {
  return { kind: 'refused', reason } as const;
}
