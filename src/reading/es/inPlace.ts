/** Spanish for a tube that never came out, and what is wrong with it. */

/** Said firmly, so that no question before an insertion can mean it otherwise. */
export const neverOut =
  /\b(?:(?:no|nunca|jamas|tampoco) (?:se )?(?:le |me |nos )?(?:ha |esta |estaba |esta )?(?:salio|salido|cayo|caido|zafo|zafado|afuera|fuera|salida)\b(?! (?:del todo|complet\w+|tod[oa]|por completo|sol[oa]|antes|hace|mucho|facil\w*|de|por|tan|bien|leche|sangre|nada)\b)|nada (?:se )?(?:le )?(?:salio|ha salido|salido)\b|(?:nunca|jamas) (?:se )?(?:la|lo) (?:he |hemos )?(?:saque|sacado|sacamos|quite|quitado|quitamos)\b(?! (?:de|del)\b))/;
/** It is out all the same, by somebody's hand, or it is no feeding tube. */
export const otherwise = /\btraque|\b(?:jal[oe]|arranc[oe]|sac[oe]|quit[oe]|la jalaron|estir[oe])\b/;
/** Where it is now; weaker, as "ya esta adentro" may answer how an insertion went. */
export const isIn =
  /\b(?:(?:sonda|tubo|boton|la tiene|lo tiene|la trae|lo trae|sigue|esta|si|sigue)(?: (?:esta|sigue|bien|todavia|aun|muy|toda|entera|completa))*,? (?:adentro|dentro|puest[oa]|metid[oa]|en su (?:lugar|sitio))|(?:adentro|dentro) de (?:la|su|el|mi) (?:panz\w*|panc\w*|barrig\w*|estomag\w*|vientre|nin[oa]|bebe|cuerpo|hoyo\w*))\b(?! (?:de (?:la|el|su|mi) (?:basura|bolsa|caja|cajon|carro|mochila|mano)|en (?:la|el|mi|una) ))/;
/** A tube that may be taken out is in. "Se la saco" with anybody before it is what somebody did. */
export const mayTakeOut =
  /^(?:(?:entonces|pero|y|ok|oiga|espere|espera|o|sea|perdon|como)[ ,]+)*(?:se )?(?:la|lo) (?:saco|quito|jalo)(?: (?:entonces|yo|ya|o que|o no|de ahi))*[ .,]*\?|\b(?:tengo que|debo|hay que|puedo|debemos|tenemos que) (?:sacar|quitar|jalar)(?:se)?(?:la|lo|le)\b/;
export const device = /\b(?:g ?-?tube|gtube|gj|peg|sondas?|tubo|tubito|boton|botoncito|cateter)\b/;
export const out =
  /\b(?:salio|salido|salida|cayo|caid[oa]|zafo|zafad[oa]|afuera|fuera|arranco|jalo|saco|quito|solto|perdi\w*|hoyo|hoyito|agujero|globo)\b/;

export const leaks =
  /\b(?:fuga\w*|gote\w*|se (?:le )?(?:sale|esta saliendo) (?:la |el |mucha |toda la )?(?:leche|comida|formula|liquido|agua)|tira (?:leche|liquido|comida)|moj[ao]\w*|empap\w*)\b/;
export const blocked =
  /\b(?:tapad[oa]|(?:se )?(?:le )?tapo|obstru\w*|bloque\w*|atasc\w*|no (?:le )?(?:pasa|baja|corre|entra) (?:la |el |nada|ni )?(?:leche|agua|comida|formula|nada)?)\b/;
export const sore =
  /\b(?:pus|infect\w*|infeccion|(?:piel|alrededor|hoyo|hoyito|ve|esta)(?: \w+){0,2} (?:roj[oa]|irritad[oa]|inflamad[oa]|hinchad[oa])|huele (?:feo|mal)|supur\w*)\b/;

/** The child's own tube put back before it was asked for. */
export const putBack =
  /\b(?:(?:se )?(?:la|lo) (?:meti|metimos|puse|pusimos|regrese|volvi a (?:meter|poner)|volvimos a (?:meter|poner)|volvio a (?:meter|poner))|(?:se )?(?:la|lo|le) (?:metio|puso|pusieron|metieron)(?: (?:la sonda|el tubo|el boton))?,? (?:(?:y )?ya (?:quedo|esta)|otra vez|de nuevo)|^(?:se )?le (?:metio|puso) (?:la sonda|el tubo|el boton)(?= ?$))\b/;
/** Not done, only asked about, or undone. */
export const notPutBack =
  /\b(?:no (?:se|la|lo|le|me|puedo|pude)|intent\w*|trat\w*|quise|quiero|si la|si lo|puedo|debo|tengo que|cuando|antes|hasta|voy a|pero (?:se|no|le|tiene|esta)|o|hace|anos?|meses|cirugia|hospital|cirujan\w*|\d{4}|kit|repuesto|temporal|nuev[oa]|emergencia|mitad|medias)\b/;

/** Devices of other places: this line has no steps for them. */
export const otherDevices =
  /\b(?:(?:sonda|cateter) (?:suprapubic\w*|urinari\w*|vesical)|cecostom\w*|picc|(?:cateter|via) central|tubit?os? (?:del?|de los|en los?|en el) oidos?|colostomia)\b/g;
