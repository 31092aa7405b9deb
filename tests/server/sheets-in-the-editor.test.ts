/** Sheets, lenses, lengths and the other end of a line, asked of the server as it ships over its own streams. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CodeAction, CodeLens, Hover, InlayHint } from 'vscode-languageserver/node';
import type { SheetAnswer, SheetParams } from '../../server/protocol.ts';
import { root } from '../architecture/sources.ts';
import { type BuiltProject, buildProject } from '../support/built.ts';
import { type ConnectedEditor, connect } from './connected.ts';

let project: BuiltProject;
let editor: ConnectedEditor;
const uri = pathToFileURL(join(root, 'examples/sheets-in-the-editor.circuit')).toString();

const car = `stock line {
  tube 3/16 in wall 0.028 in copper-nickel
  nut 3/8-24
  flare double-45
  bend-radius 1 in
}
master main single {
  bore ?
  port out: 3/8-24 inverted-flare
}
tee front { ports feed, left: 3/8-24 inverted-flare }
to-fit run feed of line {
  from main.out
  to front.feed
  route straight 3 in, bend 90 deg, straight 4 1/2 in
}
run left of line {
  from front.left
  length ?
}
drum-brake brake {
  cylinder { bore 7/8 in  port feed: 3/8-24 inverted-flare }
}
`;
const lineOf = (words: string, text = car) => text.split('\n').findIndex((line) => line.includes(words));

beforeAll(async () => {
  project = buildProject();
  editor = await connect({ server: join(project.folder, 'dist/server.cjs'), options: { sheetCommands: true } });
  await editor.open(uri, car);
}, 120_000);
afterAll(async () => {
  await editor.close();
  project.remove();
});

const textDocument = { uri };
const whole = { start: { line: 0, character: 0 }, end: { line: 1000, character: 0 } };
const lenses = (of = uri): Promise<CodeLens[]> =>
  editor.connection.sendRequest('textDocument/codeLens', { textDocument: { uri: of } });
const inlays = (range = whole): Promise<InlayHint[]> =>
  editor.connection.sendRequest('textDocument/inlayHint', { textDocument, range });
const sheet = (params: Partial<SheetParams> = {}): Promise<SheetAnswer> =>
  editor.connection.sendRequest('linewright/sheet', {
    uri,
    sheet: 'lines',
    circuit: 'planned',
    format: 'body',
    ...params,
  });
const textOf = async (params: Partial<SheetParams> = {}): Promise<string> => {
  const answer = await sheet(params);
  if (answer.kind === 'none') throw new Error(answer.problem);
  return answer.text;
};

// Cut length: 3 + 4 1/2 in of straight, a quarter turn about 1 in (π/2 in = 1.571 in), and what two double flares take.
describe('a sheet', () => {
  it('comes as what stands on the page, as a whole page, as Markdown and as CSV', async () => {
    expect(await textOf()).toMatch(/^<main class="sheet sheet-lines">[\s\S]*<\/main>$/);
    expect(await textOf({ format: 'html' })).toMatch(/^<!doctype html>[\s\S]*<style>/);
    expect(await textOf({ format: 'markdown' })).toMatch(/^# Lines to make\n/);
    const [head, feed, ...more] = (await textOf({ format: 'csv' })).trimEnd().split('\r\n');
    expect(head).toMatch(/^line,from,to,tube,cut length mm/);
    expect(feed).toMatch(/^feed,main\.out,front\.feed,/);
    expect(more).toEqual([]);
  });

  it('is the one that was asked for, of the circuit that was asked for', async () => {
    const titles = ['lines', 'parts', 'measure'].map(async (name) => {
      const answer = await sheet({ sheet: name === 'lines' || name === 'parts' ? name : 'measure' });
      return answer.kind === 'made' ? answer.title : answer.problem;
    });
    expect(await Promise.all(titles)).toEqual(['Lines to make', 'Parts to buy', 'Things to measure']);
    expect(await textOf()).toContain('as planned');
    expect(await textOf({ circuit: 'found' })).toContain('as found');
    const answer = await sheet();
    expect(answer.kind === 'made' && answer.views).toEqual(['planned', 'found']);
  });

  it('follows the text, and says what of it could not be read', async () => {
    await editor.change(uri, car.replace('straight 3 in', 'straight 30 in'));
    expect(await textOf()).toContain('36 5/16 in');
    await editor.change(uri, `${car}\nrun broken {`);
    const text = await textOf();
    expect(text).toContain('Part of the file could not be read');
    expect(text).toMatch(/line \d+: /);
    await editor.change(uri, car);
    expect(await textOf()).not.toContain('could not be read');
  });

  it('is refused in words where there is none', async () => {
    const unknown = await sheet({ uri: 'file:///nowhere/else.circuit' });
    expect(unknown).toEqual({ kind: 'none', problem: 'This file is not open and lies in no open folder.' });
    const other = await editor.connection.sendRequest('linewright/sheet', {
      uri,
      sheet: 'constructor',
      circuit: 'planned',
      format: 'body',
    });
    expect(other).toEqual({ kind: 'none', problem: 'There is no sheet called constructor.' });
  });
});

describe('the lens over a file', () => {
  it('counts what stands on each sheet and leads to it', async () => {
    const found = await lenses();
    expect(found.map(({ command }) => command?.title)).toEqual([
      'Lines to make (1)',
      expect.stringMatching(/^Parts to buy \([1-9]\d*\)$/),
      'To measure (2)',
      'Schematic',
    ]);
    for (const { command, range } of found) {
      expect(command?.arguments).toEqual([uri]);
      expect(range.start.line).toBe(0);
    }
  });

  it('has as many things to measure as the sheet has rows', async () => {
    const rows = (await textOf({ sheet: 'measure', format: 'csv' })).trimEnd().split('\r\n').length - 1;
    expect((await lenses())[2]?.command?.title).toBe(`To measure (${rows})`);
  });

  it('is not over a file of stock alone', async () => {
    const stock = 'untitled:stock.circuit';
    await editor.open(stock, 'stock line { tube 3/16 in steel  nut 3/8-24  flare double-45 }\n');
    expect(await lenses(stock)).toEqual([]);
  });

  it('goes and comes with its setting, and the window is told to ask again', async () => {
    const gone = editor.refreshed('codeLens');
    await editor.set('sheetLens', false);
    await gone;
    expect(await lenses()).toEqual([]);
    const back = editor.refreshed('codeLens');
    await editor.set('sheetLens', true);
    await back;
    expect(await lenses()).toHaveLength(4);
  });

  it('counts the circuit as found where that is what the user looks at', async () => {
    const changed = editor.refreshed('codeLens');
    await editor.set('circuit', 'found');
    await changed;
    expect((await lenses())[0]?.command?.title).toBe('Lines to make (0)');
    const back = editor.refreshed('codeLens');
    await editor.set('circuit', 'planned');
    await back;
    expect((await lenses())[0]?.command?.title).toBe('Lines to make (1)');
  });

  it('is not shown by a window that has no such commands', async () => {
    const plain = await connect({ server: join(project.folder, 'dist/server.cjs') });
    try {
      await plain.open(uri, car);
      expect(await plain.connection.sendRequest('textDocument/codeLens', { textDocument })).toEqual([]);
    } finally {
      await plain.close();
    }
  });
});

describe('lengths in the text', () => {
  it('stand behind the name of each run whose cut length is known, with how it came about', async () => {
    const found = await inlays();
    expect(found).toHaveLength(1);
    const [hint] = found;
    expect(hint?.position).toEqual({ line: lineOf('run feed'), character: 'to-fit run feed'.length });
    expect(hint?.label).toBe('cut 9 5/16 in');
    expect(await textOf()).toContain('<dt>cut to</dt><dd>9 5/16 in ');
    const tooltip = typeof hint?.tooltip === 'object' ? hint.tooltip.value : '';
    expect(tooltip).toContain('centreline length');
    expect(tooltip).toContain('common practice');
  });

  it('are given for the lines in sight only', async () => {
    const before = { start: { line: 0, character: 0 }, end: { line: lineOf('run feed'), character: 0 } };
    expect(await inlays(before)).toEqual([]);
  });

  it('are switched off by one setting', async () => {
    const gone = editor.refreshed('inlayHint');
    await editor.set('inlayLengths', false);
    await gone;
    expect(await inlays()).toEqual([]);
    const back = editor.refreshed('inlayHint');
    await editor.set('inlayLengths', true);
    await back;
    expect(await inlays()).toHaveLength(1);
  });
});

it('resting on a run tells its cut length, its bends, what it holds and what it bears', async () => {
  const position = { line: lineOf('run feed'), character: 12 };
  const hover: Hover = await editor.connection.sendRequest('textDocument/hover', { textDocument, position });
  const text = typeof hover.contents === 'object' && 'value' in hover.contents ? hover.contents.value : '';
  expect(text).toMatch(/cut length 9/);
  expect(text).toMatch(/1: 90° about radius 1 in, begins at 3 in, ends at 4(\.57\d*| 9\/16) in/);
  expect(text).toMatch(/fluid in it|volume/);
  expect(text).toMatch(/burst/);
});

it('a line that leads nowhere is offered the port that its other end fits, as an answer to the finding', async () => {
  const line = lineOf('run left');
  const { diagnostics } = await editor.change(uri, `${car}\n`);
  const here = diagnostics.filter(({ code, range }) => code === 'dead-end' && range.start.line === line);
  expect(here).toHaveLength(1);
  const range = { start: { line, character: 5 }, end: { line, character: 5 } };
  const actions: CodeAction[] = await editor.connection.sendRequest('textDocument/codeAction', {
    textDocument,
    range,
    context: { diagnostics: here, triggerKind: 1 },
  });
  const [lead, ...others] = actions.filter(({ title }) => title.startsWith('Lead the other end'));
  expect(others).toEqual([]);
  expect(lead?.title).toBe('Lead the other end of left to brake.cylinder.feed');
  expect(lead?.diagnostics).toHaveLength(1);
  const [change] = lead?.edit?.documentChanges ?? [];
  expect(change !== undefined && 'edits' in change ? change.edits : []).toEqual([
    {
      range: { start: { line: line + 1, character: 17 }, end: { line: line + 1, character: 17 } },
      newText: '\n  to brake.cylinder.feed',
    },
  ]);
});
