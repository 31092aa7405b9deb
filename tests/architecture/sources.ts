/** The project's own source files and what each of them imports. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export interface Source {
  /** Path from the root of the project, with forward slashes. */
  readonly path: string;
  readonly text: string;
  readonly imports: readonly Import[];
}

export interface Import {
  /** For our own files the path from the root, else the name of the package. */
  readonly target: string;
  readonly kind: 'own' | 'package';
  /** True where only types come over. */
  readonly typeOnly: boolean;
}

/** Files under version control, new ones included. */
export function filesOf(...patterns: readonly string[]): readonly string[] {
  const listed = execFileSync(
    'git',
    ['ls-files', '-z', '--cached', '--others', '--exclude-standard', '--', ...patterns],
    {
      cwd: root,
      encoding: 'utf8',
    },
  );
  return [...new Set(listed.split('\0').filter((path) => path !== ''))].sort();
}

/** The TypeScript of the three rooms, generated code left out. */
export function ownSources(): readonly Source[] {
  return filesOf('language', 'server', 'extension')
    .filter((path) => path.endsWith('.ts') && !path.includes('/generated/'))
    .map((path) => {
      const text = readFileSync(join(root, path), 'utf8');
      return { path, text, imports: importsOf(path, text) };
    });
}

const statement =
  /(?:^|\n)\s*(?:import|export)\s+(type\s+)?(?:([^'"();]*?)\s+from\s+)?['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]\s*\)/g;

function importsOf(path: string, text: string): readonly Import[] {
  return [...text.matchAll(statement)].map(([, type, names, from, dynamic]) => {
    const target = from ?? dynamic ?? '';
    const typeOnly = type !== undefined || onlyTypes(names);
    return target.startsWith('.')
      ? { target: normalize(join(dirname(path), target)), kind: 'own', typeOnly }
      : { target, kind: 'package', typeOnly };
  });
}

function onlyTypes(names: string | undefined): boolean {
  const inside = /^\{([\s\S]*)\}$/.exec((names ?? '').trim())?.[1];
  const each = (inside ?? '')
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
  return each.length > 0 && each.every((name) => name.startsWith('type '));
}
