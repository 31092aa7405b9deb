/** Which of the two circuits of a file a fact belongs to: as found, as planned, or both. */

export type Presence = 'kept' | 'to-fit' | 'to-remove';
export type State = 'found' | 'planned';

/** Words for a person: "as found", "as planned". */
export const stateWords: Readonly<Record<State, string>> = { found: 'as found', planned: 'as planned' };

/** Whether what is so marked is part of the circuit in that state. */
export function isPresent(presence: Presence, state: State): boolean {
  return presence === 'kept' || (state === 'planned' ? presence === 'to-fit' : presence === 'to-remove');
}

/** A thing is as present as the thing that holds it: a port of a part to be removed goes with the part. */
export function within(outer: Presence, inner: Presence): Presence {
  return outer === 'kept' ? inner : outer;
}
