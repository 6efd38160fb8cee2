/** English words around a negation: which attach to what follows, what says nothing by itself, and what each question is about. */
import { wordSet } from '../wordSet.ts';

/** These negate the words after them; any other negation stands for itself. */
export const attached = wordSet(
  'no not nto nt dont doesnt didnt havent hasnt hadnt isnt arent wasnt werent wont cant couldnt wouldnt aint never without nobody neither nor nott',
);
/** A no that is an answer where another statement follows it at once. */
export const bare = wordSet('no');
/** Negations that stand behind their verb: none in English. */
export const afterVerb: ReadonlySet<string> = new Set();

/** Begins another statement: the negation reaches no further. */
export const ends = wordSet(
  'i we he she they you hes shes theyre theyve theyd ive weve id youre im because becuz becaus cause cuz cos coz cus bc since so if when whenever while until till unless who what how why where though although as or except however plus anyway',
);
/** Right after a negation: what is negated is not the answer. */
export const asks = wordSet('what who whom how where why which whats');
/** Right after a bare no: another statement begins, or plain chatter follows. */
export const opens = wordSet(
  'the my our his her hers their your it its that thats this these those there theres is are was were am at in on with from to for only just still all both everything everythings everyone nobody someone somebody another each mum mom dad mother father grandma husband wife but and then not dont doesnt didnt havent hasnt hadnt isnt arent wasnt werent wont cant couldnt wouldnt aint never nothing none no left lost forgot ran gave went threw took used tried had have has been got need needs waiting think know sorry thank thanks thankyou thx ty god lord goodness maam mam madam sir miss love hon hun honey dear darling mate bro bruv luv sis yall nurse doc doctor please pls um uh er erm well lol haha x xx xxx ma bub babe boss senora mami apart tell thst tbh honestly really sadly unfortunately definitely absolutely thankfully luckily ok okay fine good yet calm happy sleeping asleep playing wait stop hope what who how where why which like same mi mah him dem regular as period comma dot im o oo oh po na oga abeg sah',
);

/** Says nothing by itself. */
export const light = wordSet(
  'it me us them her him my our his their your the a an any ny some one 1 ones that this those these there theres thats here now yet still just even really ever actually currently quite exactly honestly ' +
    'have hav has had having get gets got gotten getting do does did done doing is are was were be been being am can could will would should may might must shall going gonna go to of with at in on for from by up out off over and all both both much very too so not no none nothing nothin anything anythin nuthin yes home anymore anymo more at moment minute either else single bloody damn damned frickin freakin fricking fucking effing stupid whole right way chance luck joy dice good able want wanna need lol maam mam sir mate love hon yo n sorry thank thanks god nurse please tonight today again sign such its were hers try tried trying manage managed',
);

