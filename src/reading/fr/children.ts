/** French for which child it is: taking a name back, and none of them. */

export const no = 'non|nan';
export const takeBack =
  'attend(?:s|ez)?|pardon|desolee?|en fait|je voulais dire|je veux dire|erreur|je me suis trompee?';
export const itIs = '(?:cest(?: pour)?|il sagit de|pour|cetait)';
export const not = 'pas(?: pour)?|cest pas|ce nest pas';
export const none =
  '^(?:aucune?(?: des (?:deux|2))?|aucun dentre eux|personne|une? autre(?: enfant)?|cest une? autre(?: enfant)?)[.! ]*$';
