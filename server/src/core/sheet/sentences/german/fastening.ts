import type { Prose, TorqueSetting, TorqueValue } from '../../sheet';
import { join, quantity, sentences, strong } from '../grammar';
import type { SentenceFacts, VerbWriters } from '../language';
import { act, helpedBy, holdSentence, parts, sentence, turnSentence } from './words';

/** Verbs that turn a fastener. */
export const fastening: Pick<VerbWriters, 'loosen' | 'tighten' | 'seat'> = {
  loosen: (one, facts) =>
    sentences(act(parts(one.loosen, facts), helpedBy(one, facts), ' lösen'), turnSentence(facts), holdSentence(facts)),
  tighten: (one, facts) =>
    sentences(
      sentence(parts(one.tighten, facts, one.count?.value), tightening(facts)),
      facts.torque?.kind === 'byOutcome'
        ? join('Zutreffendes Feld ankreuzen und dessen Werte verwenden.')
        : turnSentence(facts),
      holdSentence(facts),
    ),
  seat: (one, facts) =>
    act(
      parts(one.seat, facts),
      helpedBy(one, facts),
      ` in ${(one.seat?.length ?? 0) > 1 ? 'ihre Nuten' : 'die Nut'} einsetzen`,
    ),
};

function tightening({ torque, inOrder }: SentenceFacts): Prose {
  const order = inOrder.length === 0 ? '' : ` in der Reihenfolge ${inOrder.join(', ')}`;
  return torque === undefined || torque.kind === 'byOutcome' ? join(order, ' anziehen') : settingWords(torque, order);
}

function settingWords(setting: Exclude<TorqueSetting, { kind: 'byOutcome' }>, order: string): Prose {
  if (setting.kind === 'blank') {
    const blank = join(' mit ', quantity('____________'), ' anziehen');
    return join(order, blank, ' (Drehmoment nicht angegeben: vor dem Anziehen nachfragen)');
  }
  const { value } = setting;
  if (value.passes.length > 0) return join(order, passWords(value));
  return join(order, ' mit ', strong(value.primary), second(value.secondary), ' anziehen', furtherTurn(value));
}

function passWords(value: TorqueValue): Prose {
  const before = value.passes.flatMap((pass) => [strong(pass.primary), second(pass.secondary), ', dann ']);
  const last = join(strong(value.primary), second(value.secondary));
  return join(` in ${value.passes.length + 1} Durchgängen anziehen: `, ...before, last, furtherTurn(value));
}

function furtherTurn({ angle }: TorqueValue): Prose {
  return angle === undefined ? [] : join(', dann um ', strong(angle), ' weiterdrehen');
}

function second(secondary: string | undefined): string | undefined {
  return secondary === undefined ? undefined : ` (${secondary})`;
}
