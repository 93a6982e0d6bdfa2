/** The word classes that the frames are written in. Each has a table of words under `english/words/`. */

/** What is done, read or said: some forty classes; the task table crosses them with what they are done to. */
export const VERB_CLASSES = [
  'clean', 'wipe', 'dust', 'oil', 'tighten', 'tension', 'level', 'square', 'swap', 'fit', 'remove', 'look', 'test', 'adjust',
  'calibrate', 'trim', 'clear', 'pull', 'dry', 'update', 'save', 'run', 'did', 'read', 'count', 'arrive', 'use', 'load', 'order',
  'put-off', 'bump', 'move', 'start', 'stop', 'undo', 'amend', 'fix', 'take', 'put', 'get', 'give', 'bin', 'work', 'open', 'close',
  'plug', 'log', 'leave', 'find', 'try', 'forget', 'last', 'buy', 'say', 'hand', 'reset', 'runin', 'print', 'need', 'keep', 'install', 'make', 'apply',
] as const; // prettier-ignore
export type VerbClass = (typeof VERB_CLASSES)[number];
export type VerbForm = 'base' | 'past' | 'both' | 'ing' | 's';

/** What is wrong with a thing; the symptom table crosses these with the thing. */
export const COMPLAINTS = [
  'click', 'jam', 'loose', 'slack', 'worn', 'frayed', 'broken', 'bent', 'cracked', 'melted', 'dead', 'stuck', 'stiff', 'noisy', 'squeak',
  'grind', 'rattle', 'leak', 'slip', 'came-out', 'dirty', 'wet', 'flat', 'scratched', 'hot', 'brown', 'bare', 'cold', 'swing', 'frozen',
  'no-stick', 'uneven', 'wobble', 'dark', 'misses', 'blocked', 'weak', 'smells', 'shock', 'crashed', 'torn', 'kinked', 'weird',
  'squashed', 'round-lines', 'gaps', 'thin', 'fat', 'lifting', 'offset', 'chewed', 'stays-on',
] as const; // prettier-ignore
export type Complaint = (typeof COMPLAINTS)[number];

/** Things that are neither parts nor consumables of the vocabulary but can be worked on. */
export const THINGS = [
  'bed', 'fan', 'feeder', 'hot-end', 'dust', 'debris', 'glue', 'jam', 'firmware', 'settings', 'spool', 'print', 'dryer', 'enclosure',
  'frame', 'gantry', 'mains-lead', 'guard', 'protection', 'first-layer', 'offset', 'mesh', 'esteps', 'temperature', 'pressure',
  'eccentric', 'grub-screw', 'ball-screw', 'smoke-detector', 'extinguisher', 'extraction', 'solvents', 'safety-kit', 'notices', 'filament-path',
  'x-axis', 'y-axis', 'z-axis', 'counter', 'shelf', 'job', 'sensor', 'machine', 'axis', 'belts-all', 'play', 'tension-noun', 'service', 'floor',
  'entry', 'layer', 'hands', 'fault', 'paper', 'gunk', 'plastic', 'leftover', 'interval', 'smell', 'noise', 'sign', 'error', 'power', 'plug', 'gauge',
  'tube-end', 'pack', 'grille', 'underbed', 'level-noun', 'blade', 'carriage', 'crack', 'corner', 'side', 'wall', 'surface', 'coating',
] as const; // prettier-ignore
export type Thing = (typeof THINGS)[number];

export const STATES = ['down', 'up', 'open', 'close'] as const;
export type State = (typeof STATES)[number];

export const UNITS = [
  'hours', 'minutes', 'seconds', 'days', 'weeks', 'months', 'years', 'grams', 'kilograms', 'ounces', 'pounds', 'metres', 'other', 'count', 'range', 'clock',
] as const; // prettier-ignore
export type Unit = (typeof UNITS)[number];

/** What a question is put together from; a topic is a few rows over these (`english/ask/`). */
export const ASK_CUES = [
  'overdue', 'due', 'to-do', 'next', 'until', 'how-long', 'how-many', 'how-often', 'how-tight', 'since-when', 'ago', 'old', 'in-place',
  'hours', 'total', 'filament', 'most', 'log', 'happened', 'left', 'shelf', 'spare', 'have', 'run-out', 'order', 'cause', 'idea', 'state',
  'overview', 'rundown', 'fit', 'long-job', 'lifetime', 'expect', 'interval', 'habit', 'right-for', 'worse', 'more-often', 'trouble', 'downtime',
  'handover', 'crew', 'pass-on', 'help', 'bot', 'entry-verb', 'way', 'lubricant', 'spec', 'tell', 'embedded', 'strong', 'board',
] as const; // prettier-ignore
export type AskCue = (typeof ASK_CUES)[number];

/** What orders about the workshop itself are put together from (`english/orders/`). */
export const ORDER_CUES = [
  'baseline', 'start-now', 'all-well', 'as-of', 'set-interval', 'manual', 'another', 'new-machine', 'twin', 'call', 'add', 'brand-new', 'used',
  'converted', 'rename', 'called-now', 'gone-for-good', 'leaves', 'false-alarm', 'was-only', 'could-be', 'came-back', 'found-out', 'lift-hold',
  'handing-over', 'take-over', 'note', 'stop-telling', 'starting', 'starts-work', 'blame', 'caused', 'on-fire', 'the-lot',
  'direct-feed', 'bowden-feed', 'all-metal', 'lined-hot-end', 'metal-nut', 'plastic-nut', 'linear-rails', 'round-rods', 'v-wheels', 'a-probe',
  'rigid-bed', 'sprung-bed', 'closed-in', 'carbon-filter', 'particle-filter', 'a-sock', 'a-filament-sensor', 'a-mains-bed', 'ball-screws',
] as const; // prettier-ignore
export type OrderCue = (typeof ORDER_CUES)[number];

/** Small words that carry mood, reference and role. */
export const FNS = [
  'not', 'cant', 'will', 'should', 'had-to', 'if', 'would', 'please', 'i', 'we', 'you', 'someone', 'it', 'they', 'person', 'too', 'same', 'both',
  'all', 'other', 'except', 'latter', 'former', 'each', 'new', 'old', 'again', 'still', 'anymore', 'now', 'just', 'be', 'have', 'do', 'for', 'to',
  'with', 'on', 'in', 'of', 'from', 'off', 'out', 'at', 'by', 'until', 'since', 'every', 'than', 'under', 'who', 'what', 'when', 'why', 'how', 'which',
  'where', 'any', 'article', 'this', 'my', 'its', 'or', 'more', 'less', 'much', 'many', 'long', 'often', 'last', 'left', 'maybe', 'unsure', 'as',
  'no', 'yes', 'nothing', 'nobody', 'some', 'another', 'over', 'instead', 'ago', 'later', 'number-sign', 'did-it', 'sorry', 'wrong', 'only', 'up',
  'down', 'rest', 'these', 'after', 'before', 'while', 'here', 'thanks', 'possessive', 'back', 'through', 'like', 'able', 'really', 'first-one',
  'printer', 'joke', 'laugh', 'reported', 'during', 'almost', 'let-me', 'range', 'mention', 'said-quote', 'there', 'ready', 'far', 'meant', 'throughout',
] as const; // prettier-ignore
export type Fn = (typeof FNS)[number];

/** How a stretch hangs on the one before it. */
export type Joint =
  | 'start'
  | 'sentence'
  | 'question'
  | 'comma'
  | 'colon'
  | 'and'
  | 'but'
  | 'so'
  | 'because'
  | 'next'
  | 'dash'
  | 'bracket';
