/** A bot on a store in memory, spoken to at a fixed moment: tests read as conversations. */
import {
  openBot,
  openCalendar,
  openMemoryStore,
  replyText,
  type Answer,
  type Bot,
  type Instant,
  type LocalCalendar,
  type Store,
} from '../../src/index.ts';
import { fillWithDemo } from '../../demo-data/fill.ts';

/** Wednesday 11 March 2026, 15:40 in the demo's zone. */
export const NOW = Date.parse('2026-03-11T15:40:00+01:00');
const MINUTE = 60_000;

export interface Talk {
  bot: Bot;
  store: Store;
  calendar: LocalCalendar;
  now: Instant;
  /** Says it and gives the whole answer; a minute passes with each message. */
  say(
    text: string,
    options?: { as?: string; place?: string; key?: string; direct?: boolean },
  ): Promise<Answer>;
  /** Says it and gives what a terminal would print. */
  hear(text: string, options?: { as?: string }): Promise<string>;
  later(minutes: number): void;
}

export async function talkOn(store: Store, now: Instant, zone = 'Europe/Copenhagen'): Promise<Talk> {
  const bot = openBot(store);
  let count = 0;
  const talk: Talk = {
    bot,
    store,
    calendar: openCalendar(zone),
    now,
    async say(text, { as = 'Ines', place = 'test', key, direct = false } = {}) {
      count += 1;
      talk.now += MINUTE;
      return bot.say({
        key: key ?? `test:${now}:${count}`,
        platform: 'test',
        place,
        direct,
        speaker: as,
        text,
        saidAt: talk.now,
        now: talk.now,
      });
    },
    hear: async (text, options) => replyText(await talk.say(text, options)),
    later(minutes) {
      talk.now += minutes * MINUTE;
    },
  };
  return talk;
}

export async function demoTalk(now: Instant = NOW): Promise<Talk> {
  const store = await openMemoryStore();
  await fillWithDemo(store, now);
  return talkOn(store, now);
}

export async function talkIn(yaml: string, now: Instant = NOW): Promise<Talk> {
  const store = await openMemoryStore();
  const talk = await talkOn(store, now);
  await talk.bot.enrol({ yaml, now: now - 60 * MINUTE, by: 'Ines', dryRun: false });
  return talk;
}
