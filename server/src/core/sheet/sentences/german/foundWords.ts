/** What a bench finds is written in the document as ids are; the common ones have a word in German. */
const WORDS: Readonly<Record<string, string>> = {
  left: 'links',
  right: 'rechts',
  yes: 'ja',
  no: 'nein',
  none: 'keine',
  old: 'alt',
  new: 'neu',
  open: 'offen',
  closed: 'geschlossen',
  present: 'vorhanden',
  missing: 'fehlt',
  round: 'rund',
  flat: 'flach',
  plain: 'glatt',
  're-used': 'wiederverwendet',
  renewed: 'erneuert',
};

export function foundWord(value: string): string {
  return WORDS[value.toLowerCase()] ?? value;
}
