/** What a signature covers: the settings, the machines and the wording of this release, each with a hash of its own. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Protocol, Site } from '#machines/protocol/settings.ts';
import { canonicalJson } from '#src/line/record.ts';
import { safeWords } from '#src/line/safeMessage.ts';
import { word, wordForNurse } from '#src/wording/word.ts';
import { machineDefinitions } from './definition.ts';
import { languageCodes } from './languages.ts';
import { nurseSays } from './nurseSamples.ts';
import { prefaces, sampleChildren, sampleNowMs, says } from './samples.ts';

/** The parts a change can be in. */
export const contentParts = ['settings', 'machines', 'wording'] as const;
export type ContentPart = (typeof contentParts)[number];

/** SHA-256, hexadecimal: one of the whole, and one of each part. */
export interface Content {
  readonly hash: string;
  readonly parts: { readonly [P in ContentPart]: string };
}

/** The content of a protocol as this release would run it. The same files and settings always give the same hashes. */
export function contentOf(protocol: Protocol): Content {
  const parts = {
    settings: sha256(canonicalJson(protocol)),
    machines: machinesHash(),
    wording: sha256(canonicalJson({ texts: sampleTexts(), files: filesUnder('src/wording') })),
  };
  return { hash: wholeHash(parts), parts };
}

/** The one hash a person can read out: over the hashes of the parts. */
export function wholeHash(parts: Content['parts']): string {
  return sha256(canonicalJson(parts));
}

/** The hash of the machines alone, whatever the settings: what a proof was run on. */
export function machinesHash(): string {
  return sha256(canonicalJson({ definitions: machineDefinitions(), files: filesUnder('machines') }));
}

/** The site's own facts are settings, so that a new telephone number does not count as new wording. */
const noSite: Site = {
  emergencyNumber: '000',
  hospital: 'hospital',
  clinicNumber: '+12125550100',
  fallbackNumber: '+12125550101',
  timeZone: 'utc',
  clinicDays: [1],
  clinicOpens: '08:00',
  clinicCloses: '17:00',
  holidays: null,
};

function sampleTexts(): readonly string[] {
  const scene = { site: noSite, nowMs: sampleNowMs, child: null, children: sampleChildren };
  const toCaregivers = languageCodes.flatMap((language) => [
    ...says.map((say) => word(say, { ...scene, language })),
    ...prefaces.map((preface) => word({ key: 'thanks', params: {}, preface: [preface] }, { ...scene, language })),
  ]);
  return [...toCaregivers, ...nurseSays.map((say) => wordForNurse(say, scene)), safeWords(noSite)];
}

const root = fileURLToPath(new URL('../../', import.meta.url));

/** The text of every TypeScript file under a folder, by its path. */
function filesUnder(folder: string): Readonly<Record<string, string>> {
  const files = readdirSync(`${root}${folder}`, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => file.replaceAll('\\', '/'));
  // The canonical JSON puts the paths in order.
  return Object.fromEntries(files.map((file) => [file, readFileSync(`${root}${folder}/${file}`, 'utf8')]));
}

function sha256(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
