/** Stage 9. Ordered rules over what the clauses gave, each with its reason. */
import { isSafetySymptom, type Part, type Task } from '../maintenance/codes.ts';
import type { Act } from './act.ts';
import { REASON_OF } from './english/frames/symptom-table.ts';
import { hasTag, isFn, sense, sensesOf } from './item.ts';
import { MENDED } from './english/frames/gone.ts';
import type { Placed } from './placed.ts';
import { byClause, materialAfter, materialHead, oneRun, weightAfter } from './runs.ts';
import type { Scene } from './scene.ts';
import type { Complaint } from './senses.ts';

interface Rule {
  name: string;
  why: string;
  apply: (placed: readonly Placed[], scenes: readonly Scene[]) => readonly Placed[];
}

const machineOf = (act: Act): string | undefined => ('machine' in act ? act.machine : undefined);
const sameMachine = (a: Act, b: Act): boolean => machineOf(a) === machineOf(b);
const near = (a: Placed, b: Placed): boolean => Math.abs(a.draft.clause - b.draft.clause) <= 1;

/** "new nozzle, old one was toast (worn)": over the clause that speaks of the old one. */
const isPastOld = (scenes: readonly Scene[], a: Placed, b: Placed): boolean =>
  b.draft.clause === a.draft.clause + 2 && isFn(scenes[a.draft.clause + 1]?.items[0], 'old');
/** "the x belt, which had frayed since Christmas, was replaced": a clause may stand between, where the part is the same. */
const ofSamePart = (swap: Placed, other: Placed): boolean =>
  swap.act.kind === 'swap' &&
  other.draft.noun === swap.act.part &&
  sameMachine(swap.act, other.act) &&
  Math.abs(swap.draft.clause - other.draft.clause) <= 2;

/** Only neighbours are looked at: the list is in order of clauses, so a short window is enough. */
const WINDOW = 12;
const around = (placed: readonly Placed[], at: number): readonly Placed[] =>
  placed.slice(Math.max(0, at - WINDOW), at + WINDOW);

const WORN_SYMPTOM: ReadonlySet<string> = new Set([
  'worn-nozzle',
  'worn-belt',
  'worn-gear',
  'worn-tube',
  'scratched-plate',
  'flat-spot',
]);

function reasonFrom(one: Placed, swap: Act): 'worn' | 'broken' | undefined {
  if (one.act.kind !== 'symptom' || swap.kind !== 'swap') return undefined;
  const noun = one.draft.noun;
  const fits =
    noun === undefined ||
    noun === swap.part ||
    (noun === 'fan' && swap.part.endsWith('fan')) ||
    (noun === 'belt' && swap.part.endsWith('belt')) ||
    (swap.part === 'belt' && noun.endsWith('-belt'));
  if (!fits) return undefined;
  const complaint = one.draft.complaint as Complaint | undefined;
  if (complaint !== undefined) return REASON_OF[complaint];
  return WORN_SYMPTOM.has(one.act.symptom) ? 'worn' : undefined;
}

/** "both got a new collet; the one on juniper was worn": another swap is meant, by its machine. */
const isOfAnother = (placed: readonly Placed[], swap: Placed, fault: Placed): boolean =>
  !sameMachine(swap.act, fault.act) &&
  fault.assumed === undefined &&
  placed.some(
    (other) =>
      other.act.kind === 'swap' && other.draft.noun === swap.draft.noun && sameMachine(other.act, fault.act),
  );
/** "tore the X belt, fitted a new belt". */
const whichBelt = (part: Part, fault: Placed): Part =>
  part === 'belt' && (fault.draft.noun === 'x-belt' || fault.draft.noun === 'y-belt')
    ? fault.draft.noun
    : part;

/** "new tube and new collet, both were worn". */
const isOfBoth = (scene: Scene | undefined): boolean =>
  scene?.items.some((item) => isFn(item, 'both', 'they', 'all', 'each')) ?? false;
