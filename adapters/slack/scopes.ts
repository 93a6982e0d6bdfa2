/** What the bot's token must be allowed to do, and for what: the same as in the manifest. */
export const SCOPES: Readonly<Record<string, string>> = {
  'app_mentions:read': 'to hear when it is mentioned',
  'chat:write': 'to answer, and to post the digest',
  commands: 'for /fettle and the shortcuts',
  'im:history': 'to hear direct messages',
  'im:write': 'to answer in private when a button is pressed in its home view',
  'channels:history': 'to look whether an answer was posted when Slack did not say so',
  'groups:history': 'the same in private channels',
  'channels:read': 'to find the channels that the workshop file names',
  'groups:read': 'the same for private channels',
  'users:read': 'to call people by their names',
};
