import { existsSync, mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { guide } from '../../../src/text/en/guide';
import type { Command } from '../../../src/voice/commands';
import type { Clip, Said } from './clip';
import { FOLDER } from './folder';
import { SAID_NUMBERS } from './numbers';
import { paragraphs, secondsOf } from './prose';
import { render } from './render';
import { SPEAKERS, type Speaker } from './speakers';
import { KITCHEN_TALK } from './talk';

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

/** What a speaker says: every phrase at two paces, kitchen talk, and prose. */
function saidBy(speaker: Speaker, next: () => string): { said: Said; slow: boolean; name: string }[] {
  const twice = [...commands, ...numbers].flatMap((said) => [
    { said, slow: false, name: `${said.kind}-${nameOf(said.text)}` },
    { said, slow: true, name: `${said.kind}-${nameOf(said.text)}-slow` },
  ]);
  const once = [...talk, ...proseFor(speaker, next)].map((said, nth) => ({
    said,
    slow: false,
    name: `${said.kind}-${String(nth)}`,
  }));
  return [...twice, ...once];
}

/** Renders what is not there yet, and answers what there is. */
export function renderCorpus(tell: (line: string) => void): Clip[] {
  const scratch = mkdtempSync(join(tmpdir(), 'corpus-'));
  const next = paragraphs(SEED);
  const clips = SPEAKERS.flatMap((speaker) => {
    mkdirSync(join(FOLDER, speaker.id), { recursive: true });
    const all = saidBy(speaker, next).map(({ said, slow, name }) => ({
      ...said,
      slow,
      file: `${speaker.id}/${name}.wav`,
    }));
    const jobs = all.map(({ text, slow, file }) => ({ text, slow, file: join(FOLDER, file) }));
    render(
      speaker,
      jobs.filter(({ file }) => !existsSync(file)),
      scratch,
    );
    tell(`${speaker.id}: ${String(all.length)} clips`);
    return all.map((clip, nth): Clip => {
      const bytes = statSync(jobs[nth]?.file ?? '').size;
      return { ...clip, speaker: speaker.id, seconds: (bytes - 44) / 32_000 };
    });
  });
  rmSync(scratch, { recursive: true });
  writeFileSync(join(FOLDER, 'clips.json'), JSON.stringify(clips));
  return clips;
}
