/** "a", "a and b", "a, b and c". */
export function list(words: readonly string[], last = 'and'): string {
  if (words.length <= 1) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} ${last} ${words[words.length - 1] ?? ''}`;
}

/** The first few, then "and 6 more". */
export function shortened<T>(items: readonly T[], most: number): { shown: readonly T[]; more: number } {
  // one more line costs as much as saying "and 1 more"
  if (items.length <= most + 1) return { shown: items, more: 0 };
  return { shown: items.slice(0, most), more: items.length - most };
}

export const capital = (text: string): string => text.charAt(0).toLocaleUpperCase('en') + text.slice(1);
