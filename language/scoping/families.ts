/** Which declarations speak of one and the same port or sub-part: in a part, in its stock, in what mirrors it. */
import type { AstNode, LangiumCoreServices } from 'langium';
import * as ast from '../grammar/generated/ast.ts';

type Container = ast.Part | ast.Mirror | ast.Stock;

/** The declaration itself first, then every other that must be renamed with it. */
export function familyOf(declaration: AstNode, services: LangiumCoreServices): readonly AstNode[] {
  const container = containerOf(declaration);
  const name = nameIn(declaration);
  if (container === undefined || name === undefined) return [declaration];
  const family = [declaration];
  for (const other of containersLike(container, services)) {
    const same = ownMember(other, name, declaration);
    if (same !== undefined && !family.includes(same)) family.push(same);
  }
  return family;
}

function containersLike(container: Container, services: LangiumCoreServices): readonly Container[] {
  const found = new Set<Container>([container]);
  const queue = [container];
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    for (const other of counterparts(next, services)) {
      if (found.has(other)) continue;
      found.add(other);
      queue.push(other);
    }
  }
  return [...found];
}

function counterparts(node: Container, services: LangiumCoreServices): readonly Container[] {
  const related: Container[] = [];
  const base = ast.isPart(node) ? node.stock?.ref : ast.isMirror(node) ? node.source?.ref : undefined;
  if (base !== undefined && isContainer(base)) related.push(base);
  related.push(...builtOn(node, services));
  const outer = containerOf(node);
  const name = nameIn(node);
  if (outer !== undefined && name !== undefined) {
    for (const other of counterparts(outer, services)) {
      const same = ownMember(other, name, node);
      if (same !== undefined && isContainer(same)) related.push(same);
    }
  }
  return related;
}

/** Parts made of this stock, mirrors of this part, in every file. */
function builtOn(node: Container, services: LangiumCoreServices): readonly Container[] {
  const { LangiumDocuments } = services.shared.workspace;
  const references = services.references.References.findReferences(node, { includeDeclaration: false });
  return references
    .toArray()
    .map(({ sourceUri, sourcePath }) => {
      const root = LangiumDocuments.getDocument(sourceUri)?.parseResult.value;
      return root && services.workspace.AstNodeLocator.getAstNode(root, sourcePath);
    })
    .filter((source) => source !== undefined)
    .filter(isContainer)
    .filter((source) =>
      ast.isPart(source) ? source.stock?.ref === node : ast.isMirror(source) && source.source?.ref === node,
    );
}

function containerOf(node: AstNode): Container | undefined {
  for (let at = node.$container; at !== undefined; at = at.$container) if (isContainer(at)) return at;
  return undefined;
}

function isContainer(node: AstNode): node is Container {
  return ast.isPart(node) || ast.isMirror(node) || ast.isStock(node);
}

function ownMember(container: Container, name: string, like: AstNode): AstNode | undefined {
  const members = ast.isPort(like)
    ? container.members.filter(ast.isPortGroup).flatMap(({ ports }) => ports)
    : container.members.filter(ast.isPart);
  return members.find((member) => nameIn(member) === name);
}

function nameIn(node: AstNode): string | undefined {
  if (ast.isPart(node)) return node.name ?? node.kind;
  return ast.isPort(node) ? node.name : undefined;
}
