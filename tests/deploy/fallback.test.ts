/**
 * The carrier's fallback answers: what a family reads or hears while the line is down. Well-formed is what the carrier's own library
 * writes; the segments are counted by a reference library for GSM 03.38.
 */
import twilio from 'twilio';
import { describe, expect, it } from 'vitest';
import type { Site } from '#machines/protocol/settings.ts';
import { loadSeeds } from '#src/seeds.ts';
import { segmentsOf } from '#tests/wording/segments.ts';
import { answers, filled } from '../../deploy/fallback/fill.ts';

const { site } = loadSeeds('seeds').protocol;
/** As long as the protocol's bounds let the numbers be. */
const longest: Site = { ...site, emergencyNumber: '123456', clinicNumber: '+123456789012345' };

const text = (of: Site) => /<Message>([^<]+)<\/Message>/.exec(filled('text.xml', of))?.[1] ?? '';
const call = (of: Site) => /<Say loop="2">([^<]+)<\/Say>/.exec(filled('call.xml', of))?.[1] ?? '';
const squeezed = (xml: string) => xml.replaceAll(/\n\s*/g, '');

describe('the fallback answer', () => {
  it('to a text is what the carrier takes for one message', () => {
    const made = new twilio.twiml.MessagingResponse();
    made.message(text(site));
    expect(squeezed(filled('text.xml', site))).toBe(made.toString());
  });

  it('to a call is what the carrier takes for words said twice', () => {
    const made = new twilio.twiml.VoiceResponse();
    made.say({ loop: 2 }, call(site));
    expect(squeezed(filled('call.xml', site))).toBe(made.toString());
  });

  it('to a text is two segments of plain characters at most, however long the numbers are', () => {
    const { count, encoding } = segmentsOf(text(longest));
    expect(encoding).toBe('GSM-7');
    expect(count).toBeLessThanOrEqual(2);
  });

  it.each(answers)('%s names the danger first, closes the tube, and says where to turn', (answer) => {
    const words = filled(answer, site);
    const inOrder = [
      'in danger',
      'cannot guide you',
      'nothing through the tube',
      'by mouth',
      'clinic',
      'emergency department',
    ];
    const places = inOrder.map((part) => words.indexOf(part));
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it.each(answers)('%s has no number of its own and no placeholder left', (answer) => {
    expect(filled(answer, longest)).not.toMatch(/\{\{|911|555/);
  });

  it("reads and says the site's own numbers, digit by digit to a caller", () => {
    expect(text(site)).toContain(`Call ${site.emergencyNumber} now`);
    expect(text(site)).toContain(site.clinicNumber);
    expect(call(site)).toContain('call 9 1 1 now');
    expect(call(site)).toContain('1 2 1 2 5 5 5 0 1 4 0');
  });

  it('offers no word that the carrier takes for itself', () => {
    expect(text(site)).not.toMatch(
      /\b(?:STOP|STOPALL|UNSUBSCRIBE|CANCEL|END|QUIT|REVOKE|OPTOUT|START|UNSTOP|HELP|INFO)\b/,
    );
  });
});
