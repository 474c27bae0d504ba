// The true Electron window, where its program is on the computer; elsewhere skipped with its reason.
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { _electron } from 'playwright';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '../../..');

function electronProgram(): string | undefined {
  const folder = dirname(createRequire(import.meta.url).resolve('electron/package.json'));
  try {
    const program = join(folder, 'dist', readFileSync(join(folder, 'path.txt'), 'utf8'));
    return existsSync(program) ? program : undefined;
  } catch {
    return undefined;
  }
}

test('the real Electron window opens and answers', async (context) => {
  const executablePath = electronProgram();
  if (!executablePath)
    return context.skip('the Electron program is not on this computer; the same entry ran through the double instead');
  const data = mkdtempSync(join(tmpdir(), 'ripecell-real-'));
  const args = [root, `--ripecell-data=${data}`, ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])];
  const program = await _electron.launch({ executablePath, args });
  try {
    const page = await program.firstWindow();
    await page.getByRole('heading', { name: 'A workbook for your queens' }).waitFor();
    expect(await page.evaluate(() => ['require' in window, 'ripecell' in window])).toEqual([false, true]);
  } finally {
    await program.close();
    rmSync(data, { recursive: true, force: true });
  }
}, 120_000);
