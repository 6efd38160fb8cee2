/** French: how it ends for now: in use, held, on to a nurse, or on to the hospital. */
import { isInPlace } from '#machines/facts.ts';
import type { Card, GoInReason, HoldReason, Says } from '#machines/says.ts';
import type { CaregiverCatalogue, Scene } from '../catalogue.ts';
import { deskFacts } from '../en/outcome.ts';
import type { OutcomeKey } from '../keys.ts';
import { days } from './facts.ts';

const holdReasons: Readonly<Record<HoldReason, string>> = {
  hard: 'Elle est rentrée avec peine.',
  'no-strips': 'Sans bandelette, je ne sais pas où elle est.',
  'no-contents': "Sans liquide de l'estomac, je ne sais pas où elle est.",
  unread: "Sans réponse claire, je ne sais pas si c'est sans danger.",
  'second-high': 'Le second chiffre est trop haut aussi.',
  'not-secured': 'Elle ne tient pas encore bien.',
  'tube-problem': 'La sonde a un problème.',
  'in-place': 'Laissez-la dedans, ne tirez pas.',
  'in-blocked': "N'essayez pas de la déboucher. Laissez-la dedans, ne tirez pas.",
  'in-sore': 'Le trou est peut-être infecté. Laissez la sonde dedans, ne tirez pas.',
  'in-leaking': 'Elle fuit. Laissez-la dedans, ne tirez pas.',
};

const goInReasons: Readonly<Record<GoInReason, string>> = {
  'tract-too-young': 'Le trou est trop neuf.',
  kind: 'Cette sonde se change là-bas.',
  tract: 'Le trou est peut-être trop neuf.',
  'half-out': 'Ne poussez pas, ne tirez pas.',
  latex: 'La sonde a peut-être du latex.',
  'no-kit': 'Le trou se ferme vite.',
  'not-shown': 'Des soignants vont la poser.',
  'will-not-go-in': "N'essayez plus.",
  warning: 'Rien par la sonde ni par la bouche.',
  'second-high': 'Le second chiffre est haut aussi.',
  'cannot-wait': 'Là-bas, on peut donner ce qui presse.',
  'nobody-answered': "Pas encore d'infirmière.",
  'unwell-unread': 'Je ne sais pas si tout va bien.',
  'burst-own': 'Elle garde juste le trou ouvert.',
  nurse: 'On vous demande de venir.',
};

const goInCare: Readonly<Record<Card['inside'], string>> = {
  own: 'Laissez le sparadrap. Ne mettez rien dedans.',
  temporary: 'Laissez le sparadrap. Ne mettez rien dedans.',
  'half-out': 'Fixez-la comme elle est. Ne mettez rien dedans.',
  'in-place': 'Ne tirez pas la sonde. Ne mettez rien dedans.',
  nose: 'Ne mettez rien dans la sonde du nez.',
  nothing: "Couvrez le trou. N'y mettez rien.",
};

const goNow = ({ site }: Scene) => `Allez maintenant aux urgences: ${site.hospital} (si plus d'1 h: les plus proches).`;
const worse = ({ site }: Scene) => `Si ça empire, appelez le ${site.emergencyNumber}.`;
function goInWhy(why: string | null, { reason, inside }: Says['goIn'], scene: Scene): string {
  const ask = reason === 'cannot-wait' ? '\nPas besoin de répondre.' : replyIfCannotWait;
  const care = why === null ? goInCare[inside] : `${why} ${goInCare[inside]}`;
  return `${goNow(scene)} ${care} Pire? Appelez le ${scene.site.emergencyNumber}.${ask}`;
}

/** Worded so that the reader hears it: the bare name of a medicine would be no word it knows. */
const cannotWait = 'REPAS URGENT ou MEDICAMENT URGENT et son nom si ça presse.';
export const replyIfCannotWait = `\nRépondez ${cannotWait}`;
const replyOutOrCannotWait = `\nRépondez ELLE EST SORTIE si elle sort, ou ${cannotWait}`;
export const replyOkOrCannotWait = `\nRépondez OK, ou ${cannotWait}`;

export const outcome: Pick<CaregiverCatalogue, OutcomeKey> = {
  use: ({ tube, stayDays }, { site }) => {
    const which = tube === 'temporary' ? 'la sonde provisoire' : 'la sonde';
    const stay = tube === 'temporary' ? `, ${days(stayDays)} au plus` : '';
    return (
      `Vous pouvez utiliser ${which}${stay}. Lentement, sous vos yeux. Pas de pompe la nuit avant un repas de jour bien passé. ` +
      'Vérifiez la marque avant chaque repas. Douleur, fuite, sang frais, vomi? Cessez, écrivez-moi. ' +
      `Appelez la clinique dès qu'elle ouvre: ${site.clinicNumber}.\nRépondez OK.`
    );
  },
  useStill: ({ tube }, { site }) =>
    `Vous pouvez utiliser la sonde${tube === 'temporary' ? ' provisoire' : ''}. Vérifiez la marque, allez lentement, ` +
    `sous vos yeux. Douleur, fuite ou sang frais? Arrêtez le repas. Danger? Appelez le ${site.emergencyNumber}.` +
    '\nRépondez si quelque chose ne va pas.',
  hold: ({ reason, clinicArranges }, scene) => {
    const next = clinicArranges
      ? `La clinique va prévoir le changement: ${scene.site.clinicNumber}.`
      : 'Une infirmière vous dira la suite.';
    return (
      `Ne mettez rien dans la sonde. ${holdReasons[reason]}${isInPlace(reason) ? '' : ' Laissez le sparadrap.'} ${next} ` +
      `${worse(scene)}${isInPlace(reason) ? replyOutOrCannotWait : replyOkOrCannotWait}`
    );
  },
  holdStill: (_params, scene) =>
    `Ne mettez rien dans la sonde. Une infirmière dira la suite. ${worse(scene)}${replyIfCannotWait}`,
  leaveInStill: (_params, scene) =>
    `Ne mettez rien dans la sonde. ${holdReasons['in-place']} Une infirmière dira la suite. ` +
    `${worse(scene)}${replyOutOrCannotWait}`,
  nurse: (_params, scene) =>
    'Ne mettez rien dans la sonde du nez et ne la poussez pas. Cette ligne est pour les sondes du ventre. ' +
    `J'appelle une infirmière. ${worse(scene)}${replyOkOrCannotWait}`,
  nurseStill: (_params, scene) =>
    `Ne mettez rien dans la sonde du nez et ne la poussez pas. Une infirmière va vous appeler. ${worse(scene)}${replyIfCannotWait}`,
  goIn: ({ reason, inside }, scene) => goInWhy(goInReasons[reason], { reason, inside }, scene),
  /** The desk reads the language of the hospital, so what it has to know stays in it. */
  goInCard: (card, scene) =>
    `Montrez ceci: ${deskFacts(card, scene)} Prenez sonde, trousse et chargeur. Faites-vous conduire.` +
    '\nPas besoin de répondre.',
  goInStill: ({ told }, scene) => {
    if (told === null) return `${goNow(scene)} Ne mettez rien dans la sonde. ${worse(scene)}${replyIfCannotWait}`;
    // Somebody may have answered since.
    return goInWhy(told.reason === 'nobody-answered' ? null : goInReasons[told.reason], told, scene);
  },
};
