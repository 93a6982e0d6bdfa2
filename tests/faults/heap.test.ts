/** The heap over simulated traffic, in short: the bench `heap` measures an hour of it. */
import { expect, it } from 'vitest';
import { heapOver } from '../bench/cases/heap.ts';

it('the heap of a service at work does not grow with the messages', async () => {
  const figures = await heapOver(3, 10);
  expect(figures['messages']).toBe(300);
  // an hour may take 5 %; a leak of a message's worth of work shows in minutes
  expect(figures['heap, ratio']).toBeLessThan(1.05);
}, 120_000);
