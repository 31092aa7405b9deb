/** The words of the notation as the tables of kinds and facts give them, for the reading of broken text. */
import { type Vocabulary, valueNeed, wordNeeds } from '../grammar/vocabulary.ts';
import {
  fluidProperties,
  kindRows,
  loadProperties,
  type PropertyRow,
  vehicleProperties,
} from '../system/kinds/index.ts';
import { nearest } from '../system/nearest.ts';

const rows: readonly PropertyRow[] = [
  ...vehicleProperties,
  ...loadProperties,
  ...fluidProperties,
  ...kindRows.flatMap((row) => row.properties),
];

function needOf(row: PropertyRow): string {
  switch (row.value) {
    case 'measure':
      return valueNeed(row.example);
    case 'word':
      return `one of ${row.words.join(', ')}`;
    case 'text':
      return `a text in quotes, for instance ${row.example}`;
    case 'date':
      return `a date, for instance ${row.example}`;
  }
}

export const vocabulary: Vocabulary = {
  kinds: new Set(kindRows.map((row) => row.keyword)),
  needs: new Map([...wordNeeds, ...rows.map((row) => [row.key, needOf(row)] as const)]),
  nearest,
};
