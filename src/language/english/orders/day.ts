/** The day that an order names, looking the way its tense does. */
import type { LocalDate } from '../../act.ts';
import { hasTag, sense } from '../../item.ts';
import type { Passage } from './passage.ts';

export function dayIn({ scene }: Passage, ahead: boolean): LocalDate | undefined {
  const date = sense(
    scene.items.find((item) => hasTag(item, 'date')),
    'date',
  );
  if (!date) return undefined;
  return ahead ? date.future : date.past;
}
