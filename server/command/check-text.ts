/** Prints checked files for people: findings line by line, what is to be measured, and how many of each. */

import { type Finding, type Severity, type State, stateWords } from '../../language/index.ts';
import { titleOf, type Unusable, where } from './circuit-file.ts';
import { type CheckedFile, type Tally, tallyOf } from './findings.ts';
import { plain } from './plain.ts';
import { aligned } from './table.ts';
import type { Paint } from './terminal.ts';
import { caution, counted } from './words.ts';

export interface CheckReport {
  readonly state: State;
  readonly checked: readonly CheckedFile[];
  readonly unusable: readonly Unusable[];
}

export function checkText(report: CheckReport, paint: Paint): string {
  const files = report.checked.map((file) =>
    textOf([
      ...findingLines(file, report.state, paint),
      ...measuringLines(file.circuit, paint),
      tallyLine(file, paint),
    ]),
  );
  const total = report.checked.length > 1 ? [textOf([totalText(report, paint)])] : [];
  return [...files, ...total, textOf([paint('quiet', caution)])].join('\n');
}

const textOf = (lines: readonly string[]): string => `${lines.join('\n')}\n`;

/** What was looked at and what is wrong with it, worst or not, in the order of the text. */
export function findingLines({ circuit, findings }: CheckedFile, state: State, paint: Paint): readonly string[] {
  const place = circuit.placeOf;
  const lines = [paint('strong', `${plain(titleOf(circuit))}, ${stateWords[state]}`), ''];
  for (const finding of findings) {
    lines.push(findingLine(finding, where(place(finding.origin)), paint));
    for (const { message, origin } of finding.related ?? []) {
      lines.push(paint('quiet', `    ${where(place(origin))} ${plain(message)}`));
    }
  }
  return findings.length > 0 ? [...lines, ''] : lines;
}

/** How many of each. */
export function tallyLine({ circuit, findings, accepted }: CheckedFile, paint: Paint): string {
  const tally = [tallyText(tallyOf(findings), paint), acceptedText(accepted.length)].filter((text) => text !== '');
  return `${plain(circuit.file)}: ${tally.join('; ')}`;
}

function findingLine({ severity, code, message }: Finding, place: string, paint: Paint): string {
  return `${place} ${paint(severity, severity)} ${paint('quiet', code)}: ${plain(message)}`;
}

/** The measuring list; nothing where all is known. */
export function measuringLines({ reading, placeOf }: CheckedFile['circuit'], paint: Paint): readonly string[] {
  const { toMeasure } = reading;
  if (toMeasure.length === 0) return [];
  const rows = toMeasure.map(({ part, fact, assumed, origin }) => [
    where(placeOf(origin)),
    plain(`${fact} of ${part}`),
    assumed ? 'assumed for now' : 'not known',
  ]);
  return [paint('strong', `To be measured (${toMeasure.length})`), ...aligned(rows, { indent: '  ', gap: '  ' }), ''];
}

const severities: readonly (readonly [Severity, one: string, many: string])[] = [
  ['error', 'error', 'errors'],
  ['warning', 'warning', 'warnings'],
  ['question', 'question', 'questions'],
  ['information', 'remark', 'remarks'],
];

function tallyText(tally: Tally, paint: Paint): string {
  const there = severities.filter(
    ([severity]) => severity === 'error' || severity === 'warning' || tally[severity] > 0,
  );
  const words = there.map(([severity, one, many]) => {
    const text = counted(tally[severity], one, many);
    return tally[severity] > 0 ? paint(severity, text) : text;
  });
  return tally.error + tally.warning === 0 ? paint('good', words.join(', ')) : words.join(', ');
}

function acceptedText(count: number): string {
  return count === 0 ? '' : `${counted(count, 'finding')} accepted in the file`;
}

function totalText({ checked, unusable, state }: CheckReport, paint: Paint): string {
  const tally = tallyOf(checked.flatMap(({ findings }) => findings));
  const left = unusable.length === 0 ? '' : `; ${counted(unusable.length, 'file')} could not be checked`;
  return `${counted(checked.length, 'file')} ${stateWords[state]}: ${tallyText(tally, paint)}${left}`;
}
