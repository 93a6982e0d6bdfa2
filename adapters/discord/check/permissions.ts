/** What the bot needs to be allowed, and whether a channel allows it. */
import { OverwriteType, PermissionFlagsBits, type APIOverwrite, type APIRole } from 'discord.js';

/** The smallest set that works, in the words of Discord's own settings. */
export const NEEDED: readonly { flag: bigint; name: string }[] = [
  { flag: PermissionFlagsBits.ViewChannel, name: 'View Channel' },
  { flag: PermissionFlagsBits.SendMessages, name: 'Send Messages' },
  { flag: PermissionFlagsBits.SendMessagesInThreads, name: 'Send Messages in Threads' },
  { flag: PermissionFlagsBits.ReadMessageHistory, name: 'Read Message History' },
];

const SUM = NEEDED.reduce((sum, { flag }) => sum | flag, 0n);

/** Opens the page on which somebody with the right to manage the server lets the bot in. */
export const inviteLink = (application: string): string =>
  `https://discord.com/oauth2/authorize?client_id=${application}&scope=bot%20applications.commands&permissions=${SUM}`;

export interface Standing {
  /** The guild's id is also that of the role that everybody has. */
  guild: string;
  bot: string;
  roles: readonly string[];
}

/** Source: Discord's developer documentation, permission overwrites: everyone, then roles together, then the member. */
export function permissionsIn(
  { guild, bot, roles }: Standing,
  all: readonly APIRole[],
  overwrites: readonly APIOverwrite[],
): bigint {
  const held = all.filter((role) => role.id === guild || roles.includes(role.id));
  const base = held.reduce((sum, role) => sum | BigInt(role.permissions), 0n);
  if ((base & PermissionFlagsBits.Administrator) !== 0n) return ~0n;
  const after = (before: bigint, some: readonly APIOverwrite[]): bigint => {
    const denied = some.reduce((sum, one) => sum | BigInt(one.deny), 0n);
    return some.reduce((sum, one) => sum | BigInt(one.allow), before & ~denied);
  };
  const ofRoles = overwrites.filter((one) => one.type === OverwriteType.Role);
  return [
    ofRoles.filter((one) => one.id === guild),
    ofRoles.filter((one) => one.id !== guild && roles.includes(one.id)),
    overwrites.filter((one) => one.type === OverwriteType.Member && one.id === bot),
  ].reduce(after, base);
}

export const missingOf = (permissions: bigint): string[] =>
  NEEDED.filter(({ flag }) => (permissions & flag) === 0n).map(({ name }) => name);
