/** Which messages stand in which file of a language: the same in each. */

/** Danger first. */
export type SafetyKey =
  | 'opening'
  | 'openingTubeIn'
  | 'askUnwell'
  | 'clarifySign'
  | 'emergency'
  | 'emergencyStill'
  | 'emergencyCalled'
  | 'askTrouble';

/** What is asked of the child and the tube. */
export type QuestionSayKey =
  | 'askWho'
  | 'askWhichChild'
  | 'confirmFile'
  | 'askTubeKind'
  | 'askTubeKindByLook'
  | 'askFirstPlaced'
  | 'askOwnTube'
  | 'askOwnTubeIn'
  | 'askKit'
  | 'askWeight'
  | 'askWeightUnit'
  | 'askWeightAgain'
  | 'askCameOut'
  | 'askLastSeenIn';

/** The steps in. */
export type InsertionKey =
  | 'ownTubeSteps'
  | 'ownTubeAsHolderSteps'
  | 'askHowIn'
  | 'insertLayOut'
  | 'insertMeasure'
  | 'insertPutIn'
  | 'secondTry'
  | 'askTubeIn';

/** Whether it is where it should be. */
export type PlacementKey =
  | 'askAfterIn'
  | 'askStrips'
  | 'askContents'
  | 'askPh'
  | 'askFedLately'
  | 'askLooks'
  | 'recheckWait'
  | 'recheckStill'
  | 'secureSteps'
  | 'secureAgain';

/** Where a case comes to rest. */
export type OutcomeKey =
  | 'use'
  | 'useStill'
  | 'hold'
  | 'holdStill'
  | 'leaveInStill'
  | 'nurse'
  | 'nurseStill'
  | 'goIn'
  | 'goInCard'
  | 'goInStill';

/** What is asked afterwards. */
export type AftercareKey =
  | 'askFirstFeed'
  | 'firstFeedWell'
  | 'firstFeedLater'
  | 'askNextDay'
  | 'nextDayWell'
  | 'askClinic'
  | 'clinicDone'
  | 'clinicNotYet'
  | 'clinicStillNot'
  | 'stayWarning'
  | 'stayOver'
  | 'askArrived'
  | 'arrivedYes'
  | 'arrivedNo'
  | 'askOutcome'
  | 'outcomeWell'
  | 'outcomeNotWell';

/** Nudges, calls, pages that wait, texts outside a case. */
export type BesideKey =
  | 'nudge'
  | 'recheckCall'
  | 'pageUnanswered'
  | 'pageBegan'
  | 'pageTaken'
  | 'pagePassed'
  | 'relay'
  | 'ringSoon'
  | 'askCorrection'
  | 'stopped'
  | 'help'
  | 'phoneJoined'
  | 'closedByNurse'
  | 'callAnswer'
  | 'callUnanswered'
  | 'paused'
  | 'askAboutTube'
  | 'notAboutTube'
  | 'thanks';

/** Of a rehearsal, to the family. */
export type RehearsalSayKey = 'rehearsalBegan' | 'rehearsalPage' | 'rehearsalOver' | 'rehearsalReal';
