/** What a reader gets at a real server: diagnostics, hover, completion, rename, layout, outline, fixes, pictures. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  CodeAction,
  CompletionItem,
  Diagnostic,
  DocumentSymbol,
  Hover,
  Location,
  LocationLink,
  Position,
  SelectionRange,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver/node';
import type { PartAtAnswer, PictureAnswer } from '../../server/protocol.ts';
import { stock, van } from './support/circuits.ts';
import { atMark, openWindow, positionAt, textIn, type Window } from './support/window.ts';

let w: Window;
beforeAll(async () => {
  w = await openWindow({ files: { 'stock.circuit': stock, 'other.circuit': van.replaceAll('main', 'chief') } });
  await w.open('van.circuit', van);
});
afterAll(async () => {
  await w.end();
});

/** Types the text and asks at its mark. */
async function askAt<R>(method: string, marked: string, params: object = {}): Promise<R> {
  const { text, position } = atMark(marked);
  await w.type('van.circuit', text);
  return w.ask<R>(method, 'van.circuit', { position, ...params });
}

const edited = (find: string, replacement: string): string => {
  expect(van).toContain(find);
  return van.replace(find, replacement);
};

/** The text behind edits of one document. */
function withEdits(text: string, edits: readonly TextEdit[]): string {
  const lines = text.split('\n');
  const offset = ({ line, character }: Position): number =>
    lines.slice(0, line).reduce((sum, each) => sum + each.length + 1, 0) + character;
  const sorted = [...edits].sort((a, b) => offset(b.range.start) - offset(a.range.start));
  return sorted.reduce(
    (now, { range, newText }) => now.slice(0, offset(range.start)) + newText + now.slice(offset(range.end)),
    text,
  );
}

describe('diagnostics', () => {
  const find = (diagnostics: readonly Diagnostic[], code: string) => diagnostics.find((each) => each.code === code);

  test('underline the word and name the rule', async () => {
    const text = edited('to left.cylinder.feed', 'to left.cylinder.fed');
    const wrong = find(await w.type('van.circuit', text), 'unknown-name');
    expect(wrong?.source).toBe('linewright');
    expect(wrong && textIn(text, wrong.range)).toBe('fed');
    expect(wrong?.message).toContain('feed');
  });

  test('say once what the linker would repeat', async () => {
    const text = edited('from main.out', 'from nowhere.out');
    const about = (await w.type('van.circuit', text)).filter(({ message }) => String(message).includes('nowhere'));
    expect(about).toHaveLength(1);
  });

  test('point to the other place that a finding is about', async () => {
    const text = edited('port feed: 3/8-24 inverted-flare', 'port feed: M10x1 bubble');
    const misfit = find(await w.type('van.circuit', text), 'thread-mismatch');
    const files = misfit?.relatedInformation?.map(({ location }) => location.uri.split('/').at(-1));
    expect(files).toContain('stock.circuit');
  });

  test('about a used file stand at the line that uses it, and say where', async () => {
    await w.open('stock.circuit', stock.replace('3/16 in wall', '3/16 psi wall'));
    const diagnostics = await w.type('van.circuit', `${van}\n`);
    const wrong = find(diagnostics, 'quantity');
    expect(wrong?.range.start.line).toBe(0);
    expect(wrong?.message).toMatch(/^In stock\.circuit: /);
    expect(wrong?.relatedInformation?.[0]?.location.uri).toBe(w.uriOf('stock.circuit'));
    await w.type('stock.circuit', stock);
  });

  test('count columns in UTF-16 units, with µ and an emoji before them', async () => {
    const text = edited('drum 11 in', '/* 5 µm 🚐 */ drum 11 parsec');
    const wrong = (await w.type('van.circuit', text)).find(({ message }) => String(message).includes('parsec'));
    expect(wrong && textIn(text, wrong.range)).toBe('parsec');
    const line = text.split('\n').find((each) => each.includes('parsec'));
    expect(wrong?.range.start.character).toBe(line?.indexOf('parsec'));
  });

  test('follow the setting that says which circuit is meant', async () => {
    const text = edited('run front of line', 'to-remove run front of line');
    await w.type('van.circuit', text);
    const found = w.nextDiagnostics('van.circuit');
    w.changeSettings({ circuit: 'found' });
    expect(find(await found, 'unfed-wheel')).toBeUndefined();
    const planned = w.nextDiagnostics('van.circuit');
    w.changeSettings({ circuit: 'planned' });
    expect(find(await planned, 'unfed-wheel')).toBeDefined();
  });
});

