/** What a file may build on: its own stock and parts, and what other files lend it. */
import * as ast from '../../grammar/generated/ast.ts';
import { kindRow } from '../kinds/index.ts';
import { nearest } from '../nearest.ts';
import type { DraftSources } from './draft.ts';
import { originOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';

/** Why a used file cannot be had; each answer is a sentence of its own. */
export type UseFailure = 'missing' | 'outside' | 'directory' | 'not-relative' | 'itself' | 'unreadable';

export type UsedFile = { readonly uri: string; readonly file: ast.File } | { readonly failure: UseFailure };

/** Hands out the parsed files that a `use` names; whoever calls keeps them in the workspace. */
export interface UsableFiles {
  find(fromUri: string, path: string): UsedFile;
}

export interface Sources extends DraftSources {
  /** Parts of other files taken in by name. */
  readonly used: readonly ast.Part[];
  readonly uses: readonly string[];
}

const failureWords: Readonly<Record<UseFailure, (path: string) => string>> = {
  missing: (path) => `There is no file “${path}” beside this one; check the path.`,
  outside: (path) => `“${path}” lies outside the open folder; only files inside it are used.`,
  directory: (path) => `“${path}” is a folder; name a circuit file in it.`,
  'not-relative': (path) =>
    `“${path}” is not a relative path; write it from this file, for instance "stock.circuit" or "../stock.circuit".`,
  itself: () => 'A file does not use itself; take this line out.',
  unreadable: (path) => `“${path}” cannot be read as a circuit file.`,
};

/** Gathers stock from every used file, and from the files those use; a file that was seen is not gone into again. */
export function sourcesOf(file: ast.File, uri: string, files: UsableFiles, notes: ReadingNotes): Sources {
  const stocks = new Map<string, ast.Stock>();
  const parts = new Map<string, ast.Part | ast.Mirror>();
  const used: ast.Part[] = [];
  const uses: string[] = [];
  const seen = new Set([uri]);
  const lend = (node: ast.File, nodeUri: string, depth: number): void => {
    for (const use of node.uses) {
      if (use.path === undefined) continue;
      const found = files.find(nodeUri, use.path);
      if ('failure' in found) {
        if (depth === 0)
          notes.problems.push({
            code: 'use-failed',
            message: failureWords[found.failure](use.path),
            origin: originOfProperty(use, 'path'),
          });
        continue;
      }
      if (depth === 0) takeParts(use, found.file, used, notes);
      if (!uses.includes(found.uri)) uses.push(found.uri);
      if (seen.has(found.uri)) continue;
      seen.add(found.uri);
      for (const stock of found.file.declarations.filter(ast.isStock)) {
        if (stock.name !== undefined && !stocks.has(stock.name)) stocks.set(stock.name, stock);
      }
      lend(found.file, found.uri, depth + 1);
    }
  };
  lend(file, uri, 0);
  noteOwn(file, stocks, parts, notes);
  for (const part of used) if (part.name !== undefined && !parts.has(part.name)) parts.set(part.name, part);
  noteUnknownStock(file, stocks, notes);
  return { stock: (name) => stocks.get(name), part: (name) => parts.get(name), used, uses };
}

/** The file's own stock and parts go before what others lend. */
function noteOwn(
  file: ast.File,
  stocks: Map<string, ast.Stock>,
  parts: Map<string, ast.Part | ast.Mirror>,
  notes: ReadingNotes,
): void {
  const own = new Map<string, ast.Stock>();
  for (const node of file.declarations) {
    if (ast.isStock(node) && node.name !== undefined) {
      if (own.has(node.name)) {
        notes.problems.push({
          code: 'duplicate',
          message: `Two kinds of stock are called ${node.name}; give one another name.`,
          origin: originOfProperty(node, 'name'),
        });
      } else own.set(node.name, node);
    }
    if ((ast.isPart(node) || ast.isMirror(node)) && node.name !== undefined && !parts.has(node.name))
      parts.set(node.name, node);
  }
  for (const [name, stock] of own) stocks.set(name, stock);
}

function takeParts(use: ast.Use, file: ast.File, used: ast.Part[], notes: ReadingNotes): void {
  const there = file.declarations.filter(ast.isPart);
  for (const [index, reference] of use.parts.entries()) {
    const part = there.find((candidate) => candidate.name === reference.$refText);
    if (part) used.push(part);
    else {
      const close = nearest(
        reference.$refText,
        there.map((candidate) => candidate.name).filter((name) => name !== undefined),
      );
      const origin = originOfProperty(use, 'parts', index);
      notes.problems.push({
        code: 'unknown-name',
        message: `“${use.path}” has no part called “${reference.$refText}”${close.length > 0 ? `. Did you mean ${close.join(' or ')}?` : '.'}`,
        origin,
        mends: close.map((name) => ({ title: `Write ${name}`, edits: [{ ...origin, text: name }] })),
      });
    }
  }
}

function noteUnknownStock(file: ast.File, stocks: ReadonlyMap<string, ast.Stock>, notes: ReadingNotes): void {
  const visit = (node: ast.Part): void => {
    noteOtherKind(node, stocks, notes);
    if (node.stock && !stocks.has(node.stock.$refText)) {
      const close = nearest(node.stock.$refText, stocks.keys());
      const origin = originOfProperty(node, 'stock');
      notes.problems.push({
        code: 'unknown-name',
        message: `There is no stock called “${node.stock.$refText}”${close.length > 0 ? `. Did you mean ${close.join(' or ')}?` : '; declare it with “stock” or use a file that has it.'}`,
        origin,
        mends: close.map((name) => ({ title: `Write ${name}`, edits: [{ ...origin, text: name }] })),
      });
    }
    node.members.filter(ast.isPart).forEach(visit);
  };
  file.declarations.filter(ast.isPart).forEach(visit);
}

/** Stock of one kind makes no part of another. */
function noteOtherKind(node: ast.Part, stocks: ReadonlyMap<string, ast.Stock>, notes: ReadingNotes): void {
  const stock = node.stock && stocks.get(node.stock.$refText);
  if (stock === undefined || node.kind === undefined) return;
  const kind = stock.kind ?? 'run';
  if (kind === node.kind) return;
  notes.problems.push({
    code: 'misplaced',
    message: `${stock.name} is stock for ${kindRow(kind).title}; it makes no ${node.kind}.`,
    origin: originOfProperty(node, 'stock'),
    related: [{ message: 'the stock', origin: originOfProperty(stock, 'name') }],
  });
}
