/** English statements that say something wherever its words stand in them, where nothing is denied, to come, tried or hedged. */

/** Not so, not yet, or only asked. */
const notSo =
  'no|not|none|\\d+ ?(?:mls?|oz|cc)? (?:of|out of|from) (?:the |his |her )?\\d+|never|nobody|nothing|neither|nor|without|(?:do|does|did|have|has|had|is|are|was|were|wo|ca|could|would|should|ai)nt|cannot|isnt|dont|hardly|barely|yet|will|ill|well be|gonna|going to|fixing to|fixin to|finna|about to|bout to|trying|tried|try|attempting|supposed|suppose to|meant to|should|if|unless|until|til|till|when|once|before|almost|nearly|half|part|partly|halfway|some of|wish|hope|hoping|want|wants|wanted|need|needs|must|have to|has to|gotta|can i|can we|can he|can she|how|what|why|where|which|who|whos|do i|do we|does|did|is it|are we|tomorrow|later|soon|stopped|forgot|keeps?|but|except|though|although|only|bit|little|kind of|kinda|sort of|sorta|slightly|somewhat|than usual|seems?|seemed|rather|too|like death|awful|terrible|bad|badly|poorly|worse';

/** The start of a pattern for such a statement; the words to be said, in brackets, end it. */
export const plainly = `^(?!.*\\b(?:${notSo})\\b).*\\b`;

/** One pattern of two: a whole statement, or words that say it wherever they stand. */
export function eitherOf(whole: RegExp, said: string): RegExp {
  return new RegExp(`${whole.source}|${said}`);
}
