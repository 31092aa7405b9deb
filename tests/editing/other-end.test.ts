/** A line that leads nowhere yet is offered the ports that its other end fits. */
import { describe, expect, it } from 'vitest';
import { openEnds } from '../../language/editing/other-end.ts';
import { judge } from '../../language/rules/index.ts';
import { mended } from '../support/mend.ts';
import { parseErrors, readCircuit } from '../support/read.ts';

const car = (
  lines: string,
  tee = 'ports feed, left: 3/8-24 inverted-flare\n  port right: M10x1 bubble',
) => `stock line {
  tube 3/16 in steel
  nut 3/8-24
  flare double-45
}
master main tandem {
  primary { bore 3/4 in  port out: 3/8-24 inverted-flare }
  secondary { bore 3/4 in  port out: 3/8-24 inverted-flare }
}
tee front {
  ${tee}
}
drum-brake left {
  cylinder { port feed: 3/8-24 inverted-flare }
}
${lines}`;

function offered(text: string) {
  expect(parseErrors(text)).toEqual([]);
  const { planned } = readCircuit(text);
  return openEnds(planned, text);
}

/** The text of each choice after it is taken: no error of the grammar, and both ends of the line joined. */
function taken(text: string): readonly string[] {
  return offered(text).flatMap(({ port, mends }) =>
    mends.map((mend) => {
      const after = mended(text, mend, readCircuit(text).uri);
      expect(parseErrors(after)).toEqual([]);
      const { planned } = readCircuit(after);
      expect([...planned.jointsAt.keys()]).toContain(port);
      const misfits = judge(readCircuit(after), 'planned').findings.filter(({ code }) => /mismatch|twice/.test(code));
      expect(misfits).toEqual([]);
      return after.slice(text.indexOf(lineWord));
    }),
  );
}
const lineWord = 'run feed';

describe('the other end of a run', () => {
  it('is offered each free port that fits, and none that does not', () => {
    const [end] = offered(car('run feed of line {\n  from main.primary.out\n}\n'));
    expect(end?.port).toBe('feed.to');
    expect(end?.mends.map(({ title }) => title)).toEqual([
      'Lead the other end of feed to front.feed',
      'Lead the other end of feed to front.left',
      'Lead the other end of feed to left.cylinder.feed',
    ]);
  });

  it('is written on a line of its own, as far in as the one that is there', () => {
    const text = car(
      'run feed of line {\n    from main.primary.out\n}\n',
      'ports feed, left: 3/8-24 inverted-flare plugged',
    );
    expect(taken(text)).toEqual(['run feed of line {\n    from main.primary.out\n    to left.cylinder.feed\n}\n']);
  });

  it('is written two spaces on in a block of one line', () => {
    const text = car('run feed of line { from main.primary.out }\n', 'ports feed, left: M10x1 bubble');
    expect(taken(text)).toEqual(['run feed of line { from main.primary.out  to left.cylinder.feed }\n']);
  });

  it('goes into the statement that says already what the end looks like', () => {
    const text = car('run feed of line {\n  from main.primary.out\n  to { nut M10x1 flare bubble }\n}\n');
    expect(taken(text)).toEqual([
      'run feed of line {\n  from main.primary.out\n  to front.right { nut M10x1 flare bubble }\n}\n',
    ]);
  });

  it('comes before the end that it goes to, where the start is what is missing', () => {
    const text = car('run feed of line {\n  to front.right { nut M10x1 flare bubble }\n}\n');
    expect(taken(text)[0]).toBe(
      'run feed of line {\n  from main.primary.out\n  to front.right { nut M10x1 flare bubble }\n}\n',
    );
  });

  it('carries the mark of the end that is still to be fitted', () => {
    const text = car(
      'run feed of line {\n  to-fit from main.primary.out\n}\n',
      'ports feed, left: 3/8-24 inverted-flare plugged',
    );
    expect(taken(text)).toEqual([
      'run feed of line {\n  to-fit from main.primary.out\n  to-fit to left.cylinder.feed\n}\n',
    ]);
  });

  it('is never led to another chamber or back into its own circuit', () => {
    const text = car(
      'run first of line { from main.primary.out  to front.feed }\nrun feed of line { from main.secondary.out }\n',
    );
    expect(offered(text).flatMap(({ mends }) => mends.map(({ title }) => title))).toEqual([
      'Lead the other end of feed to left.cylinder.feed',
    ]);
  });

  it('is not guessed where the nut, the flare or the thread of the port is not known', () => {
    expect(offered(car('run feed of line {\n  from main.primary.out\n  to { nut ? }\n}\n'))).toEqual([]);
    expect(offered(car('run feed { tube 3/16 in steel  from main.primary.out }\n'))).toEqual([]);
  });

  it('is left alone where both ends are joined or none is', () => {
    expect(offered(car('run feed of line { from main.primary.out  to front.feed }\nrun loose of line {}\n'))).toEqual(
      [],
    );
  });
});
