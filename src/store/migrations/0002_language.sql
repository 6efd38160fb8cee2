-- The language a phone asked for in words, or, where nobody is enrolled, the one it was first clearly written in.
ALTER TABLE phone ADD COLUMN language text;
