#!/usr/bin/env node
/** The `linewright` command: hands the process over to `run` and its exit code back. */
import { realpathSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { run } from './run.ts';
import { paintFor } from './terminal.ts';

// A reader that has seen enough, such as `head`, closes the pipe; that is no failure.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
}

run(process.argv.slice(2), {
  folder: process.cwd(),
  home: join(dirname(realpathSync(process.argv[1] ?? '.')), '..'),
  paint: paintFor(process.stdout, process.env),
  print: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
}).then((code) => {
  process.exitCode = code;
});
