/** One place where a command prints: a JSON document or text on stdout, one sentence on stderr. */
import { harmless } from '../terminal/render.ts';

export interface Output {
  json: boolean;
  out(text: string): void;
  /** Resolves when there is room for more: a slow reader of a long export must not fill the memory. */
  room?(): Promise<void>;
  err(text: string): void;
}

export function print(output: Output, document: unknown, text: string): void {
  if (output.json) output.out(`${JSON.stringify(document)}\n`);
  else if (text !== '') output.out(`${text.split('\n').map(harmless).join('\n')}\n`);
}
