/** Picks the statements of one kind out of a draft. */
import type * as ast from '../../grammar/generated/ast.ts';
import type { Draft, Said } from './draft.ts';

/** Statements of one kind, the part's own after those of its stock. */
export function statementsOf<M extends ast.Member>(draft: Draft, is: (node: ast.Member) => node is M): Said<M>[] {
  return draft.statements.filter((said): said is Said<M> => is(said.node));
}

/** The statement that counts where there may be one only: the last. */
export function lastOf<M extends ast.Member>(draft: Draft, is: (node: ast.Member) => node is M): Said<M> | undefined {
  return statementsOf(draft, is).at(-1);
}
