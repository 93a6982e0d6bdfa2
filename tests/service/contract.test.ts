/** One contract over every place: the terminal, the platform of the tests, Slack and Discord with their real SDKs. */
import { open as openDiscord } from '../../adapters/discord/index.ts';
import { open as openSlack } from '../../adapters/slack/index.ts';
import { converse } from '../../adapters/terminal/converse.ts';
import { openBot, openCalendar, openService, type Platform, type Service } from '../../src/index.ts';
import { startFakeDiscord, ID } from '../support/fakeDiscord.ts';
import * as discordEvents from '../support/discordEvents.ts';
import { APP_TOKEN, BOT_TOKEN, startFakeSlack } from '../support/fakeSlack.ts';
import * as slackEnvelopes from '../support/slackEnvelopes.ts';
import { buttonIn, MORNING, platformContract, wordsIn, type Venue } from '../support/platformContract.ts';
import { demoStore, read, serveDemo } from '../support/served.ts';
import { TOKEN } from '../adapters/discord/serving.ts';

const SILENT_LOG = { info: () => undefined, warn: () => undefined, error: () => undefined };

platformContract('in a terminal', async () => {
  const bot = openBot(await demoStore(MORNING));
  const calendar = openCalendar('Europe/Copenhagen');
  const typed = async (...lines: string[]): Promise<string> => {
    const written: string[] = [];
    await converse({
      bot, calendar, speaker: 'Ines', opening: '', clock: () => MORNING, interactive: false, write: (text) => void written.push(text),
      input: (async function* input() { yield* lines; })(),
    }); // prettier-ignore
    return lines.length === 0 ? written.join('') : (written.join('').split(`> ${lines.at(-1)}\n`)[1] ?? '');
  };
  const morning = await typed();
  return { morning, say: (text) => typed(text), press: (label) => typed(label.toLowerCase()), close: () => bot.close() };
}); // prettier-ignore

platformContract('on the platform of the tests', async () => {
  const shop = await serveDemo({ now: MORNING });
  return {
    morning: read(shop.last()),
    say: async (text) => read(await shop.say(text)),
    press: async (label) => read(await shop.press(shop.last(), label)),
    close: () => shop.stop(),
  };
});

/** The real service on a real adapter: what arrives kicks it, and one turn of its timers posts the digest. */
async function serveOn(
  platform: Platform,
  channel: string,
  now: { at: number },
): Promise<{ service: Service; close: () => Promise<void> }> {
  const store = await demoStore(MORNING, (json) => {
    const workshop = JSON.parse(json);
    workshop.workshop.channels = { [platform.name]: { digest: channel } };
    return JSON.stringify(workshop);
  });
  const service = openService({
    store, bot: openBot(store), platforms: [platform], clock: () => now.at, log: SILENT_LOG, holder: 'test',
    every: (ms, tick) => {
      const timer = setInterval(tick, Math.min(ms, 100));
      return () => clearInterval(timer);
    },
  }); // prettier-ignore
  await service.start();
  return { service, close: () => service.stop() };
}

platformContract('in Slack', async (): Promise<Venue> => {
  const slack = await startFakeSlack();
  const now = { at: MORNING };
  const environment = {
    SLACK_BOT_TOKEN: BOT_TOKEN,
    SLACK_APP_TOKEN: APP_TOKEN,
    SLACK_API_URL: slack.apiUrl,
  };
  const platform = await openSlack({ environment, clock: () => now.at, log: SILENT_LOG });
  const { close } = await serveOn(platform, '#print-room', now);
  const next = async (count: number): Promise<string> =>
    wordsIn((await slack.until(() => slack.messages[count], 20_000))['blocks']);
  const morning = await next(0);
  now.at = (slackEnvelopes.SAID_AT + 60) * 1000;
  let said = 0;
  return {
    morning,
    say: async (text) => {
      const count = slack.messages.length;
      said += 1;
      const ts = slackEnvelopes.ts(said);
      slack.send(slackEnvelopes.mention(`Ev${said}`, text, { ts, event_ts: ts }));
      return next(count);
    },
    press: async (label) => {
      const last = slack.messages.at(-1);
      const token = buttonIn(last?.['blocks'], label, (found) => found['action_id']);
      const count = slack.messages.length;
      const [ts, thread_ts] = [last?.['ts'], last?.['thread_ts']];
      slack.send(
        slackEnvelopes.click(String(token), {
          message: { type: 'message', user: 'UBOT', ts, thread_ts, text: '' },
          container: { type: 'message', message_ts: ts, channel_id: 'C0000001', is_ephemeral: false },
        }),
      );
      return next(count);
    },
    async close() {
      await close();
      await slack.close();
    },
  };
});

platformContract('in Discord', async (): Promise<Venue> => {
  const discord = await startFakeDiscord();
  const now = { at: MORNING };
  const environment = { DISCORD_BOT_TOKEN: TOKEN, DISCORD_API_URL: discord.api };
  const platform = await openDiscord({ environment, clock: () => now.at, log: SILENT_LOG });
  const { close } = await serveOn(platform, '#print-room', now);
  const morning = wordsIn(await discord.until(() => discord.messages(ID.channel)[0], 20_000));
  now.at = discordEvents.SAID_AT + 60_000;
  let said = 0;
  return {
    morning,
    say: async (text) => {
      said += 1;
      const before = new Set(discord.messages(ID.channel).map(({ id }) => id));
      discord.dispatch('MESSAGE_CREATE', discordEvents.toBot(text, {}, discordEvents.SAID_AT + said * 1000));
      return wordsIn(
        await discord.until(() => discord.messages(ID.channel).find(({ id }) => !before.has(id)), 20_000),
      );
    },
    press: async (label) => {
      const last = discord.messages(ID.channel).at(-1) ?? {};
      const token = buttonIn(last['components'], label, (found) => found['custom_id']);
      const from = discord.calls.length;
      discord.dispatch('INTERACTION_CREATE', discordEvents.click(String(token), last));
      const posted = /^\/(webhooks\/\d+\/[^/]+|channels\/\d+\/messages)(\/@original)?$/u;
      const answer = await discord
        .until(
          () => discord.calls.slice(from).find(({ method, path }) => method !== 'GET' && posted.test(path)),
          20_000,
        )
        .catch(() => {
          throw new Error(JSON.stringify(discord.calls.slice(from)));
        });
      return wordsIn(answer.body);
    },
    async close() {
      await close();
      await discord.close();
    },
  };
});
