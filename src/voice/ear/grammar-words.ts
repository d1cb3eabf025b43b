const NOT_WORDS = [
  /^#JSGF[^;]*;/, // its header
  /\bgrammar\s+[^;]+;/, // its name
  /\/\/[^\n]*/g,
  /\/\*.*?\*\//gs,
  /\/[-+.\deE]+\//g, // weights
  /<[^>]*>/g, // rules
  /\{[^}]*\}/g, // tags
  /\bpublic\b/g,
  /[()[\]|*+=;"]/g,
];

/** Every word that a grammar (JSGF) can hear, once. */
export function wordsIn(grammar: string): string[] {
  const words = NOT_WORDS.reduce((rest, pattern) => rest.replace(pattern, ' '), grammar);
  return [...new Set(words.split(/\s+/).filter((word) => word !== ''))];
}
