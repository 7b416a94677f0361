import type { YAMLError } from 'yaml';

/** Says what broke the text in words for people who do not know YAML. */
export function breakageMessage(error: YAMLError, text: string): string {
  return (
    MESSAGES[error.code]?.(text, error) ?? 'This text cannot be read; check quotes, colons and indentation near here'
  );
}

type Message = (text: string, error: YAMLError) => string;

const QUOTE = 'put the whole text in quotes';

const MESSAGES: Readonly<Partial<Record<YAMLError['code'], Message>>> = {
  TAB_AS_INDENT: () => 'A tab indents this line; indent with spaces',
  BAD_INDENT: () => 'This line is not indented like its neighbours; line it up with them',
  BAD_SCALAR_START: (text, error) => `A text cannot start with "${text.charAt(error.pos[0])}"; ${QUOTE}`,
  BLOCK_AS_IMPLICIT_KEY: () => `A second ": " on the line makes this unreadable; ${QUOTE}`,
  BLOCK_IN_FLOW: () => 'A list or map with its own lines cannot stand inside brackets',
  MISSING_CHAR: (_, error) => missingMessage(error.message),
  UNEXPECTED_TOKEN: (text, error) => unexpectedMessage(text, error),
  MULTILINE_IMPLICIT_KEY: () => 'This key runs over several lines; a quote or a colon is missing before it',
  BAD_DQ_ESCAPE: () => 'A backslash in double quotes means something else; use single quotes or write two backslashes',
  KEY_OVER_1024_CHARS: () => 'This key is too long; a colon is missing or stands too far away',
};

function missingMessage(message: string): string {
  if (message.includes('closing "quote') || message.includes('quote')) return 'A closing quote is missing';
  if (message.includes('}')) return 'The closing } is missing';
  if (message.includes(']')) return 'The closing ] is missing';
  if (message.includes('","') || message.includes(',')) return 'A comma is missing between two entries';
  return `A colon or a space is missing here; where it is a text, ${QUOTE}`;
}

function unexpectedMessage(text: string, error: YAMLError): string {
  const at = text.charAt(error.pos[0]);
  if (at === '}' || at === ']') return `This ${at} closes nothing`;
  return `This cannot stand here; where it is part of a text, ${QUOTE}`;
}
