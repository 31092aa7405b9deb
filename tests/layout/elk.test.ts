import { describe, expect, it } from 'vitest';
import { loadElk } from '../../language/schematic/layout/elk.ts';
import { elkOptionIds } from '../../language/schematic/layout/elk-options.ts';

describe('the layout library', () => {
  it('knows every option that it is given', async () => {
    const known = new Set(await (await loadElk()).knownOptionIds());
    expect(elkOptionIds.length).toBeGreaterThan(20);
    expect(elkOptionIds.filter((id) => !known.has(id))).toEqual([]);
  });
});
