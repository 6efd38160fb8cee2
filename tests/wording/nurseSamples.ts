/** The messages to nurses with parameters of every kind, as the sheet prints them. */
export * from '#src/protocol/nurseSamples.ts';
export * from '#src/protocol/pageSamples.ts';
