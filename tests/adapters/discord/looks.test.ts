/** Every kind of reply as it looks on a phone, kept in tests/adapters/discord/looks.txt for a person to judge. */
import { describe, expect, it } from 'vitest';
import { renderReply } from '../../../adapters/discord/render/components.ts';
import { modalOf } from '../../../adapters/discord/render/modal.ts';
import { buttonsOf, type Reply } from '../../../src/index.ts';
import { drawComponents } from '../../support/drawComponents.ts';
import { FORMS, SAMPLES } from '../../support/replySamples.ts';

const tokensOf = (reply: Reply): string[] =>
  buttonsOf(reply).map((_, n) => `v1:${String(n).padStart(22, '0')}`);
const draw = (reply: Reply): string => drawComponents(renderReply(reply, tokensOf(reply), 'a').components);
const framed = (name: string, drawing: string): string => `${'='.repeat(8)} ${name}\n${drawing}\n`;

describe('on a phone', () => {
  it('looks as it was looked at', async () => {
    const replies = Object.entries(SAMPLES).map(([name, sample]) => framed(name, draw(sample)));
    const forms = Object.entries(FORMS).map(([name, form]) => {
      const { title, components } = modalOf(form);
      return framed(name, `${title}\n${drawComponents(components)}`);
    });
    await expect([...replies, ...forms].join('\n')).toMatchFileSnapshot('./looks.txt');
  });

  it('carries this payload, whole', () => {
    const reply: Reply = {
      title: [{ bold: 'Alder' }, ': 1 overdue.'],
      sections: [
        {
          items: [
            { text: ['oil the *rods*'], buttons: [{ label: 'Done', press: { does: 'undo', message: 'm' } }] },
          ],
        },
      ],
      buttons: [],
    };
    const token = `v1:${'0'.repeat(22)}`;
    const { flags, components, allowed_mentions } = renderReply(reply, [token], 'a');
    expect([flags, allowed_mentions]).toEqual([32_768, { parse: [], replied_user: false }]);
    expect(components).toEqual([
      { type: 10, content: '**Alder**: 1 overdue.\noil the \\*rods\\*', id: expect.any(Number) },
      { type: 1, components: [{ type: 2, style: 2, label: 'Done', custom_id: token }] },
    ]);
  });
});
