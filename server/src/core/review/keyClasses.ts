import type { ChangeClass } from './change';

const HURT = `accept angle back-off balance-groups before-fitting before-you-start caution checks concessions cool cure
  danger do expansion fit fit/interference force frees-when friction from grade groove hand hazards heat hold if-not
  in-order keep-position limits max-speed max-temperature never-clean-with notice optional passes permissible
  permissible-for planes plus prevailing-torque property-class protective-equipment renew sign signal-word temporary
  thread torque trial until void-by wait warning people interference clearance`;

const FITS = `across across-flats accuracy adds adjust after align amount apply assemblies at balance base
  bearing-diameter behind by calculate calibration-due check choose clean comes-with consumables count covers depth
  diameter dimensions direction discard drive drive-size ends excludes expires family fastened-by go-to at-most identify
  inside-diameter inspect install instead-of item kind kit length lines locate locked-by loosen maker-mark mark mass
  material mates-with measure members motion needs number of offset options orient part parts phases place places press
  quantity range readings receive reject remove replace replaces resolution return seals seat section send serial set-at
  sits-on size size-step sizes square starts steps stores superseded-by tighten tool tools torque-type unless using
  values variants when width with bore shaft class witnessmark received returned`;

const SAYS = `about also alt approved-by at-installation because caption certificate checked-by data-sheet date figure
  figures file language look-for name note paper phase prepared-by procedure record revision revision-letters revisions
  rule say severities status step then title to units what skip sides length-unit`;

/**
 * What a changed key can do, by its name, since a key means the same wherever it stands; `definition/key` comes first
 * where it does not. What comes, goes or becomes wider is judged beside this; common practice, no source.
 */
const BY_KEY: ReadonlyMap<string, ChangeClass> = new Map(
  (
    [
      ['hurt', HURT],
      ['fits', FITS],
      ['says', SAYS],
    ] as const
  ).flatMap(([one, names]) => names.split(/\s+/).map((name) => [name, one] as const)),
);

const BY_DEFINITION: Readonly<Record<string, ChangeClass>> = {
  // What a check of the family says is the check itself.
  'family/check/say': 'hurt',
  'procedure/concession/until': 'says',
  'procedure/concession/by': 'says',
  'procedure/concession/at': 'hurt',
  'procedure/concession/rule': 'hurt',
  'procedure/concession/about': 'hurt',
  'procedure/revision/by': 'says',
  'procedure/verb-adjust/until': 'hurt',
  'procedure/verb-apply/to': 'fits',
  'procedure/verb-align/to': 'fits',
  'procedure/verb-press/to': 'fits',
  'stores/consumable/until': 'fits',
};

/** What a change of a key's value can do; undefined for a key that no table knows. */
export function keyClass(def: string, key: string): ChangeClass | undefined {
  // Settings say how things are shown; but for what is reported at all.
  if (def.startsWith('settings')) return key === 'severities' ? 'fits' : 'says';
  return BY_DEFINITION[`${def}/${key}`] ?? BY_KEY.get(key);
}

/** Keys whose list warns of something: what is taken from it is a hazard that nobody is told of any more. */
export const WARNING_KEYS: ReadonlySet<string> = new Set([
  'warning',
  'caution',
  'notice',
  'protective-equipment',
  'hazards',
]);

/** Keys that demand something: without it something is left undone. */
export const DEMANDING_KEYS: ReadonlySet<string> = new Set([
  'before-fitting',
  'never-clean-with',
  'look-for',
  'void-by',
  'sign',
  'if-not',
  'check',
  'hold',
  'in-order',
]);
