/** The signature beside a protocol file: who signed what and when, and whether it still holds. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { stringify } from 'yaml';
import { z } from 'zod';
import type { Protocol } from '#machines/protocol/settings.ts';
import { ProtocolNotSigned, RegulatoryDecisionMissing } from '#src/errors.ts';
import type { LanguageCode } from '#src/wording/catalogue.ts';
import { parseYaml } from '#src/yamlFile.ts';
import { type Content, type ContentPart, contentOf, contentParts, wholeHash } from './content.ts';
import { draftLanguages } from './languages.ts';

const words = (most: number) => {
  const bound = `some words, at most ${most} characters`;
  return z.string(bound).trim().min(1, bound).max(most, bound);
};
const hash = z.string('a SHA-256 hash').regex(/^[0-9a-f]{64}$/, 'a SHA-256 hash: 64 hexadecimal digits');

/** What a person gives when signing. */
const signerShape = z.object({
  name: words(120),
  role: words(120),
  regulatory: words(2000).nullable(),
  /** The draft languages approved with it: read by somebody who speaks them. */
  languages: z.array(z.enum(draftLanguages, `one of ${draftLanguages.join(', ')}`), 'a list of languages').default([]),
});
export interface Signer extends Omit<z.infer<typeof signerShape>, 'languages'> {
  /** As they were typed. */
  readonly languages?: readonly string[] | undefined;
}

const signatureShape = z
  .strictObject(
    {
      ...signerShape.shape,
      signedAt: z.iso.datetime({ offset: true, error: 'a time as YYYY-MM-DDTHH:MM:SSZ' }),
      hash,
      parts: z.strictObject({ settings: hash, machines: hash, wording: hash }, 'the hash of each part'),
    },
    { error: (issue) => (issue.code === 'invalid_type' ? 'a signature' : undefined) },
  )
  .refine((signature) => signature.hash === wholeHash(signature.parts), {
    path: ['hash'],
    message: 'the hash over its parts: the file was changed by hand',
  });
export type Signature = z.infer<typeof signatureShape>;

/** How a protocol stands: never signed, signed as it is, or changed since. */
export type Standing =
  | { readonly is: 'unsigned' }
  | { readonly is: 'signed'; readonly signature: Signature }
  | { readonly is: 'changed'; readonly signature: Signature; readonly changed: readonly ContentPart[] };

/** `protocol.yaml` is signed in `protocol.signed.yaml` beside it. */
export function signatureFileOf(protocolFile: string): string {
  return `${protocolFile.replace(/\.ya?ml$/, '')}.signed.yaml`;
}

/**
 * Writes the signature of a protocol file, in place of any older one. Throws `SeedsRefused` for a name or role without
 * words, or a language there is no draft of.
 */
export function sign(protocolFile: string, protocol: Protocol, signer: Signer, atMs: number): Signature {
  const content = contentOf(protocol);
  const file = signatureFileOf(protocolFile);
  const text = stringify({ ...signer, signedAt: new Date(atMs).toISOString(), ...content });
  const signature = parseYaml(file, text, signatureShape);
  writeFileSync(file, `# Written by "npm run protocol -- sign". To change anything, sign anew.\n${text}`);
  return signature;
}

/** How a protocol file stands against its signature. Throws `SeedsRefused` for a signature file that cannot be read. */
export function standingOf(protocolFile: string, protocol: Protocol): Standing {
  const file = signatureFileOf(protocolFile);
  if (!existsSync(file)) return { is: 'unsigned' };
  const signature = parseYaml(file, readFileSync(file, 'utf8'), signatureShape);
  const changed = changedParts(signature, contentOf(protocol));
  return changed.length === 0 ? { is: 'signed', signature } : { is: 'changed', signature, changed };
}

/** The languages a line may speak under a signature: English, and the drafts it approves. */
export function languagesOf(standing: Standing): readonly LanguageCode[] {
  return standing.is === 'signed' ? ['en', ...standing.signature.languages] : ['en'];
}

/**
 * Lets a live line go on only with a protocol signed as it is and the site's regulatory decision on record, and says how
 * it stands. Throws `ProtocolNotSigned` with what changed, or `RegulatoryDecisionMissing`.
 */
export function requireSigned(protocolFile: string, protocol: Protocol): Standing {
  const standing = standingOf(protocolFile, protocol);
  if (standing.is !== 'signed') {
    throw new ProtocolNotSigned(protocolFile, standing.is === 'changed' ? standing.changed : null);
  }
  if (standing.signature.regulatory === null) throw new RegulatoryDecisionMissing(signatureFileOf(protocolFile));
  return standing;
}

function changedParts(signature: Signature, content: Content): readonly ContentPart[] {
  return contentParts.filter((part) => signature.parts[part] !== content.parts[part]);
}
