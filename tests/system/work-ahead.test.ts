import { expect, it } from 'vitest';
import { allParts } from '../../language/system/system.ts';
import { workAhead } from '../../language/system/work-ahead.ts';
import { readCircuit } from '../support/read.ts';

const port = 'port out: 3/8-24 inverted-flare plugged';
const ahead = (text: string, id = 'main') => {
  const part = allParts(readCircuit(text).planned).find((each) => each.id === id);
  if (part === undefined) throw new Error(`There is no ${id}.`);
  return workAhead(part).kind;
};
const master = (records: string, mark = '') => `${mark} master main single {\n  ${port}\n  ${records}\n}\n`;

it.each([
  ['nothing was decided', '', '', 'none'],
  ['something was found and nothing decided', '2026-03-01 found "pitted"', '', 'none'],
  ['it is to be cleaned', '2026-03-01 clean', '', 'none'],
  ['it is marked to be fitted', '', 'to-fit', 'renew'],
  ['it is to be replaced', '2026-03-01 replace', '', 'renew'],
  ['it is to be resealed', '2026-03-01 reseal', '', 'reseal'],
  ['it is kept after all', '2026-03-01 replace\n  2026-03-04 keep', '', 'settled'],
  ['a mark is answered by a record that it is done', '2026-03-09 done fit', 'to-fit', 'done'],
  ['the later date counts, wherever it stands', '2026-03-09 done replace\n  2026-03-01 replace', '', 'done'],
  ['of one date the later line counts', '2026-03-01 replace\n  2026-03-01 done replace', '', 'done'],
  ['it was cleaned, and is still to be replaced', '2026-03-01 replace\n  2026-03-02 done clean', '', 'renew'],
  ['it was done and is to be replaced again', '2019-03-01 done replace\n  2026-03-02 replace', '', 'renew'],
])('where %s', (_case, records, mark, kind) => {
  expect(ahead(master(records, mark))).toBe(kind);
});

it('what a new assembly holds comes with it, unless its own record says otherwise', () => {
  const parts = allParts(
    readCircuit(
      'to-fit master main single {\n  port out: 3/8-24 inverted-flare plugged\n  reservoir { feeds main }\n  2026-03-09 done fit\n}\n',
    ).planned,
  );
  const [main, reservoir] = parts;
  if (main === undefined || reservoir === undefined) throw new Error('The parts are not there.');
  expect(workAhead(reservoir, workAhead(main)).kind).toBe('done');
});
