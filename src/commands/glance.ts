/** One question answered for a view that is no message: what is held stands on top there too. */
import type { AskAct } from '../language/act.ts';
import type { Reply } from '../replies/reply.ts';
import { answerAsk } from './ask/ask.ts';
import { heldLine } from './held.ts';
import type { Scene } from './scene.ts';

export async function glanceAt(scene: Scene, act: AskAct): Promise<Reply> {
  const reply = await answerAsk(scene, act);
  const held = act.machine === undefined ? '' : heldLine(act.machine, scene);
  return held === '' ? reply : { ...reply, caution: [[held], ...(reply.caution ?? [])] };
}
