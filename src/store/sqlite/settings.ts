/** The workshop's settings and the checkpoints: JSON text that others make and read. */
import type {
  Checkpoint,
  CheckpointReader,
  CheckpointWriter,
  WorkshopReader,
  WorkshopWriter,
} from '../post.ts';
import { Query, type Session } from './query.ts';

const WORKSHOP = new Query<{ json: string }>('SELECT json FROM workshop');
const SAVE_WORKSHOP = new Query('INSERT OR REPLACE INTO workshop (one, json, at) VALUES (1, ?, ?)');
const CHECKPOINT = new Query<Checkpoint>(
  'SELECT machine, fold_version AS foldVersion, position, json FROM checkpoints WHERE machine = ?',
);
const CHECKPOINTS = new Query<Checkpoint>(
  'SELECT machine, fold_version AS foldVersion, position, json FROM checkpoints ORDER BY machine',
);
const SAVE_CHECKPOINT = new Query(
  'INSERT OR REPLACE INTO checkpoints (machine, fold_version, position, json) VALUES (?, ?, ?, ?)',
);
const DROP_CHECKPOINT = new Query('DELETE FROM checkpoints WHERE machine = ?');
const DROP_CHECKPOINTS = new Query('DELETE FROM checkpoints');

type Settings = WorkshopReader & WorkshopWriter & CheckpointReader & CheckpointWriter;

export const sqliteSettings = (session: Session): Settings => ({
  workshop: async () => session.get(WORKSHOP)?.json,
  saveWorkshop: async (json, at) => {
    session.run(SAVE_WORKSHOP, json, at);
  },
  checkpoint: async (machine) => session.get(CHECKPOINT, machine),
  checkpoints: async () => session.all(CHECKPOINTS),
  saveCheckpoints: async (checkpoints) => {
    for (const { machine, foldVersion, position, json } of checkpoints)
      session.run(SAVE_CHECKPOINT, machine, foldVersion, position, json);
  },
  dropCheckpoints: async (machine) => {
    if (machine === undefined) session.run(DROP_CHECKPOINTS);
    else session.run(DROP_CHECKPOINT, machine);
  },
});
