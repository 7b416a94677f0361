import { describe, expect, test } from 'vitest';
import { writingFor } from '../../server/src/core/sheet/sentences';
import type { Instruction, SheetLanguage } from '../../server/src/core/sheet/sheet';
import { sheetOfFiles, textOf } from './fixtures/bench';
import { INSTRUCTIONS, WITH_CONDITIONS } from './fixtures/instructions';
import { filesInThreeLanguages } from './fixtures/threeLanguages';

const LANGUAGES: readonly SheetLanguage[] = ['en', 'de', 'es'];

/** All that a fitter reads of an instruction, line by line. `~` is a space at which no line ends. */
function linesOf(one: Instruction): string[] {
  const setting = one.torque?.setting;
  return [
    one.condition?.text,
    textOf(one.text),
    one.torque?.fastener,
    one.torque?.inOrder,
    ...(setting?.kind === 'byOutcome' ? setting.branches.map((branch) => branch.condition) : []),
    one.reading && `${one.reading.name}: ${one.reading.limits ?? '—'} ${one.reading.places.join(', ')}`.trimEnd(),
    ...(one.choices ?? []),
    ...(one.record?.labels ?? []),
    one.ifNot && textOf(one.ifNot.text),
  ].flatMap((line) => (line === undefined || line === '' ? [] : [line.replaceAll('\u00a0', '~')]));
}

/** Each instruction with the lines that it becomes; one that the build does not have becomes none. */
async function written(instructions: readonly string[], language: SheetLanguage, build: string): Promise<string[]> {
  const sheet = await sheetOfFiles(filesInThreeLanguages(instructions), { build, more: { language } });
  const steps = sheet.phases.flatMap((phase) => phase.steps);
  return instructions.map((instruction, place) => {
    const step = steps.find(({ id }) => id === `step-${place + 1}`);
    const lines = (step?.instructions ?? []).flatMap(linesOf);
    return [`  ${instruction.replaceAll(/[«»]/gu, '')}`, ...lines.map((line) => `    ${line}`)].join('\n');
  });
}

async function goldenText(language: SheetLanguage): Promise<string> {
  const blocks: string[] = [];
  for (const [verb, instructions] of Object.entries(INSTRUCTIONS)) {
    blocks.push([verb, ...(await written(instructions, language, 'k2-a'))].join('\n'));
  }
  for (const [build, instructions] of Object.entries(WITH_CONDITIONS)) {
    blocks.push([`conditions of ${build}`, ...(await written(instructions, language, build))].join('\n'));
  }
  return `${blocks.join('\n\n')}\n`;
}

describe.each(LANGUAGES)('%s', (language) => {
  test('every sentence reads as it was reviewed', async () => {
    await expect(await goldenText(language)).toMatchFileSnapshot(`../golden/sentences/${language}.txt`);
  });

  test('every verb that the language writes is in the list', () => {
    expect(Object.keys(INSTRUCTIONS).sort()).toEqual(Object.keys(writingFor(language).verbs).sort());
  });
});
