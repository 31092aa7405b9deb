/** The language reference: its examples are read, its tables are those of the program. `UPDATE=1` writes the tables anew. */
import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseErrors, readCircuit } from '../../support/read.ts';
import { referenceTables } from './reference-tables.ts';
import { keywordsThatAreWords } from './words.ts';

const page = new URL('../../../language/README.md', import.meta.url);

const generated = /<!-- generated: (\w+) -->\n[\s\S]*?<!-- end -->/g;

/** The page with its tables as they are today. */
const withTables = (text: string): string =>
  text.replace(generated, (_all, name: string) => {
    const write = referenceTables[name];
    if (write === undefined) throw new Error(`There is no table called ${name}.`);
    return `<!-- generated: ${name} -->\n${write()}\n<!-- end -->`;
  });

if (process.env['UPDATE'] === '1') writeFileSync(page, withTables(readFileSync(page, 'utf8')));
const text = readFileSync(page, 'utf8');

interface Block {
  readonly line: number;
  /** What stands behind the language in the fence: `says unknown-name`, `file=shelf.circuit`. */
  readonly remark: string;
  readonly code: string;
  /** The quotation that follows, in one line. */
  readonly answer: string | undefined;
}

const blocks: readonly Block[] = [
  ...text.matchAll(/^```circuit ?(.*)\n([\s\S]*?)^```\n(?:\n> (.*(?:\n> .*)*))?/gm),
].map(([, remark = '', code = '', answer], index, all) => ({
  line: text.slice(0, all[index]?.index).split('\n').length,
  remark,
  code,
  answer: answer?.replaceAll('\n> ', ' '),
}));

const files = Object.fromEntries(
  blocks.flatMap(({ remark, code }) => {
    const name = /^file=(\S+)$/.exec(remark)?.[1];
    return name === undefined ? [] : [[name, code]];
  }),
);

describe('examples', () => {
  test('there are many, and no fence is left unread', () => {
    expect(blocks.length).toBeGreaterThan(25);
    expect(blocks).toHaveLength([...text.matchAll(/^```circuit/gm)].length);
    expect(blocks.filter(({ remark }) => !/^$|^file=\S+$|^says [a-z-]+$/.test(remark))).toEqual([]);
  });

  test.each(blocks.filter(({ remark }) => !remark.startsWith('says')).map((block) => [block.line, block] as const))(
    'line %i reads without a problem',
    (_line, { code }) => {
      expect(parseErrors(code)).toEqual([]);
      expect(readCircuit(code, files).problems).toEqual([]);
    },
  );

  test.each(blocks.filter(({ remark }) => remark.startsWith('says')).map((block) => [block.line, block] as const))(
    'line %i is answered as the page says',
    (_line, { code, remark, answer }) => {
      const { problems } = readCircuit(code, files);
      const kind = remark.slice('says '.length);
      const expected = kind === 'text' ? { text: [answer], codes: [] } : { text: [], codes: [kind] };
      expect({ text: parseErrors(code), codes: problems.map((problem) => problem.code) }).toEqual(expected);
      if (kind !== 'text') expect(problems.map(({ message }) => message)).toEqual([answer]);
    },
  );
});

describe('tables', () => {
  test('are those of the program', () => {
    expect(withTables(text)).toBe(text);
  });
  test('all of them stand on the page, once', () => {
    expect([...text.matchAll(generated)].map(([, name]) => name).sort()).toEqual(Object.keys(referenceTables).sort());
  });
});

test('every word of the grammar stands on the page', () => {
  const words = new Set(text.split(/[^\w.-]+/).map((word) => word.replace(/\.$/, '')));
  expect(keywordsThatAreWords.filter((word) => !words.has(word))).toEqual([]);
});

test('every link inside the page leads somewhere', () => {
  const anchors = [...text.matchAll(/^#+ (.*)$/gm)].map(([, head = '']) =>
    head
      .toLowerCase()
      .replace(/[^\w -]/g, '')
      .replaceAll(' ', '-'),
  );
  const links = [...text.matchAll(/\]\(#([^)]+)\)/g)].map(([, target = '']) => target);
  expect(links.filter((target) => !anchors.includes(target))).toEqual([]);
});
