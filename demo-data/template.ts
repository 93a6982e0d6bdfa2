/** The demo's workshop file. It is not compiled: it stays in the package's own folder, wherever this runs from. */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

function packageFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder);
    if (above === folder) throw new Error('the demo data is not inside its package any more');
    folder = above;
  }
  return folder;
}

/** The YAML text as it is written, dates as of its reference day (see `shift.ts`). */
export const demoTemplate = (): string =>
  readFileSync(join(packageFolder(), 'demo-data', 'workshop.yaml'), 'utf8');
