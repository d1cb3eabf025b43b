/** Words set in lines of about so many letters; a longer word keeps a line of its own. */
export const linesOf = (words: string, longest: number): string[] =>
  words.split(/\s+/).reduce<string[]>((lines, word) => {
    const last = lines.at(-1);
    return last !== undefined && last.length + 1 + word.length <= longest
      ? [...lines.slice(0, -1), `${last} ${word}`]
      : [...lines, word];
  }, []);
