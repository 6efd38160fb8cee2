import { describe, expect, it } from 'vitest';
import { ProtocolRefused } from '#machines/protocol/errors.ts';
import { defaultClinical, parseProtocol } from '#machines/protocol/load.ts';
import { type ClinicalName, clinicalSettings, type NumberSetting } from '#machines/protocol/settings.ts';

const site = {
  emergencyNumber: '911',
  hospital: 'Owlet Hill',
  clinicNumber: '+12125550140',
  fallbackNumber: '+12125550141',
  timeZone: 'America/New_York',
  clinicDays: [1, 2, 3, 4, 5],
  clinicOpens: '08:00',
  clinicCloses: '17:00',
  holidays: 'US',
};

function refusals(value: unknown) {
  try {
    parseProtocol(value);
  } catch (error) {
    if (error instanceof ProtocolRefused) return error.refusals;
    throw error;
  }
  return [];
}

const clinicalRefusals = (clinical: Record<string, unknown>) => refusals({ clinical, site });
const siteRefusals = (facts: Record<string, unknown>) => refusals({ site: { ...site, ...facts } });

/** The bounds of the clinical rules as the product's issue lists them; its source column is in `settings.ts`. */
const written: Partial<Record<ClinicalName, readonly [normal: number, least: number, most: number]>> = {
  tractUsableAfterDays: [56, 42, 183],
  noInsertionUnderDays: [14, 0, 56],
  cautiousUnderDays: [28, 14, 56],
  insertionTries: [2, 1, 3],
  outTooLongHours: [4, 2, 8],
  phLimit: [6, 4, 6],
  phStripStep: [0.5, 0.1, 1],
  phStripTop: [9, 6, 14],
  recheckMinutes: [60, 30, 120],
  contentsTries: [3, 1, 4],
  balloonMostMl: [5, 2, 5],
  stayDays: [30, 1, 30],
};

/** Waits that have to rise, so a test at one's bound moves the others out of its way. */
const around: Partial<Record<ClinicalName, Partial<Record<ClinicalName, number>>>> = {
  emergencyRepeatMinutes: { emergencySecondMinutes: 9 },
  emergencySecondMinutes: { emergencyRepeatMinutes: 1, emergencyThirdMinutes: 15 },
  emergencyThirdMinutes: { emergencyRepeatMinutes: 1, emergencySecondMinutes: 2 },
  urgentRepeatMinutes: { urgentSecondMinutes: 14 },
  urgentSecondMinutes: { urgentRepeatMinutes: 2, urgentThirdMinutes: 30 },
  urgentThirdMinutes: { urgentRepeatMinutes: 2, urgentSecondMinutes: 4 },
  routineRepeatMinutes: { routineSecondMinutes: 44, routineThirdMinutes: 60 },
  routineSecondMinutes: { routineRepeatMinutes: 5, routineThirdMinutes: 60 },
  routineThirdMinutes: { routineRepeatMinutes: 5, routineSecondMinutes: 10 },
  stayFirstWarningDays: { staySecondWarningDays: 1 },
  staySecondWarningDays: { stayFirstWarningDays: 14 },
};

const settings = Object.entries(clinicalSettings).map(([name, setting]): readonly [ClinicalName, NumberSetting] => [
  name as ClinicalName,
  setting,
]);

describe('the table of settings', () => {
  it.each(settings)(
    '%s: its default lies in its bounds, and it has a meaning, a unit and a source',
    (_name, setting) => {
      expect(setting.default).toBeGreaterThanOrEqual(setting.least);
      expect(setting.default).toBeLessThanOrEqual(setting.most);
      for (const words of [setting.meaning, setting.unit, setting.source]) expect(words).not.toBe('');
    },
  );

  it.each(Object.entries(written))('%s has the default and bounds that were agreed', (name, [normal, least, most]) => {
    expect(clinicalSettings[name as ClinicalName]).toMatchObject({ default: normal, least, most });
  });
});

