/** Discord: what the service opens, what `fettle check` asks, what `fettle register-discord` tells. */
export { check } from './check/check.ts';
export { openPlatform as open } from './platform.ts';
export { registerCommands, type Registered } from './register.ts';
