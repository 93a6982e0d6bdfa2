/** A reply of every kind, as the bot says them; kept here so that a change of wording elsewhere does not blur what changes in the look. */
import type { Button, Form, Item, Reply } from '../../src/index.ts';

export const LOG_FORM: Form = {
  form: 'log',
  title: 'Log printer work',
  submit: 'Log it',
  fields: [
    { name: 'machine', label: 'Which printer', kind: 'choice', required: true, options: [{ value: 'birch', label: 'Birch' }] },
    { name: 'what', label: 'What was done or seen', kind: 'text', required: true, placeholder: 'cleaned the plate' },
    { name: 'hours', label: 'Hours run', kind: 'line', required: false },
  ],
}; // prettier-ignore
export const UNTIL_TOKEN = `v1:${'u'.repeat(22)}`;
export const UNTIL_FORM: Form = {
  form: 'until',
  title: 'Put off',
  submit: 'Put off',
  token: UNTIL_TOKEN,
  fields: [{ name: 'until', label: 'Until when', kind: 'line', required: true, value: 'Friday' }],
};

const button = (label: string): Button => ({ label, press: { does: 'undo', message: 'm' } });
const buttons = (...labels: string[]): Button[] => labels.map(button);
const item = (...text: Item['text']): Item => ({ text });
const due = (...text: Item['text']): Item => ({ text, buttons: buttons('Done', 'Put off', 'How?') });
const only = (items: readonly Item[]) => [{ items }];

export const FORMS = { 'log form': LOG_FORM, 'put off form': UNTIL_FORM } as const;

export const SAMPLES: Readonly<Record<string, Reply>> = {
  noted: {
    title: [{ bold: 'Birch' }, ': noted.'],
    sections: [
      { run: true, items: [item('jam cleared'), item('feeder cleaned'), item('nozzle replaced, worn: lasted 412 h over 166 days'), item('6.5 h run, now at 2,318 h')] },
      { items: [item('Taken as brass 0.4, like the old one.'), item('After a jam the tube end is often pinched: check the tube (about 5 min).')] },
    ],
    buttons: buttons('Undo', 'Change something'),
  },
  'which machine': {
    title: ['Which machine: nozzle replaced?'],
    sections: [],
    buttons: buttons('Alder', 'Birch', 'Cedar', 'Elm', 'Hazel', 'Juniper', 'Maple', 'Rowan'),
  },
  'which of many machines': {
    title: ['Which machine: nozzle replaced?'],
    sections: [],
    buttons: Array.from({ length: 24 }, (_, n) => button(`Printer ${n + 1}`)),
  },
  'due on one machine': {
    title: [{ bold: 'Alder' }, ': 1 overdue, 3 coming up.'],
    sections: only([due('oil the rods: 32 h over its 300 h'), due('next: level the bed, about Monday (between 16 and 18 March)'), item('clean the plate, about Monday')]),
    buttons: [],
  },
  digest: {
    title: ['Wednesday 11 March. 3 overdue, 4 due, about 1 h 4 min of work'],
    sections: [
      { heading: 'Overdue', items: [due({ bold: 'Hazel' }, ': check the wheels (34 of 30 days)'), due({ bold: 'Alder' }, ': oil the rods (332 of 300 h)')] },
      { heading: 'Due today', items: [due({ bold: 'Birch' }, ': level the bed (7 of 7 days in use)'), item({ bold: 'Elm' }, ': dust off (30 of 30 days)')] },
      { heading: 'This week', items: [item({ bold: 'Birch' }, ': check the tube, Friday · clean the plate, about Friday'), item('and 6 more')] },
      { heading: 'Out of use', items: [item({ bold: 'Cedar' }, ' since Monday: no heat')] },
      { heading: 'Fetch', run: true, items: [item('hex keys 2 and 2.5 mm'), item('light machine oil'), item('1 nozzle brass 0.4 (the last one)')] },
      { heading: 'Care', items: [item('Hot end and bed burn skin: wait for below 50 °C or wear heat gloves. (Birch)'), item('The manual, local rules and licensed practice come first.')] },
    ],
    buttons: [],
  },
  'stop list': {
    caution: [['Stop. Cut the power at the wall if you can reach it without passing smoke or fire; do not touch the machine.'], ['Flames, or smoke that does not stop: warn the others, get out, shut the door, call the fire service.']],
    title: [{ bold: 'Cedar' }, ' is now held.'],
    sections: only([item('Tell Tomasz.')]),
    buttons: buttons('False alarm'),
  },
  'how to': {
    title: [{ bold: 'Clean the feeder' }, ' on Birch, about 10 min:'],
    sections: only([item('Fetch: small stiff brush, tweezers, hex key 2 mm.'), item('1. ', { bold: 'Hot end and bed burn skin: wait for below 50 °C or wear heat gloves. ' }, 'Unload the filament hot, then heaters off.'), item('2. Brush the teeth clean all round, turning the gear by hand.'), item('Good: Bright teeth, even marks on the filament.')]),
    buttons: [],
  },
  refused: {
    title: [{ bold: 'Birch' }, ': not noted.'],
    sections: only([item('26 h do not fit into one day: 24 at most. Say the hours again.')]),
    buttons: [],
  },
  'taken back': {
    title: [{ bold: 'Hazel' }, ': taken back by Priya, 14:02.'],
    sections: only([item('nozzle replaced')]),
    buttons: [],
  },
  'somebody’s tricks': {
    title: [{ bold: 'Birch' }, ': noted.'],
    sections: only([item('note: <!channel> *look* at <https://evil.example.test|the manual> `now` \u202egnp.exe\nsecond line')]),
    buttons: buttons('Undo <@U1>'),
  },
}; // prettier-ignore
