/**
 * What can hurt in each task that replaces nothing, and when to put the tools down.
 * A Record over the codes: a task without a row does not compile. Judgement and common practice.
 */
import type { ReplaceTask, Task } from '../codes.ts';
import type { CautionKey } from './keys.ts';

export interface TaskCaution {
  /** The hazards that can be met, the worst first; empty where the line alone says it (a ladder). */
  keys: readonly CautionKey[];
  /** The one line to print when there is room for one only. */
  line: string;
  /** The work needs the power on: motors off and hands clear stand in for pulling the power. */
  powered?: true;
  /** The work takes away what holds an axis up, so that it is propped whatever the build states. */
  loosens?: true;
  /** What must end the work there and then. */
  stopWhen?: string;
}
/** A task that hurts nobody says so: silence would look like a row that was forgotten. */
export type TaskCautionRow = TaskCaution | 'none needed';
export type PlainTask = Exclude<Task, ReplaceTask>;

export const CAUTIONS_BY_TASK: Readonly<Record<PlainTask, TaskCautionRow>> = {
  'dust-off': {
    keys: ['UNPLUG', 'DUST'],
    line: 'Off, unplugged and cool; brush and vacuum first, hold the fan blades, air can upright, no spray on hot parts.',
    stopWhen: 'carbon dust lies on the control board: leave that cover shut, qualified person',
  },
  'clean-fans': {
    keys: ['UNPLUG', 'DUST'],
    line: 'Off, unplugged and cool; hold the blades still, keep an air can upright and away from hot parts.',
    stopWhen: 'a fan lead is bare, or carbon dust lies on the control board',
  },
  'clear-debris': {
    keys: ['HOT', 'MOVE', 'CUT'],
    line: 'Only when it stands still and is below 50 °C; no blade on a warm bed.',
    stopWhen: 'plastic has wrapped round a lead: power off and look at the wiring first',
  },
  'clean-plate': {
    keys: ['HOT', 'SOLV', 'CUT'],
    line: 'Plate off and cold; alcohol away from heat; no acetone unless the plate’s maker says so.',
    stopWhen: 'a glass plate is chipped or cracked: it is scrap',
  },
  'clean-feeder': {
    keys: ['HOT', 'MOVE', 'DUST'],
    line: 'Unload first, motors off; brush rather than blow, eye protection on.',
    stopWhen: 'teeth are missing or polished flat, or plastic has run down on to the hot end',
  },
  'clean-nozzle': {
    keys: ['HOT', 'SHORT'],
    line: 'Hot tip: heaters off first, long brass brush, short strokes, clear of the leads.',
    stopWhen: 'plastic has crept up to the heater or sensor leads',
  },
  'clean-screw': {
    keys: ['DROP', 'MOVE'],
    line: 'Prop the axis, power off; hold the cloth to a screw that is not turning.',
    stopWhen: 'the screw is bent or torn, or fresh plastic dust lies under the nut: the nut is wearing out',
  },
  'clean-enclosure': {
    keys: ['UNPLUG', 'DUST'],
    line: 'Cold and unplugged; nothing wet near the electrics.',
    stopWhen: 'there is soot, or a lead or pane is scorched: find its source first',
  },
  'clear-jam': {
    powered: true,
    keys: ['HOT', 'FUME', 'MOVE', 'CUT'],
    line: 'Heat to the filament’s own print temperature and no further, face away, pull slowly, never a flame.',
    stopWhen: 'it would need more than the hot end’s limit, it smells of burning, or three tries have failed',
  },
  'lubricate-rods': {
    keys: ['MOVE'],
    line: 'Power off, move the axis by hand; none on belts, wheels or plate.',
    stopWhen: 'the bearings turn out to be polymer: they take no lubricant',
  },
  'wipe-rods': {
    keys: ['MOVE'],
    line: 'Power off, move the axis by hand; dry cloth, no lubricant.',
    stopWhen: 'a rod is scored or a bearing grinds: that wants parts, not a cloth',
  },
  'lubricate-rails': {
    keys: ['MOVE'],
    line: 'Power off, move the carriage by hand; one drop, none on belts, wheels or plate.',
    stopWhen: 'the carriage catches at one place, or a ball lies about',
  },
  'grease-screw': {
    keys: ['DROP', 'MOVE'],
    line: 'Prop the axis, power off, thin film, wipe off the rest.',
    stopWhen: 'the nut is plastic and its maker names no lubricant',
  },
  'grease-ball-screw': {
    keys: ['DROP', 'MOVE'],
    line: 'A ball screw does not hold an axis: prop it well before the power goes off.',
    stopWhen: 'the nut would have to come off its screw: the balls fall out',
  },
  'check-fasteners': {
    loosens: true,
    keys: ['MOVE', 'DROP'],
    line: 'Power off; take the weight of the gantry before a frame screw is loosened.',
    stopWhen: 'a bracket, plate or profile is cracked',
  },
  'check-printed-parts': {
    keys: ['HOT', 'MOVE'],
    line: 'Cold and off; look where a printed part comes near the hot block.',
    stopWhen: 'a mount is soft, or touches the hot block',
  },
  'check-wheels': {
    loosens: true,
    keys: ['MOVE', 'DROP'],
    line: 'Power off; roll the carriage by hand, fingers out of the track.',
    stopWhen: 'a wheel is split',
  },
  'check-tube': {
    keys: ['HOT', 'KNIFE'],
    line: 'Cold, filament out first.',
    stopWhen: 'the tube is brown or black at the hot end',
  },
  'check-nozzle': {
    keys: ['HOT'],
    line: 'Cold, or with a mirror: no face near a hot tip.',
    stopWhen: 'plastic comes out above the nozzle',
  },
  'check-first-layer': {
    powered: true,
    keys: ['HOT', 'MOVE'],
    line: 'Hands off while it homes; one finger on the switch.',
    stopWhen: 'the nozzle scrapes the plate: stop the job',
  },
  'check-wiring': {
    keys: ['UNPLUG', 'MAINS'],
    line: 'Unplugged, plug in sight; look, do not pull; the mains side stays shut.',
    stopWhen: 'anything is bare, brown, soft or smells, a mains lead is loose, or a fuse has gone again',
  },
  'check-heater': {
    keys: ['UNPLUG', 'HOT'],
    line: 'Unplugged and cold; a gentle tug is enough.',
    stopWhen: 'the cartridge or sensor is loose, melted, brown or bare',
  },
  'check-fans': {
    powered: true,
    keys: ['MOVE', 'HOT'],
    line: 'Watch and listen; fingers, hair and sleeves away from turning blades.',
    stopWhen: 'a board or supply fan stands still: power off',
  },
  'check-mains-lead': {
    keys: ['UNPLUG', 'MAINS'],
    line: 'From outside only, unplugged at the wall; electrical testing by a competent person.',
    stopWhen: 'plug, lead or inlet is cut, crushed, brown or loose',
  },
  'check-guards': {
    powered: true,
    keys: ['MOVE'],
    line: 'Stand clear while it moves; a guard is tested, never held open or bridged.',
    stopWhen: 'the machine moves with the guard open: out of use',
  },
  'check-probe': {
    powered: true,
    keys: ['MOVE', 'HOT'],
    line: 'Powered and homing: touch the probe only while nothing moves, hand on the switch.',
    stopWhen: 'the head drives on after the probe has triggered',
  },
  'check-belt': {
    keys: ['MOVE'],
    line: 'Power off; move the carriage by hand, fingers clear of the pulleys.',
    stopWhen: 'teeth are missing or a strand hangs out: no print before a new belt is on',
  },
  'check-idlers': {
    keys: ['MOVE'],
    line: 'Power off; turn the idler by finger with the belt slack or standing still.',
    stopWhen: 'an idler grinds, wobbles or has cut into the belt',
  },
  'check-plate': {
    keys: ['HOT', 'CUT'],
    line: 'Plate off and cold; a chipped edge cuts.',
    stopWhen: 'glass is chipped',
  },
  'check-liner': {
    keys: ['HOT', 'FUME'],
    line: 'Cold before the hot end is opened; a browned liner is thrown away, not heated again.',
    stopWhen: 'the liner is brown or black, or the machine has overheated',
  },
  'check-feeder-gear': {
    keys: ['MOVE', 'DUST'],
    line: 'Power off; brush the teeth clean before looking, eye protection on.',
    stopWhen: 'the gear turns on its shaft although its screw is tight',
  },
  'check-filament-path': 'none needed',
  'check-notices': 'none needed',
  'test-protection': {
    keys: ['HOT'],
    line: 'A keeper does it and stays beside it, one hand on the switch.',
    stopWhen: 'the temperature keeps rising: off at the plug, out of use',
  },
  'tighten-pulleys': {
    loosens: true,
    keys: ['MOVE', 'DROP'],
    line: 'Power off; short key, no force; thread-lock stays off plastics.',
    stopWhen: 'a grub screw is rounded: fit a new one',
  },
  'tension-belts': {
    keys: ['MOVE'],
    line: 'Motors off, fingers clear of the pulleys; firm, not as tight as it will go.',
    stopWhen: 'the tensioner is cracked or the belt frayed',
  },
  'level-bed': {
    powered: true,
    keys: ['HOT', 'MOVE', 'DROP'],
    line: 'Paper under a hot nozzle burns fingers: slide it from the far edge.',
    stopWhen: 'bed or plate is cracked',
  },
  'square-gantry': {
    loosens: true,
    keys: ['DROP', 'MOVE'],
    line: 'Power off and the gantry propped before one side is turned.',
    stopWhen: 'a side will not come level: bent screw or cracked bracket',
  },
  'calibrate-feeder': {
    powered: true,
    keys: ['HOT', 'MOVE'],
    line: 'Hot, and the gear turns: hands clear while it feeds.',
    stopWhen: 'what is fed is more than 10 % off: that is a fault, not a figure to set',
  },
  'tune-temperature': {
    keys: ['HOT', 'FUME'],
    line: 'The hot end heats up by itself while it tunes: hands clear, stay in the room.',
    stopWhen: 'the temperature runs away: off at the plug',
  },
  'trim-tube': {
    keys: ['HOT', 'KNIFE'],
    line: 'Cold, filament and tube out, cut on the bench.',
    stopWhen: 'the tube is brown or black: a new one, not a trim',
  },
  'update-firmware': {
    keys: ['HOT'],
    line: 'Attended, heaters off, settings saved, power not cut half way; test the heater protection after it.',
    stopWhen: 'the protection test fails: out of use',
  },
  'save-settings': 'none needed',
  'dry-filament': {
    keys: ['OVEN'],
    line: 'Dryer at the maker’s temperature; stay by unless the dryer is made to run alone.',
    stopWhen: 'it smells or the spool goes soft',
  },
  'run-in': {
    loosens: true,
    keys: ['UNPLUG', 'MOVE', 'DROP'],
    line: 'Unplugged for the wiring, power off for everything that moves.',
    stopWhen: 'a connector is brown or a wire bare',
  },
  'test-smoke-detector': {
    keys: [],
    line: 'Firm steps, not a chair; tell the room and the fire panel’s keeper before you press the button.',
    stopWhen: 'it stays silent: tell the person responsible today',
  },
  'check-extinguisher': {
    keys: [],
    line: 'Look only: do not pull the pin or let it off; it is heavy, lift it with both hands.',
    stopWhen: 'pin, seal or pressure is not right: tell the person responsible today',
  },
  'check-extraction': {
    keys: ['UNPLUG', 'DUST'],
    line: 'Feel the draught at the hood; power off before a grille or filter comes out.',
    stopWhen: 'there is no draught: no printing of materials that fume',
  },
  'check-solvents': {
    keys: ['SOLV'],
    line: 'Caps on, labels legible, away from heat and sparks; no more on the bench than the day needs.',
    stopWhen: 'something leaks or has no label',
  },
  'check-safety-kit': 'none needed',
  'check-dryer': {
    keys: ['UNPLUG', 'HOT', 'OVEN'],
    line: 'Unplugged and cool before it is opened or cleaned.',
    stopWhen: 'the lead or plug is brown, or it heats past its setting',
  },
};
