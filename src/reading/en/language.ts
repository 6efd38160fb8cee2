/** English known by its words, and asked for in words. */

/** Words that tell English from the other languages of the line; accents are gone. */
export const tellingWords: ReadonlySet<string> = new Set(
  'the is isnt are was were she shes he hes her him his it its and you your we our they what when how why have has had havent hasnt with from this that there not dont doesnt didnt cant my im ive out came fell tube button baby been just about ago help please yes yeah nurse need should do does did all for feeding daughter son think know blood bleeding breathing fever pain weighs months weeks hours in back went as easy hard smooth got get done good fine okay'.split(
    ' ',
  ),
);

/** A wish for English, in whatever language. */
export const wish =
  /\b(?:in english|english please|(?:speak|talk|text|write|switch to|prefer|want|change to) (?:to me |me )?(?:in )?english|(?:dont|do not|cant|cannot) (?:speak|understand|read) (?:any )?(?:spanish|french)|en ingles|ingles por favor|(?<!\bno )(?:hablo|prefiero|quiero) ingles|en anglais|anglais s(?:il vous| ?v| ?t)\w*(?: plait)?|(?:parle|prefere) (?:l ?)?anglais)\b|^(?:english|ingles|anglais)[ .!?]*$/;

/** Words around such a wish that say nothing else. */
export const polite: ReadonlySet<string> = new Set(
  'please can could would you u i we me my is it this have get the to use switch talk speak text write ok okay hi hello sorry only thanks thank do just'.split(
    ' ',
  ),
);

/** Everyday words that mean no danger and no wish in the other languages: a text of nothing else needs no hearing in them. */
export const ownWords: ReadonlySet<string> = new Set(
  'the no i it yes a in is and not out its but ago she shes to of g was fever her at came ok he blood have kg cant balloon one like think hard hes so dont last min back bleeding now up got wont sure has breathing do right you what just blue kit nothing my maybe belly had all or that gj know fine green when hour sorry easy good how an thank little we his half here about fell again months weeks yeah nope idk looks with milk go breathe can none lb this push im still probably get water really if stomach stop went stuff bit are around lot before leaking j ph yep should be long than done tape for strips pounds thats y hole inside tell first clear look feed hours call week time some ml cloudy white yellow only see tight since year pm does never minutes between correct same they hold which n snug kind years very wake screaming temp yesterday idea lol nurse weight wrong popped formula yet him keeps much almost stopped having color seizure from throwing over period please help too button two feeding normal mean three am midnight found soft didnt seven oz need strip march wait there theres took air old taped down any breath trouble bad limp rock tummy those new crying says remember pulled goes january would few woke asleep bag kilos five point tiny thanks pink everything mam changed other whole part way guess coming then kinda through bright put floppy super going whats meds medicine more could peg um night gave less okay change say problem without force them lbs six god th surgery shown except off where far broken piece leaks why end threw away find floor curdled syringe drop tried turning port tan grass brown doesnt filled loose flush fast struggling short lips shaking open swollen severe been tighter next fed med dinner gtube gastrostomy low hello used cm ng nose babysitter couple ten saw sometime awake hurry while easily pushing work let check eight small christmas somewhere month baby may february hospital omg heart due step repeat latex trained showed bled'.split(
    ' ',
  ),
);