describe('hover', () => {
  const hover = async (marked: string): Promise<{ value: string; covers: string }> => {
    const answer = await askAt<Hover | null>('textDocument/hover', marked);
    const contents = answer?.contents;
    const value = typeof contents === 'object' && 'value' in contents ? contents.value : '';
    return { value, covers: answer?.range ? textIn(atMark(marked).text, answer.range) : '' };
  };

  test('on a run tells its figures and how each came about', async () => {
    const { value, covers } = await hover(edited('run front', 'run fr¦ont'));
    expect(covers).toBe('front');
    expect(value).toContain('a run of tube');
    expect(value).toContain('cut length');
    expect(value).toContain('flare allowance');
    expect(value).toMatch(/fluid in it [\d.]+ mL/);
    expect(value).toContain('Pressed by main');
  });

  test('on a reference tells the port', async () => {
    const { value, covers } = await hover(edited('to left.cylinder.feed', 'to left.cylinder.fe¦ed'));
    expect(covers).toBe('feed');
    expect(value).toContain('3/8-24 female');
    expect(value).toContain('front.to');
  });

  test.each([
    ['a number', 'bore 7/¦8 in', '7/8 in', ['22.23 mm', '0.875 in']],
    ['a unit', 'bore 7/8 i¦n', '7/8 in', ['22.23 mm']],
  ])('on %s tells the quantity in both families of units', async (_, marked, covers, words) => {
    const told = await hover(edited('bore 7/8 in', marked));
    expect(told.covers).toBe(covers);
    for (const word of words) expect(told.value).toContain(word);
  });

  test('on a thread tells its sizes and what it goes with', async () => {
    const { value } = await hover(edited('port out: 3/8-24', 'port out: 3/8¦-24'));
    expect(value).toContain('9.525 mm');
    expect(value).toContain('24 threads to the inch');
    expect(value).toContain('3/16 in');
    expect(value).toContain('M10x1');
  });

  test.each([
    ['a keyword', 'fluid dot-4', 'flu¦id dot-4', 'brake fluid'],
    ['a seat', 'inverted-flare\n}\n\nrun', 'inverted-¦flare\n}\n\nrun', 'cone standing in the bottom'],
    ['a fact', 'stroke 1 in', 'str¦oke 1 in', 'travel of the piston'],
    ['a place', 'fixed frame', 'fixed fra¦me', 'On it'],
    ['stock', 'of line', 'of li¦ne', 'front'],
  ])('on %s tells what it means', async (_, find, marked, words) => {
    expect((await hover(edited(find, marked))).value).toContain(words);
  });

  test('makes no markup of what a file says', async () => {
    const evil = 'vehicle v¦an "<img src=x onerror=alert(1)> [x](command:evil) **b** `c`"';
    const { value } = await hover(edited('vehicle van "Trial van"', evil));
    expect(value).toContain('&lt;img');
    expect(value).not.toContain('<');
    expect(value).not.toMatch(/(?<!\\)\]\(/);
    expect(value).toContain('\\`c\\`');
  });

  test('answers nothing in white space', async () => {
    expect((await hover(`¦${van}`.replace('¦use', '\n¦\nuse'))).value).toBe('');
  });
});

