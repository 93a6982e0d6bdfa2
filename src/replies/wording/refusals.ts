/** Why something was not written: what was wrong, and what would do. One sentence a code. */
import type { Facts, RefusalCode } from '../../maintenance/decide/decision.ts';
import { asksFinding } from '../../maintenance/record/reasons.ts';
import { count, figure, hours } from '../format/number.ts';
import { capital } from '../format/list.ts';
import { heldFor, machineName, todo } from './names.ts';
import { dateWord, since, type View } from './view.ts';

type Sentence = (facts: Facts, view: View) => string;

const machine = ({ machine: name }: Facts, view: View): string =>
  name === undefined ? 'That machine' : machineName(name, view);
const given = ({ given: value, field }: Facts): string =>
  value === undefined ? 'That figure' : `${figure(value, 2)}${field === 'hours' ? ' h' : ''}`;

const REFUSALS: Readonly<Record<RefusalCode, Sentence>> = {
  'too-many-hours': (f, view) =>
    f.border === 'day' || f.border === 'absurd'
      ? `${machine(f, view)}: ${hours(f.given ?? 0)} is more than a day has. Not noted; which figure is right?`
      : `${machine(f, view)}: ${hours(f.given ?? 0)} is more than there was time for${f.limit === undefined ? '' : ` (at most ${hours(f.limit)})`}. Not noted.`,
  'counter-back': (f, view) =>
    `${machine(f, view)}: ${given(f)} is below its counter, last known at ${hours(f.known ?? 0)}${f.at === undefined ? '' : ` (${since(f.at, view)})`}. Not noted; if the counter itself is new, say “new counter, ${given(f)}”.`,
  'before-start': (f, view) =>
    `${machine(f, view)} is on record since ${f.date === undefined ? 'later' : dateWord(f.date, view).replace(/^on /u, '')}; ${f.on === undefined ? 'that day' : dateWord(f.on, view).replace(/^on /u, '')} is before that. Not noted.`,
  'in-future': (f, view) =>
    `${f.on === undefined ? 'That' : capital(dateWord(f.on, view))} is still to come: not noted as done. “I’ll do it ${f.on === undefined ? 'then' : dateWord(f.on, view)}” puts your name to it.`,
  'unknown-machine': (f, view) =>
    f.taken !== undefined
      ? `“${f.taken}” is the name of another machine already. Nothing changed; which name is free?`
      : f.retired
        ? `${machine(f, view)} has left the workshop; its record takes nothing new.`
        : `I know no machine called ${f.machine === undefined ? 'that' : `“${f.machine}”`}. Not noted.`,
  'not-yours': (f, view) =>
    f.keeper
      ? `${f.machine === undefined ? 'That' : `${machine(f, view)}: that`} is for a keeper to say. Nothing changed; ask one of them to say it.`
      : `That entry is ${f.by === undefined ? 'somebody else’s' : `${view.personName(f.by)}’s`}: only its author or a keeper can change it. Nothing changed.`,
  'nothing-to-undo': (f, view) => {
    if (f.act === 'release') return `${machine(f, view)} is not held.`;
    return f.act === 'amend'
      ? 'Nothing of yours here that this could put right. Nothing changed.'
      : 'Nothing of yours is left to take back.';
  },
  'safety-cannot-wait': (f, view) => {
    const name = machine(f, view);
    const limit = f.date === undefined ? '' : ` past ${dateWord(f.date, view).replace(/^on /u, '')}`;
    const said = `${name}: ${f.task === undefined ? 'that' : todo(f.task)} is a safety check and cannot wait${limit}.`;
    return f.down
      ? `${said} It stays out of use until that is done.`
      : `${said} The other way is to take ${name} out of use until it is done: say “${f.machine === undefined ? 'it' : name} is out of use”.`;
  },
  'safety-hold': (f, view) => {
    const why = f.symptom === undefined ? undefined : { symptom: f.symptom, also: f.also ?? [] };
    const told = `${f.by === undefined ? '' : `, told by ${view.personName(f.by)}`}${f.at === undefined ? '' : ` ${since(f.at, view)}`}`;
    const late =
      f.before === undefined
        ? ''
        : ` That was told, or told again, after ${since(f.before, view)}, which is when your word is from: it lifts nothing that came later.`;
    const alarm = why && asksFinding(why) ? '' : ', or somebody says that it was a false alarm';
    return `${machine(f, view)} is held: ${why ? heldFor(why) : 'a safety matter'}${told}.${late} To lift it a keeper says what was found and mended${alarm}.`;
  },
  'invalid-number': (f) => `${given(f)} cannot be right here. Not noted.`,
  'not-planned-here': (f, view) =>
    `${machine(f, view)} has nothing to ${f.task === undefined ? 'plan there' : todo(f.task)}, by its sheet. Nothing planned.`,
};

export const refusal = (code: RefusalCode, facts: Facts, view: View): string => REFUSALS[code](facts, view);

export const moreOf = (n: number): string => `and ${count(n, 'more', 'more')}`;
