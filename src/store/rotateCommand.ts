/** The command that finishes a change of the key: everything still sealed with the old one is sealed with the new one, while the line runs. */
import { sealKeys } from '#src/config.ts';
import { ConfigRefused } from '#src/errors.ts';
import type { Log } from '#src/log.ts';
import { withExisting } from './existing.ts';
import { rotateKey } from './rotate.ts';

type Environment = Readonly<Record<string, string | undefined>>;

/** Throws `ConfigRefused` where the environment does not name both keys. */
export async function rotateKeyCommand(
  environment: Environment,
  log: Log,
  print: (text: string) => void,
): Promise<void> {
  if (sealKeys(environment).length === 1)
    throw new ConfigRefused(['NIGHTJAR_KEY_OLD: has to be the key that NIGHTJAR_KEY replaces']);
  await withExisting({ environment, folder: undefined, log }, async (database, seal, kind) => {
    if (kind === 'practice') return print("A practice line's key is no secret: there is nothing to change.");
    print(`${await rotateKey(database, seal)} values are sealed with the new key, none with the old one.`);
    print('Start every process again without NIGHTJAR_KEY_OLD, and destroy the old key where no backup needs it.');
  });
}
