import { existsSync, mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { guide } from '../../../src/text/en/guide';
import type { Command } from '../../../src/voice/commands';
import type { Clip, Said } from './clip';
import { SAID_NUMBERS } from './numbers';
import { paragraphs, secondsOf } from './prose';
import { render } from './render';
import { SPEAKERS, type Speaker } from './speakers';
import { KITCHEN_TALK } from './talk';

export const FOLDER = 'tests/voice/corpus/rendered';
const MINUTES_OF_PROSE = { tune: 10, test: 13 };
const SEED = 20_260;

/** Text to speech reads "I" and names right only with their capitals; numbers are written out already. */
const commands = (Object.entries(guide.commands) as [Command, readonly string[]][]).flatMap(
  ([command, phrases]) => phrases.map((text): Said => ({ kind: 'command', text, command })),
);
const numbers = SAID_NUMBERS.map(({ words, asked, value }): Said => ({
  kind: 'number',
  text: words,
  asked,
  value,
}));
const talk = KITCHEN_TALK.map((text): Said => ({ kind: 'talk', text }));

const nameOf = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/[’']/g, '')
    .replaceAll(/[^a-z]+/g, '-')
    .slice(0, 60);

function proseFor(speaker: Speaker, next: () => string): Said[] {
  const said: Said[] = [];
  for (let seconds = 0; seconds < MINUTES_OF_PROSE[speaker.set] * 60;) {
    const text = next();
    seconds += secondsOf(text);
    said.push({ kind: 'prose', text });
  }
  return said;
}

/** Renders what is not there yet, and answers what there is. */
export function renderCorpus(tell: (line: string) => void): Clip[] {
  const scratch = mkdtempSync(join(tmpdir(), 'corpus-'));
  const next = paragraphs(SEED);
  const clips = SPEAKERS.flatMap((speaker) => {
    const folder = join(FOLDER, speaker.id);
    mkdirSync(folder, { recursive: true });
    const made = (said: Said, slow: boolean, name: string): Clip => {
      const file = `${speaker.id}/${name}.wav`;
      const path = join(FOLDER, file);
      if (!existsSync(path)) render(speaker, said.text, slow, path, scratch);
      return { ...said, file, speaker: speaker.id, slow, seconds: (statSync(path).size - 44) / 32_000 };
    };
    const short = [...commands, ...numbers, ...talk].flatMap((said) =>
      [false, true]
        .filter((slow) => !slow || said.kind !== 'talk')
        .map((slow) => made(said, slow, `${said.kind}-${nameOf(said.text)}${slow ? '-slow' : ''}`)),
    );
    const prose = proseFor(speaker, next).map((said, nth) => made(said, false, `prose-${String(nth)}`));
    tell(`${speaker.id}: ${String(short.length)} phrases, ${String(prose.length)} paragraphs`);
    return [...short, ...prose];
  });
  rmSync(scratch, { recursive: true });
  writeFileSync(join(FOLDER, 'clips.json'), JSON.stringify(clips));
  return clips;
}