describe('completion', () => {
  const offers = async (marked: string): Promise<readonly CompletionItem[]> => {
    const answer = await askAt<{ items: CompletionItem[] } | null>('textDocument/completion', marked);
    return [...(answer?.items ?? [])].sort((a, b) => ((a.sortText ?? '') < (b.sortText ?? '') ? -1 : 1));
  };
  const labels = async (marked: string) => (await offers(marked)).map(({ label }) => label);

  test('between declarations offers declarations, and only kinds that stand by themselves', async () => {
    const offered = await labels(edited('fluid dot-4', '¦\nfluid dot-4'));
    expect(offered).toEqual(expect.arrayContaining(['master', 'run', 'vehicle', 'accept', 'to-fit']));
    for (const inner of ['cylinder', 'linings', 'bore', 'port', 'ratio']) expect(offered).not.toContain(inner);
  });

  test('in a part offers what its kind can have and has not said', async () => {
    const offered = await labels(edited('    bleeder {}', '    ¦'));
    expect(offered).toEqual(expect.arrayContaining(['second-bore', 'ends', 'bleeder', 'port']));
    for (const other of ['bore', 'tube', 'route', 'ratio', 'master']) expect(offered).not.toContain(other);
  });

  test('behind a number offers units of the dimension that belongs there, and nothing else', async () => {
    const offered = await labels(edited('stroke 1 in', 'stroke 1 ¦'));
    expect(offered).toEqual(expect.arrayContaining(['mm', 'in']));
    for (const other of ['bar', 'kg', 'bore', 'port']) expect(offered).not.toContain(other);
  });

  test('for an end offers free ports that fit first, then those that do not, then those that are taken', async () => {
    const two = edited('port out: 3/8-24 inverted-flare', 'port a: M10x1 bubble\n  port z: 3/8-24 inverted-flare');
    const offered = await offers(two.replace('from main.out', 'from ¦'));
    expect(offered.map(({ label }) => label)).toEqual(['main.z', 'main.a', 'left.cylinder.feed']);
    expect(offered[0]?.detail).toMatch(/^fits: /);
    expect(offered[1]?.detail).toMatch(/^does not fit: /);
    expect(offered[1]?.documentation).toContain('M10x1');
    expect(offered[2]?.detail).toMatch(/^taken by front\.to/);
  });

  test('behind a dot offers what is inside', async () => {
    expect(await labels(edited('to left.cylinder.feed', 'to left.¦'))).toEqual(
      expect.arrayContaining(['cylinder', 'cylinder.feed']),
    );
  });

  test.each([
    ['the words of a fact', 'class light-goods', 'class ¦', ['car', 'light-goods', 'other']],
    ['stock of the kind', 'run front of line', 'run front of ¦', ['line']],
    ['places', 'master main single on frame', 'master main single on ¦', ['frame']],
    ['variants', 'master main single', 'master main ¦', ['single', 'tandem']],
    ['fluids', 'fluid dot-4', 'fluid ¦', ['dot-3', 'dot-4', 'dot-5', 'mineral']],
    ['rules', 'fluid dot-4', 'fluid dot-4\n\naccept ¦', ['dead-end', 'no-bleeder']],
  ])('offers %s', async (_, find, marked, expected) => {
    expect(await labels(edited(find, marked))).toEqual(expect.arrayContaining(expected));
  });

  test('offers the nuts that are made for the tube, the usual one first', async () => {
    const [first, ...others] = await offers(edited('  length 40 in', '  nut ¦'));
    expect(first?.label).toBe('3/8-24');
    expect(others.map(({ label }) => label)).not.toContain('7/16-24 UNC');
    expect(others.map(({ label }) => label)).not.toContain('5/16-28');
  });

  test('goes on in the second half of a word', async () => {
    expect(await labels(edited('  stroke 1 in\n', '  stroke 1 in\n  eff¦\n'))).toEqual(['efficiency']);
  });

  test.each([
    ['a comment', 'fluid dot-4', 'fluid dot-4 // ¦'],
    ['a text', '"Trial van"', '"Trial ¦van"'],
  ])('offers nothing in %s', async (_, find, marked) => {
    expect(await labels(edited(find, marked))).toEqual([]);
  });

  test('works below a declaration that is broken', async () => {
    const broken = edited('vehicle van', 'tee { ( } 12 12\n\nvehicle van').replace('class light-goods', 'class ¦');
    expect(await labels(broken)).toContain('light-goods');
  });
});

