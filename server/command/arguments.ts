/** Reads what stands behind a verb on the command line, and says in plain words what is wrong with it. */
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { plain } from './plain.ts';

export type Options = NonNullable<ParseArgsConfig['options']>;

export interface Wrong {
  readonly kind: 'wrong';
  readonly message: string;
}

export const wrong = (message: string): Wrong => ({ kind: 'wrong', message });

/** `parseArgs` answers a slip of the writer with an error; here it is a sentence. */
export function readArguments<O extends Options>(args: readonly string[], options: O) {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    return { kind: 'read', values, positionals } as const;
  } catch (error) {
    return wrong(sentenceFor(error, args, options));
  }
}

export type Chosen<T extends string> = { readonly kind: 'chosen'; readonly value: T } | Wrong;

/** The one of `choices` that was asked for; the first if none was. */
export function choose<T extends string>(
  option: string,
  asked: string | undefined,
  choices: readonly [T, ...T[]],
): Chosen<T> {
  if (asked === undefined) return { kind: 'chosen', value: choices[0] };
  const value = choices.find((choice) => choice === asked);
  if (value !== undefined) return { kind: 'chosen', value };
  const last = choices.at(-1) ?? '';
  return wrong(`--${option} takes ${choices.slice(0, -1).join(', ')} or ${last}, not “${plain(asked)}”.`);
}

function sentenceFor(error: unknown, args: readonly string[], options: Options): string {
  if (!(error instanceof Error)) return 'The arguments cannot be read.';
  const code = 'code' in error ? error.code : undefined;
  const [, named] = /'(-[^'\s<,]*)/.exec(error.message) ?? [];
  const known = Object.entries(options).map(([name, { short }]) => (short === undefined ? `--${name}` : `-${short}`));
  const offered = known.length > 0 ? ` There are ${[...known, '--help'].join(', ')}.` : '';
  if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION')
    return `There is no option ${plain(named ?? args.join(' '))}.${offered}`;
  if (code === 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE' && named !== undefined) {
    const takes = error.message.includes('does not take');
    return takes ? `${plain(named)} takes no value.` : `${plain(named)} needs a value behind it.`;
  }
  return 'The arguments cannot be read.';
}
