/** Whatever a reply holds, Slack takes it, and nothing in it pings, links, formats or steers. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { render } from '../../../adapters/slack/outgoing/blocks.ts';
import { modal } from '../../../adapters/slack/outgoing/form.ts';
import { escapedWithin, harmless } from '../../../adapters/slack/outgoing/text.ts';
import { privateText } from '../../../adapters/slack/respond.ts';
import { buttonsOf, type Form, type FormName } from '../../../src/index.ts';
import { anyReply, STEERING, tokensOf, within } from '../../support/anyReply.ts';

const NASTY = [
  '<!channel>', '<!here|here>', '<@U123>', '<#C1|x>', '<https://evil.example.test|the manual>', '*bold*', '_it_', '~no~',
  '`code`', '```\nblock\n```', '> quote', '\u202egnp.exe', '\u2066\u2069', '\u0007', '\r\n', '&lt;!channel&gt;', '&', '<<<<', '\ud83d',
  '\u{1f527}', '@everyone', ':fire:', 'https://example.test', '\u{e0041}', '',
]; // prettier-ignore
const { text, button, reply } = anyReply(NASTY, '<&>*<&>*<&>*<&>*');

const partsOf = (blocks: unknown, type: string) =>
  [...within(blocks)].filter((part) => part['type'] === type);
const lengthOf = (value: unknown): number => (typeof value === 'string' ? value.length : 0);
const sizeOf = (value: unknown): number =>
  [...within(value)].reduce(
    (sum, part) => sum + (typeof part['text'] === 'string' ? part['text'].length : 0),
    0,
  );

describe('any reply', () => {
  it('keeps Slack’s limits', () => {
    fc.assert(
      fc.property(reply, (r) => {
        const { blocks, text: beside } = render(r, tokensOf(r));
        expect(blocks.length).toBeLessThanOrEqual(50);
        expect(beside.length).toBeLessThanOrEqual(4_000);
        expect(sizeOf(blocks)).toBeLessThanOrEqual(13_000);
        for (const block of partsOf(blocks, 'rich_text')) {
          expect(sizeOf(block)).toBeLessThanOrEqual(3_000);
          expect(block['elements']).not.toEqual([]);
        }
        for (const part of partsOf(blocks, 'text')) expect(String(part['text'])).not.toBe('');
        for (const header of partsOf(blocks, 'header'))
          expect(sizeOf(header['text'])).toBeLessThanOrEqual(150);
        for (const row of partsOf(blocks, 'actions'))
          expect((row['elements'] as unknown[]).length).toBeLessThanOrEqual(25);
        for (const one of partsOf(blocks, 'button')) {
          expect(sizeOf(one['text'])).toBeGreaterThan(0);
          expect(sizeOf(one['text'])).toBeLessThanOrEqual(75);
          expect(lengthOf(one['accessibility_label'])).toBeLessThanOrEqual(75);
        }
        for (const list of partsOf(blocks, 'static_select'))
          expect((list['options'] as unknown[]).length).toBeLessThanOrEqual(100);
      }),
      { numRuns: 120 },
    );
  });

  it('cannot ping, link, format or steer', () => {
    fc.assert(
      fc.property(reply, (r) => {
        const { blocks, text: beside } = render(r, tokensOf(r));
        // rich text is not parsed: only elements of other types would do something
        const kinds = new Set([...within(blocks)].map((part) => part['type']));
        for (const kind of kinds)
          expect([
            'rich_text',
            'rich_text_section',
            'rich_text_list',
            'text',
            'header',
            'plain_text',
            'actions',
            'button',
            'static_select',
            undefined,
          ]).toContain(kind);
        for (const part of within(blocks))
          if (typeof part['text'] === 'string') expect(part['text']).not.toMatch(STEERING);
        expect(beside).not.toMatch(STEERING);
        expect(beside).not.toMatch(/[<>]/u);
        expect(beside.replaceAll(/&(?:amp|lt|gt);/gu, '')).not.toContain('&');
        expect(beside).not.toMatch(/(?<!\u200b)[*_~`]|[*_~`](?!\u200b)/u);
      }),
      { numRuns: 120 },
    );
  });

  it('gives each button that is shown its own token, with its own label', () => {
    fc.assert(
      fc.property(reply, (r) => {
        const tokens = tokensOf(r);
        const labels = new Map(buttonsOf(r).map(({ label }, n) => [tokens[n], label]));
        const { blocks } = render(r, tokens);
        const shown = [
          ...partsOf(blocks, 'button').map((b) => [b['value'], b['text']]),
          ...partsOf(blocks, 'static_select').flatMap((s) =>
            (s['options'] as Record<string, unknown>[]).map((o) => [o['value'], o['text']]),
          ),
        ];
        expect(new Set(shown.map(([token]) => token)).size).toBe(shown.length);
        for (const [token, label] of shown) {
          const [start = ''] = (label as { text: string }).text.split('…');
          expect(harmless(labels.get(String(token)) ?? 'none') || '?').toContain(start);
        }
      }),
      { numRuns: 80 },
    );
  });

  it('keeps the buttons of the whole reply, however much stands before them', () => {
    fc.assert(
      fc.property(reply, fc.array(button, { minLength: 1, maxLength: 10 }), (r, buttons) => {
        const whole = { ...r, buttons };
        const { blocks } = render(whole, tokensOf(whole));
        expect(blocks.at(-1)?.type).toBe('actions');
        expect(partsOf(blocks.at(-1), 'button')).toHaveLength(buttons.length);
      }),
      { numRuns: 60 },
    );
  });
});

describe('any text', () => {
  it('fits after escaping, and says as much as fits', () => {
    fc.assert(
      fc.property(text, fc.integer({ min: 10, max: 200 }), (t, most) => {
        const shown = escapedWithin(t, most);
        expect(shown.length).toBeLessThanOrEqual(most);
        if (t.length * 5 <= most) expect(shown).not.toContain('…');
      }),
    );
  });

  it('fits into a private message, counted in bytes', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 3_900 }), (t) => {
        expect(Buffer.byteLength(privateText(t))).toBeLessThanOrEqual(4_000);
      }),
    );
  });
});

describe('any form', () => {
  const field = fc.record(
    { name: fc.uuid(), label: text, kind: fc.constantFrom('line' as const, 'text' as const, 'choice' as const), required: fc.boolean(), placeholder: text, value: text,
      options: fc.array(fc.record({ value: fc.uuid(), label: text }), { maxLength: 120 }) },
    { requiredKeys: ['name', 'label', 'kind', 'required'] },
  ); // prettier-ignore
  const form: fc.Arbitrary<Form> = fc.record({
    form: fc.constantFrom<FormName[]>('log', 'until', 'found', 'change'),
    title: text,
    submit: text,
    fields: fc.array(field, { minLength: 1, maxLength: 5 }),
  });

  it('keeps Slack’s limits', () => {
    fc.assert(
      fc.property(form, (f) => {
        const place = { platform: 'slack', space: 'T1', channel: 'C0000001', direct: false, thread: '1.2' };
        const view = modal(f, { place, audience: 'place' });
        for (const words of [view.title, view.submit, view.close])
          expect(words?.text.length ?? 1).toBeGreaterThan(0);
        for (const words of [view.title, view.submit, view.close])
          expect(words?.text.length ?? 0).toBeLessThanOrEqual(24);
        expect(view.private_metadata?.length).toBeLessThanOrEqual(3_000);
        for (const input of partsOf(view.blocks, 'plain_text_input'))
          expect(lengthOf(input['initial_value'])).toBeLessThanOrEqual(3_000);
        for (const list of partsOf(view.blocks, 'static_select'))
          expect((list['options'] as unknown[]).length).toBeLessThanOrEqual(100);
        expect(JSON.stringify(view)).not.toMatch(/\\u202e|\u202e/u);
      }),
    );
  });
});
