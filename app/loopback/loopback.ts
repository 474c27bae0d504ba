// The same workbook for a browser on this computer only: a small server on 127.0.0.1 that serves the built page and
// carries its calls. It decides nothing.
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { type Core, createCore } from '../../main/api/core.ts';
import type { Clock, Ids } from '../../main/ports/ports.ts';
import { type Language, languageOfLocale } from '../../shared/kernel/language.ts';
import { checkInThread } from '../adapters/checking-thread.ts';
import { computerClock } from '../adapters/clock.ts';
import { randomIds } from '../adapters/ids.ts';
import { readPageFiles } from '../adapters/page-files.ts';
import { placesOf } from '../adapters/places.ts';
import { startReckoningThread } from '../adapters/reckoning-thread.ts';
import { reportToConsole } from '../adapters/report.ts';
import { Doorkeeper } from './doorkeeper.ts';
import { answerRequest } from './requests.ts';

export interface LoopbackSetting {
  /** Folder for a trial; the usual folders of the system when missing. */
  readonly data?: string;
  readonly port?: number;
  /** The folder that holds the built `renderer` and `migrations`. */
  readonly out: string;
  readonly clock?: Clock;
  readonly ids?: Ids;
  /** The computer's own when missing. */
  readonly language?: Language;
}

export interface Loopback {
  /** Opens the page once; spent after that, and after a minute. */
  readonly url: string;
  readonly origin: string;
  readonly core: Core;
  close(): Promise<void>;
}

/**
 * Not imported by name: an import makes Node look at everything of `node:http` at once, its browser-like parts too, and
 * half of the time to the first answer goes into loading those.
 */
const { createServer } = process.getBuiltinModule('node:http');

/** Header and body limits and time limits for slow or hostile callers; measured reasons in the tests. */
const LIMITS = {
  maxHeaderSize: 8 * 1024,
  headersTimeout: 3_000,
  requestTimeout: 10_000,
  keepAliveTimeout: 5_000,
  connectionsCheckingInterval: 500,
} as const;
/** A browser keeps six lines to one address: enough for five windows, few enough that silent callers cost nothing. */
const MOST_CONNECTIONS = 32;

export async function startLoopback(setting: LoopbackSetting): Promise<Loopback> {
  const thread = startReckoningThread(join(setting.out, 'main/reckoning-worker.js'));
  const core = createCore({
    clock: setting.clock ?? computerClock,
    ids: setting.ids ?? randomIds,
    reckon: thread.reckon,
    checkFile: checkInThread(join(setting.out, 'main/checking-worker.js')),
    computerLanguage: setting.language ?? languageOfLocale(new Intl.DateTimeFormat().resolvedOptions().locale),
    places: { ...placesOf(setting.data), migrations: join(setting.out, 'migrations') },
    report: reportToConsole,
  });
  const server = createServer(LIMITS);
  server.maxConnections = MOST_CONNECTIONS;
  await listen(server, setting.port ?? 0).catch(async (error: unknown) => {
    await Promise.all([core.close(), thread.stop()]);
    throw error;
  });
  const { port } = server.address() as AddressInfo;
  const doorkeeper = new Doorkeeper(port, () => performance.now());
  const files = readPageFiles(join(setting.out, 'renderer'));
  server.on('request', (request, response) => void answerRequest({ core, files, doorkeeper }, request, response));
  server.on('upgrade', (_request, socket) => socket.destroy());
  return {
    url: `${doorkeeper.origin}/?key=${doorkeeper.oneTimeKey}`,
    origin: doorkeeper.origin,
    core,
    async close() {
      server.closeAllConnections();
      await new Promise<void>((resolve) => server.close(() => resolve()));
      await Promise.all([core.close(), thread.stop()]);
    },
  };
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen({ host: '127.0.0.1', port, exclusive: true }, () => resolve());
  });
}
