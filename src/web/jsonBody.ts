/** Reads a JSON body; anything that says it is something else is refused before it is read. */
import { json, type RequestHandler } from 'express';
import { Refused } from './refusal.ts';

/** No body at all passes: whether one is needed is for the shape to judge. */
export const onlyJson: RequestHandler = (request, _response, next) => {
  const empty = request.get('content-length') === '0' || request.is('*/*') === null;
  if (!empty && !request.is('application/json')) throw new Refused('not-json');
  next();
};

/** 1,600 characters fit many times over, also when each is escaped. */
export const readJson = json({ limit: '64kb' });

/** Pictures of a practice phone fit as well, up to about 1.4 MB of them. */
export const readLargeJson = json({ limit: '1900kb' });
