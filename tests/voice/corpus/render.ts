import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Speaker } from './speakers';

/** How much longer a slow speaker takes. */
const SLOWER = 1.2;

/** Engines say "no" as a number sign's abbreviation here and there; typographic apostrophes they spell out. */
const plain = (text: string): string => text.replaceAll('’', "'");

function speak({ rendering }: Speaker, text: string, slow: boolean, raw: string, folder: string): void {
  const stretch = slow ? SLOWER : 1;
  switch (rendering.tool) {
    case 'flite':
      execFileSync('flite', [
        ...['-voice', rendering.voice, '--setf', `duration_stretch=${String(stretch)}`],
        ...['-t', text, '-o', raw],
      ]);
      return;
    case 'festival': {
      const script = join(folder, 'text.txt');
      writeFileSync(script, text);
      const set = `(begin (voice_${rendering.voice}) (Parameter.set 'Duration_Stretch ${String(stretch)}))`;
      execFileSync('text2wave', ['-eval', set, script, '-o', raw]);
      return;
    }
    case 'espeak':
      execFileSync('espeak-ng', [
        ...['-v', rendering.voice, '-s', String(Math.round(rendering.pace / stretch)), '-w', raw],
        text,
      ]);
      return;
    case 'pico':
      execFileSync('pico2wave', [
        ...['-l', rendering.language, '-w', raw],
        `<speed level="${String(Math.round(100 / stretch))}">${text}</speed>`,
      ]);
  }
}

/** Speaks a text into a 16-bit mono file at 16 kHz. */
export function render(speaker: Speaker, text: string, slow: boolean, file: string, folder: string): void {
  const raw = join(folder, 'raw.wav');
  speak(speaker, plain(text), slow, raw, folder);
  execFileSync('sox', ['-G', raw, '-r', '16000', '-c', '1', '-b', '16', file], { stdio: 'pipe' });
}
