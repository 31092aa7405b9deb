/** The page of documentation of each rule, written out of the rule itself. */
import type { Source, SourceKind } from '../standards/source.ts';
import type { Example, Rule, Severity } from './rule.ts';

/** Where the page of a rule lies, seen from the top folder of the project and of the packed extension. */
export function pagePath(code: string): string {
  return `language/rules/pages/${code}.md`;
}

const severityWords: Readonly<Record<Severity, string>> = {
  error: 'an error',
  warning: 'a warning',
  question: 'a question for the measuring list',
  information: 'information',
};

const sourceWords: Readonly<Record<SourceKind, string>> = {
  published: 'published',
  'from-memory': 'written down without the text at hand',
  'common-practice': 'common practice',
};

const caution =
  'Brakes can kill. This is an aid: local codes, the maker’s manual and licensed practice come first. Whoever is not sure of a joint does not drive on it.';

/** The page in Markdown: the same rule, the same text. */
export function rulePage(rule: Rule): string {
  const sections = [
    `# ${rule.code}`,
    `**${rule.question}**`,
    rule.why,
    `It is ${severityWords[rule.severity]} unless the message says otherwise. ${acceptWords(rule)}`,
    `Source: ${sourceText(rule.source)}`,
    '## It speaks of',
    ...rule.fires.map(exampleText),
    '## It is silent on',
    ...rule.silent.map(exampleText),
    '---',
    caution,
  ];
  return `${sections.join('\n\n')}\n`;
}

/** The list of all pages, in the order of the rules. */
export function rulesPage(rules: readonly Rule[]): string {
  const lines = rules.map((rule) => `- [${rule.code}](${rule.code}.md): ${rule.question}`);
  return ['# What is checked', '', ...lines, '', caution, ''].join('\n');
}

function acceptWords(rule: Rule): string {
  return rule.acceptable
    ? `Where it is known and wanted so, it is answered in the file: \`accept ${rule.code} on … 2026-03-05 because "…"\`.`
    : 'It cannot be accepted away: it has to be put right.';
}

const sourceText = (source: Source): string => `${source.text} (${sourceWords[source.kind]}).`;

const exampleText = ({ title, text }: Example): string => `- ${title}\n\n  \`\`\`circuit\n${indented(text)}\n  \`\`\``;

const indented = (text: string): string =>
  text
    .trimEnd()
    .split('\n')
    .map((line) => (line.trim() === '' ? '' : `  ${line.trimEnd()}`))
    .join('\n');
