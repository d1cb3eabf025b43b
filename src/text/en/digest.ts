const sentence = (parts: readonly (string | undefined)[]): string =>
  parts.filter((part) => part !== undefined).join(', ');

/** The short text that is copied for whoever helps. */
export const digest = {
  title: 'Ask for help',
  says: 'These are the facts that a helper asks for first. Copy them, and add your question.',
  copy: 'copy it',
  copied: 'Copied. Paste it into a message to whoever helps.',
  selected: 'This device does not copy by itself. The text is selected: copy it from there.',
  head: (name: string, edition: string, style: string): string => `${name}, edition ${edition} (${style})`,
  standing: (place: string, act?: string, day?: string, litres?: string): string =>
    `Stands at: ${sentence([place, act, day && `${day} since the yeast`, litres])}`,
  beforeYeast: 'before the yeast',
  readings: 'Readings, corrected to 20 °C',
  reading: (
    day: string,
    corrected: string,
    read: string,
    sample: string,
    wine: string,
    degassed: boolean,
  ): string =>
    `${day}: ${corrected} (read ${read} at ${sample}; wine ${wine}${degassed ? '' : '; gas not shaken out'})`,
  additions: 'In the wine',
  overrides: 'Went on in spite of',
  leftOut: 'Left out',
  mishaps: 'What happened',
};
