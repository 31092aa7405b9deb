/** What each document says, read once and kept until it or a file that it uses changes. */
import type { AstNode, LangiumDocument } from 'langium';
import * as ast from '../grammar/generated/ast.ts';
import { readFile } from '../system/read/read-file.ts';
import type { UsableFiles, UsedFile } from '../system/read/uses.ts';
import type { FileReading } from '../system/system.ts';

interface Asked {
  readonly from: string;
  readonly path: string;
  readonly answer: UsedFile;
}

interface Kept {
  readonly reading: FileReading;
  /** The files that went into it, as they were. */
  readonly asked: readonly Asked[];
}

export class Readings {
  private readonly files: UsableFiles;
  private readonly kept = new WeakMap<AstNode, Kept>();

  constructor(files: UsableFiles) {
    this.files = files;
  }

  /** The reading of a parsed document; the same object for as long as nothing changed. */
  readingOf(document: LangiumDocument): FileReading {
    const root = document.parseResult.value;
    const before = this.kept.get(root);
    if (before !== undefined && this.isFresh(before)) return before.reading;
    const asked: Asked[] = [];
    const noting: UsableFiles = {
      find: (from, path) => {
        const answer = this.files.find(from, path);
        asked.push({ from, path, answer });
        return answer;
      },
    };
    const file: ast.File = ast.isFile(root) ? root : { $type: 'File', declarations: [], uses: [] };
    const reading = readFile(file, document.uri.toString(), noting);
    this.kept.set(root, { reading, asked });
    return reading;
  }

  private isFresh({ asked }: Kept): boolean {
    return asked.every(({ from, path, answer }) => {
      const now = this.files.find(from, path);
      if ('failure' in answer) return 'failure' in now && now.failure === answer.failure;
      return 'file' in now && now.file === answer.file;
    });
  }
}
