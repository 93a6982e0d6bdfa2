/** A command that could not be carried out, as exit code, code word and one sentence. */
export class CommandFault extends Error {
  readonly exit: 1 | 2;
  readonly code: string;

  constructor(exit: 1 | 2, code: string, text: string, cause?: unknown) {
    super(text, cause === undefined ? {} : { cause });
    this.name = 'CommandFault';
    this.exit = exit;
    this.code = code;
  }
}

/** The command line was wrong. */
export const usage = (text: string): CommandFault => new CommandFault(2, 'usage', text);
/** The command was right, but it could not be done. */
export const failed = (code: string, text: string, cause?: unknown): CommandFault =>
  new CommandFault(1, code, text, cause);
