/** Spanish for which child it is: taking a name back, and none of them. */

export const no = 'no|nop';
export const takeBack = 'espere?|perdon|perdone|disculpe|en realidad|quise decir|quiero decir|me equivoque|digo';
export const itIs = '(?:es(?: el| la)?(?: de)?|era|se trata de|por|para)';
export const not = 'no es(?: de)?|no era|no';
export const none =
  '^(?:ningun[oa]?(?: de (?:ellos|ellas|los dos|las dos|esos))?|nadie|otr[oa](?: (?:nin[oa]|hij[oa]))?|es otr[oa](?: nin[oa])?)[.! ]*$';
