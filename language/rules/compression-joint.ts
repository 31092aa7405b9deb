/** compression-joint: a fitting that holds plain tube by a squeezed ring in a line under brake pressure. */
import { published } from '../standards/source.ts';
import { factOrigin, wordOf } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import { allParts, partOf, type System } from '../system/system.ts';
import { placeOfFact } from './joints/own-statement.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Rule } from './rule.ts';

const mended = (type: string) => `union repair {
  ${type}
  ports a, b: 3/8-24
}
run front-half { tube 3/16 in  nut 3/8-24  to repair.a }
run rear-half { tube 3/16 in  nut 3/8-24  from repair.b }
`;

export const compressionJoint: Rule = {
  code: 'compression-joint',
  severity: 'error',
  acceptable: true,
  question: 'Is any tube held by a compression fitting?',
  why: 'A ring squeezed onto plain tube holds by friction. Brake pressure and shaking draw the tube out of it, and the circuit is lost at once.',
  source: published(
    'a national inspection manual: joints with separate ferrules are not acceptable in brake pipes; trade texts say the same',
  ),
  fires: [{ title: 'a compression union in a line', text: mended('joint-type compression') }],
  silent: [
    { title: 'a union with flares', text: mended('joint-type flare') },
    { title: 'a union of which nothing is said', text: mended('') },
    {
      title: 'one on the low-pressure side of the reservoir',
      text: `union joiner {
  joint-type compression
  ports a, b: barb 8 mm
}
feed-hose upper { to joiner.a }
feed-hose lower { from joiner.b }
`,
    },
  ],
  check: ({ system }) =>
    oncePerPlace(
      allParts(system)
        .filter((part) => isCompression(part) && !isOnFeedSide(part, system))
        .map((part) => ({
          message: `${part.label} is a compression joint: a ring squeezed onto plain tube. Under brake pressure the tube slips out of it, all at once. Flare both ends and take a fitting with flare seats, or better one tube without a joint.`,
          origin: placeOfFact(factOrigin(part, properties.jointType), part),
          subject: part.id,
        })),
    ),
};

export const isCompression = (part: Part): boolean => wordOf(part, properties.jointType) === 'compression';

/** Joined to low-pressure hoses and reservoirs alone. */
function isOnFeedSide({ ports }: Part, system: System): boolean {
  const others = ports.flatMap(({ id }) =>
    (system.jointsAt.get(id) ?? []).flatMap(({ a, b }) => partOf(system, a === id ? b : a) ?? []),
  );
  return others.length > 0 && others.every(({ kind }) => kind === 'feed-hose' || kind === 'reservoir');
}
