/** Which tool speaks, and with what. */
type Rendering =
  | { tool: 'flite'; voice: string }
  | { tool: 'festival'; voice: string }
  | { tool: 'espeak'; voice: string; pace: number }
  | { tool: 'pico'; language: string };

/** What a voice was made from: a person's recordings, rules alone, or a person of another tongue who speaks English. */
export type Making = 'person' | 'rules' | 'accent';

export type Speaker = {
  id: string;
  /** Voices made from recordings of one person are one speaker, whatever the tool. */
  person: string;
  /** Phrases, decoys, weights and thresholds are chosen on `tune` alone; `test` only ever measures. */
  set: 'tune' | 'test';
  making: Making;
  rendering: Rendering;
};

const mbrola = (voice: string): Rendering => ({ tool: 'espeak', voice: `mb-${voice}`, pace: 150 });
const flite = (voice: string): Rendering => ({ tool: 'flite', voice });
const festival = (voice: string): Rendering => ({ tool: 'festival', voice });
const espeak = (voice: string): Rendering => ({ tool: 'espeak', voice, pace: 150 });

const speaker =
  (set: Speaker['set'], making: Making) =>
  (id: string, rendering: Rendering, person = id): Speaker => ({ id, person, set, making, rendering });

const tune = speaker('tune', 'person');
const test = speaker('test', 'person');
const accent = speaker('test', 'accent');

export const SPEAKERS: readonly Speaker[] = [
  tune('kal', flite('kal16')),
  tune('kal-diphone', festival('kal_diphone'), 'kal'),
  tune('slt', flite('slt')),
  tune('slt-hts', festival('cmu_us_slt_arctic_hts'), 'slt'),
  tune('us1', mbrola('us1')),
  tune('us2', mbrola('us2')),
  speaker('tune', 'rules')('espeak-m3', espeak('en-us+m3')),
  speaker('tune', 'rules')('espeak-f2', espeak('en-gb+f2')),

  test('rms', flite('rms')),
  test('awb', flite('awb')),
  test('ked', festival('ked_diphone')),
  test('us3', mbrola('us3')),
  test('en1', mbrola('en1')),
  test('pico-us', { tool: 'pico', language: 'en-US' }),
  test('pico-gb', { tool: 'pico', language: 'en-GB' }),
  speaker('test', 'rules')('espeak-m7', espeak('en-gb-x-rp+m7')),
  speaker('test', 'rules')('espeak-f4', espeak('en-us+f4')),
  accent('de6', mbrola('de6-en')),
  accent('nl2', mbrola('nl2-en')),
  accent('fr4', mbrola('fr4-en')),
  accent('sw1', mbrola('sw1-en')),
];