describe('rename', () => {
  const rename = (marked: string, newName: string) => askAt<WorkspaceEdit>('textDocument/rename', marked, { newName });

  test('changes every place in every file that speaks of it, open or not', async () => {
    const marked = edited('of line', 'of li¦ne');
    const { changes } = await rename(marked, 'shelf-line');
    const files = Object.keys(changes ?? {}).map((uri) => uri.split('/').at(-1));
    expect(files.sort()).toEqual(['other.circuit', 'stock.circuit', 'van.circuit']);
    expect(withEdits(van, changes?.[w.uriOf('van.circuit')] ?? [])).toBe(edited('of line', 'of shelf-line'));
    expect(withEdits(stock, changes?.[w.uriOf('stock.circuit')] ?? [])).toBe(
      stock.replace('stock line', 'stock shelf-line'),
    );
  });

  test('takes port, stock and mirror along, whichever says it', async () => {
    const text = `stock three tee { ports feed, left, right: 3/8-24 inverted-flare }
tee front-tee of three { port left: 3/8-24 inverted-flare plugged }
mirror front-tee as back-tee { port left: 3/8-24 inverted-flare }
run a { from front-tee.left }
run b { from back-tee.left }
`;
    const { changes } = await rename(text.replace('feed, left', 'feed, le¦ft'), 'port-side');
    expect(withEdits(text, changes?.[w.uriOf('van.circuit')] ?? [])).toBe(text.replaceAll('left', 'port-side'));
  });

  test.each(['in', 'bar', 'run', 'from', 'to-fit'])('takes %s, a word of the notation, as a name', async (name) => {
    const { changes } = await rename(edited('master main', 'master ma¦in'), name);
    const text = withEdits(van, changes?.[w.uriOf('van.circuit')] ?? []);
    const diagnostics = await w.type('van.circuit', text);
    expect(diagnostics.filter(({ code }) => code === 'syntax' || code === 'unknown-name')).toEqual([]);
  });

  test.each([
    ['a name that is none', 'master ma¦in', '9 not valid!', 'cannot be a name'],
    ['a name with a dot', 'master ma¦in', 'a.b', 'cannot be a name'],
    ['an empty name', 'master ma¦in', '', 'cannot be a name'],
    ['a name that is taken', 'master ma¦in', 'left', 'a part called left'],
  ])('refuses %s with the reason', async (_, marked, name, reason) => {
    await expect(rename(edited('master main', marked), name)).rejects.toThrow(reason);
  });

  test('refuses a sub-part that is addressed by its kind, and says what to do', async () => {
    const marked = edited('to left.cylinder.feed', 'to left.cyl¦inder.feed');
    await expect(rename(marked, 'x')).rejects.toThrow('Write a name behind cylinder first');
    await expect(askAt('textDocument/prepareRename', marked)).rejects.toThrow('addressed by its kind');
  });
});

describe('finding the way', () => {
  test('definition leads to the port, also in another file’s stock', async () => {
    const [port] = await askAt<LocationLink[]>('textDocument/definition', edited('from main.out', 'from main.o¦ut'));
    expect(port?.targetUri).toBe(w.uriOf('van.circuit'));
    const [line] = await askAt<LocationLink[]>('textDocument/definition', edited('of line', 'of li¦ne'));
    expect(line?.targetUri).toBe(w.uriOf('stock.circuit'));
    expect(line && textIn(stock, line.targetSelectionRange)).toBe('line');
  });

  test('definition of a sub-part without a name leads to its kind, of a short form to its word', async () => {
    const marked = edited('to left.cylinder.feed', 'to left.cyl¦inder.feed');
    const [cylinder] = await askAt<LocationLink[]>('textDocument/definition', marked);
    expect(cylinder && textIn(van, cylinder.targetSelectionRange)).toBe('cylinder');
    const drum = `${van}\naccept magnitude on left.dr¦um 2026-03-05 because "measured twice"\n`;
    const [short] = await askAt<LocationLink[]>('textDocument/definition', drum);
    expect(short && textIn(van, short.targetSelectionRange)).toBe('drum');
  });

  test('references and highlights are all places of the name', async () => {
    const marked = edited('master main', 'master ma¦in');
    const context = { includeDeclaration: true };
    const references = await askAt<Location[]>('textDocument/references', marked, { context });
    expect(references.map(({ range }) => textIn(van, range))).toEqual(['main', 'main']);
    expect(await askAt<unknown[]>('textDocument/documentHighlight', marked)).toHaveLength(2);
  });

  test('the outline has parts with sub-parts and ports, and no records', async () => {
    await w.type('van.circuit', edited('    bleeder {}', '    bleeder {}\n    2026-03-02 found "dry"'));
    const outline = await w.ask<DocumentSymbol[]>('textDocument/documentSymbol', 'van.circuit');
    expect(outline.map(({ name }) => name)).toEqual(['van', 'dot-4', 'main', 'front', 'left']);
    const [cylinder] = outline.at(-1)?.children ?? [];
    expect(cylinder?.name).toBe('cylinder');
    expect(cylinder?.children?.map(({ name }) => name)).toEqual(['feed', 'bleeder']);
  });

  test('symbols of all files are found by name', async () => {
    const found = await w.connection.sendRequest<{ name: string }[]>('workspace/symbol', { query: 'chief' });
    expect(found.map(({ name }) => name)).toEqual(['chief']);
  });

  test('a use is a link to its file', async () => {
    const text = van;
    await w.type('van.circuit', text);
    const links = await w.ask<{ target: string; range: Parameters<typeof textIn>[1] }[]>(
      'textDocument/documentLink',
      'van.circuit',
    );
    expect(links.map(({ target, range }) => [target, textIn(text, range)])).toEqual([
      [w.uriOf('stock.circuit'), 'stock.circuit'],
    ]);
  });

  test('a selection widens from the number to the quantity, the fact, the part', async () => {
    const { text, position } = atMark(edited('bore 7/8 in', 'bore 7/¦8 in'));
    await w.type('van.circuit', text);
    const [selection] = await w.ask<SelectionRange[]>('textDocument/selectionRange', 'van.circuit', {
      positions: [position],
    });
    const widening: string[] = [];
    for (let at: SelectionRange | undefined = selection; at !== undefined; at = at.parent)
      widening.push(textIn(text, at.range));
    expect(widening.slice(0, 3)).toEqual(['7/8', '7/8 in', 'bore 7/8 in']);
    expect(widening[3]).toMatch(/^master main[\s\S]*}$/);
  });

  test('blocks fold, and words are coloured by what they are', async () => {
    await w.type('van.circuit', van);
    expect((await w.ask<unknown[]>('textDocument/foldingRange', 'van.circuit')).length).toBeGreaterThan(4);
    const { data } = await w.ask<{ data: number[] }>('textDocument/semanticTokens/full', 'van.circuit');
    const types = w.greeting.capabilities.semanticTokensProvider?.legend.tokenTypes ?? [];
    expect(types[data[3] ?? -1]).toBe('keyword');
    expect(new Set(data.filter((_, index) => index % 5 === 3).map((type) => types[type]))).toEqual(
      new Set([
        'keyword',
        'string',
        'namespace',
        'property',
        'number',
        'enumMember',
        'class',
        'variable',
        'parameter',
        'struct',
      ]),
    );
  });
});