/** The reason said in the clause beside a swap: "old one was worn out", "worn", "it was on the plan". */
function reasonBeside(
  scenes: readonly Scene[],
  at: number,
  drafted: ReadonlySet<number>,
): 'worn' | 'broken' | 'planned' | undefined {
  // "…, purely because they were due"
  const idle = scenes[at + 1]?.items.every((item) => item.senses.length === 0) === true;
  for (const i of [
    at + 1,
    at - 1,
    ...(idle ? [at + 2] : []),
    ...(isOfBoth(scenes[at + 2]) && drafted.has(at + 1) ? [at + 2] : []),
  ]) {
    const scene = scenes[i];
    if (!scene || drafted.has(i) || scene.mood.question) continue;
    const planned = sensesOf(scene.items, 'reason')[0]?.code;
    if (planned) return planned;
    if (scene.mood.negated) continue;
    for (const { code } of sensesOf(scene.items, 'complaint')) {
      const reason = REASON_OF[code];
      if (reason) return reason;
    }
  }
  return undefined;
}

const WIPED_FOR: Readonly<Partial<Record<Task, readonly Task[]>>> = {
  'wipe-rods': ['lubricate-rods'],
  'clean-screw': ['grease-screw', 'grease-ball-screw'],
};

const MOVING =
  /\b(?:goes|go|going|moves|moving|move|travels|travelling|swings) (?:over |right |all the way )?(?:to the )?(?:left|right|back|front|end|other side)\b/u;

