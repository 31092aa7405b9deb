/** Real pictures of made-up vehicles, drawn by the schematic itself, as the server would answer them. */
import type { PagePicture, ToPage } from '../../../extension/preview/messages.ts';
import type { Picture } from '../../../language/schematic/picture.ts';
import { place } from '../../../language/schematic/place.ts';
import { svgOf } from '../../../language/schematic/svg.ts';
import { inlineEngine } from '../../../server/layout/inline.ts';
import type { PicturePart } from '../../../server/protocol.ts';

export async function drawn(
  picture: Picture,
  change: Partial<PagePicture> = {},
): Promise<Extract<ToPage, { type: 'picture' }>> {
  const engine = inlineEngine();
  const answer = await place(picture, engine);
  await engine.dispose();
  if (answer.kind !== 'placed') throw new Error(`The sketch could not be placed: ${answer.kind}.`);
  return {
    type: 'picture',
    picture: {
      uri: 'file:///van.circuit',
      circuit: 'planned',
      svg: svgOf(answer.placed, { theme: 'window' }),
      title: picture.title,
      description: picture.description,
      parts: partsOf(picture),
      views: ['planned', 'found'],
      tally: { errors: 0, warnings: 1, toMeasure: 2 },
      placement: '{}',
      broken: undefined,
      ...change,
    },
  };
}

function partsOf({ nodes, lines }: Picture): PicturePart[] {
  const common = { description: '', findings: [] };
  return [
    ...nodes.map(({ id, label }): PicturePart => {
      const joined = lines.filter(({ from, to }) => from.node === id || to.node === id).map((line) => line.id);
      return { ...common, id, kind: 'part', trade: 'part', label, joined };
    }),
    ...lines.map(({ id, label, from, to }): PicturePart => {
      return { ...common, id, kind: 'line', trade: 'run', label, joined: [from.node, to.node] };
    }),
  ];
}
