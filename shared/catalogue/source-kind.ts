/** What kind of source a row of a table names first: something published, what everybody does, or what is only remembered. */
export const sourceKind = (source: string): 'published' | 'practice' | 'memory' =>
  source.startsWith('common practice')
    ? 'practice'
    : source.startsWith('from memory')
      ? 'memory'
      : 'published';
