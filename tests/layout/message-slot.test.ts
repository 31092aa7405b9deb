import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { planOf } from '../../language/schematic/layout/plan.ts';
import { inlineEngine } from '../../server/layout/inline.ts';
import { clutch } from '../schematic/sketches.ts';

/** A worker's scope, where a language server listens on the one slot for messages. */
const listener = () => undefined;

beforeEach(() => {
  Reflect.set(globalThis, 'self', globalThis);
  Reflect.set(globalThis, 'onmessage', listener);
});
afterEach(() => {
  Reflect.deleteProperty(globalThis, 'self');
  Reflect.deleteProperty(globalThis, 'onmessage');
});

describe('in a worker', () => {
  it('the layout library by itself takes the message slot', async () => {
    const { default: ELK } = await import('elkjs/lib/elk.bundled.js');
    new ELK();
    expect(Reflect.get(globalThis, 'onmessage')).not.toBe(listener);
  });

  it('our engine leaves the slot to the language server and lays out', async () => {
    const engine = inlineEngine();
    const answer = await engine.layout(planOf(clutch(), undefined).graph, { lane: 'one' });
    expect(answer.kind).toBe('laid');
    expect(Reflect.get(globalThis, 'onmessage')).toBe(listener);
    await engine.dispose();
  });
});
