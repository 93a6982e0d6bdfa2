/** How the connection stands, from what is heard on it. */
import type { Instant, PlatformState } from '../../src/index.ts';
import { GAP_WORTH_A_LOOK_MS } from './catchUp.ts';
import type { DoorEvents } from './lines.ts';

export interface Watch {
  state(): PlatformState;
  /** Something came in. */
  heard(): void;
  /** `afterGap`: called when the connection is back after a while. */
  events(afterGap: () => void): DoorEvents;
}

export function openWatch(clock: () => Instant): Watch {
  let state: PlatformState = { connected: false, note: 'connecting' };
  const heard = (): void => {
    state = { ...state, lastEventAt: clock() };
  };
  const changed = (connected: boolean, note: string): void => {
    const now = clock();
    const since = state.connected === connected ? (state.since ?? now) : now;
    state = { ...state, connected, since, note };
  };
  const events = (afterGap: () => void): DoorEvents => ({
    connected(note) {
      const away = state.connected ? 0 : clock() - (state.since ?? clock());
      changed(true, note);
      heard();
      if (away >= GAP_WORTH_A_LOOK_MS) afterGap();
    },
    disconnected: (note) => changed(false, note),
    heartbeat: heard,
  });
  return { state: () => state, heard, events };
}
