/** A file's name that any device takes, from the maker's own words. */
export function fileName(words: string, kind: 'batch' | 'kit sheet'): string {
  const plain = words
    .normalize('NFD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${plain || 'fallbright'}.${kind.replace(' ', '-')}.json`;
}
