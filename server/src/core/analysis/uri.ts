/**
 * URIs inside the core are plain: a scheme and a path with forward slashes, not percent-encoded. Whoever holds another
 * form converts at the edge.
 */
export type Uri = string;

/** The folder of a document, without a slash at its end. */
export function folderOf(uri: Uri): Uri {
  const slash = uri.lastIndexOf('/');
  return slash < 0 ? '' : uri.slice(0, slash);
}

export function fileNameOf(uri: Uri): string {
  return uri.slice(uri.lastIndexOf('/') + 1);
}

/** The document that a relative path written in another document names; undefined where the path is not relative. */
export function resolvePath(from: Uri, path: string): Uri | undefined {
  if (path === '' || path.startsWith('/') || path.startsWith('\\') || /^[a-z][a-z0-9+.-]*:/i.test(path))
    return undefined;
  const [, scheme = '', rest = ''] = /^([a-z][a-z0-9+.-]*:\/\/)?([\s\S]*)$/i.exec(folderOf(from)) ?? [];
  const segments = rest.split('/');
  for (const segment of path.split('/')) {
    if (segment === '..') {
      if (segments.length > 1) segments.pop();
    } else if (segment !== '.' && segment !== '') segments.push(segment);
  }
  return scheme + segments.join('/');
}

/** How one document names another: the relative path, with forward slashes. */
export function relativePath(from: Uri, to: Uri): string {
  const source = folderOf(from).split('/');
  const target = to.split('/');
  let same = 0;
  while (same < source.length && same < target.length - 1 && source[same] === target[same]) same++;
  return [...source.slice(same).map(() => '..'), ...target.slice(same)].join('/');
}

export function isInside(uri: Uri, folder: Uri): boolean {
  return folder === '' || uri.startsWith(folder.endsWith('/') ? folder : `${folder}/`);
}

/** The settings documents that may apply to a document, nearest first, up to the folder that was opened. */
export function settingsCandidates(uri: Uri, roots: readonly Uri[]): Uri[] {
  const candidates: Uri[] = [];
  let folder = folderOf(uri);
  while (folder !== '' && !folder.endsWith('/')) {
    candidates.push(`${folder}/witnessmark.yaml`);
    if (roots.length === 0 || roots.includes(folder)) break;
    folder = folderOf(folder);
  }
  return candidates;
}
