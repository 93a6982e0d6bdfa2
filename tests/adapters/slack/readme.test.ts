/** "Run it in Slack": every name that a newcomer is told exists in the manifest, the environment or the command line. */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { HTTP_PATH } from '../../../adapters/slack/httpDoor.ts';
import { parseWorkshop } from '../../../src/index.ts';
import { NOW } from './support.ts';

const [, after = ''] = readFileSync('README.md', 'utf8').split('## Run it in Slack\n');
const [section = ''] = after.split('\n## ');
const manifest = parse(readFileSync('adapters/slack/manifest.yaml', 'utf8'));
const environment = readFileSync('adapters/slack/environment.ts', 'utf8');
const commands = readFileSync('adapters/cli/run.ts', 'utf8');

describe('the steps for a newcomer', () => {
  it('name settings that are read', () => {
    const named = [...section.matchAll(/SLACK_[A-Z_]+/gu)].map(([name]) => name);
    expect(new Set(named).size).toBeGreaterThan(3);
    for (const name of named) expect(environment).toContain(`${name}:`);
  });

  it('name subcommands that exist', () => {
    const named = [...section.matchAll(/npx fettle (\w+)/gu)].map(([, name]) => name);
    expect(named).toEqual(['enrol', 'check', 'serve']);
    for (const name of named) expect(commands).toContain(`${name}: async`);
  });

  it('name shortcuts, the command, the bot, scopes and the path as they are', () => {
    for (const { name } of manifest.features.shortcuts) expect(section).toContain(`**${name}**`);
    for (const { command } of manifest.features.slash_commands) expect(section).toContain(`\`${command} `);
    expect(section).toContain(`/invite @${manifest.features.bot_user.display_name}`);
    expect(section).toContain(`your.host${HTTP_PATH}`);
    for (const [, scope = ''] of section.matchAll(/`(\w+:history)`/gu))
      expect(manifest.oauth_config.scopes.bot).toContain(scope);
    for (const [, path = ''] of section.matchAll(/\]\(([\w/.]+)\)/gu))
      expect(existsSync(path), path).toBe(true);
  });

  it('show a line of the workshop file that is accepted', () => {
    const [, line = ''] = /`(channels: .*?\})`/u.exec(section) ?? [];
    const yaml = readFileSync('demo-data/workshop.yaml', 'utf8').replace(
      / {2}channels:.*\n(?: {4}.*\n)+/u,
      `  ${line}\n`,
    );
    const parsed = parseWorkshop(yaml, NOW);
    expect(parsed.ok && parsed.workshop.workshop.channels).toMatchObject({
      slack: { digest: '#print-room' },
    });
  });
});
