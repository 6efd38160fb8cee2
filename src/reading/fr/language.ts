/** French known by its words, and asked for in words. */

/** Words that tell French from the other languages of the line; accents are gone. */
export const tellingWords: ReadonlySet<string> = new Set(
  'les des une est sont elle il ils nous vous je jai cest ma mon sa ses dans avec pour mais pas quand comment pourquoi bonjour merci aide aidez sonde bouton bebe fille fils tube sorti sortie sortit tombe tombee depuis heure heures jour jours semaine semaines mois annee annees respire respirer sang saigne fievre douleur mal vomi ventre estomac bleu bleue infirmiere rien tout bien maintenant hier oui nai na ne plait svp et ou facilement facile du au aux cette etait ni lait medicament sans ca ai as avons non nan ouais depuis moi mais deja encore il janvier fevrier avril juin juillet aout septembre octobre novembre decembre'.split(
    ' ',
  ),
);

/** A wish for French, in whatever language. */
export const wish =
  /\b(?:in french|(?<!\d ?)french please|(?:speak|talk|text|write|switch to|prefer|want|change to) (?:to me |me )?(?:in )?french|en francais|francais s(?:il vous| ?v| ?t)\w*(?: plait)?|(?:parle|parlez|prefere) (?:que )?(?:le )?francais|(?:ne )?(?:parle|comprends|lis) pas (?:bien )?(?:l ?)?anglais|parle(?:nt)? anglais,? (?:mais |et )?(?:pas moi|moi (?:pas|non))|en frances|frances por ?favor)\b|^(?:french|francais|frances)[ .!?]*$/;

/** Words around such a wish that say nothing else. */
export const polite: ReadonlySet<string> = new Set(
  's il vous te plait svp stp je ne peut on peux parler ecrire bonjour merci moi pouvez pourriez me le la en'.split(
    ' ',
  ),
);

/** French texts are always heard in the other languages too: families mix them. */
export const ownWords: ReadonlySet<string> = new Set();
