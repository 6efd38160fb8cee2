/**
 * The rota file: either a list of three nurses who are always on call, in the order a page climbs, or the people and a calendar
 * for each line:
 *
 *     people:
 *       - { name: Imke, number: "+12125550151", lead: true }
 *     calendars: [first.ics, second.ics, https://calendar.example.org/third.ics]
 */
import { z } from 'zod';
import { phoneNumber } from '#machines/protocol/siteSchema.ts';
import { parseYaml } from '#src/yamlFile.ts';
import type { Nurse } from './rota.ts';

export interface RotaFile {
  readonly nurses: readonly Nurse[];
  /** A file beside the rota file, or an https address, for each line; none where everybody is always on call. */
  readonly calendars: readonly string[];
}

/** The climb goes to a first, a second and a third person. */
const places = 3;

const listBound = `a list of ${places} nurses, each with a number of her own`;
const peopleBound = 'a list of people, each with a name and a number of her own';
const calendarsBound = `${places} calendars, one for each line, each another one`;
const nameBound = 'a first name alone';
const nurseSchema = z.strictObject({
  name: z.string(nameBound).regex(/^\p{L}[\p{L}\p{M}'’-]*$/u, nameBound),
  number: phoneNumber,
  lead: z.boolean('true or false').exactOptional(),
});
const distinct = <T>(of: (nurse: Nurse) => T) => {
  return (nurses: readonly Nurse[]) => new Set(nurses.map(of)).size === nurses.length;
};
const listSchema = z
  .array(nurseSchema, listBound)
  .length(places, listBound)
  .refine(
    distinct((nurse) => nurse.number),
    listBound,
  )
  .transform((nurses): RotaFile => ({ nurses, calendars: [] }));

const calendarBound = 'the name of an .ics file beside this one, or an https address';
const calendarSchema = z
  .string(calendarBound)
  .refine((text) => isAddress(text) || /^[^\\/]+(?:\/[^\\/]+)*\.ics$/.test(text), calendarBound);
/** Whom a shift means is told by number or by name, so neither may be two people's. */
const shiftsSchema = z
  .strictObject({
    people: z
      .array(nurseSchema, peopleBound)
      .min(1, peopleBound)
      .refine(
        distinct((nurse) => nurse.number),
        peopleBound,
      )
      .refine(
        distinct((nurse) => nurse.name.toLowerCase()),
        peopleBound,
      ),
    calendars: z
      .array(calendarSchema, calendarsBound)
      .length(places, calendarsBound)
      .refine((all) => new Set(all).size === all.length, calendarsBound),
  })
  .transform(({ people, calendars }): RotaFile => ({ nurses: people, calendars }));

/** Reads the rota file, in either form. Throws `SeedsRefused` with field, value and bound. */
export function loadRota(yamlText: string): RotaFile {
  return /^\s*people\s*:/m.test(yamlText)
    ? parseYaml('rota.yaml', yamlText, shiftsSchema)
    : parseYaml('rota.yaml', yamlText, listSchema);
}

/** Whether a calendar is fetched rather than read from a file. */
export function isAddress(calendar: string): boolean {
  return URL.canParse(calendar) && new URL(calendar).protocol === 'https:';
}
