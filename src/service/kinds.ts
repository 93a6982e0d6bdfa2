/** What was received, narrowed to one kind. */
import type { Received, What, WhatKind } from './platform.ts';

export type Of<K extends WhatKind> = Received & { what: Extract<What, { kind: K }> };
