/** Small edits of a picture, as a keystroke or a line of text makes them. */
import type { Picture, PictureLine, PictureNode } from '../../language/schematic/picture.ts';
import { line, node } from './sketch.ts';

export interface Edit {
  readonly name: string;
  readonly picture: Picture;
}

/** Every small edit at every place where it can be made. */
export function edits(base: Picture): readonly Edit[] {
  return [
    ...base.lines.filter(isTube).map((run) => ({ name: `union in ${run.id}`, picture: withUnion(base, run) })),
    ...base.lines.filter(isTube).map((run) => ({ name: `without ${run.id}`, picture: withoutLine(base, run) })),
    ...base.lines.filter(isTube).map((run) => ({ name: `longer words on ${run.id}`, picture: relabelled(base, run) })),
    ...base.nodes.filter(isEnd).map((end) => ({ name: `without ${end.id}`, picture: withoutNode(base, end) })),
    ...base.nodes.map((part) => ({ name: `finding on ${part.id}`, picture: withFinding(base, part) })),
    ...base.nodes
      .filter(({ symbol }) => symbol === 'tee')
      .map((tee) => ({ name: `switch on ${tee.id}`, picture: withSwitch(base, tee) })),
    {
      name: 'a part that nothing joins yet',
      picture: { ...base, nodes: [...base.nodes, node({ id: 'new-tee', symbol: 'tee', ports: 'a b c' })] },
    },
  ];
}

const isTube = ({ kind }: PictureLine) => kind === 'run' || kind === 'hose';
const isEnd = ({ symbol }: PictureNode) => symbol === 'drum-brake' || symbol === 'disc-brake' || symbol === 'switch';

function withUnion(base: Picture, run: PictureLine): Picture {
  const union = node({ id: `${run.id}-union`, symbol: 'union', ports: 'in out' });
  const first: PictureLine = { ...run, to: { node: union.id, port: 'in' } };
  const second: PictureLine = {
    ...run,
    id: `${run.id}-2`,
    label: `${run.label}-2`,
    from: { node: union.id, port: 'out' },
  };
  return {
    ...base,
    nodes: [...base.nodes, union],
    lines: base.lines.flatMap((each) => (each.id === run.id ? [first, second] : [each])),
  };
}

const withoutLine = (base: Picture, run: PictureLine): Picture => ({
  ...base,
  lines: base.lines.filter(({ id }) => id !== run.id),
});

const withoutNode = (base: Picture, part: PictureNode): Picture => ({
  ...base,
  nodes: base.nodes.filter(({ id }) => id !== part.id),
  lines: base.lines.filter(({ from, to }) => from.node !== part.id && to.node !== part.id),
});

const relabelled = (base: Picture, run: PictureLine): Picture => ({
  ...base,
  lines: base.lines.map((each) =>
    each.id === run.id ? { ...each, notes: ['3/16 in copper-nickel · 36 1/2 in'] } : each,
  ),
});

const withFinding = (base: Picture, part: PictureNode): Picture => ({
  ...base,
  nodes: base.nodes.map((each) =>
    each.id === part.id
      ? { ...each, findings: [{ code: 'dead-end', severity: 'error', message: 'A port is open.' }] }
      : each,
  ),
});

const withSwitch = (base: Picture, tee: PictureNode): Picture => ({
  ...base,
  nodes: [...base.nodes, node({ id: 'new-switch', symbol: 'switch', ports: 'port' })],
  lines: [...base.lines, line({ id: 'new-switch-line', from: `${tee.id}:switch`, to: 'new-switch:port', circuit: 0 })],
});