describe('each clinical setting', () => {
  it.each(settings)('%s is taken at both bounds', (name, { least, most }) => {
    for (const value of [least, most]) {
      const clinical = { ...around[name], [name]: value };
      expect(clinicalRefusals(clinical)).toEqual([]);
      expect(parseProtocol({ clinical, site }).clinical[name]).toBe(value);
    }
  });

  it.each(settings)('%s is refused just outside them, with field, value and bound', (name, { least, most, unit }) => {
    for (const value of [least - 0.001, most + 0.001, least - 1, most + 1]) {
      const [refusal] = clinicalRefusals({ ...around[name], [name]: value });
      expect(refusal).toMatchObject({ field: `clinical.${name}`, value });
      expect(refusal?.bound).toMatch(new RegExp(`${least} to ${most} ${unit}$`));
    }
  });

  it.each(settings)('%s is refused when it is no number', (name, setting) => {
    for (const value of [null, String(setting.default), Number.NaN, Number.POSITIVE_INFINITY, [], true]) {
      expect(clinicalRefusals({ [name]: value }), String(value)).toMatchObject([{ field: `clinical.${name}`, value }]);
    }
  });

  it.each(settings.filter(([, { unit }]) => unit === 'tries' || unit === 'days'))('%s is whole', (name, { least }) => {
    expect(clinicalRefusals({ ...around[name], [name]: least + 0.5 })).toMatchObject([{ field: `clinical.${name}` }]);
  });
});

describe('the after-feed value', () => {
  it.each(['off', 6.5, 7])('%s is taken', (phAfterFeed) => {
    expect(parseProtocol({ clinical: { phAfterFeed }, site }).clinical.phAfterFeed).toBe(phAfterFeed);
  });

  it.each([6, 6.6, 7.5, '7', 'on', false, null])('%s is refused', (phAfterFeed) => {
    expect(clinicalRefusals({ phAfterFeed })).toEqual([
      { field: 'clinical.phAfterFeed', value: phAfterFeed, bound: '"off", 6.5 or 7' },
    ]);
  });
});

describe('a clinical part', () => {
  it('takes the default for what is left out, also when all of it is', () => {
    expect(parseProtocol({ site }).clinical).toEqual(defaultClinical);
    expect(parseProtocol({ clinical: { phLimit: 5 }, site }).clinical).toEqual({ ...defaultClinical, phLimit: 5 });
  });

  it.each([
    ['emergencyRepeatMinutes', 'emergencySecondMinutes', 5, 5],
    ['emergencySecondMinutes', 'emergencyThirdMinutes', 10, 10],
    ['urgentRepeatMinutes', 'urgentSecondMinutes', 8, 7],
    ['urgentSecondMinutes', 'urgentThirdMinutes', 16, 15],
    ['routineRepeatMinutes', 'routineSecondMinutes', 21, 20],
    ['routineSecondMinutes', 'routineThirdMinutes', 31, 30],
    ['staySecondWarningDays', 'stayFirstWarningDays', 7, 7],
  ])('refuses %s that is not less than %s', (less, more, a, b) => {
    expect(clinicalRefusals({ [less]: a, [more]: b })).toContainEqual({
      field: `clinical.${less}`,
      value: a,
      bound: `less than ${more} (${b})`,
    });
  });

  it('refuses a name it does not know, so that a slip is no silent default', () => {
    expect(clinicalRefusals({ phLimt: 5 })).toEqual([
      { field: 'clinical.phLimt', value: 5, bound: 'left out: there is no such setting' },
    ]);
  });

  it('names everything wrong at once, and says it in the message', () => {
    const parse = () => parseProtocol({ clinical: { phLimit: 7, stayDays: 31 }, site: { ...site, holidays: 'usa' } });
    expect(parse).toThrow('clinical.phLimit is 7; it has to be 4 to 6 pH');
    expect(parse).toThrow('clinical.stayDays is 31; it has to be a whole number from 1 to 30 days');
    expect(parse).toThrow('site.holidays is "usa"');
  });

  it('has a line for each wrong value, and says of one that is not there that it is missing', () => {
    const { hospital: _gone, ...rest } = site;
    expect(() => parseProtocol({ clinical: { phLimit: 7 }, site: rest })).toThrow(
      new ProtocolRefused([
        { field: 'clinical.phLimit', value: 7, bound: '4 to 6 pH' },
        { field: 'site.hospital', value: undefined, bound: 'a name of 1 to 60 characters' },
      ]),
    );
    expect(() => parseProtocol({ clinical: { phLimit: 7 }, site: rest })).toThrow(
      /^protocol refused\nclinical\.phLimit is 7; .*\nsite\.hospital is missing; it has to be a name of 1 to 60 characters$/,
    );
  });
});

