/** Spanish yes, no, and the many ways of being unsure. Tried in the order: neutral, unsure, no, yes. */

/** Sounds like yes or no and is neither; "si" without its accent is also "if". */
export const neutral =
  /\bno paso nada\b(?! de )|\bsin (?:abrir|usar|estrenar|empezar)\b|\bno se (?:ni )?(?:que|cual) (?:es|sea|significa|quiere decir)(?: (?:eso|esto|lo|de|la|el|un|una|[a-z]+)){0,3}|\bsin (?:chistar|decir (?:nada|ni pio)|llorar|llanto|pelear|protestar|renegar|quejar\w*|queja\w*|hacer (?:caras?|gestos?|berrinches?)|batallar|esfuerzo|apuro|susto|tanto show)\b|\b(?:nada|no) mas\b(?! (?:de )?(?:aire|burbujas?))|\bsi (?:(?:solo|nada mas|se|le|la|lo|les|los|las|me|te|no) )*(?:[a-z]{3,}(?:iera|iese)n?|[a-z]{3,}(?<!\b(?:prep|comp|sep|decl|acl))aran?)\b|\b(?:cobr\w+|pag\w+|pasa|pasaria|pasara|pregunt\w+|saber|sabe|ver|dig[ao]me|dime|duda|importa|afecta|molesta|incluso|mejor|peor|normal|da igual|malo|bueno|grave|peligroso|mal) si (?=[a-z])|\bni (?:siquiera )?(?:se )?(?:quejo|desperto|lloro|inmuto|movio|chisto|chista|pestaneo|parpadeo|respingo|protesto|renego|peleo|sintio|noto|dio cuenta|entero|cuenta se dio|la sintio|lo sintio)\b|\bno (?:le |lo |la |te |les )?(?:entiendo|entendi|entendemos|comprendo)(?: (?:nada|ni (?:jota|papa|madre|una palabra)))?\b|\b(?:calm\w*|tranquiliz\w*|consuel\w*|llor\w*|quej\w*|duele|molesta|pasa|nada mas|nomas) si (?=(?:l[oae]s?|se|me|no|el|ella|yo|esta|uno) )|\b(?:eso|esto|mi respuesta) (?:esta|estuvo|estaba) mal\b|\b(?:sin|no hay|no hubo|ningun|ninguna|ni un|ni una|cero|0) (?:\w+ )?(?:problemas?|problemitas?|lios?|broncas?|pedos?|rollos?|dramas?|molestias?|contratiempos?|complicacion(?:es)?|inconvenientes?|trabas?|novedad(?:es)?|dificultad(?:es)?|detalles?)(?: (?:ninguno|ninguna|alguno|alguna))?\b|\bno (?:hay|se|te) (?:problema|preocupe|preocupes|apure)\b|\bay,? no\b(?! (?:tengo|tenemos|hay|lo|la|las|los)\b)|\b(?:y )?si no\b(?! (?:lo|la|los|las) teng)|\b(?:por|y|a ver|que) si (?:acaso|no|le|quiere)\b|\bsi (?:quiere|quieres|gusta|gustan|acaso|es que|fuera|hubiera|tuviera|necesit\w+|hace falta|llega a)\b|\bno (?:me )?cuelg\w+\b|\bno solo\b(?! (?:esta|llora|se queja|quiere))|\bsin (?:querer|embargo)\b|\bcomo si nada\b/g;

/** Beside an answer, and none: a wish not to, a thing that will not open. */
export const aside =
  /\b(?:no (?:quiero|quisiera|queria|queremos)(?: que (?:se )?(?:le |me |la |lo )?[a-z]+(?: nada| mal| algo)?)?|no (?:vaya a|me atrevo|me animo)(?! a (?:infl|llen|peg|asegur|fij|ponerle (?:agua|la cinta)))|(?:jeringa|jeringuilla|paquete|tapa|tapita|tapon|extension|conector|pinza|empaque|lubricante|guantes?)(?: \w+){0,2} (?:no|tampoco) (?:le |la |lo |se )*(?:entra|cabe|abre|queda|encaja|embona|coincide|ajusta|conecta|sirve|es|va|agarra)|no (?:puedo|logro|consigo) abrir)\b|\bno (?:aguanto|puedo)(?: mas| con esto| dejar de| parar de| creer\w*| calmarme)(?: \w+)?|\bno (?:hay|tengo|esta)(?: (?:a|con))? (?:nadie|quien)(?: (?:mas|aqui|conmigo|que (?:me )?ayude|me ayude|con quien))*|\bno me (?:deje|dejen|abandone|abandonen)\w*(?: sol[oa])?/g;

