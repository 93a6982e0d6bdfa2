/** Who the bot is where its token comes from. */
import type { webApi } from '@slack/bolt';
import { PlatformFault } from '../../src/index.ts';
import { codeOf, wordOf } from './slackError.ts';

export interface Identity {
  teamId: string;
  teamName: string;
  botUserId: string;
  botId: string;
  /** What the token may do. */
  scopes: readonly string[];
}

/** Rejects with a PlatformFault of one sentence. */
export async function whoAmI(client: webApi.WebClient): Promise<Identity> {
  try {
    const { team_id, team, user_id, bot_id, response_metadata } = await client.auth.test();
    return {
      teamId: team_id ?? '',
      teamName: team ?? '',
      botUserId: user_id ?? '',
      botId: bot_id ?? '',
      scopes: response_metadata?.scopes ?? [],
    };
  } catch (fault) {
    throw new PlatformFault('slack', sentence(fault), fault);
  }
}

const sentence = (fault: unknown): string =>
  codeOf(fault) === undefined
    ? `Slack cannot be reached: ${wordOf(fault)}.`
    : `Slack does not accept SLACK_BOT_TOKEN (${wordOf(fault)}): copy the Bot User OAuth Token anew from OAuth & Permissions, ` +
      'after installing the app to the workspace.';
