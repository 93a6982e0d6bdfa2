/** A request that could not be carried out, in a code word and one sentence for the person who asked. */
export class RequestFault extends Error {
  override readonly name = 'RequestFault';
  readonly code: string;

  constructor(code: string, sentence: string) {
    super(sentence);
    this.code = code;
  }
}
