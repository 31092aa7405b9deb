/** Starts programs for the tests and ends exactly those again, with their children. */
import { type ChildProcess, spawn } from 'node:child_process';

export interface Program {
  readonly command: string;
  readonly args: readonly string[];
  readonly cwd?: string;
  readonly env?: NodeJS.ProcessEnv;
}

export interface RunningProgram {
  /** Everything it has printed so far. */
  readonly output: () => string;
  readonly exited: () => boolean;
  readonly stop: () => Promise<void>;
}

/** Runs a program to its end; a failure carries the last of what it printed. */
export async function run(program: Program): Promise<string> {
  const { child, output } = launch(program, 'attached');
  const code = await new Promise<number | null>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', resolve);
  });
  if (code !== 0) {
    throw new Error(`${program.command} ${program.args.join(' ')} ended with ${code}:\n${output().slice(-3000)}`);
  }
  return output();
}

/** Starts a program in a process group of its own; `stop` ends the whole group. */
export function start(program: Program): RunningProgram {
  const { child, output } = launch(program, 'group');
  const ended = new Promise<void>((resolve) => {
    child.on('error', () => resolve());
    child.on('close', () => resolve());
  });
  const exited = () => child.exitCode !== null || child.signalCode !== null;
  return {
    output,
    exited,
    stop: async () => {
      signalGroup(child, 'SIGTERM');
      const stubborn = setTimeout(() => signalGroup(child, 'SIGKILL'), 5000);
      await ended;
      clearTimeout(stubborn);
    },
  };
}

function launch(program: Program, as: 'attached' | 'group'): { child: ChildProcess; output: () => string } {
  const child = spawn(program.command, program.args, {
    cwd: program.cwd,
    env: program.env ?? process.env,
    detached: as === 'group',
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let text = '';
  const collect = (chunk: Buffer) => {
    text += chunk.toString();
  };
  child.stdout?.on('data', collect);
  child.stderr?.on('data', collect);
  return { child, output: () => text };
}

function signalGroup(child: ChildProcess, signal: NodeJS.Signals): void {
  if (child.pid === undefined) return;
  try {
    process.kill(-child.pid, signal);
  } catch {
    // The group is gone already, which is what was wanted.
  }
}
