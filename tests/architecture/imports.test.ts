import { describe, expect, it } from 'vitest';
import { ownSources, type Source } from './sources.ts';

/** Who may import whom; a room may always import itself. */
const rooms: readonly { readonly room: string; readonly may: readonly string[]; readonly rule: string }[] = [
  { room: 'language/quantity', may: [], rule: 'quantity imports nothing' },
  { room: 'language/standards', may: ['language/quantity'], rule: 'a standard is a table over quantities' },
  { room: 'language/grammar', may: ['language/quantity'], rule: 'the grammar knows words and numbers, not meanings' },
  {
    room: 'language/system',
    may: ['language/quantity', 'language/standards', 'language/grammar/generated'],
    rule: 'the model stands on quantities and standards',
  },
  {
    room: 'language/figures',
    may: ['language/quantity', 'language/standards', 'language/system'],
    rule: 'figures are computed from the model',
  },
  {
    room: 'language/rules',
    may: ['language/quantity', 'language/standards', 'language/system', 'language/figures'],
    rule: 'rules judge the model and its figures',
  },
  {
    room: 'language/schematic',
    may: ['language/quantity', 'language/standards', 'language/system', 'language/figures', 'language/rules'],
    rule: 'the picture shows the model, its figures and findings',
  },
  {
    room: 'language/scoping',
    may: ['language/quantity', 'language/grammar', 'language/system', 'language/workspace'],
    rule: 'scoping looks at the tree, not at what it comes to',
  },
  {
    room: 'language/workspace',
    may: ['language/grammar', 'language/system', 'language/figures', 'language/rules'],
    rule: 'the workspace keeps files and what they come to',
  },
  {
    room: 'language/sheets',
    may: ['language/quantity', 'language/standards', 'language/system', 'language/figures', 'language/rules'],
    rule: 'sheets print the model, its figures and findings',
  },
  {
    room: 'language/editing',
    may: [
      'language/quantity',
      'language/standards',
      'language/grammar',
      'language/system',
      'language/figures',
      'language/rules',
      'language/scoping',
      'language/workspace',
    ],
    rule: 'what an editor shows at a place is put together from what is known of it',
  },
  {
    room: 'server',
    may: ['language/index.ts', 'language/schematic'],
    rule: 'the server goes through the façade of the language',
  },
  { room: 'extension', may: ['server/protocol.ts'], rule: 'the window knows the protocol and nothing else' },
];

const sources = ownSources();

function inRoom(path: string, room: string): boolean {
  return path === room || path.startsWith(`${room}/`);
}

function trespasses(source: Source): readonly string[] {
  const home = rooms.find(({ room }) => inRoom(source.path, room));
  if (home === undefined) return [];
  return source.imports
    .filter(({ kind, target }) => kind === 'own' && !inRoom(target, home.room))
    .filter(({ target }) => !home.may.some((room) => inRoom(target, room)))
    .map(({ target }) => `${source.path} imports ${target}: ${home.rule}`);
}

describe('imports', () => {
  it('go one way', () => {
    expect(sources.flatMap(trespasses)).toEqual([]);
  });

  it('of the window from the server are types only', () => {
    const values = sources
      .filter(({ path }) => inRoom(path, 'extension'))
      .flatMap(({ path, imports }) => imports.map((each) => ({ path, ...each })))
      .filter(({ target, typeOnly }) => inRoom(target, 'server') && !typeOnly && target !== 'server/protocol.ts')
      .map(({ path, target }) => `${path} imports ${target}`);
    expect(values).toEqual([]);
  });

  it('of the tree stay in reading, scoping and the files around the grammar', () => {
    const allowed = [
      'language/system/read',
      'language/scoping',
      'language/grammar',
      'language/workspace',
      'language/services.ts',
      'language/single-file.ts',
    ];
    const elsewhere = sources
      .filter(({ path }) => inRoom(path, 'language') && !allowed.some((room) => inRoom(path, room)))
      .filter(({ imports }) => imports.some(({ target }) => target.includes('grammar/generated/ast')))
      .map(({ path }) => path);
    expect(elsewhere).toEqual([]);
  });

  it('keep node, windows and clocks out of the language', () => {
    const language = sources.filter(({ path }) => inRoom(path, 'language'));
    const outside = language.flatMap(({ path, imports }) =>
      imports
        .filter(
          ({ kind, target }) => kind === 'package' && /^(node:|vscode$|vscode-languageclient|fs$|path$)/.test(target),
        )
        .map(({ target }) => `${path} imports ${target}`),
    );
    const clocks = language
      .filter(({ text }) => /\b(Date\.now|new Date\(|Math\.random|performance\.now)/.test(text))
      .map(({ path }) => path);
    expect([...outside, ...clocks]).toEqual([]);
  });

  it('load the layout library in one file only', () => {
    const users = sources
      .filter(({ imports }) => imports.some(({ target }) => target.startsWith('elkjs')))
      .map(({ path }) => path);
    expect(users.filter((path) => !/\/elk[^/]*\.ts$/.test(path))).toEqual([]);
  });

  it('name our own files with their ending', () => {
    const bare = sources.flatMap(({ path, imports }) =>
      imports
        .filter(({ kind, target }) => kind === 'own' && !/\.(ts|json|mjs)$/.test(target))
        .map(({ target }) => `${path} imports ${target}`),
    );
    expect(bare).toEqual([]);
  });
});
