/** Complaint x item -> symptom. `*` where no item is said; absent: what is wrong cannot be told from it. */
import type { StockItem, Symptom } from '../../../maintenance/codes.ts';
import type { Complaint, Thing } from '../../senses.ts';

type Row = Readonly<Partial<Record<StockItem | Thing | '*', Symptom>>>;

const FANS = (symptom: Symptom): Row => ({
  fan: symptom,
  'hot-end-fan': symptom,
  'part-fan': symptom,
  'board-fan': symptom,
});
const BELTS = (symptom: Symptom): Row => ({ belt: symptom, 'x-belt': symptom, 'y-belt': symptom });
const PLATES = (symptom: Symptom): Row => ({ 'build-plate': symptom, bed: symptom });
const TUBES = (symptom: Symptom): Row => ({ 'guide-tube': symptom, liner: symptom, 'tube-end': symptom });
const WIRES = (symptom: Symptom): Row => ({ wiring: symptom, plug: symptom, 'mains-lead': symptom });
const NOISE_ONLY = { print: 'failed-print' } as const;

export const SYMPTOMS_OF: Readonly<Record<Complaint, Row>> = {
  click: { '*': 'feeder-clicking', bearing: 'rattle', carriage: 'rattle', rod: 'rattle', rail: 'rattle', 'z-axis': 'rattle', 'lead-screw': 'rattle', gantry: 'rattle', feeder: 'feeder-clicking', 'feeder-gear': 'feeder-clicking', wheel: 'flat-spot', ...FANS('fan-noise'), motor: 'feeder-clicking' },
  jam: { '*': 'no-extrusion', nozzle: 'no-extrusion', 'hot-end': 'no-extrusion', feeder: 'no-extrusion', filament: 'no-extrusion', 'guide-tube': 'no-extrusion', liner: 'no-extrusion', 'heat-break': 'no-extrusion', ...FANS('fan-stopped'), spool: 'no-extrusion', 'feeder-gear': 'no-extrusion', screen: 'screen-frozen', rail: 'rough-motion', wheel: 'rough-motion', carriage: 'rough-motion' },
  blocked: { '*': 'no-extrusion', nozzle: 'no-extrusion', 'hot-end': 'no-extrusion', feeder: 'no-extrusion', 'guide-tube': 'no-extrusion', liner: 'no-extrusion', 'heat-break': 'no-extrusion', ...FANS('fan-stopped') },
  loose: { ...BELTS('belt-slack'), print: 'detached-print', fastener: 'loose-fastener', 'grub-screw': 'loose-fastener', pulley: 'loose-fastener', coupler: 'loose-fastener', 'printed-part': 'loose-fastener', frame: 'loose-fastener', nozzle: 'nozzle-leak', wheel: 'rattle', eccentric: 'loose-fastener', 'guide-tube': 'tube-slipped', 'tube-fitting': 'tube-slipped', gantry: 'loose-fastener', 'hot-end': 'loose-fastener', heater: 'loose-fastener', thermistor: 'loose-fastener', motor: 'loose-fastener', wiring: 'loose-fastener', plug: 'loose-fastener', 'bed-spring': 'loose-fastener', bed: 'loose-fastener', carriage: 'rattle', 'feeder-gear': 'loose-fastener', fan: 'loose-fastener', 'part-fan': 'loose-fastener', 'hot-end-fan': 'loose-fastener', probe: 'loose-fastener', 'end-stop': 'loose-fastener', rail: 'loose-fastener', door: 'loose-fastener', idler: 'loose-fastener', 'spool-holder': 'loose-fastener', 'mains-lead': 'loose-fastener', 'lead-screw': 'loose-fastener' },
  slack: { ...BELTS('belt-slack'), 'tension-noun': 'belt-slack', gantry: 'belt-slack', '*': 'belt-slack', idler: 'belt-slack' },
  worn: { nozzle: 'worn-nozzle', ...BELTS('worn-belt'), 'feeder-gear': 'worn-gear', feeder: 'worn-gear', ...TUBES('worn-tube'), 'tube-fitting': 'worn-tube', wheel: 'flat-spot', bearing: 'rough-motion', 'build-plate': 'scratched-plate', idler: 'rattle', wiring: 'bare-wire', 'mains-lead': 'bare-wire', pulley: 'rattle' },
  frayed: { 'feeder-gear': 'worn-gear', surface: 'rough-surface', wall: 'rough-surface', ...BELTS('worn-belt'), ...WIRES('bare-wire') },
  broken: { layer: 'layer-split', ...BELTS('worn-belt'), 'printed-part': 'deformed-part', ...FANS('fan-stopped'), screen: 'screen-frozen', heater: 'no-heat', thermistor: 'error-shutdown', 'bed-heater': 'bed-no-heat', filament: 'no-extrusion', 'end-stop': 'homing-failed', probe: 'homing-failed', print: 'failed-print', pulley: 'loose-fastener', 'tube-fitting': 'tube-slipped', 'power-supply': 'power-lost', 'control-board': 'error-shutdown', wiring: 'bare-wire', fastener: 'loose-fastener', 'build-plate': 'scratched-plate', guard: 'deformed-part', 'spool-holder': 'deformed-part', carriage: 'deformed-part', door: 'deformed-part' },
  bent: { ...TUBES('worn-tube'), 'printed-part': 'deformed-part', gantry: 'deformed-part', frame: 'deformed-part', 'spool-holder': 'deformed-part', 'lead-screw': 'rough-motion', rod: 'rough-motion', carriage: 'deformed-part', 'hot-end': 'deformed-part', bed: 'uneven-first-layer', 'build-plate': 'uneven-first-layer', 'part-fan': 'deformed-part', guard: 'deformed-part', 'end-stop': 'homing-failed', probe: 'homing-failed' },
  cracked: { 'printed-part': 'deformed-part', ...BELTS('worn-belt'), layer: 'layer-split', print: 'layer-split', frame: 'deformed-part', carriage: 'deformed-part', 'spool-holder': 'deformed-part', wiring: 'bare-wire', 'build-plate': 'scratched-plate', guard: 'deformed-part', gantry: 'deformed-part', wheel: 'flat-spot', crack: 'deformed-part', 'tube-fitting': 'worn-tube', 'guide-tube': 'worn-tube', 'screw-nut': 'rough-motion', 'feeder-gear': 'worn-gear', coupler: 'deformed-part', feeder: 'deformed-part', door: 'deformed-part' },
  melted: { heater: 'no-heat', 'printed-part': 'deformed-part', ...WIRES('hot-connector'), liner: 'worn-tube', 'part-fan': 'deformed-part', fan: 'deformed-part', 'guide-tube': 'worn-tube', 'control-board': 'hot-connector', carriage: 'deformed-part', 'hot-end-fan': 'deformed-part', 'power-supply': 'hot-connector' },
  'stays-on': { heater: 'runaway', 'bed-heater': 'runaway', bed: 'runaway', 'hot-end': 'runaway', nozzle: 'runaway' },
  dead: { filament: 'no-extrusion', ...FANS('fan-stopped'), screen: 'screen-frozen', heater: 'no-heat', 'hot-end': 'no-heat', bed: 'bed-no-heat', 'bed-heater': 'bed-no-heat', nozzle: 'no-heat', probe: 'homing-failed', 'end-stop': 'homing-failed', feeder: 'no-extrusion', thermistor: 'error-shutdown', 'power-supply': 'power-lost', motor: 'rough-motion', power: 'power-lost', bearing: 'rough-motion', idler: 'rough-motion', carriage: 'rough-motion', 'feeder-gear': 'no-extrusion', wheel: 'rough-motion', rail: 'rough-motion' },
  stuck: { feeder: 'feeder-clicking', '*': 'rough-motion', carriage: 'rough-motion', rod: 'rough-motion', rail: 'rough-motion', wheel: 'rough-motion', bed: 'rough-motion', gantry: 'rough-motion', bearing: 'rough-motion', 'x-axis': 'rough-motion', 'y-axis': 'rough-motion', 'z-axis': 'rough-motion', axis: 'rough-motion', ...FANS('fan-stopped'), screen: 'screen-frozen', filament: 'no-extrusion', 'lead-screw': 'rough-motion', spool: 'no-extrusion', probe: 'homing-failed', nozzle: 'no-extrusion', motor: 'rough-motion', idler: 'rough-motion', 'hot-end': 'rough-motion', 'x-belt': 'rough-motion', 'y-belt': 'rough-motion' },
  stiff: { carriage: 'rough-motion', rod: 'rough-motion', rail: 'rough-motion', wheel: 'rough-motion', bed: 'rough-motion', gantry: 'rough-motion', bearing: 'rough-motion', 'x-axis': 'rough-motion', 'y-axis': 'rough-motion', 'z-axis': 'rough-motion', axis: 'rough-motion', 'lead-screw': 'rough-motion', idler: 'rough-motion', ...FANS('fan-noise'), motor: 'rough-motion' },
  noisy: { ...FANS('fan-noise'), bearing: 'grinding', wheel: 'rattle', idler: 'squeak', motor: 'rattle', feeder: 'grinding', rail: 'grinding', rod: 'squeak', 'lead-screw': 'squeak', 'power-supply': 'fan-noise' },
  squeak: { '*': 'squeak', ...FANS('fan-noise'), bearing: 'squeak', rod: 'squeak', wheel: 'squeak', idler: 'squeak', 'lead-screw': 'squeak', rail: 'squeak' },
  grind: { '*': 'grinding', ...FANS('fan-noise'), filament: 'ground-filament', bearing: 'grinding', feeder: 'ground-filament', 'feeder-gear': 'ground-filament' },
  rattle: { '*': 'rattle', ...FANS('fan-noise'), frame: 'rattle', wheel: 'rattle', bearing: 'rattle' },
  leak: { '*': 'nozzle-leak', nozzle: 'nozzle-leak', 'hot-end': 'nozzle-leak', heater: 'nozzle-leak', 'heat-break': 'nozzle-leak', plastic: 'nozzle-leak', sock: 'nozzle-leak' },
  slip: { gunk: 'nozzle-leak', plastic: 'nozzle-leak', layer: 'layer-shift', print: 'layer-shift', 'x-axis': 'layer-shift', 'y-axis': 'layer-shift', ...BELTS('layer-shift'), feeder: 'feeder-clicking', 'feeder-gear': 'feeder-clicking', motor: 'layer-shift', 'guide-tube': 'tube-slipped', filament: 'under-extrusion', '*': 'layer-shift', pulley: 'layer-shift', coupler: 'layer-shift', 'tube-fitting': 'tube-slipped' },
  'came-out': { 'guide-tube': 'tube-slipped', 'tube-fitting': 'tube-slipped', 'tube-end': 'tube-slipped', liner: 'tube-slipped', print: 'detached-print', fastener: 'loose-fastener', 'grub-screw': 'loose-fastener', ...BELTS('belt-slack'), 'printed-part': 'loose-fastener', thermistor: 'loose-fastener', heater: 'loose-fastener', plug: 'loose-fastener', wiring: 'loose-fastener', wheel: 'loose-fastener', spool: 'no-extrusion' },
  dirty: {},
  wet: { feeder: 'feeder-clicking', '*': 'damp-filament', filament: 'damp-filament', spool: 'damp-filament', nozzle: 'damp-filament' },
  flat: { ...PLATES('scratched-plate'), nozzle: 'worn-nozzle', wall: 'rough-surface', surface: 'rough-surface', 'first-layer': 'first-layer-close', wheel: 'flat-spot', filament: 'ground-filament', bearing: 'flat-spot', '*': 'flat-spot', carriage: 'flat-spot', 'guide-tube': 'worn-tube' },
  scratched: { surface: 'rough-surface', wall: 'rough-surface', ...PLATES('scratched-plate') },
  hot: { ...WIRES('hot-connector'), 'control-board': 'hot-connector', 'power-supply': 'hot-connector' },
  brown: { ...WIRES('hot-connector'), ...TUBES('worn-tube'), 'power-supply': 'hot-connector', 'control-board': 'hot-connector' },
  bare: { ...WIRES('bare-wire'), heater: 'bare-wire', thermistor: 'bare-wire', '*': 'bare-wire' },
  cold: { nozzle: 'no-heat', 'hot-end': 'no-heat', heater: 'no-heat', bed: 'bed-no-heat', 'build-plate': 'bed-no-heat', 'bed-heater': 'bed-no-heat', '*': 'no-heat', feeder: 'no-heat' },
  swing: { temperature: 'temperature-swing', nozzle: 'temperature-swing', 'hot-end': 'temperature-swing', heater: 'temperature-swing', thermistor: 'temperature-swing', bed: 'temperature-swing', 'bed-heater': 'temperature-swing' },
  frozen: { screen: 'screen-frozen', '*': 'screen-frozen', 'control-board': 'screen-frozen' },
  'no-stick': { 'tube-fitting': 'tube-slipped', 'guide-tube': 'tube-slipped', 'tube-end': 'tube-slipped', '*': 'poor-adhesion', print: 'poor-adhesion', 'first-layer': 'poor-adhesion', bed: 'poor-adhesion', 'build-plate': 'poor-adhesion', filament: 'poor-adhesion', layer: 'layer-split', 'feeder-gear': 'worn-gear', wall: 'first-layer-far' },
  uneven: { bed: 'uneven-first-layer', 'build-plate': 'uneven-first-layer', 'first-layer': 'uneven-first-layer', 'level-noun': 'uneven-first-layer', mesh: 'uneven-first-layer', '*': 'uneven-first-layer', gantry: 'uneven-first-layer' },
  wobble: { wheel: 'rattle', carriage: 'rattle', bed: 'rattle', gantry: 'rattle', bearing: 'rattle', 'lead-screw': 'z-banding', 'z-axis': 'z-banding', frame: 'rattle', idler: 'rattle', fastener: 'loose-fastener', 'hot-end': 'loose-fastener', nozzle: 'loose-fastener', pulley: 'loose-fastener', play: 'rattle' },
  dark: { screen: 'screen-frozen' },
  misses: { probe: 'homing-failed', 'end-stop': 'homing-failed', sensor: 'homing-failed' },
  weak: { layer: 'layer-split', print: 'under-extrusion', 'part-fan': 'fan-stopped', fan: 'fan-stopped', 'hot-end-fan': 'fan-stopped' },
  smells: {},
  shock: { '*': 'shock', frame: 'shock', power: 'shock', bed: 'shock', 'hot-end': 'shock' },
  crashed: { '*': 'crash', nozzle: 'crash', 'hot-end': 'crash', bed: 'crash', 'build-plate': 'crash', print: 'crash', gantry: 'crash', carriage: 'crash', side: 'crash', screen: 'screen-frozen' },
  torn: { ...BELTS('worn-belt'), ...PLATES('scratched-plate') },
  kinked: { ...TUBES('worn-tube') },
  weird: { ...NOISE_ONLY, surface: 'rough-surface', wall: 'rough-surface' },
  squashed: { nozzle: 'worn-nozzle', 'first-layer': 'first-layer-close', ...TUBES('worn-tube') },
  'round-lines': { 'first-layer': 'first-layer-far', wall: 'first-layer-far' },
  gaps: { 'first-layer': 'first-layer-far', wall: 'under-extrusion', layer: 'under-extrusion', print: 'under-extrusion', surface: 'under-extrusion' },
  thin: { wall: 'under-extrusion', 'first-layer': 'first-layer-close' },
  fat: { wall: 'over-extrusion' },
  lifting: { corner: 'warping', print: 'warping', side: 'warping', 'first-layer': 'poor-adhesion', layer: 'layer-split', coating: 'scratched-plate' },
  offset: { print: 'layer-shift', layer: 'layer-shift', side: 'layer-shift', wall: 'layer-shift' },
  chewed: { nozzle: 'worn-nozzle', wiring: 'bare-wire', 'mains-lead': 'bare-wire', filament: 'ground-filament', spool: 'ground-filament' },
}; // prettier-ignore

/** Why a part was taken out, when that is what the complaint is said of. */
export const REASON_OF: Readonly<Partial<Record<Complaint, 'worn' | 'broken'>>> = {
  worn: 'worn', frayed: 'worn', flat: 'worn', broken: 'broken', cracked: 'broken', torn: 'broken', bent: 'broken', melted: 'broken', dead: 'broken', kinked: 'worn', scratched: 'worn', bare: 'broken', frozen: 'broken', slack: 'worn',
}; // prettier-ignore
