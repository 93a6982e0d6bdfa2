/** What was taken for granted, or does not fit: said beside what was noted. */
import type { Flag, WrittenNotes } from '../../maintenance/decide/decision.ts';
import type { Entry } from '../../maintenance/entry/entry.ts';
import { hours } from '../format/number.ts';
import { capital } from '../format/list.ts';
import { machineName, partName } from './names.ts';
import { dateWord, since, type Names, type View } from './view.ts';

export interface Flagged {
  entry: Entry;
  notes: WrittenNotes;
}
type Remark = (flagged: Flagged, view: View) => string | undefined;

const machineOf = (entry: Entry, names: Names): string =>
  'machine' in entry && entry.machine !== undefined ? machineName(entry.machine, names) : 'It';
const partOf = (entry: Entry): string =>
  'part' in entry && entry.part !== undefined ? partName(entry.part) : 'part';

const REMARKS: Readonly<Record<Flag, Remark>> = {
  'not-on-this-build': ({ entry, notes }, view) =>
    `Noted as told, though by its sheet ${machineOf(entry, view)} has no ${notes.missing ? partName(notes.missing) : 'such part'}.`,
  'plastic-nut': ({ entry }, view) =>
    `Noted as told. By its sheet ${machineOf(entry, view)} has a plastic Z nut: grease there holds grit or attacks it, unless its maker names one. Better wiped off, about 5 min.`,
  'assumed-fitted': ({ entry, notes }) =>
    notes.assumedFitted === undefined
      ? undefined
      : `Taken as ${notes.assumedFitted}, like the old ${partOf(entry) === 'nozzle' ? 'one' : partOf(entry)}.`,
  'assumed-machine': ({ entry }, view) => `Taken as ${machineOf(entry, view)}, spoken of just before.`,
  'about-that-day': () => 'You are not sure of the day: marked as “about”.',
  'possible-duplicate': ({ entry }, view) =>
    `The same was noted${'machine' in entry && entry.machine !== undefined ? ` on ${machineOf(entry, view)}` : ''} within these two minutes; both stand. Undo takes this one back.`,
  'hold-stays': ({ notes }, view) =>
    `${notes.stays === undefined ? 'The machine' : machineName(notes.stays, view)} stays held: a hold is lifted by what was found and mended, or as a false alarm, not by undo.`,
  'claimed-by-other': ({ notes }, view) =>
    notes.claim === undefined
      ? undefined
      : `${view.personName(notes.claim.by)} has it already${notes.claim.on === undefined ? '' : `, for ${dateWord(notes.claim.on, view).replace(/^on /u, '')}`}: settle between you who does it.`,
  conflict: ({ entry, notes }, view) => {
    if (notes.shelf)
      return `The shelf had ${notes.shelf.before} ${partName(notes.shelf.part, notes.shelf.before)} on record: count it when you pass.`;
    if (notes.conflictsWith?.logged !== undefined)
      return `More was logged than the counter shows: ${hours(notes.conflictsWith.figure)} at the last reading (${since(notes.conflictsWith.at, view)}) and ${hours(notes.conflictsWith.logged)} logged since. The counter is believed; the logs stay.`;
    if (notes.conflictsWith)
      return `This does not fit what stands there: ${hours(notes.conflictsWith.figure)} ${since(notes.conflictsWith.at, view)}. Both are kept.`;
    return `${capital(machineOf(entry, view))}: this does not fit what is on record. Both are kept.`;
  },
};

export const remark = (flag: Flag, flagged: Flagged, view: View): string | undefined =>
  REMARKS[flag](flagged, view);
