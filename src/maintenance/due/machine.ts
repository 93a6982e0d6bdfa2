/** One machine as the evaluation sees it: its record, the day, and what is worked out once for all its tasks. */
import type { Day } from '../calendar.ts';
import type { RuleFacts } from '../care/rule.ts';
import type { MachineRecord } from '../record/record.ts';
import { todayOf } from './context.ts';
import type { DueContext } from './context.ts';
import type { EventScene } from './events.ts';
import type { ForecastScene } from './forecast.ts';
import { factsOf } from './measure.ts';
import { pathsOf } from './weeks.ts';
import type { Paths } from './paths.ts';

export interface MachineScene extends ForecastScene {
  record: MachineRecord;
  context: DueContext;
  today: Day;
  /** What intervals may depend on. */
  facts: RuleFacts;
  /** For asking whether something happened at all. */
  ever: EventScene;
  /** Where the room's entries for "one line for the room" are. */
  room?: MachineRecord;
}

export function sceneOf(record: MachineRecord, context: DueContext, room?: MachineRecord): MachineScene {
  const today = todayOf(context);
  const facts = factsOf(record);
  let drawn: { paths: Paths | undefined } | undefined;
  return {
    record,
    context,
    today,
    facts,
    ever: { record, facts, today, since: undefined },
    idle: record.down !== undefined,
    paths: () => (drawn ??= { paths: pathsOf(record, context) }).paths,
    ...(room && { room }),
  };
}
