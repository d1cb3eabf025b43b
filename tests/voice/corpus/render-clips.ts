import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { render, type Job } from './render';
import { SPEAKERS } from './speakers';

/** Where the phrases lie with which a browser test is spoken to. */
export const CLIPS = 'tests/voice/clips';

/** One of those who only ever measure; its voice is free. */
const [SPEAKER] = SPEAKERS.filter(({ id }) => id === 'rms');

const SAID: readonly string[] = [
  ...['that is done', 'ready to continue', 'yes it is', 'no it is not', 'that is wrong', 'go on now'],
  ...['new reading', 'write this down', 'why is that', 'once more please', 'finish stirring'],
  ...['nine nine eight', 'nine nine five', 'twenty', 'twenty-one'],
];

/** A phrase's name among the clips. */
export const clipOf = (phrase: string): string => `${phrase.toLowerCase().replaceAll(/[^a-z]+/g, '-')}.flac`;

const NOTICE = `# Where these sounds are from

The \`.flac\` files were spoken by Debian's flite with its voice \`rms\`, made from recordings of the CMU ARCTIC set
(Carnegie Mellon University; free to use, copy, change and pass on, with this notice and without warranty), and are
rendered anew by \`npm run voice:clips\`. Nothing is tuned on that voice. Each is named by what is said in it.
The \`.wav\` files were spoken by flite's voice \`slt\`, of the same set.
`;

/** Speaks the phrases into a folder, each into a file of its name. */
function renderPhrases(phrases: readonly string[], folder: string): void {
  if (!SPEAKER) throw new Error('The speaker of the clips is not among the speakers.');
  mkdirSync(folder, { recursive: true });
  const scratch = mkdtempSync(join(tmpdir(), 'clips-'));
  const jobs = phrases.map((text): Job => ({ text, slow: false, file: join(folder, clipOf(text)) }));
  render(SPEAKER, jobs, scratch);
  rmSync(scratch, { recursive: true });
}

export function renderClips(): number {
  renderPhrases(SAID, CLIPS);
  writeFileSync(join(CLIPS, 'NOTICE.md'), NOTICE);
  return SAID.length;
}
