/** Records, readings and accepts: date first, a closed list of verbs, in the order of the text. */
import { describe, expect, test } from 'vitest';
import { parseErrors, readCircuit } from '../../support/read.ts';
import { keywordsOf } from './words.ts';

function recordsOf(...lines: readonly string[]) {
  const text = `hose left-hose {\n  ${lines.join('\n  ')}\n}\n`;
  expect(parseErrors(text)).toEqual([]);
  const { planned, problems } = readCircuit(text);
  return { records: planned.parts[0]?.records ?? [], readings: planned.parts[0]?.readings ?? [], problems };
}

describe('records', () => {
  test('every verb, alone and with a note', () => {
    for (const verb of keywordsOf('RecordVerb')) {
      const { records, problems } = recordsOf(`2026-03-02 ${verb}`, `2026-03-03 ${verb} "by the door"`);
      expect(problems).toEqual([]);
      expect(records).toMatchObject([
        { date: '2026-03-02', verb, note: undefined },
        { date: '2026-03-03', verb, note: 'by the door' },
      ]);
    }
  });

  test('done says what was done', () => {
    for (const work of keywordsOf('RecordAction')) {
      expect(recordsOf(`2026-04-18 done ${work} "new cups"`).records).toMatchObject([
        { verb: 'done', work, note: 'new cups' },
      ]);
    }
  });

  test('a part number, when it was bought and when it arrived', () => {
    const line = '2026-03-02 replace "cracked" number "FH 1300" bought 2026-03-09 arrived 2026-03-14';
    const { records, problems } = recordsOf(line);
    expect(problems).toEqual([]);
    expect(records).toMatchObject([
      { verb: 'replace', note: 'cracked', number: 'FH 1300', bought: '2026-03-09', arrived: '2026-03-14' },
    ]);
  });

  test('many over the years, in the order in which they stand', () => {
    const { records } = recordsOf('2019-06-01 done replace', '2026-03-02 found "dry"', '2024-05-01 keep');
    expect(records.map(({ date }) => date)).toEqual(['2019-06-01', '2026-03-02', '2024-05-01']);
  });

  test.each([
    ['2026-02-30', 'is not a date'],
    ['2026-13-01', 'is not a date'],
    ['2025-02-29', 'is not a date'],
    ['2026-03', 'lacks the day'],
  ])('%s is refused', (date, why) => {
    const { problems } = recordsOf(`${date} keep`);
    expect(problems).toMatchObject([{ code: 'bad-date', message: expect.stringContaining(why) }]);
  });

  test('the 29th of February is a date in a leap year', () => {
    expect(recordsOf('2024-02-29 keep').problems).toEqual([]);
  });

  test('they belong to a part or sub-part, never to the file', () => {
    expect(parseErrors('2026-03-01 found "oil on the floor"\n')).not.toEqual([]);
  });
});

describe('readings', () => {
  test('what was measured, at which push and after how long', () => {
    const text = `vehicle van {
      2026-03-01 pedal-travel 128 mm at 300 N
      2026-03-01 pedal-drop 4 mm at 300 N after 60 s
    }`;
    const { planned, problems } = readCircuit(text);
    expect(problems).toEqual([]);
    expect(planned.vehicle?.readings).toMatchObject([
      { quantity: 'pedal-travel', value: { stated: { value: 0.128 } }, push: { stated: { value: 300 } } },
      { quantity: 'pedal-drop', value: { stated: { value: 0.004 } }, after: { stated: { value: 60 } } },
    ]);
  });

  test('at a wheel: fluid drawn while bleeding', () => {
    const { readings, problems } = recordsOf('2026-05-16 drawn 120 mL');
    expect(problems).toEqual([]);
    expect(readings).toMatchObject([{ quantity: 'drawn', value: { stated: { value: expect.closeTo(120e-6, 12) } } }]);
  });

  test('an unknown one is answered with those that are known', () => {
    const { problems } = recordsOf('2026-05-16 pedal-travell 12 mm');
    expect(problems).toMatchObject([{ code: 'unknown-word', mends: [{ title: 'Write pedal-travel' }] }]);
  });

  test('one of the wrong dimension names both', () => {
    const { problems } = recordsOf('2026-05-16 pedal-travel 12 psi');
    expect(problems.map(({ message }) => message).join()).toMatch(/pressure.*length|length.*pressure/);
  });
});

describe('accept', () => {
  test('the circuit, a part, a port', () => {
    const { planned, problems } = readCircuit(`
      accept single-point-of-failure on circuit 2026-03-05 because "as built"
      accept clip-spacing on rear-line 2026-03-05 because "in a channel"
      accept dead-end on rear-tee.left 2026-03-05 because "gauge to come"
    `);
    expect(problems).toEqual([]);
    expect(planned.accepts).toMatchObject([
      { rule: 'single-point-of-failure', target: { kind: 'circuit' }, date: '2026-03-05', reason: 'as built' },
      { rule: 'clip-spacing', target: { kind: 'path', path: 'rear-line' } },
      { rule: 'dead-end', target: { kind: 'path', path: 'rear-tee.left' } },
    ]);
  });

  test.each([
    'accept dead-end on rear-tee 2026-03-05',
    'accept dead-end on rear-tee because "no date"',
    'accept dead-end 2026-03-05 because "no part"',
    'accept dead-end on rear-tee 2026-03-05 because',
  ])('without one of its four facts it accepts nothing: %s', (text) => {
    expect(parseErrors(text)).not.toEqual([]);
    expect(readCircuit(text).planned.accepts).toEqual([]);
  });
});
