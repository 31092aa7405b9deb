/** Says what the parser expected in the words of the trade: a thread, a value with its unit, a kind of part. */
import { AbstractParserErrorMessageProvider, DefaultLexerErrorMessageProvider } from 'langium';
import type { Token } from './repair.ts';
import type { Vocabulary } from './vocabulary.ts';

type TokenType = Token['tokenType'];

interface Mismatch {
  readonly expected: TokenType;
  readonly actual: Token;
  readonly previous: Token | undefined;
  readonly ruleName: string;
}

/** What belongs where a rule begins, as a sentence begins. */
const expectedByRule: Readonly<Record<string, string>> = {
  Thread: 'a thread such as 3/8-24, M10x1 or 1/8 NPT, or ? if you do not know it',
  ThreadForm: 'the form of the thread behind its size: UNF, UNC, NPT, BSP or BSF, as in 1/8 NPT',
  Connection: 'a thread such as 3/8-24 with its seat, for instance 3/8-24 inverted-flare, or ? if you do not know it',
  FeatureWord: 'a word such as male, female, inverted-flare, bubble, washer, swivel or plugged',
  Nut: 'a thread such as 3/8-24, or ? if you do not know it',
  Flare: 'double-45, bubble, single-37, single-45 or none, or ? if you do not know it',
  FlareForm: 'double-45, bubble, single-37, single-45 or none, or ? if you do not know it',
  FluidGrade: 'a fluid: dot-3, dot-4, dot-5, dot-5.1 or mineral',
  Material: 'a material: steel, coated-steel, copper-nickel, stainless, copper or aluminium',
  Variant: 'single, tandem, fixed or sliding',
  RouteItem: 'a step of the route: straight, bend, turn, corner, coil or point',
  Clip: '“every” and a distance or “at” and distances, for instance clip every 450 mm',
  Point: 'three lengths in brackets, for instance (0.2 m, 0.4 m, 0.3 m)',
  Position: '“height” and a length, or three lengths in brackets',
  RecordVerb: 'found, keep, clean, reseal, replace, remove, fit or done',
  RecordAction: 'clean, reseal, replace, remove or fit',
  Reference: 'the name of a part or port, for instance main.a',
  Mirror: 'mirror, the part, “as” and the new name, for instance mirror rear-left as rear-right',
  Kind: 'a kind of part such as master, run, hose, tee or drum-brake',
  Use: 'a path in quotes, for instance use "stock.circuit"',
  End: 'what it joins, for instance from main.a',
  Member: 'a fact, a port, a sub-part or a record',
  VehicleMember: 'a fact, a place, a load or a record',
};

const recordVerbs = ['found', 'keep', 'clean', 'reseal', 'replace', 'remove', 'fit', 'done'];

const acceptForm =
  'An accept names the rule, the part or “circuit”, a date and a reason, for instance accept dead-end on front-tee 2026-03-05 because "gauge to come".';

/** What a single token stands for. */
const expectedByToken: Readonly<Record<string, string>> = {
  NAME: 'a name',
  ID: 'a word',
  STRING: 'a text in quotes',
  DATE: 'a date such as 2026-03-02',
  NUMBER: 'a number',
  METRIC_THREAD: 'a thread such as M10x1',
  INCH_THREAD: 'a thread such as 3/8-24',
  UNIT: 'a unit',
};

export class ParserMessages extends AbstractParserErrorMessageProvider {
  private readonly vocabulary: Vocabulary;

  constructor(vocabulary: Vocabulary) {
    super();
    this.vocabulary = vocabulary;
  }

  override buildMismatchTokenMessage({ expected, actual, previous, ruleName }: Mismatch): string {
    const rule = plain(ruleName);
    if (expected.name === 'EOF') return opening(actual);
    if (expected.name === '}' && isEnd(actual)) return 'A } is missing at the end of the file.';
    if (expected.name === '}') return stray(actual, rule);
    if (expected.name === ':') {
      return `${found(actual)} A colon and the thread follow the names of ports, for instance ports a, b: 3/8-24 inverted-flare.`;
    }
    if (expected.name === 'NAME' && this.vocabulary.kinds.has(previous?.image ?? '')) {
      return `The ${previous?.image} needs a name, for instance ${previous?.image} front-left.`;
    }
    if (rule === 'Accept') return acceptForm;
    const what =
      rule === 'Use' && expected.name === 'STRING'
        ? 'the path of a file in quotes, for instance "stock.circuit",'
        : (expectedByToken[expected.name] ?? `“${wordOf(expected)}”`);
    return `${after(previous, `${what} is expected`)}${instead(actual)}.`;
  }

