/** What may report work but cannot be told: one question, never a guess. */
import type { Act, Doubt, TrailStep } from './act.ts';
import { hasTag } from './item.ts';
import { strangerIn } from './discourse.ts';
import type { NameBook } from './names.ts';
import type { Placed } from './placed.ts';
import { asserted, type Scene, someFn } from './scene.ts';

export interface Left {
  act: Extract<Act, { kind: 'unclear' }>;
  trail: readonly TrailStep[];
  doubt: Doubt;
}

export const doubtFor = ({ draft }: Placed): Doubt => draft.doubt ?? { field: 'task', said: '', options: [] };

/** Deed verbs that report work on a machine. */
const WORK: ReadonlySet<string> = new Set([
  'clean',
  'wipe',
  'oil',
  'tighten',
  'swap',
  'fit',
  'look',
  'adjust',
  'did',
  'fix',
  'install',
  'calibrate',
  'clear',
  'remove',
  'test',
  'square',
  'trim',
  'update',
  'read',
]);

const THING =
  /\b(?:did|done|do) (?:the|that|this|my|your|a) (?:thing|usual|stuff|job|other thing|bit|thingy|thingie|whatsit)\b/u;
const hasDid = (scene: Scene): boolean => scene.verbs.some((verb) => verb.deed && verb.code === 'did');

function leftOver(scene: Scene): { why: string; doubt: Doubt } | undefined {
  if (!asserted(scene) || scene.verbs.some((verb) => verb.code === 'say' && verb.form === 'past'))
    return undefined;
  const machine = scene.items.some((item) => hasTag(item, 'machine'));
  const foreign = scene.items.some((item) => hasTag(item, 'foreign'));
  if (foreign && !machine) return undefined;
  const deed = scene.verbs.find((verb) => verb.deed && WORK.has(verb.code));
  // "my neighbour cut down the old birch": somebody from elsewhere, and a tree.
  const outsider = scene.items.findIndex((item) => hasTag(item, 'foreign', 'human'));
  if (deed && outsider >= 0 && outsider < deed.at && scene.nouns.every((noun) => noun.part === undefined))
    return undefined;
  const figure = scene.values.find(
    (v) => v.code === 'bare' || v.code === 'hours' || v.code === 'range' || v.code === 'grams',
  );
  const said = scene.items.map((item) => item.text).join(' ');
  // "poplar 3 h petg": a line of a log, of a machine that nobody has here.
  const stranger =
    (scene.materials.length > 0 || hasDid(scene)) && figure?.code === 'hours' ? strangerIn(scene) : undefined;
  if (stranger !== undefined && scene.items.length <= 5)
    return {
      why: `No machine here is called "${stranger}".`,
      doubt: { field: 'machine', said: stranger, options: [] },
    };
  if (machine && figure && scene.items.length <= 4)
    return {
      why: `What is ${scene.items[figure.at]?.text ?? 'that figure'}?`,
      doubt: { field: 'value', said, options: [] },
    };
  if (
    deed &&
    machine &&
    !someFn(scene, 'nothing', 'nobody', 'no') &&
    (scene.nouns.length > 0 || scene.items.length <= 5)
  )
    return { why: 'Which task was it?', doubt: { field: 'task', said, options: [] } };
  if (deed && scene.nouns.some((noun) => !noun.weak) && someFn(scene, 'i', 'we', 'just'))
    return { why: 'Which task was it?', doubt: { field: 'task', said, options: [] } };
  if (deed && !foreign && /\b(?:maintenance|servicing|upkeep|a service)\b/u.test(said))
    return { why: 'Which machine, and what was done?', doubt: { field: 'machine', said, options: [] } };
  // "worked on birch", "something got done on 5"
  if (
    machine &&
    scene.nouns.length === 0 &&
    scene.values.every((v) => v.code === 'bare') &&
    /^(?:i |we )?(?:worked on|did some work on|did a bit on|did something (?:on|to)|something (?:got|was) (?:done|changed|replaced|cleaned))\b/u.test(
      scene.text,
    )
  )
    return { why: 'Which task was it?', doubt: { field: 'task', said, options: [] } };
  // "changed the thingy on alder"
  if (
    deed &&
    machine &&
    /\bthe (?:uh |um )?(?:the )?(?:thingy|thingie|whatsit|doodah|doofer|thingamajig|widget)\b/u.test(
      scene.text,
    )
  )
    return { why: 'Which part was it?', doubt: { field: 'part', said, options: [] } };
  // "did the thing on maple like we talked about"
  if (
    hasDid(scene) &&
    (machine || scene.items.some((item) => /\bprinter$|\bmachine$/u.test(item.text))) &&
    scene.nouns.every((noun) => noun.part === undefined) &&
    THING.test(scene.text)
  )
    return { why: 'Which task was it?', doubt: { field: 'task', said, options: [] } };
  if (figure?.code === 'range' && machine)
    return { why: 'How many hours exactly?', doubt: { field: 'value', said, options: [] } };
  return undefined;
}

export function leftovers(
  scenes: readonly Scene[],
  kept: readonly Placed[],
  doubtful: readonly Placed[],
  book: NameBook,
): Left[] {
  const first = doubtful[0];
  if (first) {
    const scene = scenes[first.draft.clause];
    const said = scene?.items.map((item) => item.text).join(' ') ?? '';
    return [
      {
        act: { kind: 'unclear', why: 'Which machine was it on?' },
        trail: first.trail,
        doubt: { field: 'machine', said, options: book.machines.length <= 5 ? book.machines : [] },
      },
    ];
  }
  if (kept.length > 0) return [];
  for (const scene of scenes.slice(0, 20)) {
    const left = leftOver(scene);
    if (left)
      return [
        {
          act: { kind: 'unclear', why: left.why },
          trail: [{ rule: 'unclear: a deed with no task', span: scene.span }],
          doubt: left.doubt,
        },
      ];
  }
  return [];
}
