/**
 * Bolt, with one change: an event is acknowledged after its listener is done with it, so after it was stored. Bolt
 * itself acknowledges first, and what the process had in hand when it died would be lost.
 */
import { App, type AppOptions, type ReceiverEvent } from '@slack/bolt';

export interface Watching {
  /** Something came in: its kind, for the log and the state. */
  arrived(kind: string): void;
  /** More events than Slack delivers; `minute`: of which, in seconds. */
  rateLimited(minute: number): void;
}

export class StoringApp extends App {
  readonly #watching: Watching;
  readonly #underWay = new Set<Promise<void>>();
  #closed = false;

  constructor(options: AppOptions, watching: Watching) {
    super(options);
    this.#watching = watching;
  }

  /** Rejects when it was not stored: then nothing is acknowledged, and Slack sends it again. */
  override async processEvent(event: ReceiverEvent): Promise<void> {
    if (this.#closed) throw new Error('closing: not taken');
    const work = this.#take(event);
    this.#underWay.add(work);
    try {
      await work;
    } finally {
      this.#underWay.delete(work);
    }
  }

  async #take(event: ReceiverEvent): Promise<void> {
    const { body } = event;
    const kind = kindOf(body);
    this.#watching.arrived(kind);
    if (kind === 'app_rate_limited') {
      this.#watching.rateLimited(Number(body['minute_rate_limited']));
      await event.ack();
    } else if (kind === 'event_callback') {
      await super.processEvent({ ...event, ack: () => Promise.resolve() });
      await event.ack();
    } else {
      await super.processEvent(event);
    }
  }

  /** Takes nothing new; resolves when what is under way is done. */
  async drain(): Promise<void> {
    this.#closed = true;
    await Promise.allSettled(this.#underWay);
  }
}

/** A slash command is the one payload without a type. */
export function kindOf(body: Readonly<Record<string, unknown>>): string {
  const { type = 'command' } = body;
  return typeof type === 'string' ? type : 'unknown';
}
