/** What is never given as steps, whoever asks and however; why in about six words; and whom to ask. */
export const NEVER_TOPICS = [
  'open-power-supply', 'board-wiring', 'mains-bed-wiring', 'bridge-protection', 'raise-maximum', 'flame-on-nozzle',
  'food-oven', 'lined-too-hot', 'powered-wiring', 'run-bare-or-unguarded', 'bigger-fuse',
] as const; // prettier-ignore
export type NeverTopic = (typeof NEVER_TOPICS)[number];

export interface Never {
  /** What it is, as it would be asked for. */
  about: string;
  /** Why, in about six words. */
  because: string;
  /** Whom to ask instead. */
  ask: string;
}

const QUALIFIED = 'a qualified electrician, or the maker’s service';
const KEEPER = 'the keeper of the machine, or its maker';

export const NEVER: Readonly<Record<NeverTopic, Never>> = {
  'open-power-supply': {
    about: 'opening or changing a power supply',
    because: 'mains inside, and charge after unplugging',
    ask: QUALIFIED,
  },
  'board-wiring': {
    about: 'rewiring a control board',
    because: 'one wrong lead means fire later',
    ask: QUALIFIED,
  },
  'mains-bed-wiring': {
    about: 'the wiring of a mains-heated bed',
    because: 'mains voltage on a moving metal bed',
    ask: QUALIFIED,
  },
  'bridge-protection': {
    about: 'bridging a door switch, thermal fuse or other protection',
    because: 'it is what stops the harm',
    ask: KEEPER,
  },
  'raise-maximum': {
    about: 'raising the maximum temperature',
    because: 'parts were chosen for that limit',
    ask: 'the maker of the hot end',
  },
  'flame-on-nozzle': {
    about: 'cleaning a nozzle with a flame',
    because: 'burns, fumes, and a softened nozzle',
    ask: `${KEEPER}; a new nozzle costs less`,
  },
  'food-oven': {
    about: 'drying filament in an oven used for food',
    because: 'hot spots, fumes, and food after',
    ask: 'the filament’s maker for a dryer setting',
  },
  'lined-too-hot': {
    about: 'hot work on a PTFE-lined hot end above its limit',
    because: 'the liner breaks down and fumes',
    ask: KEEPER,
  },
  'powered-wiring': {
    about: 'work on wiring with the power on',
    because: 'shock, shorts and dead driver chips',
    ask: QUALIFIED,
  },
  'run-bare-or-unguarded': {
    about: 'running with a bare wire or without a guard',
    because: 'once is enough for an accident',
    ask: KEEPER,
  },
  'bigger-fuse': {
    about: 'replacing a fuse by a bigger one',
    because: 'then the wire becomes the fuse',
    ask: QUALIFIED,
  },
};
