import { fork } from 'node:child_process';
import { once } from 'node:events';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';
import { MIGRATIONS_FOLDER } from './desk.ts';

const CHILD = fileURLToPath(new URL('./holding-child.ts', import.meta.url));

/** Another program with a new workbook of its own, which it holds open and saves in when told to. */
export async function inAnotherProcess(file: string) {
  const child = fork(CHILD, [file, MIGRATIONS_FOLDER, join(dirname(file), 'other-program')]);
  onTestFinished(() => {
    child.kill();
  });
  await once(child, 'message');
  const tell = async (message: string) => {
    const answered = once(child, 'message');
    child.send(message);
    await answered;
  };
  return { file, addYard: (name: string) => tell(name), close: () => tell('') };
}
