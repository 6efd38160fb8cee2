/** English nouns of trouble: what "no" or "without" before them denies is only that there was any. */

export const trouble =
  'problems?|probs?|problms?|troubles?|issues?|resist[ae]n[cs]es?|force|forcing|push(?:ing)?|effort|struggl(?:e|es|ing)|pressure|bother|dramas?|fuss|sweat|biggie|fight|fighting|hassles?|grief|stress|aggro|worries|difficult(?:y|ies)|complications?|faff|snags?|hiccups?|hitch(?:es)?|strain|messing|mess|friction|obstruction|wrestling|incidents?|tears|concerns?|reactions?|upset|fussing|whinging|protest|wuck\\w*|wukk\\w*|agro';
