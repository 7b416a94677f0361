/** Nouns of the trade whose gender their ending does not tell, and what else the rules of the language leave open. */

export const FEMININE_NOUNS: ReadonlySet<string> = new Set(
  (
    'llave base parte clase fase fuente corriente serie superficie señal sal cal piel mano red pared ' +
    'luz cruz voz raíz nariz interfaz nuez torre nave hélice leche noche clave imagen flor labor lente carne ' +
    'sangre muerte suerte tarde efigie especie mente gente nieve pelvis faz hoz pez foto moto'
  ).split(' '),
);

export const MASCULINE_NOUNS: ReadonlySet<string> = new Set(
  'día mapa chasis análisis énfasis paréntesis oasis clima poliestireno avión camión bastión pez gas'.split(' '),
);

/** Feminine nouns that start with a stressed a. */
export const STRESSED_A: ReadonlySet<string> = new Set(
  'agua área asa ala ánima aspa ancla arma alma acta aula arca hacha águila ansia alza haba'.split(' '),
);

/** The same in the plural: compounds and words that end in an unstressed s. */
export const UNCHANGED_PLURALS: ReadonlySet<string> = new Set(
  'chasis análisis dosis énfasis paréntesis tesis crisis hipótesis síntesis oasis bis lunes martes gratis'.split(' '),
);

/** The stress stays where it is, so an accent comes or goes. */
export const IRREGULAR_PLURALS: ReadonlyMap<string, string> = new Map([
  ['margen', 'márgenes'],
  ['orden', 'órdenes'],
  ['origen', 'orígenes'],
  ['volumen', 'volúmenes'],
  ['resumen', 'resúmenes'],
  ['imagen', 'imágenes'],
  ['virgen', 'vírgenes'],
  ['joven', 'jóvenes'],
  ['examen', 'exámenes'],
  ['carácter', 'caracteres'],
  ['régimen', 'regímenes'],
  ['espécimen', 'especímenes'],
]);