describe('the site', () => {
  it.each([
    ['emergencyNumber', ['911', '112', '000'], ['91', '+12125550140', '9-1-1', '911x', '911911911', 911, '']],
    ['hospital', ['A', 'x'.repeat(60)], ['', '   ', 'x'.repeat(61), 5]],
    ['hospitalNumber', ['+1234567', '+123456789012345'], ['+123456', '2125550140', '']],
    ['clinicNumber', ['+1234567', '+123456789012345'], ['+123456', '+1234567890123456', '2125550140', '+0234567', '']],
    ['fallbackNumber', ['+447700900123'], ['+1 212 555 0140', 'x+12125550140', null]],
    ['timeZone', ['Europe/London', 'UTC'], ['Mars/Olympus', '', 'EST5EDTX', 5]],
    ['languages', [['en'], ['en', 'fr'], ['es', 'en']], [[], ['es'], ['en', 'de'], 'en']],
    ['clinicDays', [[1], [1, 2, 3, 4, 5, 6, 7]], [[], [0], [8], [1, 1], [1.5], 'Monday']],
    ['quietFrom', ['19:00', '21:00', '23:00'], ['18:59', '23:01', '9:00', '25:00', '2021:00', '21:00:00', 21]],
    ['quietUntil', ['05:00', '07:00', '09:00'], ['04:59', '09:01', '7:00', '07:60', 7]],
    ['clinicOpens', ['00:00', '16:59'], ['17:00', '23:59', '8:00', '24:00', '08:60', 8]],
    ['clinicCloses', ['08:01', '23:59'], ['08:00', '07:59', '17', '17:00:00']],
    ['holidays', ['US', 'US-NY', 'GB-ENG', null], ['us', 'USA', 'US-', '', 5]],
  ])('%s', (name, taken, refused) => {
    for (const value of taken) expect(siteRefusals({ [name]: value }), String(value)).toEqual([]);
    for (const value of refused) expect(siteRefusals({ [name]: value }), String(value)).not.toEqual([]);
  });

  it.each(Object.keys(site))('%s has to be there', (name) => {
    const { [name]: _gone, ...rest } = Object.fromEntries(Object.entries(site));
    expect(refusals({ site: rest })).toMatchObject([{ field: `site.${name}`, value: undefined }]);
  });

  it('names the field, the value and the bound', () => {
    expect(siteRefusals({ clinicNumber: '212' })).toEqual([
      { field: 'site.clinicNumber', value: '212', bound: 'a telephone number: "+" and 7 to 15 digits, in quotes' },
    ]);
  });

  it.each([
    ['emergencyNumber', '91', '3 to 6 digits, in quotes'],
    ['hospital', '', 'a name of 1 to 60 characters'],
    ['timeZone', 'Mars/Olympus', 'a time zone of the IANA list, as "America/New_York"'],
    ['clinicDays', [1, 1], 'a list of at least one weekday, each once'],
    ['quietUntil', '10:00', 'a time of day from "05:00" to "09:00"'],
    ['clinicOpens', '0:00', 'a time of day as "HH:MM"'],
    ['clinicOpens', '17:00', 'before clinicCloses (17:00)'],
    ['languages', ['es'], 'a list of en, es and fr, with en always among them'],
    ['holidays', 'usa', 'a country, or country and state, as US or US-NY; or null'],
  ])('says what %s has to be when it is %j', (name, value, bound) => {
    expect(siteRefusals({ [name]: value })).toEqual([{ field: `site.${name}`, value, bound }]);
  });

  it.each([
    [1.5, 'whole numbers from 1 (Monday) to 7'],
    [0, '1 (Monday) to 7'],
    [8, '1 (Monday) to 7'],
  ])('says which weekday is none: %d', (day, bound) => {
    expect(siteRefusals({ clinicDays: [2, day] })).toEqual([{ field: 'site.clinicDays.1', value: day, bound }]);
  });
});

describe('what is no protocol', () => {
  it.each([null, undefined, 5, 'text', [], {}, { site: null }, { site, clinical: null }, { site, clinical: [] }])(
    '%j is refused, never a crash',
    (value) => {
      expect(refusals(value).length).toBeGreaterThan(0);
    },
  );

  it.each([
    ['the file', null, 'a protocol: clinical and site'],
    ['site', { site: 5 }, "the site's facts"],
    ['clinical', { site, clinical: 5 }, 'a list of settings'],
  ])('says what %s has to be', (field, value, bound) => {
    expect(refusals(value)).toContainEqual(expect.objectContaining({ field, bound }));
  });

  it('refuses a part it does not know', () => {
    expect(refusals({ site, signedBy: 'x' })).toMatchObject([{ field: 'signedBy' }]);
  });

  it('has a code', () => {
    expect(new ProtocolRefused([])).toMatchObject({ code: 'protocol-refused', name: 'ProtocolRefused' });
  });
});
