import { relative } from 'node:path';
import { type Finding, type Fix, fullMessage, identityOf } from '../../core/rules/finding';
import { RULES } from '../../core/rules/registry';
import { LineIndex } from '../../core/text/lineIndex';
import type { Span } from '../../core/text/span';
import type { Working } from '../../core/workings/working';
import { escaped, workingMarkdown } from '../../core/workings/workingMarkdown';
import { pathOfUri, readText } from '../../node/nodeFiles';
import type { CheckedDocument } from '../checkPaths';
import { artifactPath, LEVELS, regionOf, sarifLog } from './sarifLog';

/** The findings as a SARIF 2.1.0 log (OASIS). Conceded findings are there, marked as suppressed. */
export function sarifReport(documents: readonly CheckedDocument[], version: string): string {
  const writer = new SarifWriter(documents);
  return sarifLog(
    documents.flatMap((document) => writer.results(document)),
    version,
  );
}

class SarifWriter {
  readonly #lines = new Map<string, LineIndex>();

  constructor(documents: readonly CheckedDocument[]) {
    for (const document of documents) this.#lines.set(document.uri, document.lines);
  }

  results(document: CheckedDocument): object[] {
    const { findings, conceded } = document.result;
    const standing = findings.map((finding) => this.#result(finding));
    const letStand = conceded.map(({ finding, concession }) => ({
      ...this.#result(finding),
      suppressions: [{ kind: 'inSource', status: 'accepted', justification: concession.because?.text ?? '' }],
    }));
    return [...standing, ...letStand];
  }

  #result(finding: Finding): object {
    const fixes = finding.fixes();
    const working = finding.working();
    return {
      ruleId: finding.rule,
      ruleIndex: RULES.findIndex((rule) => rule.id === finding.rule),
      level: LEVELS[finding.severity],
      message: {
        text: fullMessage(finding),
        ...(working.length === 0 ? {} : { markdown: withWorking(finding, working) }),
      },
      locations: [this.#location(finding.uri, finding.span)],
      ...(finding.related.length === 0
        ? {}
        : {
            relatedLocations: finding.related.map((one, id) => ({
              id,
              message: { text: one.message },
              ...this.#location(one.uri, one.span),
            })),
          }),
      partialFingerprints: { 'witnessmark/v1': identityOf(finding, artifactUri(finding.uri)) },
      ...(fixes.length === 0 ? {} : { fixes: fixes.map((fix) => this.#fix(fix)) }),
      properties: {
        about: finding.about,
        ...(finding.step === undefined ? {} : { step: finding.step }),
        ...(finding.builds === '' ? {} : { builds: finding.builds }),
        ...(working.length === 0 ? {} : { working }),
      },
    };
  }

  #location(uri: string, span: Span): { physicalLocation: object } {
    return { physicalLocation: { artifactLocation: { uri: artifactUri(uri) }, region: this.#region(uri, span) } };
  }

  #region(uri: string, span: Span): object {
    return regionOf(this.#linesOf(uri), span);
  }

  #fix(fix: Fix): object {
    const uris = [...new Set(fix.edits.map((one) => one.uri))];
    return {
      description: { text: fix.title },
      artifactChanges: uris.map((uri) => ({
        artifactLocation: { uri: artifactUri(uri) },
        replacements: fix.edits
          .filter((one) => one.uri === uri)
          .map(({ edit }) => ({ deletedRegion: this.#region(uri, edit.span), insertedContent: { text: edit.text } })),
      })),
    };
  }

  #linesOf(uri: string): LineIndex {
    const known = this.#lines.get(uri);
    if (known !== undefined) return known;
    const source = readText(pathOfUri(uri));
    const lines = new LineIndex(source.is === 'text' ? source.text : '');
    this.#lines.set(uri, lines);
    return lines;
  }
}

/** For viewers that show Markdown: the message, and below it the calculation that it rests on. */
function withWorking(finding: Finding, working: readonly Working[]): string {
  return [escaped(fullMessage(finding)), ...working.map(workingMarkdown)].join('\n\n');
}

/** Relative to where the command runs, percent-encoded, so that a log means the same on another machine. */
function artifactUri(uri: string): string {
  return artifactPath(relative(process.cwd(), pathOfUri(uri)));
}
