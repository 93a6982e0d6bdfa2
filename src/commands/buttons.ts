/** The buttons below a reply: each does what a sentence would. */
import type { Button } from '../replies/reply.ts';
import type { Scene } from './scene.ts';
import type { Played } from './step.ts';

/** What was just written can be taken back or changed. */
export const puttingRight = (scene: Scene, played: Played): Button[] => {
  const wrote = played.steps.some((s) => s.entries.some((e) => e.kind !== 'takenBack'));
  if (!wrote) return [];
  const message = scene.because ?? scene.message.key;
  return [
    { label: 'Undo', press: { does: 'undo', message } },
    { label: 'Change something', press: { does: 'change', message } },
  ];
};

/** The answers to the one question. */
export const answering = ({ asking }: Played): Button[] =>
  asking
    ? asking.question.options.map(({ value, label }) => ({
        label,
        press: { does: 'answer', question: asking.question.id, value },
      }))
    : [];

/** What a hold just set, or a refusal, leaves open. */
export const ways = (scene: Scene, played: Played): Button[] => [
  ...holdButtons(scene),
  ...refusedButtons(scene, played),
];

const holdButtons = (scene: Scene): Button[] =>
  scene.entries.flatMap((entry) =>
    entry.kind === 'seen' && scene.record.machines.get(entry.machine)?.hold?.since.entry === entry.id
      ? [
          {
            label: 'False alarm',
            press: { does: 'deeds', deeds: [{ kind: 'release', machine: entry.machine, falseAlarm: true }] },
          } satisfies Button,
        ]
      : [],
  );

/** The other way that a refusal leaves open. */
const refusedButtons = (scene: Scene, { steps }: Played): Button[] =>
  steps.flatMap(({ decision }): Button[] => {
    if (decision?.outcome !== 'refused') return [];
    const { code, facts } = decision;
    if (facts.machine === undefined) return [];
    if (code === 'safety-hold') return releaseButtons(scene, facts.machine);
    if (code !== 'safety-cannot-wait') return [];
    const down = { kind: 'down', machine: facts.machine } as const;
    return [{ label: 'Take it out of use', press: { does: 'deeds', deeds: [down] } }];
  });

function releaseButtons({ person }: Scene, machine: string): Button[] {
  const deed = { kind: 'release', machine } as const;
  const found: Button = { label: 'Say what was found', press: { does: 'ask', about: deed, field: 'found' } };
  const alarm: Button = {
    label: 'False alarm',
    press: { does: 'deeds', deeds: [{ ...deed, falseAlarm: true }] },
  };
  return person.role === 'keeper' ? [found, alarm] : [alarm];
}
