/** The lock on the embedded database's folder: a file beside it that names the process, and outlives it harmlessly. */
import { randomUUID } from 'node:crypto';
import { link, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { setTimeout } from 'node:timers/promises';
import { z } from 'zod';
import { FolderInUse } from '#src/errors.ts';

export interface FolderLock {
  release(): Promise<void>;
}

interface Holder {
  /** Of this one lock file; no two have the same. */
  readonly id: string;
  readonly pid: number;
  /** When the process began, in the system's own ticks; tells a process from a later one with the same pid. */
  readonly born: string | null;
}

/** Takes the lock or throws `FolderInUse`. The lock of a dead process is taken over. */
export async function lockFolder(folder: string): Promise<FolderLock> {
  const path = `${folder}.lock`;
  const holder = await acquire(path);
  if (holder !== null) throw new FolderInUse(folder, holder.pid);
  return { release: () => rm(path, { force: true }) };
}

/** Null once this process holds `path`, else the living process that does. */
async function acquire(path: string): Promise<Holder | null> {
  const me: Holder = { id: randomUUID().slice(0, 8), pid: process.pid, born: await bornOf(process.pid) };
  const own = `${path}.${me.id}.new`;
  await writeFile(own, JSON.stringify(me));
  try {
    while (!(await linked(own, path))) {
      const holder = await holderOf(path);
      if (holder === null) continue;
      if (await isAlive(holder)) return holder;
      if (await takeOver(own, path, holder)) return null;
    }
    return null;
  } finally {
    await rm(own, { force: true });
  }
}

/**
 * Replaces a dead lock by our own. Only the holder of a second lock, named after the dead one, may do so, and only while the
 * dead one is still there: of any number that find it dead, one takes it over. The second lock is taken the same way.
 */
async function takeOver(own: string, path: string, dead: Holder): Promise<boolean> {
  const guard = `${path}.${dead.id}`;
  if ((await acquire(guard)) !== null) {
    await setTimeout(5);
    return false;
  }
  try {
    if ((await holderOf(path))?.id !== dead.id) return false;
    await rename(own, path);
    return true;
  } finally {
    await rm(guard, { force: true });
  }
}

/** A link appears whole or not at all, and only where nothing is: two processes never both succeed. */
async function linked(own: string, path: string): Promise<boolean> {
  try {
    await link(own, path);
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    throw error;
  }
}

const holderShape = z.object({ id: z.string(), pid: z.number(), born: z.string().nullable() });
/** An unreadable lock belongs to no process. */
const nobody: Holder = { id: 'unreadable', pid: 0, born: null };

async function holderOf(path: string): Promise<Holder | null> {
  try {
    return holderShape.safeParse(JSON.parse(await readFile(path, 'utf8'))).data ?? nobody;
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return null;
    if (error instanceof SyntaxError) return nobody;
    throw error;
  }
}

async function isAlive(holder: Holder): Promise<boolean> {
  if (holder.pid === 0 || !runs(holder.pid)) return false;
  const born = await bornOf(holder.pid);
  return born === null || holder.born === null || born === holder.born;
}

function runs(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return codeOf(error) === 'EPERM';
  }
}

/** Field 22 of /proc/<pid>/stat (proc(5), start time in ticks since boot); null where the system has no such file. */
async function bornOf(pid: number): Promise<string | null> {
  try {
    const stat = await readFile(`/proc/${pid}/stat`, 'utf8');
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? null;
  } catch {
    return null;
  }
}

function codeOf(error: unknown): string | undefined {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined;
}
