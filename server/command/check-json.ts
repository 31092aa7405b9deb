/** Writes checked files as JSON; `schemas/check.schema.json` describes it. */

import type { Finding } from '../../language/index.ts';
import type { CheckReport } from './check-text.ts';
import { type Place, titleOf } from './circuit-file.ts';
import { type CheckedFile, tallyOf } from './findings.ts';
import { measuringJson, written } from './json-parts.ts';

const checkSchema = 'linewright/check/1';

export function checkJson({ state, checked, unusable }: CheckReport): string {
  const findings = checked.flatMap((file) => file.findings);
  const { error, warning, question, information } = tallyOf(findings);
  return written({
    schema: checkSchema,
    circuit: state,
    files: checked.map(fileJson),
    unusable: unusable.map(({ file, reason }) => ({ file, reason })),
    totals: {
      errors: error,
      warnings: warning,
      questions: question,
      information,
      accepted: checked.reduce((sum, { accepted }) => sum + accepted.length, 0),
      toMeasure: checked.reduce((sum, { circuit }) => sum + circuit.reading.toMeasure.length, 0),
    },
  });
}

function fileJson({ circuit, findings, accepted }: CheckedFile) {
  const { placeOf } = circuit;
  return {
    file: circuit.file,
    title: titleOf(circuit),
    findings: findings.map((finding) => findingJson(finding, placeOf)),
    accepted: accepted.map(({ finding, accept }) => ({
      ...findingJson(finding, placeOf),
      date: accept.date,
      reason: accept.reason,
      acceptedAt: placeOf(accept.origin),
    })),
    toMeasure: measuringJson(circuit),
    uses: circuit.uses,
  };
}

function findingJson(finding: Finding, placeOf: (origin: Finding['origin']) => Place) {
  const { severity, code, message, subject, origin, related } = finding;
  return {
    severity,
    code,
    message,
    subject,
    ...placeOf(origin),
    related: (related ?? []).map((other) => ({ message: other.message, ...placeOf(other.origin) })),
  };
}
