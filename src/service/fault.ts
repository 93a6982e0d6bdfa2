/** A platform that cannot be served: `message` is one sentence a line that an operator can act on. */
export class PlatformFault extends Error {
  override readonly name = 'PlatformFault';
  readonly platform: string;

  constructor(platform: string, sentence: string, cause?: unknown) {
    super(sentence, cause === undefined ? {} : { cause });
    this.platform = platform;
  }
}
