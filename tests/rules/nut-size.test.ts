import { expect, it } from 'vitest';
import { findingsOf, tubeInPort } from './joint.ts';

const said = (tube: string, nut: string, flare = 'double-45') =>
  findingsOf('nut-size', tubeInPort({ port: `${nut} female`, tube, nut, flare }));

// SAE J512 and ISO 4038 sizes; British and oversize nuts from memory (see the table of nuts).
it.each([
  ['3/16 in', '3/8-24'],
  ['4.75 mm', '3/8-24'],
  ['3/16 in', 'M10x1'],
  ['3/16 in', '7/16-24'],
  ['1/4 in', '9/16-18'],
  ['3/16 in', '7/16-20'],
  ['1/4 in', '7/16-20'],
  ['1/8 in', '3/8-24'],
])('%s tube goes through a %s nut', (tube, nut) => expect(said(tube, nut)).toEqual([]));

it('a double flare that is wider than the core of the thread cannot go down the port', () => {
  // SAE J533: a double flare on 1/4 in tube is 8.7 mm at least; the core of 3/8-24 is 9.525 − 1.0825 × 1.0583 = 8.38 mm.
  expect(said('1/4 in', '3/8-24')).toMatchObject([
    {
      severity: 'error',
      subject: 'line',
      message:
        'line is 1/4 in tube and its nut is 3/8-24: the head of its double flare is wider than the core of the thread, so it does not go into the port. Nuts for 1/4 in tube with this flare are 7/16-24, 7/16-20, 7/16 BSF.',
    },
  ]);
});

it('a tube as thick as the thread has no nut at all', () => {
  expect(said('3/8 in', '3/8-24')).toMatchObject([
    { severity: 'error', message: expect.stringContaining('no nut can be bored') },
  ]);
});

it('asks where only smaller bores are listed, and says nothing of threads that are not listed at all', () => {
  expect(said('6 mm', 'M10x1', 'bubble')).toMatchObject([
    {
      severity: 'question',
      message: expect.stringContaining('such nuts are listed for 4.75 mm tube only; measure the bore'),
    },
  ]);
  expect(said('6 mm', 'M10x1.25', 'bubble')).toEqual([]);
});

it.each(['?', '? assume 3/16 in'])('says nothing of tube %s', (tube) => expect(said(tube, '3/8-24')).toEqual([]));

it('says once what stock does wrong for every run made of it', () => {
  const text = `stock line { tube 3/8 in steel  nut 3/8-24  flare double-45 }
run one of line
run two of line { tube 3/16 in steel }
run three of line
`;
  const [finding, ...more] = findingsOf('nut-size', text);
  expect(more).toEqual([]);
  expect(finding).toMatchObject({
    subject: 'one',
    message: expect.stringContaining('The same line speaks for three.'),
  });
  expect(finding && text.slice(finding.origin.start, finding.origin.end)).toBe('nut 3/8-24');
});

it('is shown at the run where the run takes another tube than its stock', () => {
  const text =
    'stock line { tube 3/16 in steel  nut 3/8-24  flare double-45 }\nrun one of line { tube 3/8 in steel }\n';
  const [finding] = findingsOf('nut-size', text);
  expect(finding && text.slice(finding.origin.start, finding.origin.end)).toBe('one');
});
