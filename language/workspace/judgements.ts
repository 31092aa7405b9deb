/** What a reading comes to in one of its states: its figures and what the rules find, worked out once for each reading. */
import { type Figures, figuresOf } from '../figures/index.ts';
import { type Judgement, judge } from '../rules/index.ts';
import type { State } from '../system/presence.ts';
import type { FileReading, System } from '../system/system.ts';

export class Judgements {
  private readonly judged = new WeakMap<System, Judgement>();
  private readonly computed = new WeakMap<System, Figures>();

  of(reading: FileReading, state: State): Judgement {
    const system = reading[state];
    const known = this.judged.get(system) ?? judge(reading, state);
    this.judged.set(system, known);
    return known;
  }

  figuresOf(system: System): Figures {
    const known = this.computed.get(system) ?? figuresOf(system);
    this.computed.set(system, known);
    return known;
  }
}
