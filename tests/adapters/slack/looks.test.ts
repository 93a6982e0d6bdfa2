/**
 * Every kind of reply as it looks on a narrow phone, with the notification text below; the drawings are kept in
 * tests/adapters/slack/looks.txt so that a person can judge them, and the payload of one in full.
 */
import { describe, expect, it } from 'vitest';
import { render } from '../../../adapters/slack/outgoing/blocks.ts';
import { modal } from '../../../adapters/slack/outgoing/form.ts';
import { homeView } from '../../../adapters/slack/outgoing/home.ts';
import { buttonsOf, type Reply } from '../../../src/index.ts';
import { drawBlocks, drawView } from '../../support/drawBlocks.ts';
import { FORMS, SAMPLES } from '../../support/replySamples.ts';

const tokensOf = (reply: Reply): string[] =>
  buttonsOf(reply).map((_, n) => `v1:${String(n).padStart(22, '0')}`);
const place = { platform: 'slack', space: 'T1', channel: 'C0000001', direct: false };
const framed = (name: string, drawing: string): string => `${'='.repeat(8)} ${name}\n${drawing}\n`;

describe('on a phone', () => {
  it('looks as it was looked at', async () => {
    const replies = Object.entries(SAMPLES).map(([name, reply]) => {
      const { blocks, text } = render(reply, tokensOf(reply));
      return framed(name, `${drawBlocks(blocks)}\n  (notification) ${JSON.stringify(text.slice(0, 70))}`);
    });
    const forms = Object.entries(FORMS).map(([name, form]) =>
      framed(name, drawView(modal(form, { place, audience: 'place' }))),
    );
    const due = SAMPLES['due on one machine'] ?? { sections: [], buttons: [] };
    const home = [
      framed('home, one machine', drawView(homeView({ reply: due, tokens: tokensOf(due) }, 'Alder'))),
      framed('home, a stranger', drawView(homeView(undefined, undefined))),
    ];
    await expect([...replies, ...forms, ...home].join('\n')).toMatchFileSnapshot('./looks.txt');
  });

  it('carries this payload, whole', () => {
    const reply: Reply = {
      title: [{ bold: 'Alder' }, ': 1 overdue.'],
      sections: [
        {
          items: [
            {
              text: ['oil the rods & <wipe>'],
              buttons: [{ label: 'Done', press: { does: 'undo', message: 'm' } }],
            },
          ],
        },
      ],
      buttons: [],
    };
    const token = `v1:${'0'.repeat(22)}`;
    expect(render(reply, [token])).toEqual({
      text: 'Alder: 1 overdue.\noil the rods &amp; &lt;wipe&gt;',
      blocks: [
        {
          type: 'rich_text',
          elements: [
            {
              type: 'rich_text_section',
              elements: [
                { type: 'text', text: 'Alder', style: { bold: true } },
                { type: 'text', text: ': 1 overdue.' },
                { type: 'text', text: '\n' },
                { type: 'text', text: 'oil the rods & <wipe>' },
              ],
            },
          ],
        },
        {
          type: 'actions',
          elements: [
            {
              type: 'button',
              text: { type: 'plain_text', text: 'Done', emoji: false },
              accessibility_label: 'Done: oil the rods & <wipe>',
              action_id: token,
              value: token,
            },
          ],
        },
      ],
    });
  });

  it('puts what can hurt before everything else', () => {
    const stop = SAMPLES['stop list'] ?? { sections: [], buttons: [] };
    expect(drawBlocks(render(stop, tokensOf(stop)).blocks)).toMatch(/^\*Stop\./u);
  });
});
