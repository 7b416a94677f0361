/** Words that families use for what the bench finds; they are ids, and so have no translation of their own. */
const FOUND: Readonly<Record<string, string>> = {
  left: 'izquierda',
  right: 'derecha',
  yes: 'sí',
  no: 'no',
  present: 'presente',
  absent: 'ausente',
  early: 'antiguo',
  late: 'nuevo',
  're-used': 'usado de nuevo',
  renewed: 'renovado',
};

/** Of a thread, a hand is said otherwise than of a side. */
const HANDS: Readonly<Record<string, string>> = { left: 'a izquierdas', right: 'a derechas' };

/** What the bench finds, in Spanish where the word is a known one, else as its id reads; `of` names what it is found of. */
export function foundWord(value: string, of = ''): string {
  return (/(?<!\p{L})roscas?(?!\p{L})/u.test(of) ? HANDS[value] : undefined) ?? FOUND[value] ?? value;
}
