import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Speaker } from './speakers';

/** A text to be spoken into a file of 16-bit mono at 16 kHz. */
export type Job = { text: string; slow: boolean; file: string };

/** How much longer a slow speaker takes. */
const SLOWER = 1.2;
const stretch = (slow: boolean): number => (slow ? SLOWER : 1);

/** Typographic apostrophes are spelled out by some. */
const plain = (text: string): string => text.replaceAll('’', "'");

const to16 = (raw: string, file: string) =>
  execFileSync('sox', ['-G', raw, '-r', '16000', '-c', '1', '-b', '16', file], { stdio: 'pipe' });

/** One run of festival for all: it takes a second to begin. */
function byFestival(voice: string, jobs: readonly Job[], folder: string): void {
  const raw = (nth: number) => join(folder, `${String(nth)}.wav`);
  const script = join(folder, 'jobs.scm');
  const lines = jobs.map(({ text, slow }, nth) =>
    [
      `(Parameter.set 'Duration_Stretch ${String(stretch(slow))})`,
      `(utt.save.wave (utt.synth (Utterance Text ${JSON.stringify(plain(text))})) "${raw(nth)}" 'riff)`,
    ].join(' '),
  );
  writeFileSync(script, [`(voice_${voice})`, ...lines].join('\n'));
  execFileSync('festival', ['-b', script], { stdio: 'pipe' });
  jobs.forEach(({ file }, nth) => to16(raw(nth), file));
}

function command({ rendering }: Speaker, { text, slow }: Job, raw: string): [string, ...string[]] {
  switch (rendering.tool) {
    case 'flite': {
      const pace = `duration_stretch=${String(stretch(slow))}`;
      return ['flite', '-voice', rendering.voice, '--setf', pace, '-t', plain(text), '-o', raw];
    }
    case 'espeak': {
      const pace = String(Math.round(rendering.pace / stretch(slow)));
      return ['espeak-ng', '-v', rendering.voice, '-s', pace, '-w', raw, plain(text)];
    }
    case 'pico': {
      const paced = `<speed level="${String(Math.round(100 / stretch(slow)))}">${plain(text)}</speed>`;
      return ['pico2wave', '-l', rendering.language, '-w', raw, paced];
    }
    case 'festival':
      throw new Error('Festival speaks all its jobs in one run.');
  }
}

/** Speaks all of a speaker's jobs; `folder` is for what is needed on the way. */
export function render(speaker: Speaker, jobs: readonly Job[], folder: string): void {
  if (speaker.rendering.tool === 'festival') {
    if (jobs.length > 0) byFestival(speaker.rendering.voice, jobs, folder);
    return;
  }
  const raw = join(folder, 'raw.wav');
  jobs.forEach((job) => {
    const [tool, ...args] = command(speaker, job, raw);
    execFileSync(tool, args);
    to16(raw, job.file);
  });
}
