import { english } from './labels/english';
import { german } from './labels/german';
import { spanish } from './labels/spanish';
import type { Hand, SheetLanguage, SignalWord, TurnDirection } from './sheet';

/**
 * Every fixed word that a printed sheet carries, in one table by language. A language is complete or it does not
 * compile. `{name}` in a label is filled in by `fillLabel`.
 */
export type Labels = { readonly [Key in keyof typeof english]: string };

const byLanguage: { readonly [Language in SheetLanguage]: Labels } = { en: english, de: german, es: spanish };

export function labelsFor(language: SheetLanguage): Labels {
  return byLanguage[language];
}

/** Puts values in the places of a label; a place without a value stays visible. */
export function fillLabel(label: string, values: Readonly<Record<string, string | number>>): string {
  return label.replace(/\{([a-z]+)\}/gu, (place, name: string) => String(values[name] ?? place));
}

export function signalWordLabel(labels: Labels, word: SignalWord): string {
  const words: Record<SignalWord, string> = {
    danger: labels.signalDanger,
    warning: labels.signalWarning,
    caution: labels.signalCaution,
    notice: labels.signalNotice,
  };
  return words[word];
}

/** `Turn counter-clockwise (left-hand thread)`: both are always said, because either alone is misread. */
export function turnLabel(labels: Labels, direction: TurnDirection, hand: Hand): string {
  return fillLabel(labels.turn, {
    direction: direction === 'clockwise' ? labels.clockwise : labels.counterClockwise,
    hand: hand === 'left' ? labels.leftHand : labels.rightHand,
  });
}
