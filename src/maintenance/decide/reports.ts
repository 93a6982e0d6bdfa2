/** What was found, notes, and the hand-over of a shift. */
import type { DecideContext, Shops } from './context.ts';
import type { FindDeed, HandOverDeed, NoteDeed, TakeOverDeed } from './deed.ts';
import { asked, written, type Decision } from './decision.ts';
import { isScene, sceneOf } from './scene.ts';

export function decideFind(deed: FindDeed, shops: Shops, context: DecideContext): Decision {
  const scene = sceneOf(deed, shops, context);
  if (!isScene(scene)) return scene;
  const { name: machine, at, precision, flags } = scene;
  const text = deed.text.trim();
  if (text === '') return asked('other', { act: 'find', machine });
  const part = deed.part ? { part: deed.part } : {};
  return written([{ kind: 'found', machine, text, ...part, at, precision }], flags);
}

/** A note may be about a machine, the room, or nothing in particular. */
export function decideNote(deed: NoteDeed, shops: Shops, context: DecideContext): Decision {
  const text = deed.text.trim();
  if (text === '') return asked('other', { act: 'note' });
  const at = Math.min(context.saidAt, context.now);
  if (deed.machine === undefined) return written([{ kind: 'noted', text, at, precision: 'instant' }]);
  const scene = sceneOf(deed, shops, context);
  if (!isScene(scene)) return scene;
  return written(
    [{ kind: 'noted', machine: scene.name, text, at: scene.at, precision: scene.precision }],
    scene.flags,
  );
}

export function decideHandOver(deed: HandOverDeed, _shops: Shops, context: DecideContext): Decision {
  const at = Math.min(context.saidAt, context.now);
  const to = deed.to === undefined ? {} : { to: deed.to };
  return written([{ kind: 'handedOver', ...to, at, precision: 'instant' }]);
}

/** By the one who takes it on: a hand-over is done when it is answered. */
export function decideTakeOver(deed: TakeOverDeed, _shops: Shops, context: DecideContext): Decision {
  const at = Math.min(context.saidAt, context.now);
  const from = deed.from === undefined ? {} : { from: deed.from };
  return written([{ kind: 'tookOver', ...from, at, precision: 'instant' }]);
}
