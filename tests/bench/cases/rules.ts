/**
 * The digest of 1,000 machines with all rules of their builds: the demo's eight with the ten months behind them, each
 * 125 times under a name and a build object of its own, so that nothing kept for one serves another. Cold is the first
 * digest of the process, warm the median of those that follow, on three days by turns. The clock's figures are those of
 * a quiet computer only, so the CPU's stand beside them.
 */
import { buildDemo } from '../../../demo-data/build.ts';
import { openCalendar } from '../../../src/index.ts';
import { rulesFor } from '../../../src/maintenance/care/index.ts';
import { digestOf } from '../../../src/maintenance/due/digest.ts';
import { foldShop } from '../../../src/maintenance/record/fold.ts';
import type { MachineRecord, ShopRecord } from '../../../src/maintenance/record/record.ts';
import type { Figures } from '../case.ts';
import { NOW, ZONE } from '../journal.ts';

const MACHINES = 1000;
const RUNS = 21;
const DAY = 86_400_000;
const calendar = openCalendar(ZONE);

function manyMachines(): ShopRecord {
  const demo = foldShop(buildDemo(NOW).entries, calendar);
  const eight = [...demo.machines.values()];
  const machines = Array.from({ length: MACHINES }, (_, n): MachineRecord => {
    const like = structuredClone(eight[n % eight.length]);
    if (!like) throw new Error('the demo has no machines');
    return { ...like, name: `${like.name} ${n}` };
  });
  return { ...demo, machines: new Map(machines.map((machine) => [machine.name, machine])) };
}

const cpuMs = (since: NodeJS.CpuUsage): number => {
  const { user, system } = process.cpuUsage(since);
  return (user + system) / 1000;
};

function timed(shop: ShopRecord, days: number): { wall: number; cpu: number } {
  const [from, used] = [performance.now(), process.cpuUsage()];
  digestOf(shop, {
    now: NOW + days * DAY,
    calendar,
    workingDays: [0, 1, 2, 3, 4, 5],
    holidays: [],
    minutesADay: 90,
  });
  return { wall: performance.now() - from, cpu: cpuMs(used) };
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? NaN;

export async function run(): Promise<Figures> {
  const shop = manyMachines();
  const tasks = [...shop.machines.values()].reduce(
    (sum, { build }) => sum + rulesFor(structuredClone(build)).length,
    0,
  );
  const cold = timed(shop, 0);
  const warm = Array.from({ length: RUNS }, (_, n) => timed(shop, n % 3));
  return {
    'rules that apply, a machine': tasks / MACHINES,
    'digest of 1,000 machines with all rules, cold, ms': cold.wall,
    'the same, ms of CPU': cold.cpu,
    'digest of 1,000 machines with all rules, warm, ms': median(warm.map(({ wall }) => wall)),
    'the same warm, ms of CPU': median(warm.map(({ cpu }) => cpu)),
  };
}