  override buildNotAllInputParsedMessage({ firstRedundant }: { firstRedundant: Token; ruleName: string }): string {
    return opening(firstRedundant);
  }

  override buildNoViableAltMessage(options: {
    actual: Token[];
    previous: Token | undefined;
    ruleName: string;
  }): string {
    return this.expectation(options);
  }

  override buildEarlyExitMessage(options: { actual: Token[]; previous: Token | undefined; ruleName: string }): string {
    return this.expectation(options);
  }

  private expectation({
    actual,
    previous,
    ruleName,
  }: {
    actual: Token[];
    previous: Token | undefined;
    ruleName: string;
  }) {
    const rule = plain(ruleName);
    const [first] = actual;
    const need = previous && this.vocabulary.needs.get(previous.image);
    const takesValue = ['Value', 'Measure', 'Amount', 'Term', 'Unknown', 'Property'].includes(rule);
    if (rule === 'Accept') return acceptForm;
    if (takesValue && previous !== undefined) {
      const [verb] =
        need === undefined && first?.tokenType.name === 'STRING'
          ? this.vocabulary.nearest(previous.image, recordVerbs)
          : [];
      if (verb !== undefined) return `“${previous.image}” is not the word of a record. Did you mean ${verb}?`;
      if (need !== undefined) return `\`${previous.image}\` needs ${need}${first ? instead(first) : ''}.`;
      const what = 'a value with its unit, for instance 7/8 in, or ? if you do not know it';
      return `${after(previous, `${what}, is expected`)}${first ? instead(first) : ''}.`;
    }
    if (rule === 'Marked' || rule === 'MarkedMember') {
      const isMark = previous?.image === 'to-fit' || previous?.image === 'to-remove';
      const what = isMark
        ? 'a kind of part, a port, mirror or screw is expected'
        : 'a name or a block in { } is expected';
      return `${after(previous, what)}${first ? instead(first) : ''}.`;
    }
    const what = expectedByRule[rule];
    if (what !== undefined) return `${after(previous, `${what}, is expected`)}${first ? instead(first) : ''}.`;
    return first ? stray(first, rule) : 'The file breaks off here.';
  }
}

export class LexerMessages extends DefaultLexerErrorMessageProvider {
  override buildUnexpectedCharactersMessage(fullText: string, startOffset: number, length: number): string {
    const text = fullText.slice(startOffset, startOffset + Math.min(length, 20));
    const shown = [...text]
      .map((c) =>
        /[\p{C}\p{Z}]/u.test(c) ? `U+${(c.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}` : c,
      )
      .join('');
    return `“${shown}${length > 20 ? '…' : ''}” has no meaning here; take it out, or put it in quotes if it is text.`;
  }

  override buildUnableToPopLexerModeMessage(): string {
    return 'This has no meaning here.';
  }
}

/** Rule names carry an invisible mark in the parser. */
function plain(ruleName: string): string {
  return ruleName.replace(/\W/g, '');
}

function isEnd(token: Token): boolean {
  return token.tokenType.name === 'EOF';
}

function wordOf(type: TokenType): string {
  return typeof type.PATTERN === 'string' ? type.PATTERN : type.name.replace(/:KW$/, '');
}

function found(token: Token): string {
  return isEnd(token) ? 'The file breaks off here.' : `“${token.image}” does not belong here.`;
}

function instead(token: Token): string {
  return isEnd(token) ? '; the file breaks off here' : `, not “${token.image}”`;
}

function after(previous: Token | undefined, rest: string): string {
  const image = previous?.image;
  if (image === undefined || image === '') return rest.charAt(0).toUpperCase() + rest.slice(1);
  return `Behind “${image}” ${rest}`;
}

function opening(token: Token): string {
  const declarations = 'vehicle, fluid, stock, mirror, screw, accept, use or a kind of part such as master, run or tee';
  return `“${token.image}” does not begin a declaration; these do: ${declarations}.`;
}

function stray(token: Token, rule: string): string {
  const belongs =
    rule === 'Vehicle' || rule === 'Fluid' || rule === 'Load'
      ? 'Here stand facts, places, loads and readings, one on a line.'
      : 'Here stand facts, ports, sub-parts and records, one on a line.';
  return `${found(token)} ${belongs}`;
}
