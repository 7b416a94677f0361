import type { Gender } from './nouns';

/** What is known of the last member of a compound. */
export interface KnownNoun {
  readonly word: string;
  readonly gender: Gender;
  readonly plural: string;
}

/** Nouns of the trade by gender and by what the plural adds; `=` adds nothing. */
const REGULAR: readonly (readonly [gender: Gender, adds: '=' | 'n' | 'en' | 'e' | 's' | 'er' | 'se', words: string])[] =
  [
    ['f', 'n', 'Mutter Schraube Welle Hülse Buchse Büchse Scheibe Platte Klappe Stange Feder Nadel Düse Zange Bürste'],
    [
      'f',
      'n',
      'Schelle Klammer Lasche Öse Gabel Kugel Rolle Kappe Dose Blende Schaufel Stelle Seite Fläche Kante Lage',
    ],
    [
      'f',
      'n',
      'Lehre Schulter Fase Nase Kerbe Rille Ratsche Knarre Pumpe Spitze Stufe Länge Breite Höhe Tiefe Dicke Weite',
    ],
    [
      'f',
      'n',
      'Maschine Anlage Quelle Pistole Kammer Wanne Reibahle Feile Klinge Walze Spindel Schlaufe Farbe Paste Lampe',
    ],
    [
      'f',
      'n',
      'Presse Gruppe Einlage Auflage Unterlage Nabe Strebe Stütze Manschette Spule Brücke Flanke Patrone Kassette',
    ],
    [
      'f',
      'n',
      'Leiste Schneide Flasche Achse Ader Kurve Marke Probe Tabelle Zunge Haube Lücke Spange Schale Sonde Kette',
    ],
    ['f', 'en', 'Nut Uhr Form Bahn Last Unwucht Zeit Zahl'],
    [
      'm',
      'e',
      'Ring Stift Splint Dorn Sechskant Vierkant Stein Griff Flansch Film Weg Punkt Keil Arm Bereich Bericht Rest',
    ],
    [
      'm',
      'e',
      'Schlitz Grad Kreis Strich Betrieb Ausgleich Vergleich Hitzeschild Lieferschein Schuh Filz Lack Käfig Kern Halt',
    ],
    ['m', 'e', 'Schnitt Spalt Sitz'],
    ['m', '=', 'Deckel Halter Hebel Kegel Schlüssel Zapfen Bolzen Stopfen Stutzen Bügel Kolben Läufer Ständer Stempel'],
    [
      'm',
      '=',
      'Nippel Adapter Filter Zylinder Steller Kleber Reiniger Entfetter Durchmesser Balken Rahmen Riemen Kragen',
    ],
    ['m', '=', 'Verdichter Lader Lüfter Kühler Becher Trichter Behälter Taster Prüfer Schalter Rohling Dämpfer Geber'],
    [
      'm',
      '=',
      'Stecker Auszieher Abzieher Spreizer Haken Tropfen Streifen Wagen Winkel Spiegel Zeiger Fühler Schraubendreher',
    ],
    ['m', '=', 'Aufkleber Lappen Schaber Pinsel Hersteller Wischer'],
    ['m', 's', 'Clip Chip Bit'],
    [
      'n',
      'e',
      'Blech Ventil Rohr Gelenk Maß Spiel Gestell Öl Fett Gerät Stück Teil Zeug Paket Seil Paar Protokoll Zertifikat',
    ],
    ['n', 'e', 'Moment Gewicht Element Konzentrat Instrument Profil Signal Lineal Metall Silikon Papier'],
    ['n', '=', 'Gehäuse Lager Gewinde Gestänge Mittel Fenster Thermometer Manometer Mikrometer Multimeter Getriebe'],
    ['n', '=', 'Zeichen Pulver Wasser Kabel Gebläse Gitter Becken'],
    ['n', 'n', 'Auge Ende'],
    ['n', 'er', 'Bild Schild'],
    ['n', 's', 'Kit Spray'],
    ['n', 'se', 'Zeugnis Verzeichnis Ergebnis'],
  ];

