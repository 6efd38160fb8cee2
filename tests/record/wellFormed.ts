/** What makes a picture no XML, so that a browser shows an error instead. Source: XML 1.0, fifth edition, sections 2.4, 3 and 3.1. */

const tag = /<(\/?)([a-zA-Z][\w:-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/y;
const words = /[^<]+/y;
const strayAmpersand = /&(?!(?:amp|lt|gt|quot|apos|#\d+);)/;

/** Everything that breaks the rules of a well-formed document, in order; empty where it is one. */
export function faultsOfXml(xml: string): string[] {
  const faults: string[] = [];
  const open: string[] = [];
  let at = 0;
  while (at < xml.length) {
    const found = matchAt(tag, xml, at) ?? matchAt(words, xml, at);
    if (found === null) return [...faults, `no tag at ${xml.slice(at, at + 40)}`];
    at += found[0].length;
    const [text, closes, name, attributes = '', empty] = found;
    if (strayAmpersand.test(text)) faults.push(`a bare ampersand in ${text}`);
    if (name === undefined) continue;
    const names = [...attributes.matchAll(/([\w:-]+)="/g)].map((match) => match[1]);
    if (new Set(names).size < names.length) faults.push(`an attribute twice in ${text}`);
    if (closes && open.pop() !== name) faults.push(`${text} closes what is not open`);
    if (!closes && !empty) open.push(name);
  }
  return [...faults, ...open.map((name) => `${name} is not closed`)];
}

function matchAt(pattern: RegExp, xml: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(xml);
}
