/** Spanish known by its words, and asked for in words. */

/** Words that tell Spanish from the other languages of the line; accents are gone. */
export const tellingWords: ReadonlySet<string> = new Set(
  'nomas na el los las una unos por para con pero porque esta estan este esto eso ese como cuando donde hola gracias ayuda ayudenme tubo sonda boton bebe hijo hija nina nino mi su sus muy mas hace salio sale salir cayo quito saco tiene tengo tenemos tenia hay lo al del ella nosotros siento creo sabe sabemos puede puedo puso pusieron ano anos meses mes semanas semana dias dia horas hora minutos sangre sangra fiebre dolor respira respirar respirando morada morado azul vomito barriga panza estomago entro facil dificil enfermera favor esta estoy estaba quiero necesito hablar doctora tambien todo bien mal aqui ahora ayer anoche hoy manana ni sin pesa libras enero febrero marzo abril junio julio agosto septiembre octubre noviembre diciembre empapo gasa gasas palida palido sudando frio llora llorando despierta inflo dura sangrando vomitando ahorita'.split(
    ' ',
  ),
);

/** A wish for Spanish, in whatever language. */
export const wish =
  /\b(?:in spanish|spanish please|(?:speak|talk|text|write|switch to|prefer|want|change to) (?:to me |me )?(?:in )?spanish|en (?:espanol|castellano)|(?:espanol|castellano) por ?favor|(?:hablo|habla|hablan|prefiero|quiero) (?:solo )?(?:el )?(?:espanol|castellano)|hablan? ingles,? (?:pero |y |mas )?(?:yo no|no yo)|(?:no|nada) (?:hablo|entiendo|se|leo)(?: (?:nada|mucho|muy|bien|de|el|leer))* ingles|(?:en|l) ?espagnol|espagnol s(?:il vous| ?v| ?t)\w*(?: plait)?)\b|^(?:espanol|spanish|castellano|espagnol)[ .!?]*$/;

/** Words around such a wish that say nothing else. */
export const polite: ReadonlySet<string> = new Set(
  'por favor porfavor porfa puede pueden podria me hablar escribir escribirme mensajes hola gracias solo yo se hablo perdon disculpe quiero prefiero ok'.split(
    ' ',
  ),
);

/** Spanish texts are always heard in the other languages too: families mix them. */
export const ownWords: ReadonlySet<string> = new Set();