/** The same for plurals that no ending gives. */
const IRREGULAR: readonly (readonly [gender: Gender, singularAndPlural: string])[] = [
  ['f', 'Nuss/Nüsse Hand/Hände Werkstatt/Werkstätten Kraft/Kräfte Naht/Nähte Wand/Wände Bank/Bänke'],
  ['m', 'Einsatz/Einsätze Aufsatz/Aufsätze Satz/Sätze Hammer/Hämmer Block/Blöcke Kopf/Köpfe Fuß/Füße Bund/Bünde'],
  ['m', 'Anschlag/Anschläge Schlag/Schläge Druck/Drücke Ofen/Öfen Draht/Drähte Schlauch/Schläuche Kanal/Kanäle'],
  ['m', 'Kran/Kräne Anschluss/Anschlüsse Verschluss/Verschlüsse Stock/Stöcke Bock/Böcke Klotz/Klötze Schacht/Schächte'],
  [
    'm',
    'Einlass/Einlässe Auslass/Auslässe Lauf/Läufe Schaft/Schäfte Stoß/Stöße Konus/Konen Radius/Radien Stand/Stände',
  ],
  ['m', 'Betrag/Beträge Abstand/Abstände Rand/Ränder Stab/Stäbe Zug/Züge Span/Späne Kasten/Kästen'],
  ['n', 'Rad/Räder Band/Bänder Tuch/Tücher Bad/Bäder Loch/Löcher Blatt/Blätter Prisma/Prismen Schloss/Schlösser'],
];

function regularNouns(): KnownNoun[] {
  return REGULAR.flatMap(([gender, adds, words]) =>
    words.split(' ').map((word) => ({ word, gender, plural: adds === '=' ? word : `${word}${adds}` })),
  );
}

function irregularNouns(): KnownNoun[] {
  return IRREGULAR.flatMap(([gender, pairs]) =>
    pairs.split(' ').map((pair) => {
      const [word = '', plural = word] = pair.split('/');
      return { word, gender, plural };
    }),
  );
}

/** The longest come first, so that `Ende` is not taken for the end of `Blende`. */
const NOUNS: readonly KnownNoun[] = [...regularNouns(), ...irregularNouns()].sort(
  (a, b) => b.word.length - a.word.length,
);

/** Endings that tell gender and plural of a noun that is in no list. */
const BY_ENDING: readonly (readonly [ending: RegExp, gender: Gender, adds: string])[] = [
  [/(?:ung|heit|keit|schaft|ion|tät|ei)$/u, 'f', 'en'],
  [/or$/u, 'm', 'en'],
  [/(?:er|el)$/u, 'm', ''],
  [/ling$/u, 'm', 'e'],
  [/(?:chen|lein)$/u, 'n', ''],
  [/e$/u, 'f', 'n'],
];

/** Persons that take -n in every case but the first: `der Kunde, den Kunden`. */
const WEAK = /(?:kunde|lieferant)$/iu;

export function isWeak(word: string): boolean {
  return WEAK.test(word);
}

/** Whether a word is the plural of a known noun and cannot be a singular. */
export function isKnownPlural(word: string): boolean {
  const member = word.slice(word.lastIndexOf('-') + 1);
  const isOne = NOUNS.some((noun) => noun.gender === 'f' && isLastMember(noun.word, member));
  return !isOne && NOUNS.some((noun) => noun.plural !== noun.word && isLastMember(noun.plural, member));
}

function isLastMember(noun: string, word: string): boolean {
  return word === noun || word.endsWith(noun.toLowerCase());
}

/** Gender and plural of a noun by its last member; undefined for a word that looks like none. */
export function knownNoun(word: string): { readonly gender: Gender; readonly plural: string } | undefined {
  const member = word.slice(word.lastIndexOf('-') + 1);
  if (!/^\p{Lu}\p{L}+$/u.test(member)) return undefined;
  if (/kunde$/iu.test(member)) return { gender: 'm', plural: `${word}n` };
  if (/lieferant$/iu.test(member)) return { gender: 'm', plural: `${word}en` };
  const known = NOUNS.find((noun) => isLastMember(noun.word, member));
  if (known !== undefined) return { gender: known.gender, plural: inCompound(word, known) };
  const [, gender, adds] = BY_ENDING.find(([ending]) => ending.test(member)) ?? [];
  return gender === undefined ? undefined : { gender, plural: `${word}${adds}` };
}

function inCompound(word: string, { word: last, plural }: KnownNoun): string {
  const before = word.slice(0, word.length - last.length);
  return `${before}${word.endsWith(last) ? plural : plural.toLowerCase()}`;
}
