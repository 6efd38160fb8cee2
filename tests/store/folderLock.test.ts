/** The lock on the embedded folder: one process at a time, and a dead one never in the way. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openEmbedded } from '#src/store/embedded.ts';
import { lockFolder } from '#src/store/folderLock.ts';

let home: string;
let folder: string;

beforeEach(async () => {
  home = await mkdtemp(join(tmpdir(), 'lock-'));
  folder = join(home, 'data');
});
afterEach(async () => rm(home, { recursive: true }));

async function deadPid(): Promise<number> {
  const child = spawn(process.execPath, ['-e', '']);
  await once(child, 'exit');
  return child.pid ?? 0;
}

describe('the folder lock', () => {
  it('refuses a second holder, then lets it in, and leaves nothing behind', async () => {
    const lock = await lockFolder(folder);
    await expect(lockFolder(folder)).rejects.toMatchObject({ code: 'folder-in-use' });
    await lock.release();
    await (await lockFolder(folder)).release();
    expect(await readdir(home)).toEqual([]);
  });

  it('takes over from a dead process, an unreadable lock, and an earlier process of the same pid', async () => {
    const left = [
      JSON.stringify({ id: 'dead', pid: await deadPid(), born: null }),
      '{"pi',
      '7',
      JSON.stringify({ id: 'old', pid: process.pid, born: '1' }),
    ];
    for (const text of left) {
      await writeFile(`${folder}.lock`, text);
      const lock = await lockFolder(folder);
      expect(JSON.parse(await readFile(`${folder}.lock`, 'utf8'))).toMatchObject({ pid: process.pid });
      await lock.release();
    }
  });

  it('is had by one of twenty that find a dead lock at once', async () => {
    const dead = { pid: await deadPid(), born: null };
    for (let round = 0; round < 20; round += 1) {
      await writeFile(`${folder}.lock`, JSON.stringify({ id: 'dead', ...dead }));
      await writeFile(`${folder}.lock.dead`, JSON.stringify({ id: 'reaper', ...dead })); // died while it took over
      const tries = await Promise.allSettled(Array.from({ length: 20 }, () => lockFolder(folder)));
      expect(tries.filter((one) => one.status === 'fulfilled')).toHaveLength(1);
      expect(await readdir(home)).toEqual(['data.lock']);
    }
  });

  it('keeps a live process’s database from being opened twice; what was committed is there again', async () => {
    const database = await openEmbedded(folder);
    await database.query('CREATE TABLE kept AS SELECT 1 AS value');
    await expect(openEmbedded(folder)).rejects.toMatchObject({ code: 'folder-in-use' });
    await database.close();
    const again = await openEmbedded(folder);
    expect(await again.query('SELECT value FROM kept')).toEqual([{ value: 1 }]);
    await again.close();
  });
});
