/** The first answers to an interaction. Discord waits three seconds for one, and takes one only. */
import { InteractionResponseType, MessageFlags, Routes, type APIInteraction, type REST } from 'discord.js';
import type { Form, Log } from '../../src/index.ts';
import { plainBody } from './render/components.ts';
import { MOST_OPTION_LABEL, OPTIONS_A_SELECT } from './render/limits.ts';
import { modalOf } from './render/modal.ts';
import { faultWord } from './rest.ts';

type Asked = Pick<APIInteraction, 'id' | 'token'>;

export interface Responder {
  /** "is thinking", for all or for the asker. False: Discord no longer knows the interaction, or knows it answered. */
  thinking(asked: Asked, hidden: boolean): Promise<boolean>;
  /** Shows nothing. */
  noticed(asked: Asked): Promise<boolean>;
  form(asked: Asked, form: Form): Promise<boolean>;
  choices(asked: Asked, names: readonly string[]): Promise<boolean>;
  /** A line to the asker alone, as the whole answer. */
  tell(asked: Asked, line: string): Promise<boolean>;
  /** A line after `noticed` or in the place of `thinking`. */
  tellLater(asked: Asked, line: string, how: 'reply' | 'update'): Promise<void>;
}

export function openResponder(rest: REST, application: () => string, log: Log): Responder {
  const first = async (
    { id, token }: Asked,
    body: { type: InteractionResponseType; data?: object },
  ): Promise<boolean> => {
    try {
      await rest.post(Routes.interactionCallback(id, token), { body, auth: false });
      return true;
    } catch (cause) {
      // too late (10062), answered by somebody else (40060) or no answer: what was asked is done all the same
      log.warn('discord interaction not acknowledged', { interaction: id, why: faultWord(cause) });
      return false;
    }
  };
  return {
    thinking: (asked, hidden) =>
      first(asked, {
        type: InteractionResponseType.DeferredChannelMessageWithSource,
        ...(hidden ? { data: { flags: MessageFlags.Ephemeral } } : {}),
      }),
    noticed: (asked) => first(asked, { type: InteractionResponseType.DeferredMessageUpdate }),
    form: (asked, form) => first(asked, { type: InteractionResponseType.Modal, data: modalOf(form) }),
    choices: (asked, names) =>
      first(asked, {
        type: InteractionResponseType.ApplicationCommandAutocompleteResult,
        data: {
          choices: names
            .filter((name) => name.length <= MOST_OPTION_LABEL)
            .slice(0, OPTIONS_A_SELECT)
            .map((name) => ({ name, value: name })),
        },
      }),
    tell(asked, line) {
      const body = plainBody(line, asked.id);
      return first(asked, {
        type: InteractionResponseType.ChannelMessageWithSource,
        data: { ...body, flags: body.flags | MessageFlags.Ephemeral },
      });
    },
    async tellLater({ id, token }, line, how) {
      const body = plainBody(line, id);
      const sent =
        how === 'reply'
          ? rest.patch(Routes.webhookMessage(application(), token), { body, auth: false })
          : rest.post(Routes.webhook(application(), token), {
              body: { ...body, flags: body.flags | MessageFlags.Ephemeral },
              auth: false,
            });
      await sent.catch((cause: unknown) =>
        log.warn('discord line not shown', { interaction: id, why: faultWord(cause) }),
      );
    },
  };
}
