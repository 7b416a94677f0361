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

/** What the bench finds, in Spanish where the word is a known one, else as its id reads. */
export function foundWord(value: string): string {
  return FOUND[value] ?? value;
}