describe('layout of the text', () => {
  const format = async (text: string): Promise<string> => {
    await w.type('van.circuit', text);
    const options = { tabSize: 2, insertSpaces: true };
    return withEdits(text, await w.ask<TextEdit[]>('textDocument/formatting', 'van.circuit', { options }));
  };

  test('a text that is laid out stays as it is', async () => {
    expect(await format(van)).toBe(van);
  });

  test('indentation, spaces and empty lines are put right, comments stay', async () => {
    const messy = van
      .replaceAll('  ', '\t')
      .replace('bore 7/8 in', 'bore   7/8in   // as stamped')
      .replace('port out:', 'port out :')
      .replace('fluid dot-4\n', '\n\n\nfluid   dot-4\n');
    expect(await format(messy)).toBe(edited('bore 7/8 in', 'bore 7/8 in   // as stamped'));
  });

  test('it works beside an error and leaves what it cannot read', async () => {
    const broken = edited('  bore 7/8 in', '      bore 7/8 in @@  %%');
    expect(await format(broken)).toBe(edited('  bore 7/8 in', '  bore 7/8 in @@  %%'));
  });
});

describe('fixes', () => {
  const actionsAt = async (text: string, at: string, only?: readonly string[]): Promise<CodeAction[]> => {
    const diagnostics = await w.type('van.circuit', text);
    const start = positionAt(text, text.indexOf(at));
    const range = { start, end: positionAt(text, text.indexOf(at) + at.length) };
    return w.ask('textDocument/codeAction', 'van.circuit', {
      range,
      context: { diagnostics, ...(only ? { only } : {}) },
    });
  };
  const apply = (text: string, action: CodeAction | undefined): string =>
    withEdits(text, action?.edit?.changes?.[w.uriOf('van.circuit')] ?? []);

  test('a name is corrected to the nearest one', async () => {
    const text = edited('to left.cylinder.feed', 'to left.cylinder.fed');
    const action = (await actionsAt(text, 'fed')).find(({ title }) => title === 'Write feed');
    expect(action?.kind).toBe('quickfix');
    expect(action?.diagnostics).toHaveLength(1);
    expect(apply(text, action)).toBe(van);
  });

  test('a missing brace is written', async () => {
    const text = edited('    bleeder {}\n  }\n}', '    bleeder {}\n  }');
    const actions = await actionsAt(text, 'drum-brake left on frame {');
    expect(
      apply(
        text,
        actions.find(({ title }) => title.startsWith('Write the missing')),
      ),
    ).toBe(van);
  });

  test('a finding is answered with an accept at the end of the file', async () => {
    const text = edited('    bleeder {}\n', '');
    const action = (await actionsAt(text, 'cylinder {')).find(({ title }) => title.startsWith('Accept'));
    expect(apply(text, action)).toMatch(
      /\n\naccept no-bleeder on (?:left\S*|circuit) \d{4}-\d{2}-\d{2} because "…"\n$/,
    );
  });

  test('all that can only be meant one way is mended at once, on save, without diagnostics', async () => {
    const text = van
      .replace('bore 7/8 in', 'bore 7/8 inch')
      .replace('stroke 1 in', 'stroke 1 inches')
      .replace('length 40 in', 'length 2 pints');
    await w.type('van.circuit', text);
    const whole = { start: { line: 0, character: 0 }, end: positionAt(text, text.length) };
    const [action, ...others] = await w.ask<CodeAction[]>('textDocument/codeAction', 'van.circuit', {
      range: whole,
      context: { diagnostics: [], only: ['source.fixAll'] },
    });
    expect(others).toEqual([]);
    expect(action?.kind).toBe('source.fixAll.linewright');
    expect(apply(text, action)).toBe(van.replace('length 40 in', 'length 2 pints'));
  });
});

