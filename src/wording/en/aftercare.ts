/** English: what follows: the first feed, the next day, the clinic, the stay limit, and the way to the hospital. */
import type { CaregiverCatalogue } from '../catalogue.ts';
import type { AftercareKey } from '../keys.ts';
import { childIn, moreDays } from './facts.ts';

const stopSigns = 'Pain, leak or fresh blood? Stop the feed and text me.';

export const aftercare: Pick<CaregiverCatalogue, AftercareKey> = {
  askFirstFeed: () =>
    'Did the first feed go well, with no pain, leak, fresh blood or vomit? If not, stop the feed.\nReply YES or NO.',
  firstFeedWell: () => `Good. Go on slowly. Check the mark before each feed. ${stopSigns}\nNo reply needed.`,
  firstFeedLater: () =>
    `That is fine. When you feed, check the mark, go slowly, and watch. ${stopSigns} I will ask again.\nNo reply needed.`,
  askNextDay: (_params, scene) =>
    `Is ${childIn(scene)} well today, with no pain, fever, leak, fresh blood or tight belly?\nReply YES or NO.`,
  nextDayWell: () => `Good. Check the mark before each feed. ${stopSigns}\nNo reply needed.`,
  askClinic: (_params, scene) =>
    `Have you called the clinic about the tube of ${childIn(scene)}? Its number is ${scene.site.clinicNumber}.` +
    '\nReply YES or NO.',
  clinicDone: () => `Good. Go by what the clinic told you. ${stopSigns}\nNo reply needed.`,
  clinicNotYet: ({ tube }, { site }) =>
    `Please call the clinic on its next work day: ${site.clinicNumber}. ` +
    `${tube === 'temporary' ? 'The tube is just for a short time. ' : ''}I will ask again.\nNo reply needed.`,
  clinicStillNot: (_params, { site }) =>
    `Please call the clinic as soon as it opens: ${site.clinicNumber}. It must know about the tube. I am telling a nurse too.` +
    '\nNo reply needed.',
  stayWarning: ({ daysLeft }, { site }) =>
    `The temporary tube may stay in for ${moreDays(daysLeft)}. If no change is planned, call the clinic: ${site.clinicNumber}.` +
    '\nNo reply needed.',
  stayOver: (_params, { site }) =>
    `The time for the temporary tube is over. Call the clinic now: ${site.clinicNumber}. I am telling a nurse too.` +
    '\nNo reply needed.',
  askArrived: (_params, scene) => `Are you at the hospital with ${childIn(scene)} now?\nReply YES or NO.`,
  arrivedYes: () => 'Good. Show them my text for the desk. Put nothing through the tube.\nNo reply needed.',
  arrivedNo: (_params, { site }) =>
    `Go now to the emergency department at ${site.hospital} (if over an hour away, the nearest). Put nothing through the ` +
    `tube. Can't get there? Call ${site.emergencyNumber}. I am telling a nurse.\nReply NURSE for a person.`,
  askOutcome: (_params, scene) =>
    `Is ${childIn(scene)} well today, and did the hospital see to the tube?\nReply YES or NO.`,
  outcomeWell: () => `Good. Go by what the hospital told you. ${stopSigns}\nNo reply needed.`,
  outcomeNotWell: (_params, scene) =>
    `If ${childIn(scene)} is not with a doctor, go now to the emergency department at ${scene.site.hospital} (if over an hour ` +
    `away, the nearest). Put nothing through the tube till they say so. In danger, call ${scene.site.emergencyNumber}. ` +
    'I am telling a nurse.\nReply NURSE for a person.',
};
