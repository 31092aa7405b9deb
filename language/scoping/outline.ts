/** The declarations of a file as a tree: vehicle with its places and loads, stock, parts with sub-parts and ports. */
import type { AstNode, LangiumDocument } from 'langium';
import * as ast from '../grammar/generated/ast.ts';
import type { Origin } from '../system/origin.ts';
import { originOf, originOfProperty } from '../system/read/origins.ts';
import { namingProperty } from './names.ts';

export interface OutlineEntry {
  readonly kind: 'vehicle' | 'place' | 'load' | 'fluid' | 'stock' | 'part' | 'port';
  readonly name: string;
  /** A few words beside the name: the kind of part, what it mirrors. */
  readonly detail: string;
  readonly origin: Origin;
  readonly nameOrigin: Origin;
  readonly children: readonly OutlineEntry[];
}

/** In the order of the text; records and facts are left out. */
export function outlineOf(document: LangiumDocument): readonly OutlineEntry[] {
  const file = document.parseResult.value;
  return ast.isFile(file) ? file.declarations.flatMap(entriesOf) : [];
}

function entriesOf(node: AstNode): readonly OutlineEntry[] {
  if (ast.isVehicle(node)) {
    const children = [...node.places, ...node.loads].flatMap(entriesOf);
    return [entry(node, 'vehicle', node.name ?? 'vehicle', node.caption ?? '', children)];
  }
  if (ast.isPlaceDeclaration(node))
    return node.name === undefined ? [] : [entry(node, 'place', node.name, node.motion, [])];
  if (ast.isLoad(node)) return node.name === undefined ? [] : [entry(node, 'load', node.name, 'load', [])];
  if (ast.isFluid(node)) return [entry(node, 'fluid', node.grade ?? 'fluid', 'fluid', [])];
  if (ast.isStock(node)) {
    return node.name === undefined
      ? []
      : [entry(node, 'stock', node.name, `stock ${node.kind ?? 'run'}`, membersOf(node))];
  }
  if (ast.isMirror(node)) {
    return node.name === undefined
      ? []
      : [entry(node, 'part', node.name, `mirror of ${node.source?.$refText ?? '?'}`, membersOf(node))];
  }
  if (ast.isPart(node)) {
    const name = node.name ?? node.kind;
    if (name === undefined) return [];
    const detail = [node.mark, node.name === undefined ? undefined : node.kind].filter((word) => word !== undefined);
    return [entry(node, 'part', name, detail.join(' '), membersOf(node))];
  }
  if (ast.isPortGroup(node)) return node.ports.flatMap(entriesOf);
  if (ast.isPort(node)) return node.name === undefined ? [] : [entry(node, 'port', node.name, 'port', [])];
  return [];
}

function membersOf(node: ast.Part | ast.Mirror | ast.Stock): readonly OutlineEntry[] {
  return node.members.flatMap(entriesOf);
}

function entry(
  node: AstNode,
  kind: OutlineEntry['kind'],
  name: string,
  detail: string,
  children: readonly OutlineEntry[],
): OutlineEntry {
  const property = ast.isFluid(node) ? 'grade' : namingProperty(node);
  return {
    kind,
    name,
    detail,
    origin: originOf(node),
    nameOrigin: property === undefined ? originOf(node) : originOfProperty(node, property),
    children,
  };
}
