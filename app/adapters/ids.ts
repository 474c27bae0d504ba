import { randomUUID } from 'node:crypto';
import type { Ids } from '../../main/ports/ports.ts';

export const randomIds: Ids = { next: () => randomUUID() };
