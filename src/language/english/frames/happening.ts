/** What befell a machine: it was moved, the power went. */
import { hasTag, isFn } from '../../item.ts';
import { asserted, deedOf, type Draft, draft, hasMachine, type Scene, someFn, textOf } from '../../scene.ts';

/** Where it went to or came from; a job or a task that is moved has none. */
const PLACE =
  /\b(?:to|into|over|across|from|upstairs|downstairs|next|by|bench|room|window|corner|shelf|other|away|along|round|stairs|desk|table|floor|rack|house|workshop|back)\b/u;

const NOW_AT =
  /\b(?:stands|sits|lives|is standing|is sitting|has its place|resides) (?:now )?(?:on|in|by|at|next to|under|near|over|upstairs|downstairs)\b/u;
const TAKEN_TO =
  /\b(?:took|brought|drove|carried|hauled|schlepped|moved) [^ ]+(?: [^ ]+)? (?:over |up |down |across |along )*to the (?:open (?:day|house|evening)|[a-z]* ?(?:fair|show|school|market|exhibition|festival|hall|library|other (?:bench|room|table|desk|shelf|side)|back room|basement|cellar|attic|shop|lobby|window))\b/u;
/** "alder stands now on the other bench", "took elm to the open day". */
const isElsewhere = (scene: Scene): boolean =>
  hasMachine(scene) &&
  scene.values.length === 0 &&
  scene.materials.length === 0 &&
  scene.nouns.every((noun) => noun.part === undefined || noun.weak) &&
  ((NOW_AT.test(scene.text) && someFn(scene, 'now')) || TAKEN_TO.test(scene.text)) &&
  !scene.items.some((item) => hasTag(item, 'state', 'complaint', 'symptom') && item.text !== 'back');

export function readHappening(scene: Scene): Draft[] {
  if (!asserted(scene)) return [];
  if (isElsewhere(scene))
    return [draft(scene, { kind: 'symptom', symptom: 'moved' }, 'happening: elsewhere')];
  const at = scene.items.findIndex(
    (item) =>
      item.senses.some((s) => s.tag === 'verb' && s.code === 'move') &&
      !hasTag(item, 'part') &&
      (!item.text.startsWith('shift') ||
        hasTag(scene.items[scene.items.indexOf(item) + 1], 'machine') ||
        (hasTag(scene.items[scene.items.indexOf(item) - 1], 'machine') &&
          isFn(scene.items[scene.items.indexOf(item) + 1], 'to'))),
  );
  const verb = at >= 0 ? deedOf(scene, 'move') : undefined;
  if (
    !verb ||
    scene.items.some((item) => hasTag(item, 'date') && isFn(scene.items[scene.items.indexOf(item) - 1], 'to'))
  )
    return [];
  const object =
    hasMachine(scene) || (someFn(scene, 'it', 'both', 'they', 'all') && PLACE.test(textOf(scene)));
  const parts = scene.nouns.some((noun) => noun.part !== undefined && !noun.weak);
  const jobs =
    scene.nouns.some((noun) => ['job', 'print', 'spool', 'entry'].includes(noun.code)) ||
    scene.materials.length > 0;
  const placed = PLACE.test(textOf(scene)) || scene.items.length <= 4;
  return object && !parts && !jobs && placed
    ? [draft(scene, { kind: 'symptom', symptom: 'moved' }, 'happening: moved')]
    : [];
}
