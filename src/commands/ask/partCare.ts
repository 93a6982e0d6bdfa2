/** Parts whose care goes by the part's own name: asked what was done with them, all of it is meant. */
import { RULES } from '../../maintenance/care/index.ts';
import { partReplacedBy, type StockItem, type Task } from '../../maintenance/codes.ts';

const CARE: Readonly<Partial<Record<StockItem, readonly Task[]>>> = {
  belt: ['tension-belts', 'check-belt'],
  'x-belt': ['tension-belts', 'check-belt'],
  'y-belt': ['tension-belts', 'check-belt'],
  nozzle: ['clean-nozzle'],
  'feeder-gear': ['clean-feeder'],
  'build-plate': ['clean-plate'],
  'hot-end-fan': ['clean-fans'],
  'part-fan': ['clean-fans'],
  'guide-tube': ['trim-tube'],
  rod: ['lubricate-rods', 'wipe-rods'],
  rail: ['lubricate-rails'],
  'lead-screw': ['grease-screw', 'grease-ball-screw', 'clean-screw'],
  wheel: ['check-wheels'],
  pulley: ['tighten-pulleys'],
  wiring: ['check-wiring'],
  fastener: ['check-fasteners'],
  'printed-part': ['check-printed-parts'],
};
/** And the looks at a part that the rules know of. */
export function careOfPart(part: StockItem): readonly Task[] {
  const looks = RULES.filter((rule) => rule.part === part && partReplacedBy(rule.task) === undefined);
  return [...new Set([...(CARE[part] ?? []), ...looks.map((rule) => rule.task)])];
}
