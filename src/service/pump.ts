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
  const at: { stopped: boolean; asked: boolean; running?: Promise<void> } = { stopped: false, asked: false };

  const round = async (): Promise<void> => {
    while (at.asked && !at.stopped) {
      // a kick during the step asks for another one
      at.asked = false;
      if (await step()) at.asked = true;
    }
  };
  const run = async (): Promise<void> => {
    try {
      await round();
    } catch (fault) {
      failed(fault);
    }
    delete at.running;
    // somebody may have kicked just as the last step ended
    if (at.asked) kick();
  };
  const kick = (): void => {
    at.asked = true;
    if (!at.stopped) at.running ??= Promise.resolve().then(run);
  };
  return {
    kick,
    async idle() {
      while (at.running) await at.running;
    },
    async stop() {
      at.stopped = true;
      await at.running;
    },
  };
}
