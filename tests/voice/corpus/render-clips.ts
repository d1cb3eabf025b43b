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
  ...[
    'new reading',
    'write this down',
    'why is that',
    'once more please',
    'finish stirring',
    'start the clock',
  ],
  ...['wait a moment', 'what can I say', 'something went wrong', 'stop listening now'],
  ...['nine nine eight', 'nine nine five', 'ten sixty-seven', 'ten twenty-six', 'one thousand'],
  ...['zero', 'twenty', 'twenty-one', 'twenty-eight', 'thirty'],
  // What the guide itself says, to be fed back to it.
  ...['Say: ready to continue.', 'Say: go on now.'],
];

/** A phrase's name among the clips. */
export const clipOf = (phrase: string): string =>
  `${phrase
    .toLowerCase()
    .replaceAll(/[^a-z]+/g, '-')
    .replace(/-$/, '')}.flac`;

const NOTICE = `# Where these sounds are from

The \`.flac\` files were spoken by Debian's flite with its voice \`rms\`, made from recordings of the CMU ARCTIC set, and
brought to 16 kHz by sox; \`npm run voice:clips\` renders them anew. Nothing is tuned on that voice, but
for how short an "eight" may be (\`hearing-of.ts\`). Each is named by what
is said in it. The \`.wav\` files were spoken by flite's voice \`slt\`, of the same set.

Flite and these voices are under the licence below (\`/usr/share/doc/flite/copyright\` in Debian's package: all files of
the speech library and its voices but those that it lists). What they say is not code; the notice is kept all the same.

> Copyright (c) 1999-2001 by Language Technologies Institute, Carnegie Mellon University. All Rights Reserved.
> Authors: Language Technologies Institute; Alan W Black; David Huggins-Daines; and others.
>
> Permission is hereby granted, free of charge, to use and distribute this software and its documentation without
> restriction, including without limitation the rights to use, copy, modify, merge, publish, distribute, sublicense,
> and/or sell copies of this work, and to permit persons to whom this work is furnished to do so, subject to the
> following conditions:
>
> 1. The code must retain the above copyright notice, this list of conditions and the following disclaimer.
> 2. Any modifications must be clearly marked as such.
> 3. Original authors' names are not deleted.
> 4. The authors' names are not used to endorse or promote products derived from this software without specific prior
>    written permission.
>
> CARNEGIE MELLON UNIVERSITY AND THE CONTRIBUTORS TO THIS WORK DISCLAIM ALL WARRANTIES WITH REGARD TO THIS SOFTWARE,
> INCLUDING ALL IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS, IN NO EVENT SHALL CARNEGIE MELLON UNIVERSITY NOR THE
> CONTRIBUTORS BE LIABLE FOR ANY SPECIAL, INDIRECT OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS
> OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN
> CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.
`;

/** Speaks phrases into a folder, each into a file of its name. */
export function renderPhrases(phrases: readonly string[], folder: string): void {
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
