/** The sheet: the site's protocol as one page of HTML that a clinician prints, reads and signs. */
import { readFileSync } from 'node:fs';
import type { Protocol } from '#machines/protocol/settings.ts';
import { contentOf, machinesHash } from '../content.ts';
import { readProof } from '../proof.ts';
import { languagesOf, type Standing } from '../signature.ts';
import { front } from './front.ts';
import { machinePages } from './machines.ts';
import { html } from './markup.ts';
import { messagePages } from './messages.ts';
import { rulesPage } from './rules.ts';
import { siteTable, valueTables } from './values.ts';

const style = readFileSync(new URL('./sheet.css', import.meta.url), 'utf8');

/** The whole sheet, self-contained: no script, no picture, no font from elsewhere. */
export function sheet(protocol: Protocol, standing: Standing): string {
  const content = contentOf(protocol);
  const page = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>Protocol of ${protocol.site.hospital}</title>
<style>${{ markup: style }}
@page { @bottom-left { content: "Content ${content.hash.slice(0, 16)}" } }</style>
</head>
<body>
${front(protocol, content, standing)}
<section><h2>1. The site</h2>${siteTable(protocol.site)}</section>
<section><h2>2. The clinical values</h2>${valueTables(protocol.clinical)}</section>
<section><h2>3. The safety rules</h2>${rulesPage(readProof(), machinesHash())}</section>
<section><h2>4. The machines</h2>${machinePages()}</section>
<section><h2>5. Every message</h2>${messagePages(protocol.site, languagesOf(standing))}</section>
</body>
</html>
`;
  return page.markup;
}
