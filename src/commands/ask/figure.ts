/** "What tension do alder's belts get?": what the bench formulas say, with their working. */
import { pitchForTension, USUAL_TENSION_N } from '../../maintenance/figures/beltPitch.ts';
import { beltMass, tensionFromPitch } from '../../maintenance/figures/beltTension.ts';
import { shown, type Figure } from '../../maintenance/figures/figure.ts';
import { COARSE_PITCH_MM } from '../../maintenance/figures/screwPitch.ts';
import { figure as number } from '../../replies/format/number.ts';
import { item, type Item, type Reply } from '../../replies/reply.ts';
import { machineName } from '../../replies/wording/names.ts';
import type { AskScene, Topic } from './topic.ts';

/** The example's belt: narrow, as on most desktop machines, plucked on a span that is easy to reach. */
const EXAMPLE = { widthMm: 6, spanMm: 150 };

const value = (figure: Figure<number>): number | undefined => (figure.ok ? figure.value : undefined);

function belt(scene: AskScene): Item[] {
  const { act, record } = scene;
  const crossed = act.machine !== undefined && record.machines.get(act.machine)?.build.belts === 'crossed';
  const where = act.machine === undefined ? 'The manual' : `${machineName(act.machine, scene)}’s manual`;
  const massKgPerM = value(beltMass(EXAMPLE.widthMm)) ?? 0;
  const [low, high] = [USUAL_TENSION_N.from, USUAL_TENSION_N.to].map((tensionN) =>
    value(pitchForTension({ tensionN, massKgPerM, spanMm: EXAMPLE.spanMm })),
  );
  const pitch =
    low === undefined || high === undefined
      ? []
      : [
          item(
            `A ${EXAMPLE.widthMm} mm belt plucked on ${EXAMPLE.spanMm} mm: about ${Math.round(low)} to ${Math.round(high)} Hz for ${USUAL_TENSION_N.from} to ${USUAL_TENSION_N.to} N, common practice (T = 4 m L² f²; m ${shown(massKgPerM * 1000)} g/m). Pluck yours and tell me Hz and mm.`,
          ),
        ];
  return [
    item(`${where} sets the figure. Without one: firm, no sag, carriage runs free by hand.`),
    ...pitch,
    ...(crossed
      ? [item('Crossed belts: both to the same pitch, then check that the gantry is square.')]
      : []),
    item('Power off before fingers go near belts.'),
  ];
}

/** "95 Hz on 150 mm": what that comes to, and how it lies to what is usual. */
export function plucked(frequencyHz: number, spanMm: number | undefined, widthMm = EXAMPLE.widthMm): Item[] {
  if (spanMm === undefined) return [item('On which free span, in mm? Such as “95 Hz on 150 mm, 6 mm belt”.')];
  const massKgPerM = value(beltMass(widthMm)) ?? 0;
  const tension = tensionFromPitch({ massKgPerM, spanMm, frequencyHz });
  if (!tension.ok) return [item(`I cannot work that out: ${tension.reason}.`)];
  const { from, to } = USUAL_TENSION_N;
  const lies = tension.value < from ? 'slacker than' : tension.value > to ? 'tighter than' : 'within';
  return [
    item(
      `About ${number(tension.value, 1)} N (${shown(widthMm)} mm belt): ${lies} the ${from} to ${to} N of common practice. ${tension.notes.join(' ')}`.trim(),
    ),
    item(`Working: ${tension.working}. The machine’s manual sets the figure.`),
  ];
}

function screws(): Item[] {
  const turns = Object.entries(COARSE_PITCH_MM)
    .slice(0, 4)
    .map(([thread, pitch]) => `${thread} ${pitch} mm`);
  return [
    item(
      `One turn of a levelling screw moves its corner by the thread’s pitch (ISO 261, coarse): ${turns.join(', ')}.`,
    ),
  ];
}

const feeder = (): Item[] => [
  item(
    'New steps per mm = old steps x length asked for / length fed. Feed 100 mm hot and slowly, measure at the inlet, three times.',
  ),
];

export const figure: Topic = (scene): Reply => {
  const { part, task } = scene.act;
  const items =
    part === 'bed-spring' || part === 'fastener' || task === 'level-bed'
      ? screws()
      : part === 'feeder-gear' || task === 'calibrate-feeder'
        ? feeder()
        : belt(scene);
  return { sections: [{ items }], buttons: [] };
};
