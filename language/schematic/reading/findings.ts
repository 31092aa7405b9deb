/** Which findings belong to what is drawn, by the paths that they name. */
import type { PictureFinding, Severity } from '../picture.ts';

/** As the rules give them: what it is about and what else it touches. */
export interface SubjectFinding {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly subject: string;
  readonly also?: readonly string[];
}

export interface Findings {
  /** Findings on any of these paths or on a port of theirs, each once. */
  of(paths: readonly string[]): readonly PictureFinding[];
}

/** `isPart` tells a part's path; a port's path counts for the part that it begins with. */
export function findingsBy(list: readonly SubjectFinding[], isPart: (path: string) => boolean): Findings {
  const byPart = new Map<string, SubjectFinding[]>();
  for (const finding of list) {
    for (const path of new Set([finding.subject, ...(finding.also ?? [])].map((path) => partPath(path, isPart)))) {
      byPart.set(path, [...(byPart.get(path) ?? []), finding]);
    }
  }
  return {
    of: (paths) =>
      [...new Set(paths.flatMap((path) => byPart.get(path) ?? []))].map(({ code, severity, message }) => ({
        code,
        severity,
        message,
      })),
  };
}

function partPath(path: string, isPart: (path: string) => boolean): string {
  for (let at = path; at !== ''; at = at.includes('.') ? at.slice(0, at.lastIndexOf('.')) : '') {
    if (isPart(at)) return at;
  }
  return path;
}
