/** The facts that a block may still say, and the words that a fact of words may take. */
import type { Block } from '../scoping/block.ts';
import {
  findKind,
  fluidProperties,
  loadProperties,
  type PropertyRow,
  vehicleProperties,
} from '../system/kinds/index.ts';
import { partIdOf } from '../system/part.ts';
import type { System } from '../system/system.ts';
import type { Offer } from './offer.ts';

/** Facts not yet said here. */
export function factOffers(block: Block, system: System): readonly Offer[] {
  if (block.kind === 'file' || block.kind === 'end') return [];
  return factRows(block, system)
    .filter(({ key }) => !block.said.has(key))
    .map((row, index) => ({
      label: row.key,
      kind: 'fact',
      detail: row.meaning,
      documentation: exampleOf(row),
      rank: 2 + index / 1000,
    }));
}

/** The words of the fact whose key stands last on the line. */
export function wordOffers(block: Block, lineBefore: string, system: System): readonly Offer[] {
  const key = /([\w-]+)\s+$/.exec(lineBefore)?.[1];
  const row = factRows(block, system).find((candidate) => candidate.key === key);
  if (row?.value !== 'word') return [];
  return row.words.map((word, index) => ({ label: word, kind: 'word', detail: row.meaning, rank: 2 + index / 1000 }));
}

function factRows(block: Block, system: System): readonly PropertyRow[] {
  switch (block.kind) {
    case 'vehicle':
      return vehicleProperties;
    case 'load':
      return loadProperties;
    case 'fluid':
      return fluidProperties;
    case 'part': {
      const part = block.path === undefined ? undefined : system.partById.get(partIdOf(block.path.split('.')));
      return findKind(part?.kind ?? block.of)?.properties ?? [];
    }
    case 'file':
    case 'end':
      return [];
  }
}

function exampleOf(row: PropertyRow): string {
  return row.value === 'word' ? `One of ${row.words.join(', ')}.` : `For instance ${row.key} ${row.example}`;
}
