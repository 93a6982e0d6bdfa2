/** Any reply for properties: texts of the nasty kind that a test gives, mixed with what people write. */
import * as fc from 'fast-check';
import { buttonsOf, type Button, type Press, type Reply } from '../../src/index.ts';

export interface AnyReply {
  text: fc.Arbitrary<string>;
  button: fc.Arbitrary<Button>;
  reply: fc.Arbitrary<Reply>;
}

/** `grows`: becomes longer when it is escaped. */
export function anyReply(nasty: readonly string[], grows: string): AnyReply {
  const text = fc.oneof(
    fc.constantFrom(...nasty),
    fc
      .array(fc.constantFrom(...nasty, 'Birch ', ' ran 6.5 h'), { maxLength: 12 })
      .map((parts) => parts.join('')),
    fc.string({ unit: 'binary', maxLength: 60 }),
    fc.integer({ min: 1, max: 400 }).map((n) => grows.repeat(n)),
  );
  const line = fc.array(fc.oneof(text, text.map((bold) => ({ bold }))), { maxLength: 4 });
  const press = fc.constantFrom<Press>({ does: 'undo', message: 'm' }, { does: 'answer', question: 'q', value: 'v' });
  const button = fc.record({ label: text, press });
  const buttons = (maxLength: number) => fc.array(button, { maxLength });
  const item = fc.record({ text: line, buttons: buttons(12) });
  const section = fc.record(
    { heading: text, items: fc.array(item, { maxLength: 12 }), run: fc.constant(true as const) },
    { requiredKeys: ['items'] },
  );
  const reply: fc.Arbitrary<Reply> = fc.record(
    { caution: fc.array(line, { maxLength: 4 }), title: line, sections: fc.array(section, { maxLength: 12 }), buttons: buttons(130) },
    { requiredKeys: ['sections', 'buttons'] },
  );
  return { text, button, reply };
} // prettier-ignore

export const tokensOf = (reply: Reply): string[] =>
  buttonsOf(reply).map((_, n) => `v1:${String(n).padStart(22, '0')}`);

/** Every object inside, itself included. */
export function* within(value: unknown): Generator<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null) return;
  if (!Array.isArray(value)) yield value as Record<string, unknown>;
  for (const inner of Object.values(value)) yield* within(inner);
}

/** Characters that steer how text is shown, and halves of characters. */
export const STEERING =
  /[\p{Cs}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\u{e0000}-\u{e007f}]|(?!\n)\p{Cc}/u;
