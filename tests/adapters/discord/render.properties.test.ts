/** Whatever a reply holds, Discord takes it, and nothing in it pings, links, formats or steers. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { renderReply } from '../../../adapters/discord/render/components.ts';
import { escapeText, harmless, lineMarkdown } from '../../../adapters/discord/render/escape.ts';
import { modalOf } from '../../../adapters/discord/render/modal.ts';
import type { Form } from '../../../src/index.ts';
import { anyReply, STEERING, tokensOf, within } from '../../support/anyReply.ts';

const NASTY = [
  '@everyone', '@here', '<@400000000000000001>', '<@&200000000000000001>', '<#300000000000000001>', '<t:1:R>', '<:done:1>',
  '</fettle log:1>', '<id:guide>', '[the manual](https://evil.example.test)', 'https://evil.example.test', '<https://a.test>',
  '**bold**', '__under__', '_it_', '~~no~~', '||hidden||', '`code`', '```\nblock\n```', '> quote', '>>> all', '# head', '-# small',
  '- list', '* list', '1. list', '\\', '\\*', '\u202egnp.exe', '\u2066\u2069', '\u0007', '\r\n', '\n# head', '\ud83d', '\u{1f527}', ':fire:', '\u{e0041}', '',
]; // prettier-ignore
const { text, reply } = anyReply(NASTY, '<*_>');

const partsOf = (value: unknown, type: number) => [...within(value)].filter((part) => part['type'] === type);
/** What is left to Discord's markup once escaped characters are taken out: only our own bold may be there. */
const active = (content: string): string => content.replace(/\\[!-/:-@[-`{-~]/gu, 'x');

describe('any reply', () => {
  it('keeps Discord’s limits', () => {
    fc.assert(
      fc.property(reply, (r) => {
        const { components } = renderReply(r, tokensOf(r), 'a');
        const all = [...within(components)].filter((part) => typeof part['type'] === 'number');
        expect(all.length).toBeLessThanOrEqual(40);
        expect(all.length).toBeGreaterThan(0);
        const texts = partsOf(components, 10).map((part) => String(part['content']));
        expect(texts.reduce((sum, one) => sum + Buffer.byteLength(one), 0)).toBeLessThanOrEqual(4000);
        for (const one of texts) expect(one.trim()).not.toBe('');
        for (const row of partsOf(components, 1)) {
          const inside = row['components'];
          expect(Array.isArray(inside) && inside.length >= 1 && inside.length <= 5).toBe(true);
        }
        for (const one of partsOf(components, 2)) {
          expect(String(one['label']).length).toBeLessThanOrEqual(80);
          expect(String(one['label']).trim()).not.toBe('');
        }
        const ids = [...within(components)].flatMap((part) => part['custom_id'] ?? []);
        expect(new Set(ids).size).toBe(ids.length);
        for (const select of partsOf(components, 3))
          expect(Array.isArray(select['options']) && select['options'].length <= 25).toBe(true);
      }),
      { numRuns: 120 },
    );
  });

  it('shows what was typed, without markup, links, pings or steering', () => {
    fc.assert(
      fc.property(reply, (r) => {
        for (const { content } of partsOf(renderReply(r, tokensOf(r), 'a').components, 10).map((p) => ({ content: String(p['content']) }))) {
          expect(content).not.toMatch(STEERING);
          const left = active(content).replaceAll('**', '');
          expect(left).not.toMatch(/[*_~`|<>[\]\\]|:\/|:\w|@(?!\u200b)/u);
          // a list mark at a line's start is ours and followed by a space; headings and quotes never
          expect(active(content)).not.toMatch(/^\s*(?:#|\+ |\d+[.)] )/mu);
        }
      }),
      { numRuns: 120 },
    ); // prettier-ignore
  });

  it('an escaped text reads as the text itself', () => {
    fc.assert(
      fc.property(text, (typed) => {
        const read = escapeText(typed).replace(/\\([!-/:-@[-`{-~])/gu, '$1').replace(/@\u200b/gu, '@');
        expect(read).toBe(harmless(typed));
      }),
      { numRuns: 500 },
    ); // prettier-ignore
  });

  it('no link grows from two stretches side by side', () => {
    expect(lineMarkdown(['https:', '//evil.example.test'])).toBe('https\\://evil.example.test');
  });

  it.each([
    ['1. Hot end off', '1\\. Hot end off'],
    ['- not a list', '\\- not a list'],
    ['at 10:30', 'at 10\\:30'],
    ['plain words: fine', 'plain words: fine'],
  ])('%s', (typed, rendered) => expect(lineMarkdown([typed])).toBe(rendered));
});

describe('any form', () => {
  const field = fc.record(
    { name: fc.constantFrom('a', 'b', 'c'), label: text, kind: fc.constantFrom('line' as const, 'text' as const, 'choice' as const), required: fc.boolean(), placeholder: text, value: text, options: fc.array(fc.record({ value: fc.constant('v'), label: text }), { maxLength: 40 }) },
    { requiredKeys: ['name', 'label', 'kind', 'required'] },
  ); // prettier-ignore
  it('keeps Discord’s limits', () => {
    fc.assert(
      fc.property(text, fc.array(field, { maxLength: 9 }), (title, fields) => {
        const form: Form = { form: 'log', title, submit: 'Log', fields, token: `v1:${'0'.repeat(22)}` };
        const modal = modalOf(form);
        expect(modal.title.length).toBeLessThanOrEqual(45);
        expect(modal.custom_id.length).toBeLessThanOrEqual(100);
        expect(modal.components.length).toBeLessThanOrEqual(5);
        for (const part of within(modal.components)) {
          if (part['type'] === 18) expect(String(part['label']).length).toBeLessThanOrEqual(45);
          if (typeof part['placeholder'] === 'string')
            expect(part['placeholder'].length).toBeLessThanOrEqual(100);
          if (typeof part['value'] === 'string') expect(part['value'].length).toBeLessThanOrEqual(4000);
        }
      }),
      { numRuns: 200 },
    );
  });
});
