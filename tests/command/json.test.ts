import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { dimensions, siSymbols } from '../../language/quantity/index.ts';
import { run } from '../../server/command/run.ts';
import { filesOf, root } from '../architecture/sources.ts';
import { captured } from './captured.ts';
import { garage, soundCircuit, wrongNut } from './garage.ts';

const accepted = `${soundCircuit.replace('  to slave\n', '')}\naccept unused on slave 2026-03-05 because "the line comes later"\n`;
const folder = garage({
  'sound.circuit': soundCircuit,
  'wrong-nut.circuit': wrongNut,
  'accepted.circuit': accepted,
  'cut-off.circuit': soundCircuit.slice(0, soundCircuit.indexOf('52 in')),
});
const examples = filesOf('examples').filter((path) => path.endsWith('.circuit'));

function schemaOf(verb: 'check' | 'figures') {
  const schema: object = JSON.parse(
    readFileSync(join(root, 'server', 'command', 'schemas', `${verb}.schema.json`), 'utf8'),
  );
  return new Ajv2020({ strict: true, allErrors: true }).compile(schema);
}

async function json(...args: readonly string[]) {
  const terminal = captured(folder);
  await run([...args, '--format', 'json'], terminal);
  return JSON.parse(terminal.printed());
}

const named = (path: string): string => (path.startsWith('examples/') ? join(root, path) : path);

describe.each(['check', 'figures'] as const)('what %s prints as JSON', (verb) => {
  const fits = schemaOf(verb);

  it.each([...examples, 'sound.circuit', 'wrong-nut.circuit', 'accepted.circuit', 'cut-off.circuit'])(
    'fits its schema for %s, as found and as planned',
    async (path) => {
      for (const state of ['found', 'planned']) {
        fits(await json(verb, named(path), '--as', state));
        expect(fits.errors).toBeNull();
      }
    },
  );

  it('does not fit the schema when something is missing or put in', async () => {
    const good = await json(verb, 'sound.circuit');
    for (const key of Object.keys(good)) {
      const { [key]: _left, ...rest } = good;
      expect(fits(rest), key).toBe(false);
    }
    expect(fits({ ...good, schema: `linewright/${verb}/2` })).toBe(false);
    expect(fits({ ...good, more: 1 })).toBe(false);
  });
});

describe('JSON of check', () => {
  it('carries places, other places and totals', async () => {
    const { files, totals, circuit } = await json('check', 'wrong-nut.circuit');
    expect(circuit).toBe('planned');
    expect(files[0].findings[0]).toMatchObject({
      severity: 'error',
      code: 'thread-mismatch',
      subject: 'line.from',
      file: 'wrong-nut.circuit',
      line: 16,
      column: 8,
      endLine: 16,
      endColumn: 12,
      related: [{ line: 19, column: 3 }, { line: 20 }, { line: 11, column: 8 }],
    });
    expect(totals).toMatchObject({ errors: 2, warnings: 0, toMeasure: 1, accepted: 0 });
  });

  it('carries what the file accepts, and why', async () => {
    const { files } = await json('check', 'accepted.circuit');
    expect(files[0].accepted).toMatchObject([
      { code: 'unused', reason: 'the line comes later', date: '2026-03-05', acceptedAt: { line: 30, column: 1 } },
    ]);
  });

  it('fits its schema when files cannot be used', async () => {
    const fits = schemaOf('check');
    const report = await json('check', 'absent.circuit', 'sound.circuit');
    fits(report);
    expect(fits.errors).toBeNull();
    expect(report.unusable).toEqual([{ file: 'absent.circuit', reason: 'There is no such file.' }]);
  });
});

describe('JSON of figures', () => {
  it('is in SI units, whatever the file is written in', async () => {
    const { figures } = await json('figures', 'sound.circuit');
    const length = figures.find(({ id }: { id: string }) => id === 'run.centreline-length');
    // 52 in ± 1/2 in with 1 in = 25.4 mm (NIST SP 811).
    expect(length.result).toMatchObject({
      kind: 'known',
      dimension: 'length',
      unit: 'm',
      about: false,
      assumed: false,
    });
    expect(length.result.value).toBeCloseTo(1.3208, 12);
    expect(length.result.low).toBeCloseTo(1.3081, 12);
    expect(length.result.high).toBeCloseTo(1.3335, 12);
    expect(length.shown).toBe('52 in ± 1/2 in');
    const volume = figures.find(({ id }: { id: string }) => id === 'run.volume');
    expect(volume.result.unit).toBe('m³');
    expect(volume.result.value).toBeCloseTo((Math.PI / 4) * 0.0033401 ** 2 * 1.3208, 10);
  });

  it('says what an unknown figure waits for and where that belongs', async () => {
    const { figures, complete } = await json('figures', 'sound.circuit');
    const reservoir = figures.find(({ subject }: { subject: string }) => subject === 'main.reservoir');
    expect(reservoir.result).toMatchObject({
      kind: 'unknown',
      waitsFor: [{ name: 'capacity of main reservoir', at: { file: 'sound.circuit', line: 12, column: 15 } }],
    });
    expect(complete).toBe(true);
    expect((await json('figures', 'cut-off.circuit')).complete).toBe(false);
  });

  it('has a schema that knows every dimension with its unit', () => {
    const schema = JSON.parse(readFileSync(join(root, 'server', 'command', 'schemas', 'figures.schema.json'), 'utf8'));
    for (const kind of ['known', 'unknown']) {
      expect(schema.$defs[kind].properties.dimension.enum).toEqual(dimensions);
      expect(new Set(schema.$defs[kind].properties.unit.enum)).toEqual(new Set(Object.values(siSymbols)));
    }
  });
});
