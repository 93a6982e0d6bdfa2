/** Trouble that went away without anybody saying why: it may come back in the middle of a long job. */
import type { Day } from '../calendar.ts';
import { SYMPTOMS, type Symptom } from '../codes.ts';
import type { Instant } from '../entry/entry.ts';
import type { MachineRecord, Mark } from '../record/record.ts';

/** Common practice, no source: what ran two weeks without coming back is taken as over. */
const REMEMBERED_DAYS = 14;
/** What is no trouble of the machine's own. */
const NO_TROUBLE: ReadonlySet<Symptom> = new Set<Symptom>(['moved', 'power-cut', 'plastic-smell']);

export interface Trouble {
  symptom: Symptom;
  last: Mark;
  /** How often within the remembered days. */
  times: number;
  /** Nobody said that it is gone. */
  open: boolean;
}

/** A finding, or a part that came out worn or broken, accounts for what was seen before it. */
function explainedAt({ found, lives, tasks }: MachineRecord): Instant {
  const bad = Object.values(tasks).flatMap((done) => (done.finding === 'bad' ? [done.at] : []));
  const failed = lives.flatMap(({ reason, to }) => (reason === 'worn' || reason === 'broken' ? [to.at] : []));
  return Math.max(-Infinity, ...found.map(({ mark }) => mark.at), ...bad, ...failed);
}

/** Open trouble of any age, and what was cleared within two weeks without a cause; the latest first. */
export function unexplained(record: MachineRecord, today: Day): Trouble[] {
  const explained = explainedAt(record);
  return SYMPTOMS.flatMap((symptom): Trouble[] => {
    const known = record.symptoms[symptom];
    const last = known?.recent.at(-1);
    if (!known || !last || NO_TROUBLE.has(symptom)) return [];
    const open = known.open !== undefined;
    const recent = known.recent.filter(({ day }) => today - day <= REMEMBERED_DAYS);
    if (!open && (recent.length === 0 || last.at <= explained)) return [];
    return [{ symptom, last, times: Math.max(1, recent.length), open }];
  }).toSorted((a, b) => b.last.at - a.last.at);
}
