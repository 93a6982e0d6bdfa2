/**
 * About ten months of the demo workshop's journal, made up by a seeded script: the same day gives the same
 * journal. It ends on the evening before `today`, so that at any hour of today nothing in it lies ahead.
 */
import { enrolment, foldName, foldShop } from '../src/index.ts';
import type { Day, Draft, Entry, LocalCalendar, LocalDate, Workshop, WorkshopMachine } from '../src/index.ts';
import { careOf } from './story/care.ts';
import { CAST, CEDAR_DOWN_DAYS, ROWAN_DAYS } from './story/cast.ts';
import type { Character } from './story/cast.ts';
import {
  amendedRun,
  describedAnew,
  lateRun,
  plans,
  takenBack,
  toldLate,
  withoutSock,
} from './story/changes.ts';
import { storyDays } from './story/days.ts';
import type { Days } from './story/days.ts';
import { birchNozzle, cedarDown, elmFan, juniperFalseAlarm, troubles } from './story/happenings.ts';
import { ledgerOf } from './story/ledger.ts';
import { printing, readings } from './story/printing.ts';
import { debris, notes, roomCare, shelf } from './story/room.ts';
import { runsOf } from './story/runs.ts';
import { runIn } from './story/runIn.ts';
import { serving } from './story/serving.ts';
import { entriesOf } from './story/telling.ts';
import type { Telling } from './story/telling.ts';

interface Story {
  today: LocalDate;
  calendar: LocalCalendar;
  /** With dates as of today: see `shift.ts`. */
  workshop: Workshop;
}

/** @returns entries in the order of saying */
export function demoJournal({ today, calendar, workshop }: Story): Entry[] {
  const days = storyDays(today, workshop, calendar);
  const find = (name: string): WorkshopMachine => {
    const machine = workshop.machines.find((each) => foldName(each.name) === name);
    if (!machine) throw new Error(`the demo's workshop file has no ${name}`);
    return machine;
  };
  return entriesOf([
    ...enrolled(workshop, days, calendar),
    ...CAST.flatMap((character) => machineStory(character, find(character.machine), days)),
    ...troubles(find, days),
    ...elmFan(find('elm'), days),
    ...juniperFalseAlarm(find('juniper'), days),
    ...cedarDown(days, days.openDay(CEDAR_DOWN_DAYS)),
    ...describedAnew(find('elm').build, days),
    ...debris(days),
    ...roomCare(workshop, days),
    ...shelf(days),
    ...notes(days),
    ...plans(days),
    ...toldLate(days),
    ...takenBack(days),
  ]);
}

/** Seven machines on the first day, Rowan when it came. */
function enrolled(workshop: Workshop, days: Days, calendar: LocalCalendar): Telling[] {
  const isRowan = (machine: WorkshopMachine): boolean => foldName(machine.name) === 'rowan';
  const asTold = (machine: WorkshopMachine): WorkshopMachine =>
    foldName(machine.name) === 'elm' ? { ...machine, build: withoutSock(machine.build) } : machine;
  const first = { ...workshop, machines: workshop.machines.filter((each) => !isRowan(each)).map(asTold) };
  const second = {
    ...workshop,
    machines: workshop.machines.filter(isRowan),
    shelf: [],
    room: { lastDone: {}, intervals: {} },
  };
  const nothing = foldShop([], calendar);
  const facts = (part: Workshop, now: number): readonly Draft[] =>
    enrolment(part, nothing, { now, calendar }).drafts;
  const [begin, rowanCame] = [days.at(days.first, 6 * 60), days.at(days.today - ROWAN_DAYS, 6 * 60)];
  return [
    { at: begin, by: 'ines', facts: facts(first, begin) },
    { at: rowanCame, by: 'ines', facts: facts(second, rowanCame) },
  ];
}

function machineStory(character: Character, machine: WorkshopMachine, days: Days): Telling[] {
  const runs = runsOf(character, days);
  const ledger = ledgerOf(runs, days);
  const begin: Day = days.today - (character.stretches[0]?.daysAgo ?? 0);
  const tellings = [
    ...printing(machine, runs, days),
    ...serving(machine, careOf(machine, ledger, begin + 1, days), days),
    ...readings(machine, ledger, days, begin),
  ];
  switch (character.machine) {
    case 'birch':
      return [
        ...amendedRun(tellings, runs, days),
        ...birchNozzle(machine, days, nozzleDay(character, runs, days)),
      ];
    case 'hazel':
      return lateRun(tellings, runs, days);
    case 'rowan':
      return [...tellings, ...runIn(machine, ledger, begin, days)];
    default:
      return tellings;
  }
}

/** The morning of the first print of the second stretch: the hours since are exact. */
function nozzleDay({ stretches }: Character, runs: readonly { day: Day }[], days: Days): Day {
  const boundary = days.today - (stretches.at(-1)?.daysAgo ?? 0);
  return runs.find((run) => run.day >= boundary)?.day ?? days.openDay(1);
}