export const unsure =
  /\b(?:no (?:estoy|estamos|esty|etoy) (?:muy |tan |bien |100 ?% ?|completamente |totalmente |del todo |cien por ciento )*(?:segur\w*|convencid\w*|ciert\w*)|no(?: tan| muy)? segur[oa]s?|no \w{4,9}(?: muy| tan)? segur[oa]s?|no (?:lo |la )?se(?= ?$| ?[.,;!?|]| (?:si|que|cuando|cuanto|cuantos|cual|como|bien|exactamente|exacto|donde|la verdad|porque|nada|pero|y|mucho|con|aun|todavia|ahora|decir\w*|sinceramente|segur\w*|perdon|ayuda|por|de|creo|tal|a|soy|mi|yo|ella|su|quien)\b)|no (?:lo )?(?:sabe|sabemos|saben|sabria)\b(?: \w+)?|no (?:me |nos )?(?:acuerdo|acordamos|recuerdo|recordamos|fije|fijamos)|ni idea|(?:ni|no) tengo (?:ni )?(?:idea|la menor idea)|quien sabe|quizas?|tal ?vez|a lo mejor|alomejor|capaz|creo|creemos|cree|creeria|pienso|supongo|supuestamente|se supone|(?:me )?imagino|(?:eso |asi )?parece(?! (?:bien|estar bien|tranquil\w*|normal|contento|contenta|comod[oa]))|al parecer|pareciera|puede (?:ser|que)|podria|pudiera ser|posible(?:mente)?|probable(?:mente)?|seguramente|mas o menos|masomenos|mas omenos|maso|espero|ojala|dudo|tengo (?:mis )?dudas|no (?:puedo|logro|alcanzo a|se) (?:ver|distinguir|saber|decir|decirle)(?: bien)?|no se ve bien|(?:es )?dificil (?:de )?(?:decir|saber|ver)|depende|si y no|ni si ni no|deberia|segun yo|hasta donde (?:yo )?se|que yo sepa|no exactamente|no precisamente|yo no (?:estoy|lo veo|la veo|lo vi|la vi)(?: (?:ahi|alla|con (?:ella|el|la|los)))?(?= ?$| ?[.,;!])|como que|medio medio|casi seguro|si o no|regular|a medias|puede|seria)\b/g;

export const no =
  /\b(?:no (?:es|esta|son|estan) (?:muy |tan |todo )?(?:correct[oa]s?|ciert[oa]|exact[oa]s?|verdad)|(?:claro|desde luego|por supuesto|obvio|definitivamente|absolutamente) que no|(?:(?:todavia|aun|ahora|aqui|para|de eso) )?no|noo|nop|nope|nah|na|naa|nel|neles|nanay|nanai|naranjas|que va(?= ?$| ?[.,;!])|nones|ño|negativo|nada|nadie|ningun|ninguno|ninguna|ningunas|ningunos|nunca|jamas|tampoco|ni|n|sin|incorrecto|incorrecta|falso|mal|equivocad[oa]|not|dont|none)\b/g;

export const yes =
  /\b(?:si|sii|sip|aja|sep|sipi|sipis|sipirili|sisas|simon|zi|cy|claro(?! que no)|claro que si|correcto|correcta|afirmativo|exacto|exactamente|asi es|efectivamente|por supuesto(?! que no)|desde luego(?! que no)|obvio(?! que no)|definitivamente(?! que no)|seguro que si|yes|yeah|yep|yea|yess|eso es(?= ?$| ?[.,;!]| (?:asi|todo|correcto)\b))\b/g;