/** What a negated word has to be about, a question each. */
export const matter = {
  kit: /^(?:kits?|kitt?|emergency|spares?|backups?|replacements?|temporary|temp|foleys?|catheters?|tubes?|extras?|bags?|box|suppl\w+|trained|training|shown|taught|know|give|gives|gave|given|giving|issued?|sent|send|provided?|receiv\w+|reciev\w+|supplied|find|finding|found|locate|located|own|see|seen|saw|available|avail|bring|brought|pack|packed|carry|carried|take|took|used|handy|nearby|nowhere|never|other|another|new|latex|left|kept|keep|remember|last|used?|ready|anybody|anyone|ordered|arrived|come|came|possess\w*)$/,
  howIn:
    /^(?:go|goes|going|gone|went|fit|fits|fitting|slide|sliding|slid|get|getting|put|putting|budge|budging|pass|passing|past|work|works|working|worked|move|moves|moving|moved|stay|stays|staying|hold|holding|happen|happens|happening|open|opening|insert|inserted|inserting|enter|entered|entering|through|able|possible|manage|managed|success\w*|easy|easily|smooth\w*|push|pushed|force|let|lets|letting|take|takes|taking|took|gree|inside|back|hole|fully|completely|find|finding|advance|advanced|advancing|progress|far|wait|start|begin|hard|tight|difficult|bite)$/,
  ownTube:
    /^(?:find|finding|found|locate|see|tubes?|buttons?|balloons?|old|whole|intact|complete|keep|kept|save|saved|bring|brought|ok|okay|fine|usable|use|used|around|anywhere|nowhere|burst|lost|threw|longer|touching|left|work|works|working|hold|holds|holding|inflat\w+|stay|stays|remember)$/,
  strips:
    /^(?:strips?|stripes?|paper|papers|ph|test|testing|tests|tester|litmus|find|finding|found|locate|see|seen|left|give|gives|gave|given|receiv\w+|reciev\w+|supplied|provided?|sent|send|heard|hear|never|available|own|keep|kept|bring|brought|come|came|remember|used?|those|them|kit|kits|ordered|arrived|trust|possess\w*|stock|carry)$/,
  contents:
    /^(?:come|comes|came|coming|pull|pulls|pulling|pulled|draw|draws|drawing|drew|drawn|suck|sucks|sucking|aspirat\w+|back|fluids?|liquid|milk|formula|drop|drops|stuff|residual|residue|returns?|returned|gastric|stomach|tummy|belly|contents?|enough|bubbles?|juice|show|showing|appear\w*|produc\w*|yield|flow|flowing|see|seeing|find|give|giving|gives|work|works|working|blood|only|air)$/,
  looks:
    /^(?:look|looks|looking|looked|milky|milk|white|whitish|clear|yellow\w*|green\w*|brown\w*|pink\w*|bloody|blood|see|seeing|gastric|stomach|normal|usual|usually|same|like|cloudy|curd\w*|formula|colou?rs?|quite|match\w*|contents?)$/,
  secured:
    /^(?:tape|taped|taping|tapes|stay|stays|staying|stick|sticks|sticking|stuck|sticky|hold|holds|holding|fill|fills|filled|filling|water|snug|tight|tighten\w*|secure|secured|securing|balloon|finish|finished|inflat\w+|ready|sorted|slid\w+|keeps|take|find|attach\w*|fix|fixed|put|work|works|working|complete\w*|ok|okay|all|fully|enough)$/,
  firstFeed:
    /^(?:well|went|great|fine|ok|okay|flow|flows|flowing|tolerat\w+|keep|keeping|kept|down|stay|staying|stayed|smooth\w*|drop|drops|drip|take|took|taking|finish\w*|eat|eating|ate|drink|drinking|like|liked|happy|through|work|works|working|normal|settled?|settling)$/,
  nextDay:
    /^(?:well|great|fine|ok|okay|himself|herself|better|normal|usual|best|bad|improv\w+|happy|settled?|settling|feeding|eating|sleeping|100|brilliant|amazing|perfect)$/,
  arrived:
    /^(?:arriv\w+|reach\w*|left|leave|leaving|start|starting|started|gone|went|driv\w+|mov\w+|inside|seen|checked|car|cars|ride|rides|taxi|cab|lift|bus|transport\w*|vehicle|ambulance|made|make|hospital|there|find|decided|run|started|set|close|near|far|about|begin|begun)$/,
  clinic:
    /^(?:call|called|calling|phone|phoned|phoning|ring|rang|rung|ringing|reach|reached|contact\w*|answer\w*|pick|picks|picked|picking|open|opened|opens|through|hold|heard|hear|spoke|spoken|speak|talk|talked|told|tell|let|inform\w*|book|booked|appointments?|appt|reply|replied|replies|respon\w+|make|made|messaged?|texted|emailed?|clinic|office|number|voicemail|time|completely|work|works|working|idea|will)$/,
  confirm:
    /^(?:weight|weighs|date|dates|tube|kind|type|first|longer|correct|right|true|same|changed?|different|wrong|kg|kilos?|lbs?|pounds?|birthday|g|gj|j|new)$/,
  unwell:
    /^(?:danger\w*|signs?|symptoms?|things?|fever\w*|temp\w*|bleed\w*|blood\w*|bld|pain\w*|hurt\w*|sore|vomit\w*|spew\w*|puk\w*|throw\w*|sick\w*|seiz\w*|fits?|fitting|convuls\w*|blue|pale|grey|gray|limp|floppy|breath\w*|resp\w*|distress\w*|troubl\w*|problems?|probs?|issues?|complaints?|concerns?|worries|worse|chang\w*|cry\w*|leak\w*|tight\w*|swell\w*|swollen|hard|belly|tummy|stomach|abdo\w*|lump\w*|red|redness|rash|drop|dots?|stain|infection|pus|smell|cough\w*|chok\w*|gag\w*|tenderness|discomfort|bruis\w*|hot|shak\w*|x3|3|new|fresh|different|further|resp\w*|redd\w*|bit|dif\w*|seeing|see|sweat\w*|fluid|bile|green|black|brown|yellow|spot|spots|speck\w*|ooz\w*|wheez\w*|harm|damage|drama|bother|bothered|fuss)$/,
  fedLately:
    /^(?:since|last|food|foods|feed|feeds|fed|feeding|eat|eats|eaten|eating|ate|med|meds|medicines?|medication|medications|milk|formula|bottle|bottles|drink|drank|long|few|hours|hour|in|within|given|gave|give|thing|drop|sip|bite|snack|crumb|run|running|pump|recently|lately|dose|doses|tube|by|figs|water|taken|took|take|\d+|near|close|anywhere)$/,
} as const;
