import type { Prose, TorqueSetting, TorqueValue } from '../../sheet';
import { join, quantity, sentences, strong } from '../grammar';
import type { SentenceFacts, VerbWriters } from '../language';
import { helpedBy, holdSentence, parts, turnSentence } from './words';

/** Verbs that turn a fastener. */
export const fastening: Pick<VerbWriters, 'loosen' | 'tighten' | 'seat'> = {
  loosen: (one, facts) =>
    sentences(
      join('Afloje ', parts(one.loosen, facts), helpedBy(one, facts), '.'),
      turnSentence(facts),
      holdSentence(facts),
    ),
  tighten: (one, facts) =>
    sentences(
      join('Apriete ', parts(one.tighten, facts, one.count?.value), torqueWords(facts), '.'),
      facts.torque?.kind === 'byOutcome'
        ? join('Marque la casilla que corresponda y use sus valores.')
        : turnSentence(facts),
      holdSentence(facts),
    ),
  seat: (one, facts) =>
    join('Asiente ', parts(one.seat, facts), ' en ', ownGroove(one.seat?.length), helpedBy(one, facts), '.'),
};

function ownGroove(count: number | undefined): string {
  return count === undefined || count < 2 ? 'su ranura' : 'sus ranuras';
}

function torqueWords(facts: SentenceFacts): Prose {
  const order = facts.inOrder.length === 0 ? undefined : `en el orden ${facts.inOrder.join(', ')}`;
  const setting = facts.torque === undefined ? [] : settingWords(facts.torque);
  return join(setting, order && (setting.length > 0 ? `, ${order}` : ` ${order}`));
}

function settingWords(setting: TorqueSetting): Prose {
  if (setting.kind === 'blank')
    return join(' a un par de ', quantity('____________'), ' (no indicado: pregunte antes de apretar)');
  if (setting.kind === 'byOutcome') return [];
  return setting.value.passes.length === 0
    ? join(' a un par de ', finalWords(setting.value))
    : passWords(setting.value);
}

function passWords(value: TorqueValue): Prose {
  const before = value.passes.flatMap((pass) => [strong(pass.primary), second(pass.secondary), ', después ']);
  return join(` en ${value.passes.length + 1} pasadas: `, ...before, finalWords(value));
}

function finalWords(value: TorqueValue): Prose {
  const turn = value.angle === undefined ? undefined : join(', después gire otros ', strong(value.angle));
  return join(strong(value.primary), second(value.secondary), turn);
}

function second(secondary: string | undefined): string | undefined {
  return secondary === undefined ? undefined : ` (${secondary})`;
}
