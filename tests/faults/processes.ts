/** Real processes that use the store: the scripts beside the fault tests, run from their source. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';

export interface Running {
  child: ChildProcess;
  /** What it printed so far, whole lines only. */
  lines: string[];
}

export function start(script: string, args: readonly string[]): Running {
  const path = fileURLToPath(new URL(`./children/${script}`, import.meta.url));
  const child = spawn(process.execPath, ['--import', 'tsx', path, ...args], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const lines: string[] = [];
  let rest = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    const parts = (rest + text).split('\n');
    rest = parts.pop() ?? '';
    lines.push(...parts);
  });
  return { child, lines };
}

/** Waits for its end; throws when it failed by itself. */
export async function ended(running: Running): Promise<Running> {
  await once(running.child, 'close');
  if (running.child.exitCode !== 0 && running.child.signalCode === null)
    throw new Error(
      `A child process ended with ${String(running.child.exitCode)}: ${running.lines.join(' ')}`,
    );
  return running;
}

export async function firstLine(running: Running): Promise<void> {
  while (running.lines.length === 0 && running.child.exitCode === null && running.child.stdout !== null)
    await once(running.child.stdout, 'data');
}