const RULES: readonly Rule[] = [
  {
    name: 'swap takes its reason',
    why: 'the fault of the part that came out is why it came out, not a second entry',
    apply: (placed, scenes) => {
      const drafted = new Set(placed.map((one) => one.draft.clause));
      const taken = new Set<Placed>();
      const out = placed.map((one, at): Placed => {
        const { act } = one;
        if (act.kind !== 'swap') return one;
        let reasoned: Placed | undefined;
        for (const other of around(placed, at)) {
          const close = near(one, other) || isPastOld(scenes, one, other) || ofSamePart(one, other);
          const mine = close && !taken.has(other) && !isOfAnother(placed, one, other);
          const reason = mine ? reasonFrom(other, act) : undefined;
          const said = reasoned?.act.kind === 'swap' ? reasoned.act.reason : act.reason;
          if (reason === undefined || (said !== undefined && said !== reason)) continue;
          taken.add(other);
          reasoned = { ...one, act: { ...act, reason, part: whichBelt(act.part, other) } };
        }
        if (reasoned) return reasoned;
        if (act.reason !== undefined) return one;
        const reason = reasonBeside(scenes, one.draft.clause, drafted);
        return reason === undefined ? one : { ...one, act: { ...act, reason } };
      });
      return out.filter((one) => !taken.has(one));
    },
  },
  {
    name: 'swap absorbs its spare and its task',
    why: 'the core concludes both; the same part taken from the shelf, or taken out, is the same deed',
    apply: (placed) =>
      placed.filter((one, at) => {
        const { act } = one;
        const swaps = around(placed, at).filter(
          (other) => other.act.kind === 'swap' && Math.abs(other.draft.clause - one.draft.clause) <= 2,
        );
        const ofPart = (other: Placed): boolean =>
          other.act.kind === 'swap' && other.draft.noun === one.draft.noun && sameMachine(other.act, act);
        // "a new liner, cut to 38.5 mm", "four wheels came off and four fresh ones went on"
        if (act.kind === 'done' && act.task === 'trim-tube') return !swaps.some(ofPart);
        if (act.kind === 'symptom' && one.draft.complaint === 'came-out')
          return !swaps.some((other) => ofPart(other) && other.draft.clause === one.draft.clause + 1);
        if (act.kind === 'stock' && act.change !== undefined && act.change < 0)
          return !swaps.some((other) => other.act.kind === 'swap' && other.act.part === act.part);
        return true;
      }),
  },
  {
    name: 'a knock in moving',
    why: '"knocks when it goes to the left" is of what moves; the feeder knocks in feeding',
    apply: (placed, scenes) =>
      placed.map((one): Placed => {
        const { act, draft } = one;
        const knocks = act.kind === 'symptom' && draft.complaint === 'click' && draft.noun === undefined;
        if (!knocks || ![0, 1].some((on) => MOVING.test(scenes[draft.clause + on]?.text ?? ''))) return one;
        return { ...one, act: { ...act, symptom: 'rattle' } };
      }),
  },
  {
    name: 'the cold bed is cold once',
    why: '"bed won\'t heat, stone cold": the second is said of the same bed',
    apply: (placed) =>
      placed.filter(
        (one, at) =>
          one.act.kind !== 'symptom' ||
          one.act.symptom !== 'no-heat' ||
          one.draft.noun !== undefined ||
          !around(placed, at).some(
            (other) =>
              other.act.kind === 'symptom' &&
              other.act.symptom === 'bed-no-heat' &&
              sameMachine(other.act, one.act) &&
              near(one, other),
          ),
      ),
  },
  {
    name: 'wiped and greased is greased',
    why: 'the wipe before the grease is part of greasing, in the next clause too',
    apply: (placed) =>
      placed.filter((one, at) => {
        const { act } = one;
        if (act.kind !== 'done' || !one.draft.rule.startsWith('done: wipe')) return true;
        return !around(placed, at).some(
          (other) =>
            other.act.kind === 'done' &&
            (WIPED_FOR[act.task] ?? []).includes(other.act.task) &&
            sameMachine(other.act, act) &&
            near(one, other),
        );
      }),
  },
  {
    name: 'one swap for one part',
    why: '"took the old nozzle out, put a 0.6 in" is one deed',
    apply: (placed) =>
      placed.filter((one, at) => {
        const { act } = one;
        if (act.kind !== 'swap') return true;
        const earlier = placed
          .slice(Math.max(0, at - WINDOW), at)
          .find(
            (other) =>
              other.act.kind === 'swap' &&
              other.act.part === act.part &&
              sameMachine(other.act, act) &&
              near(one, other),
          );
        return earlier === undefined;
      }),
  },
  {
    name: 'hours and filament of one run',
    why: '"13 h on juniper, 1.8 kg petg" is one run told by two figures',
    apply: (placed) => {
      const out: Placed[] = [];
      for (const one of placed) {
        const last = out.at(-1);
        const both = last === undefined ? undefined : oneRun(last, one);
        if (both === undefined) out.push(one);
        else out[out.length - 1] = both;
      }
      return out;
    },
  },
  {
    name: 'material said for all',
    why: '"…, all pla": a material alone, after runs that name none, is of them all',
    apply: (placed, scenes) => {
      const drafted = byClause(placed);
      return placed.map((one) => {
        const { act } = one;
        if (act.kind !== 'usage' || act.material !== undefined) return one;
        const material =
          materialAfter(drafted, scenes, one.draft.clause) ?? materialHead(scenes, one.draft.clause);
        return material === undefined ? one : { ...one, act: { ...act, material } };
      });
    },
  },
  {
    name: 'load takes its weight',
    why: '"put the petg on birch, 750 g spool": the grams said after a spool are what is on it',
    apply: (placed, scenes) =>
      placed.map((one) => {
        const { act } = one;
        if (act.kind !== 'load' || act.grams !== undefined) return one;
        const grams = weightAfter(placed, scenes, one.draft.clause);
        return grams === undefined ? one : { ...one, act: { ...act, grams } };
      }),
  },
  {
    name: 'the last shelf count stands',
    why: 'ran out, then three in the cupboard; took the last one, so none is left: what is there now is what was counted last',
    apply: (placed) =>
      placed.filter((one, at) => {
        const { act } = one;
        if (act.kind !== 'stock' || (act.count === undefined && (act.change ?? 0) > 0)) return true;
        return !placed
          .slice(at + 1, at + WINDOW)
          .some(
            (later) =>
              later.act.kind === 'stock' &&
              later.act.part === act.part &&
              later.act.count !== undefined &&
              later.draft.clause > one.draft.clause &&
              later.act.fitted === act.fitted,
          );
      }),
  },
  {
    name: 'two sides disagree',
    why: '"squashed on the left, barely touching on the right": neither height is wrong, the bed is uneven',
    apply: (placed, scenes) =>
      placed.map((one) =>
        one.act.kind === 'symptom' && HEIGHTS.has(one.act.symptom) && sidesDiffer(scenes, one.draft.clause)
          ? { ...one, act: { ...one.act, symptom: 'uneven-first-layer' } }
          : one.act.kind === 'ask' &&
              one.act.topic === 'diagnose' &&
              one.act.symptom !== undefined &&
              HEIGHTS.has(one.act.symptom) &&
              sidesDiffer(scenes, one.draft.clause)
            ? { ...one, act: { ...one.act, symptom: 'uneven-first-layer' } }
            : one,
      ),
  },
  {
    name: 'equal acts once',
    why: 'the same deed, state or trouble told twice in one message happened once; hours and stock are counted as often as said',
    apply: (placed) =>
      placed.filter((one, at) => {
        if (['usage', 'stock', 'load'].includes(one.act.kind)) return true;
        return !placed.slice(Math.max(0, at - WINDOW * 3), at).some((other) => alike(one.act, other.act));
      }),
  },
  {
    name: 'one cold told twice',
    why: '"the bed won\'t heat, stone cold": the cold of the bed, and of no hot end besides',
    apply: (placed) =>
      placed.filter(
        (one, at) =>
          !(
            one.act.kind === 'symptom' &&
            one.act.symptom === 'no-heat' &&
            one.draft.noun === undefined &&
            around(placed, at).some(
              (other) =>
                other.act.kind === 'symptom' &&
                other.act.symptom === 'bed-no-heat' &&
                sameMachine(other.act, one.act) &&
                near(one, other),
            )
          ),
      ),
  },
  {
    name: 'what is asked about is not written beside',
    why: '"#9 - nozzle changed, old one worn": while nobody knows the machine, its trouble is not written of none',
    apply: (placed) =>
      placed.some((one) => one.act.kind === 'unclear' && one.draft.doubt?.field === 'machine')
        ? placed.filter(
            (one) =>
              !(
                one.act.kind === 'symptom' &&
                one.act.machine === undefined &&
                !isSafetySymptom(one.act.symptom)
              ),
          )
        : placed,
  },
  {
    name: 'a sum is no second run',
    why: '"from 9:00 to 12:45, makes 3h45" tells one run twice',
    apply: (placed, scenes) =>
      placed.filter((one, at) => {
        const { act } = one;
        if (act.kind === 'stock') return !isSumOfStock(one, placed, scenes);
        const scene = scenes[one.draft.clause];
        if (act.kind !== 'usage' || !(SUMS.test(scene?.text ?? '') || saysSpanAgain(scene, scenes)))
          return true;
        return !placed
          .slice(Math.max(0, at - WINDOW), at)
          .some(
            (other) =>
              other.act.kind === 'usage' &&
              other.act.hours === act.hours &&
              sameMachine(other.act, act) &&
              near(one, other),
          );
      }),
  },
  {
    name: 'what was asked about is not told again',
    why: '"why does birch shift its layers? my cube is a staircase now": the trouble that is asked about',
    apply: (placed) =>
      placed.filter((one, at) => {
        const { act } = one;
        if (act.kind !== 'symptom') return true;
        return !placed
          .slice(Math.max(0, at - WINDOW), at)
          .some(
            (other) =>
              other.act.kind === 'ask' &&
              other.act.topic === 'diagnose' &&
              other.act.symptom === act.symptom &&
              other.draft.clause < one.draft.clause &&
              (other.act.machine === undefined || other.act.machine === act.machine),
          );
      }),
  },
  {
    name: 'a good print is taken off',
    why: '"11 h of nylon, came off the plate at two and looks lovely": finished; nothing let go',
    apply: (placed, scenes) =>
      placed.filter(
        (one) =>
          !(
            one.act.kind === 'symptom' &&
            one.act.symptom === 'detached-print' &&
            placed.some((other) => other.act.kind === 'usage' && near(one, other)) &&
            scenes
              .slice(one.draft.clause, one.draft.clause + 2)
              .some((scene) => sensesOf(scene.items, 'finding').some((s) => s.code === 'fine'))
          ),
      ),
  },
  {
    name: 'a power cut takes the print with it',
    why: 'that the machine went off or lost its print is what the power cut did',
    apply: (placed) =>
      placed.filter((one) => {
        const { act } = one;
        const taken =
          act.kind === 'down' ||
          (act.kind === 'symptom' && ['failed-print', 'power-lost', 'detached-print'].includes(act.symptom));
        return !(
          taken &&
          placed.some(
            (other) =>
              other.act.kind === 'symptom' &&
              other.act.symptom === 'power-cut' &&
              sameMachine(other.act, act) &&
              near(one, other),
          )
        );
      }),
  },
  {
    name: 'what was mended is no new trouble',
    why: '"fixed the no heat, was a loose thermistor": the second says what the first had been',
    apply: (placed, scenes) => withoutCauses(placed, scenes),
  },
  {
    name: 'fine now says what is gone',
    why: 'after a trouble or its repair, "fine now" ends that trouble; with neither it says nothing',
    apply: (placed, scenes) =>
      placed.flatMap((one, at): readonly Placed[] => {
        const { act } = one;
        if (act.kind !== 'gone' || act.symptom !== undefined) return [one];
        const before = placed
          .slice(Math.max(0, at - WINDOW), at)
          .filter((other) => sameMachine(other.act, act) && !befell(other.act));
        // What sits steady is the temperature, whatever was told last.
        const steady = /\b(?:steady|stable)\b/u.test(scenes[one.draft.clause]?.text ?? '');
        const swung = before.findLast(
          (other) => other.act.kind === 'symptom' && other.act.symptom === 'temperature-swing',
        );
        const trouble =
          (steady ? swung : undefined)?.act ?? before.findLast((other) => other.act.kind === 'symptom')?.act;
        if (trouble?.kind === 'symptom') return [{ ...one, act: { ...act, symptom: trouble.symptom } }];
        return [];
      }),
  },
  {
    name: 'one question for one wish',
    why: '"what tension, in newtons?" asks once; the fuller question stands',
    apply: (placed, scenes) =>
      placed.filter((one, at) => {
        const { act } = one;
        if (act.kind !== 'ask') return true;
        const rivals = around(placed, at).filter(
          (other) =>
            other !== one && other.act.kind === 'ask' && other.act.topic === act.topic && near(one, other),
        );
        // "if I book elm for 40 hours, will it hold?"
        if (
          scenes[one.draft.clause]?.mood.conditional &&
          around(placed, at).some(
            (other) =>
              other !== one && other.act.kind === 'ask' && other.draft.clause === one.draft.clause + 1,
          )
        )
          return false;
        // "Hand-over for rowan. It did 3 hours of tpu. …": a heading
        if (
          act.topic === 'handover' &&
          !scenes[one.draft.clause]?.mood.question &&
          one.draft.clause === 0 &&
          placed.some((other) => other.act.kind !== 'ask' && other.act.kind !== 'unclear')
        )
          return false;
        // "are there any tasks which are overdue"
        const late = act.topic === 'due' && act.machine === undefined && around(placed, at).some((other) => other.act.kind === 'ask' && other.act.topic === 'overdue' && near(one, other)); // prettier-ignore
        if (late) return false;
        return !rivals.some(
          (other) =>
            Object.keys(other.act).length > Object.keys(act).length ||
            (Object.keys(other.act).length === Object.keys(act).length &&
              placed.indexOf(other) < at &&
              sameMachine(other.act, act) &&
              !('part' in act)),
        );
      }),
  },
];

