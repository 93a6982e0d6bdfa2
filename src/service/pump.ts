/** Work that is done whenever there is some: kicked, it goes on until nothing is left; never twice at a time. */
export interface Pump {
  kick(): void;
  /** Resolves when nothing is under way and nothing was left ready. */
  idle(): Promise<void>;
  /** Lets the step under way finish and begins no other. */
  stop(): Promise<void>;
}

/** `step` gives whether it found something to do. `failed` gets what it threw; the pump goes on at the next kick. */
export function openPump(step: () => Promise<boolean>, failed: (fault: unknown) => void): Pump {
  let stopped = false;
  let asked = false;
  let running: Promise<void> | undefined;

  const run = async (): Promise<void> => {
    try {
      while (asked && !stopped) {
        asked = false;
        while (!stopped && (await step())) asked = false;
      }
    } catch (fault) {
      failed(fault);
    } finally {
      running = undefined;
    }
  };
  const kick = (): void => {
    asked = true;
    if (!stopped) running ??= Promise.resolve().then(run);
  };
  const idle = async (): Promise<void> => {
    while (running) await running;
  };
  return {
    kick,
    idle,
    async stop() {
      stopped = true;
      await idle();
    },
  };
}