/** No as an answer of its own; "no se ve" and "no hay" say no to something else. */
export const plainNo =
  /^(?:(?:pues|no|ahora|por ahora|gracias a dios),? )?ya no(?= ?$| ?[.,;!])|\b(?:(?:claro|desde luego|por supuesto|obvio) que no|negativo|nada de (?:eso|nada)|que va(?= ?$| ?[.,;!])|ninguna? (?:sintoma|senal|signo|problema|molestia|cosa)s?(?: (?:rar[oa]|de (?:eso|es[oa]s|esto|est[oa]s|peligro|alarma|los|las)\b.*))?|ningun[oa]s?(?: de (?:eso|esos|esas|esto|ellos|ellas|los|las)\b.*)?|nop|nope|nah|na|nel|neles|nanay|nanai|nones|nada|tampoco|noo|n)\b|^(?:(?:pues|pos|pss?|pus|bueno|ay|uy|ah|ok|hola|mire|fijese(?: que)?|la verdad|gracias a dios|doctora?|senora?|senorita|miss|creame|hasta (?:ahora|ahorita)|por (?:ahora|el momento)|de momento|ahora),? )*no\b(?! (?:se|me|le|lo|la|los|las|esta|estan|tiene|tengo|trae|traigo|hay|puedo|puede|podemos|pude|pudo|pudimos|quiero|quiere|queremos|quisiera|queria|aguanto|aguanta|encuentro|encontramos|logro|logramos|consigo|alcanzo|hallo|soporto|debo|debi|sabia|pense|vaya|vayan|conozco|sirve|funciona|sale|cabe|encaja|da|alcanza|ha|es|estoy|deja|para|responde|reacciona|despierta|respira|parece|entiendo|creo|anda|ve|veo|come|mueve|abre|llora|estan|esta)\b)|[.,;!?] ?no\b(?= ?$| ?[.,;!])/g;

/** A question of theirs, not an answer. */
export const question =
  /^(?:(?:ay|oiga|perdon|y|pero) )*como que (?:quien|que|cual|cuando|donde|cuanto|tiras?|kit)\b|^(?:(?:ok|oiga|disculpe|perdon|hola|bueno|ay|oye) )*(?:y|pero|o|entonces) si (?:(?:no|me|se|le|la|lo|los|las|es|son|fuera|hago|pongo|meto|empujo|jalo|espero|mejor|solo)\b|[a-z]{3,}(?:iera|iese|ara)n?\b)[^.!;]*$|^(?:(?:ok|oiga|disculpe|perdon|hola|bueno|ay|oye) )*(?:y|pero|o|entonces) si [^.!;]*\?|^(?!(?:si|no|ya|listo|lista|hecho|a lo mejor|creo|quizas?|tal vez|capaz|puede|supongo|sera|pienso|gj?|j|una? gj?)\b)(?:[^ .!;,\d]* ){2}[^.!;,\d]*\?+$|^(?:(?:ok|y|pero|hola|perdon|disculpe|oiga|bueno|entonces|espere|ay) )*(?:que (?:hago|hacemos|es|significa|debo|debemos|pasa|quiere|tengo|puedo|sigue|tubo|sonda|hace|mas|tan|tipo|paso)|cual(?:es)? (?:es|son|de|sonda|tubo|datos|informacion|tiras?|kit)|como (?:le|lo|la|se|hago|puedo|debo|es|esta|puedo|saco|meto|pongo|mido)|donde (?:esta|lo|la|pongo|va|compro|llevo)|cuant[oa]s? (?:tiempo|le|tengo|debo|mas|agua|tarda|espero|falta|ml)|quien (?:es|me|va)|por que|porque (?:no|se|le|me)(?=.*\?)|para que)\b|^(?:(?:ok|y|pero|hola|perdon|disculpe|oiga|bueno|entonces|si) )*(?:debo|debemos|deberia|puedo|podemos|se puede|tengo que|tenemos que|hay que|es (?:normal|malo|grave|necesario|peligroso)|le (?:doy|pongo|meto|hago|puedo|empujo|jalo|saco|echo)|la (?:meto|llevo|puedo|saco)|lo (?:meto|llevo|pongo|puedo|saco)|voy|vamos|me voy|empujo|espero|ustedes|usted|esta bien si|esta mal si|sera)\b[^.!]*\?|\b(?:de )?(?:que|cual) color (?:es el que )?(?:debe|deberia|tiene que|tendria que|se supone|es lo)\b|\b(?:sirven?|funcionan?|se pueden? usar|puedo usar\w*)\b[^.!]*\?|^[^.!?;]{1,40} o [^.!?;,]{1,40}, ?(?:y )?(?:cual|que|como)\b[^.!?;]{0,60}\?+$/;

/** Means yes only when it is a whole statement of its own. */
export const yesStatement =
  /^(?:es verdad|positivo|verdad|es cierto|cierto|asi mismo|eso mismo|(?:si )?(?:lo|la|los|las) (?:tengo|tenemos|tiene)(?: todo| todos| todas)?|(?:tengo|tenemos)|(?:si )?(?:hay|esta|estan)|de acuerdo|tal cual|sin duda|simon|ok si)$/;