/** What stands behind a trouble that was mended, in the same sentence and not asked. */
function withoutCauses(placed: readonly Placed[], scenes: readonly Scene[]): readonly Placed[] {
  const mended = placed.find((one) => one.draft.rule === MENDED);
  const sentenceOf = (one: Placed): number | undefined => scenes[one.draft.clause]?.clause.sentence;
  if (!mended) return placed;
  return placed.filter(
    (one) =>
      (one.act.kind !== 'symptom' && one.act.kind !== 'ask') ||
      one.draft.clause <= mended.draft.clause ||
      sentenceOf(one) !== sentenceOf(mended) ||
      scenes[one.draft.clause]?.clause.asked === true,
  );
}

/** What befell a machine ends by itself. */
const befell = (act: Act): boolean =>
  act.kind === 'symptom' && (act.symptom === 'moved' || act.symptom === 'power-cut');

const SUMS = /^(?:makes|that makes|so|equals|is|in total|that 's|total)\b/u;

/** "ran from 9 to 1, four hours": the hours between are told once more. */
const saysSpanAgain = (scene: Scene | undefined, scenes: readonly Scene[]): boolean =>
  scene !== undefined &&
  scene.items.every((item) => hasTag(item, 'value')) &&
  (scenes[scene.index - 1]?.items.some(
    (item) => sense(item, 'value')?.code === 'hours' && / (?:to|till?|until|-) /u.test(item.text),
  ) ??
    false);
/** "one tube of grease used up, so minus one in the cupboard": the same one, counted off. */
const isSumOfStock = (one: Placed, placed: readonly Placed[], scenes: readonly Scene[]): boolean =>
  /^(?:so|that 's|that is|makes|minus|plus)\b/u.test(scenes[one.draft.clause]?.text ?? '') &&
  placed.some(
    (other) =>
      other.draft.clause === one.draft.clause - 1 &&
      other.act.kind === 'stock' &&
      one.act.kind === 'stock' &&
      other.act.part === one.act.part &&
      one.act.change !== undefined &&
      other.act.change === one.act.change,
  );

const HEIGHTS: ReadonlySet<string> = new Set([
  'first-layer-close',
  'first-layer-far',
  'under-extrusion',
  'poor-adhesion',
]);
const PAIRS: readonly (readonly [RegExp, RegExp])[] = [
  [/\bleft\b/u, /\bright\b/u],
  [/\bfront\b/u, /\b(?:back|rear)\b/u],
  [/\b(?:middle|centre|center)\b/u, /\b(?:edges?|corners?|sides?|outside)\b/u],
  [/\bone (?:side|corner|end)\b/u, /\b(?:other|another|opposite)\b/u],
];
/** Two opposite sides named within a sentence. */
function sidesDiffer(scenes: readonly Scene[], at: number): boolean {
  const here = scenes[at];
  const text = scenes
    .slice(Math.max(0, at - 2), at + 3)
    .filter((scene) => scene.clause.sentence === here?.clause.sentence)
    .map((scene) => scene.text)
    .join(' ');
  return PAIRS.some(([one, other]) => one.test(text) && other.test(text));
}

function alike(a: Act, b: Act): boolean {
  if (a.kind !== b.kind) return false;
  const strip = (act: Act): string =>
    JSON.stringify(
      Object.entries(act)
        .filter(([key]) => (key !== 'finding' && key !== 'part') || act.kind === 'swap' || act.kind === 'ask')
        .sort(([one], [other]) => (one < other ? -1 : 1)),
    );
  return strip(a) === strip(b);
}

export function refine(placed: readonly Placed[], scenes: readonly Scene[]): readonly Placed[] {
  return RULES.reduce((acc, rule) => rule.apply(acc, scenes), placed);
}