describe('pictures', () => {
  const picture = (params: object = {}): Promise<PictureAnswer> =>
    w.connection.sendRequest('linewright/picture', {
      uri: w.uriOf('van.circuit'),
      circuit: 'planned',
      theme: 'light',
      whenBroken: 'say-so',
      ...params,
    });

  test('a picture comes with its parts, its views and a placement for the next', async () => {
    await w.type('van.circuit', edited('run front', 'to-fit run front'));
    const answer = await picture();
    if (answer.kind !== 'drawn') throw new Error(answer.message);
    expect(answer.svg).toMatch(/^<svg[\s\S]*<\/svg>/);
    expect(answer.title).toBe('Trial van');
    expect(answer.views).toEqual(['planned', 'found']);
    for (const { id } of answer.parts) expect(answer.svg).toContain(`data-id="${id}"`);
    expect(answer.parts.map(({ id }) => id)).toEqual(['main', 'front', 'left']);
    expect(answer.parts[1]).toMatchObject({ kind: 'line', joined: ['main', 'left'] });
    const again = await picture({ previous: answer.placement });
    expect(again.kind === 'drawn' && again.placement).toBe(answer.placement);
  });

  test('the window is told that a picture may have changed, for the version that was read', async () => {
    const before = w.pictureNews.length;
    await w.type('van.circuit', `${van}\n`);
    await picture();
    const news = w.pictureNews.slice(before).filter(({ uri }) => uri === w.uriOf('van.circuit'));
    expect(news.length).toBeGreaterThan(0);
    const answer = await picture();
    expect(answer.kind === 'drawn' && answer.version).toBe(news.at(-1)?.version);
  });

  test('broken text says so, with the place, or is drawn as far as it goes', async () => {
    await w.type('van.circuit', `${van}\ntee`);
    const broken = await picture();
    expect(broken.kind).toBe('broken');
    const rest = await picture({ whenBroken: 'draw-what-is-left' });
    expect(rest.kind === 'drawn' && rest.broken?.location.range.start.line).toBe(van.split('\n').length);
  });

  test('nothing to draw is said in words', async () => {
    await w.type('van.circuit', 'fluid dot-4\n');
    expect(await picture()).toMatchObject({ kind: 'none', reason: 'empty' });
    expect(await picture({ uri: 'file:///nowhere/at-all.circuit' })).toMatchObject({
      kind: 'none',
      reason: 'unknown-document',
    });
  });

  test('any placement that the window hands over is taken or left', async () => {
    await w.type('van.circuit', van);
    for (const previous of ['', '{', '[]', '{"main":{"x":"a"}}', '{"__proto__":{"x":1,"y":1}}', 'x'.repeat(1000)]) {
      expect((await picture({ previous })).kind, previous).toBe('drawn');
    }
  });

  test('a part is located in the text, and found under the cursor', async () => {
    await w.type('van.circuit', van);
    const uri = w.uriOf('van.circuit');
    const place = await w.connection.sendRequest<Location | null>('linewright/locate', { uri, id: 'left' });
    expect(place && textIn(van, place.range)).toBe('left');
    expect(await w.connection.sendRequest('linewright/locate', { uri, id: 'gone' })).toBeNull();
    const at = (find: string): Promise<PartAtAnswer> =>
      w.connection.sendRequest('linewright/partAt', { uri, position: positionAt(van, van.indexOf(find) + 1) });
    expect(await at('bore 1 in')).toEqual({ id: 'left' });
    expect(await at('length 40')).toEqual({ id: 'front' });
    expect(await at('vehicle')).toEqual({});
  });
});
