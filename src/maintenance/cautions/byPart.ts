/**
 * What can hurt in fitting each part anew, and when to put the tools down.
 * A Record over the parts: one without a row does not compile. Judgement and common practice.
 */
import type { Part } from '../codes.ts';
import type { TaskCaution, TaskCautionRow } from './byTask.ts';

const SAME_RATING =
  'Unplugged; same voltage and watts as the old one; strain relief on; test the heater protection after.';

const hotEndElectrics: TaskCaution = {
  keys: ['UNPLUG', 'HOT', 'SHORT'],
  line: SAME_RATING,
  stopWhen: 'the rating is not known, or it is a mains voltage part',
};
const fan: TaskCaution = {
  keys: ['UNPLUG', 'HOT'],
  line: 'Unplugged and cold; same voltage as the old fan, lead tied clear of the hot block and the blades.',
  stopWhen: 'the voltage is not known, or the plug is brown',
};
const belt: TaskCaution = {
  loosens: true,
  keys: ['MOVE', 'DROP', 'CUT'],
  line: 'Power off, axis propped; a spring tensioner lets go with a snap: eye protection.',
  stopWhen: 'a clamp or tensioner is cracked',
};
const zDrive: TaskCaution = {
  loosens: true,
  keys: ['DROP', 'MOVE'],
  line: 'The axis hangs on this part: prop bed or gantry before it comes out.',
  stopWhen: 'the axis is not held by anything but your hand',
};
const running: TaskCaution = {
  loosens: true,
  keys: ['MOVE', 'DROP', 'CUT'],
  line: 'Power off, axis propped; springs and retaining rings fly: eye protection.',
  stopWhen: 'the shaft, its seat or the bracket is damaged',
};
const lowVoltagePlug: TaskCaution = {
  keys: ['UNPLUG'],
  line: 'Unplugged before a connector is pulled or pushed; never with the power on.',
  stopWhen: 'a connector is brown, soft or loose in its housing',
};

export const CAUTIONS_BY_PART: Readonly<Record<Part, TaskCautionRow>> = {
  nozzle: {
    keys: ['HOT', 'FUME', 'SHORT', 'CUT'],
    line: 'Threaded: hot, two spanners, heaters off as soon as it is loose. One-piece or quick-change: cold.',
    stopWhen: 'the heat break turns or bends, or a quick-change nozzle will not seat',
  },
  'heat-break': {
    keys: ['UNPLUG', 'HOT', 'SHORT'],
    line: 'Cold and unplugged; thin tube: turn the block with a spanner, do not lever on the heat break.',
    stopWhen: 'the thread is damaged, or a lead is bare',
  },
  liner: {
    keys: ['HOT', 'FUME', 'KNIFE'],
    line: 'Cold; the old liner goes in the bin, it is never heated or burnt.',
    stopWhen: 'the machine has overheated: look at heater and sensor first',
  },
  heater: hotEndElectrics,
  thermistor: hotEndElectrics,
  sock: {
    keys: ['HOT'],
    line: 'Cold block: a hot one burns through thin gloves.',
    stopWhen: 'plastic sits round the leads',
  },
  'hot-end-fan': fan,
  'part-fan': fan,
  'board-fan': {
    keys: ['UNPLUG', 'MAINS'],
    line: 'Unplugged, 2 minutes’ wait; only the board’s own fan, a fan inside the supply is qualified work.',
    stopWhen: 'the fan sits inside the power supply, or mains terminals lie open beside it',
  },
  'feeder-gear': {
    keys: ['HOT', 'MOVE', 'DUST'],
    line: 'Unload, power off; the idler arm’s spring is loaded: let it off slowly, eye protection.',
    stopWhen: 'the motor’s shaft is scored or has play',
  },
  'guide-tube': {
    keys: ['HOT', 'KNIFE'],
    line: 'Cold, filament out first, cut on the bench.',
    stopWhen: 'the end that sat in the hot end is black: look at heater and sensor first',
  },
  'tube-fitting': {
    keys: ['HOT', 'KNIFE'],
    line: 'Cold, filament and tube out before the fitting is unscrewed.',
    stopWhen: 'the thread that it screws into is stripped',
  },
  'x-belt': belt,
  'y-belt': belt,
  belt,
  pulley: running,
  idler: running,
  wheel: running,
  bearing: running,
  rod: running,
  rail: {
    loosens: true,
    keys: ['MOVE', 'DROP', 'CUT'],
    line: 'Power off, axis propped; hold the carriage on the rail or its balls fall out.',
    stopWhen: 'balls have come out: that carriage is scrap',
  },
  'lead-screw': zDrive,
  'screw-nut': zDrive,
  coupler: zDrive,
  'build-plate': {
    keys: ['HOT', 'CUT'],
    line: 'Cold; edges of steel and glass cut: hold it by the flat.',
    stopWhen: 'the bed under it is cracked or warped, or its magnet comes off',
  },
  'bed-spring': {
    keys: ['HOT', 'MOVE'],
    line: 'Cold and off; let the knob out slowly, the spring is loaded.',
    stopWhen: 'a bed lead is pulled or bare',
  },
  'bed-heater': {
    keys: ['UNPLUG', 'MAINS', 'HOT'],
    line: 'Low-voltage beds only, unplugged and cold; a mains-heated bed is for a qualified person.',
    stopWhen: 'the bed is heated from the mains, or nobody knows',
  },
  probe: lowVoltagePlug,
  'end-stop': lowVoltagePlug,
  'printed-part': {
    loosens: true,
    keys: ['HOT', 'MOVE', 'DROP'],
    line: 'Cold and off; take the weight of what the part holds before its screws come out.',
    stopWhen: 'a lead behind it is bare, or what it screws to is cracked',
  },
  fastener: {
    loosens: true,
    keys: ['MOVE', 'DROP'],
    line: 'Power off; one screw at a time, and hold what it carries.',
    stopWhen: 'the thread in the frame is stripped, or what it holds is cracked',
  },
  filter: {
    keys: ['UNPLUG', 'DUST'],
    line: 'Fan off; bag the old filter at once; gloves and mask for a particle filter.',
    stopWhen: 'there was smoke: find its source first',
  },
  motor: {
    loosens: true,
    keys: ['UNPLUG', 'DROP', 'HOT'],
    line: 'Unplugged: a motor plug pulled or pushed under power kills its driver; prop the axis it holds.',
    stopWhen: 'the plug or lead is brown or bare',
  },
  wiring: {
    keys: ['UNPLUG', 'MAINS'],
    line: 'Unplugged, like for like, crimped and not twisted; nothing on the mains side.',
    stopWhen: 'the lead goes to the supply’s mains side, or to a bed that is heated from the mains',
  },
  'power-supply': {
    keys: ['MAINS', 'UNPLUG'],
    line: 'Qualified person only: it holds a charge after the plug is out.',
    stopWhen: 'always: not by steps from a chat',
  },
  'control-board': {
    keys: ['UNPLUG', 'MAINS'],
    line: 'Qualified person for the wiring; a photo of every plug before anything comes off.',
    stopWhen: 'always for the wiring: not by steps from a chat',
  },
  screen: lowVoltagePlug,
  camera: lowVoltagePlug,
  'spool-holder': 'none needed',
  'filament-sensor': lowVoltagePlug,
  door: {
    keys: ['CUT', 'MOVE'],
    line: 'Power off; a door pane is held by two people, and the door switch goes back as it was.',
    stopWhen: 'the machine runs with the door open',
  },
};
