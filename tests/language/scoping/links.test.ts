/** What names lead to in the tree: the same things that the model resolves them to. */
import { type AstNode, AstUtils, URI } from 'langium';
import { expect, test } from 'vitest';
import { createLinewrightServices } from '../../../language/index.ts';
import { examples } from '../../examples/examples.ts';

const garage = { uri: 'file:///garage', name: 'garage' };

/** Builds files that lie in one folder, and gives what the references of the first lead to, by name and place. */
async function linksIn(files: Readonly<Record<string, string>>, name: string) {
  const { shared, language } = createLinewrightServices();
  shared.workspace.WorkspaceManager.initialize({
    processId: null,
    rootUri: null,
    capabilities: {},
    workspaceFolders: [garage],
  });
  const documents = Object.entries(files).map(([path, text]) =>
    shared.workspace.LangiumDocuments.createDocument(URI.parse(`${garage.uri}/${path}`), text),
  );
  await shared.workspace.DocumentBuilder.build(documents, { validation: false });
  const document = shared.workspace.LangiumDocuments.getDocument(URI.parse(`${garage.uri}/${name}`));
  if (document === undefined) throw new Error('there is no such document');
  const placeOf = (node: AstNode): string => {
    const { uri } = AstUtils.getDocument(node);
    const line = language.references.NameProvider.getNameNode(node)?.range.start.line ?? -1;
    return `${uri.path.split('/').at(-1)}:${line + 1} ${node.$type}`;
  };
  return {
    unresolved: document.references.filter(({ error }) => error !== undefined).map(({ $refText }) => $refText),
    resolved: document.references.flatMap((reference) =>
      'ref' in reference && reference.ref ? [`${reference.$refText} → ${placeOf(reference.ref)}`] : [],
    ),
  };
}

const alone = (text: string, others: Readonly<Record<string, string>> = {}) =>
  linksIn({ ...others, 'test.circuit': text }, 'test.circuit');

test.each(examples.map(({ name }) => name))('%s: every name leads somewhere', async (name) => {
  const files = Object.fromEntries(examples.map((example) => [example.name, example.text]));
  expect((await linksIn(files, name)).unresolved).toEqual([]);
});

test('a port is found in the part, in its stock and in what it mirrors', async () => {
  const text = `stock three tee { ports a, b: 3/8-24 }
tee left-tee of three { port c: 3/8-24 }
mirror left-tee as right-tee
run r {
  from left-tee.a
  to right-tee.c
}
`;
  const { resolved, unresolved } = await alone(text);
  expect(unresolved).toEqual([]);
  expect(resolved).toEqual(expect.arrayContaining(['a → test.circuit:1 Port', 'c → test.circuit:2 Port']));
});

test('a sub-part is found by its name, by its kind, by its short form', async () => {
  const text = `drum-brake left {
  drum 11 in
  cylinder { port feed: 3/8-24 }
  cylinder second { port feed: 3/8-24 }
}
accept x on left.drum 2026-03-05 because "a"
accept x on left.cylinder.feed 2026-03-05 because "a"
accept x on left.second.feed 2026-03-05 because "a"
`;
  const { resolved, unresolved } = await alone(text);
  expect(unresolved).toEqual([]);
  expect(resolved).toEqual(
    expect.arrayContaining([
      'drum → test.circuit:2 Property',
      'cylinder → test.circuit:3 Part',
      'second → test.circuit:4 Part',
    ]),
  );
});

test('what a file says itself goes before what it borrows', async () => {
  const other = 'stock line run { nut 3/8-24 }\n';
  const { resolved } = await alone('use "other.circuit"\nstock line run { nut M10x1 }\nrun r of line\n', {
    'other.circuit': other,
  });
  expect(resolved).toEqual(['line → test.circuit:2 Stock']);
});

test('parts come in by name only, stock by way of others too, and nothing without a use', async () => {
  const others = {
    'near.circuit': 'use "far.circuit"\ntee lent { ports a: 3/8-24 }\ntee kept { ports a: 3/8-24 }\n',
    'far.circuit': 'stock line run { nut 3/8-24 }\n',
    'unused.circuit': 'stock secret run { nut 3/8-24 }\ntee hidden { ports a: 3/8-24 }\n',
  };
  const text = `use lent from "near.circuit"
run r of line {
  from lent.a
  to kept.a
}
run s of secret { from hidden.a }
`;
  const { unresolved } = await alone(text, others);
  expect(unresolved).toEqual(expect.arrayContaining(['kept', 'secret', 'hidden']));
  expect(unresolved).not.toContain('lent');
  expect(unresolved).not.toContain('line');
});

test('circles of use, of mirrors and of stock come to an end', async () => {
  const others = { 'a.circuit': 'use "test.circuit"\nstock one run { nut 3/8-24 }\n' };
  const text = 'use "a.circuit"\nmirror b as c\nmirror c as b\nrun r of one { from b.x }\nrun s of s { }\n';
  expect((await alone(text, others)).unresolved).toEqual(expect.arrayContaining(['x', 's']));
});
