/** The two ends of a run or hose as the statements about them add up. */
import type * as ast from '../../grammar/generated/ast.ts';
import { isEnd } from '../../grammar/generated/ast.ts';
import type { Draft, Said } from './draft.ts';

export interface EndSlot {
  readonly side: 'from' | 'to';
  /** The statement that says what the end looks like: the last one that does. */
  readonly connection: ast.Connection | undefined;
  readonly facts: readonly ast.EndFact[];
  /** Where it goes; one joint for each, so that a run may be planned to go elsewhere. */
  readonly goes: readonly Said<ast.End>[];
  readonly node: ast.End | undefined;
}

/** Both ends, in order; an end that a part says anew takes the place of the stock's where it goes somewhere. */
export function endSlots(draft: Draft): readonly [EndSlot, EndSlot] {
  return [slot(draft, 'from'), slot(draft, 'to')];
}

function slot(draft: Draft, side: 'from' | 'to'): EndSlot {
  const said = draft.statements.filter((each): each is Said<ast.End> => isEnd(each.node) && each.node.side === side);
  const own = said.filter((each) => !each.mirrored && each.from === 'part');
  const withPort = said.filter((each) => each.node.port !== undefined);
  const ownGoes = own.filter((each) => each.node.port !== undefined);
  return {
    side,
    connection: said.findLast((each) => each.node.connection !== undefined)?.node.connection,
    facts: said.findLast((each) => each.node.facts.length > 0)?.node.facts ?? [],
    goes: ownGoes.length > 0 ? ownGoes : withPort,
    node: said.at(-1)?.node,
  };
}
