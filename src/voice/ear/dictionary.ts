import type { Pack } from './pack';
import { TRADE_WORDS } from './trade-words';

/** One way to say a word: the name the engine knows it by, and its sounds. */
export type Spoken = { name: string; sounds: string };
/** Every way to say a word; none where the word is unknown. */
export type Dictionary = (word: string) => readonly Spoken[];

const FIRST_SOUND = 'A'.charCodeAt(0);

/** The pronouncing dictionary, sorted, so that one word is found without reading all 134,000. */
export function dictionaryOf(pack: Pack): Dictionary {
  const column = (name: string) => new TextDecoder().decode(pack.part(name)).split('\n');
  const words = column('words');
  const spoken = column('spoken');
  const soundsAt = (row: number) =>
    [...(spoken[row] ?? '')].map((letter) => pack.sounds[letter.charCodeAt(0) - FIRST_SOUND]).join(' ');
  return (word) => {
    const ours = TRADE_WORDS.get(word);
    if (ours !== undefined) return [{ name: word, sounds: ours }];
    const ways: Spoken[] = [];
    for (let way = 1; ; way++) {
      const name = way === 1 ? word : `${word}(${way})`;
      const row = rowOf(words, name);
      if (row === undefined) return ways;
      ways.push({ name, sounds: soundsAt(row) });
    }
  };
}

function rowOf(sorted: readonly string[], wanted: string): number | undefined {
  let low = 0;
  let high = sorted.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const found = sorted[middle] ?? '';
    if (found === wanted) return middle;
    if (found < wanted) low = middle + 1;
    else high = middle - 1;
  }
  return undefined;
}