/** Words before or after a statement that change nothing. */
export const filler =
  /\b(?:gracias a (?:dios|la virgen|diosito)|ok|okay|oki|pues|bueno|este|eh+|mm+|ah|hola|buenas|noches|buenos dias|por favor|muchas gracias|muchisimas gracias|gracias|ay|uy|uf+|ufa?|ah|oh|ey|wepa|orale|joya|heavy|chuta|bendito|alabado|por fin|al fin|menos mal|bendito sea|se[nñ]o|senora|senor|miss|mijit[oa]|mijo|mi amor|mi cielo|mi reina|mi vida|mi corazon|corazon|linda|vecina|jefa|dona|compa|amiga|amigo|comadre|compadre|parce|mae|maje|gurisa|nana(?<!\b(?:tiene|con|una) nana)|che|vos|pana|po|wey|guey|dios (?:se )?l[aoe]s? (?:lo )?(?:pague|bendiga|guarde|cuide)|mi (?<!\b(?:tiene|trae|con|de|a|guarda|llevo|dejo|y) mi )(?:doctora?|doc|licenciada|jefa)|dios mio|dios|gracias a dios|ya|ahora|aqui|aca|en casa|en la casa|conmigo|con nosotros|senorita|enfermera|enfermero|doctora|doctor|disculpe|perdon|mire|oiga|la verdad|jaja|amen|tambien|finalmente|por fin|mija|creame)\b/g;

/** Whatever stands before the last of these was taken back. */
export const correction =
  /\b(?:no,? esper(?:en?|a(?:te|me)?)|(?<!\bde )esper(?:en?|a(?:te|me)?)(?= (?:no|es|son|era|eran|si|\d|mejor|me|la|el|ya no)\b|[ .,!]*$|,)|perdon|perdone|disculpe|(?<!\b(?:yo|le|les|te|como|lo|que) )digo(?! (?:que|yo)\b)|quise decir|quiero decir|queria decir|(?<!\blo )mas bien|mejor dicho|corrijo|correccion|me equivoque|ups|error mio|rectifico|en realidad|olvid[ea] eso|wait|sorry)\b/g;

/** What only somebody says who corrects an answer already given. */
export const meant = /\b(?:quise decir|queria decir|mejor dicho|correccion|corrijo|me equivoque)\b/;

/** A no as it stands beside words of correction: "no, espere". */
export const bareNo = 'no|nop';
/** What a value is set against: "7 kilos, no 17", "gj, no g". */
export const contrast =
  /(?<=\b(?:\d[\d.]*(?::\d\d)?(?: ?[a-z]{1,10})?|g ?-?j|g|j),? )(?:y )?(?:no|en vez de|en lugar de) (?:a las? |las? |una? |el )?(?:\d[\d.]*(?::\d\d)?|g ?-?j|g|j)\b|^(?:no,? )?no (?:son |es |era |eran |pesa )?(?:una? )?(?:\d[\d.]*|g ?-?j|g|j)\b(?=.*\b(?:\d|g|gj|j))/g;

/** Said alone these take nothing back. */
export const softCorrection = /^(?:perdone?|disculpe|en realidad|sorry|mas bien)$/;

/** Short words that are no slip of "nunca", "creo" and their kin. */
export const doubtWords: readonly string[] = [
  'nunca',
  'nada',
  'ninguno',
  'ninguna',
  'creo',
  'quiza',
  'quizas',
  'supongo',
  'dudo',
  'nadie',
  'todavia',
  'tampoco',
  'segura',
  'seguro',
];

/** Real words one letter away from them. */
export const noSlips: ReadonlySet<string> = new Set(
  'nana nuca nado nata nace nave lado dado hada nena cada para casa cosa cero crea cree creer crece creo quita quito duda dura duro dedo puso seguros seguras segun seguir todavia ninguna nadar nadas anda toda todo nadien ada ningun asegura asegure'.split(
    ' ',
  ),
);

/** What leads to a verdict: "asi que si". */
export const conclusion = /(?<=\w,? )\b(?:asi que|entonces|o sea que),? (?=(?:si|no)\b)/g;
/** A word of the question said again before it is answered: "el kit? no". */
export const echo =
  /^(?:(?:el|la|los|las|un|una|su|mi|sus) )*(?:kit|estuche|tiras?|tubo|sonda|globo|balon|boton|contenido|dolor|sangre|fiebre|clinica|peso)\?+$/;
/** A question that only asks what was meant, with or without its mark. */
export const asksMeaning = /^(?:(?:ok|espere|perdon|oh) )*(?:que|como) (?:quiere|quieres) decir\b/;
/** Asked at the end of a statement. */
export const asksAtEnd = /,? ?\bes (?:eso|esto) (?:normal|malo|correcto|seguro)[ ?]*$/;
