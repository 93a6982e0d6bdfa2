/** What an operator meets: the environment, `fettle check`, `fettle register-discord`. */
import { OverwriteType, RoleFlags, type APIOverwrite, type APIRole } from 'discord.js';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { check, registerCommands } from '../../../adapters/discord/index.ts';
import { missingOf, permissionsIn } from '../../../adapters/discord/check/permissions.ts';
import { readEnvironment } from '../../../adapters/discord/environment.ts';
import { ID, startFakeDiscord, type FakeDiscord } from '../../support/fakeDiscord.ts';
import { TOKEN } from './serving.ts';

const silent = { info: () => undefined, warn: () => undefined, error: () => undefined };
let discord: FakeDiscord;
beforeEach(async () => {
  discord = await startFakeDiscord();
});
afterEach(() => discord.close());
const tools = (more: Record<string, string> = {}) => ({
  environment: { DISCORD_BOT_TOKEN: TOKEN, DISCORD_API_URL: discord.api, ...more },
  clock: () => 0,
  log: silent,
});

describe('the environment', () => {
  it.each([
    [{}, /DISCORD_BOT_TOKEN is not set/u],
    [{ DISCORD_BOT_TOKEN: ' ' }, /DISCORD_BOT_TOKEN is not set/u],
    [{ DISCORD_BOT_TOKEN: 'secret' }, /does not look like a bot token/u],
    [{ DISCORD_BOT_TOKEN: TOKEN, DISCORD_SERVER_ID: 'shop' }, /must be the number of your server/u],
    [{ DISCORD_BOT_TOKEN: TOKEN, DISCORD_API_URL: 'http://elsewhere.test' }, /must be an https address/u],
  ])('%o is told in a sentence, without the secret', (environment, sentence) => {
    expect(() => readEnvironment(environment)).toThrow(sentence);
    expect(() => readEnvironment(environment)).not.toThrow(/secret/u);
  });
});

describe('check', () => {
  it('is content after the commands are registered', async () => {
    await registerCommands(tools());
    const lines = await check(tools(), ['#print-room']);
    expect(lines.map(({ what, ok }) => [what, ok])).toEqual([
      ['token', true],
      ['server', true],
      ['commands', true],
      ['channel #print-room', true],
    ]);
  });

  it('says what to mend', async () => {
    const lines = await check(tools(), ['#kitchen', '300000000000000009']);
    expect(lines.filter((line) => !line.ok).map((line) => line.text)).toEqual([
      '/fettle is not registered: run "fettle register-discord" once.',
      'there is no channel of this name in this server: write it as Discord shows it, or give its number.',
      'there is no such channel in this server, or the bot may not see it: copy its number again ("Copy Channel ID").',
    ]);
    const [, other] = await check(tools({ DISCORD_SERVER_ID: '299999999999999999' }), []);
    expect(other?.text).toMatch(/not in the server 299999999999999999\. Invite it: https/u);
    discord.fault(() => ({ status: 401, body: { code: 0, message: 'no' } }));
    expect(await check(tools(), [])).toMatchObject([{ what: 'token', ok: false }]);
    discord.fault(() => ({ status: 503 }));
    expect(await check(tools(), [])).toMatchObject([{ what: 'connection', ok: false }]);
  });
});

describe('permissions', () => {
  const role = (id: string, permissions: string): APIRole => ({
    id, permissions, name: id, color: 0, hoist: false, position: 0, managed: false, mentionable: false, flags: RoleFlags.InPrompt,
    colors: { primary_color: 0, secondary_color: null, tertiary_color: null },
  }); // prettier-ignore
  const roles = [role(ID.guild, '68608'), role('r', '274877906944')];
  const standing = { guild: ID.guild, bot: ID.bot, roles: ['r'] };
  const overwrite = (id: string, type: OverwriteType, allow: string, deny: string): APIOverwrite => ({
    id,
    type,
    allow,
    deny,
  });
  const lacking = (...overwrites: APIOverwrite[]): string[] =>
    missingOf(permissionsIn(standing, roles, overwrites));

  it('a private channel denies everybody and lets a role or the bot in again', () => {
    expect(lacking()).toEqual([]);
    expect(lacking(overwrite(ID.guild, OverwriteType.Role, '0', '1024'))).toEqual(['View Channel']);
    expect(
      lacking(
        overwrite(ID.guild, OverwriteType.Role, '0', '1024'),
        overwrite('r', OverwriteType.Role, '1024', '0'),
      ),
    ).toEqual([]);
    expect(lacking(overwrite('other', OverwriteType.Role, '0', '2048'))).toEqual([]);
    expect(
      lacking(
        overwrite('r', OverwriteType.Role, '1024', '2048'),
        overwrite(ID.bot, OverwriteType.Member, '2048', '0'),
      ),
    ).toEqual([]);
  });
});

describe('the commands', () => {
  it('are registered in the server, within Discord’s limits', async () => {
    expect(await registerCommands(tools())).toEqual({
      guild: ID.guild,
      commands: ['fettle', 'Note for the printers'],
    });
    const [call] = discord.posts(/commands$/u, 'PUT');
    const text = JSON.stringify(call?.body);
    expect(text.length).toBeLessThan(8000);
    for (const [, name = ''] of text.matchAll(/"name":"([^"]+)"/gu))
      expect(name.length).toBeLessThanOrEqual(32);
    for (const [, about = ''] of text.matchAll(/"description":"([^"]+)"/gu))
      expect(about.length).toBeLessThanOrEqual(100);
  });

  it('cannot be registered with a wrong token, in a sentence', async () => {
    discord.fault(() => ({ status: 401, body: { code: 0, message: 'no' } }));
    await expect(registerCommands(tools())).rejects.toThrow('does not accept DISCORD_BOT_TOKEN');
  });
});
