import type { Decoder, Hearing } from './decoder';
import { dictionaryOf } from './dictionary';
import openEngine, { type Engine } from './engine/pocketsphinx';
import { callsTo, type EngineCalls } from './engine-calls';
import { wordsIn } from './grammar-words';
import { isWithin, LOOSEST, loosenessOf } from './looseness';
import { margins } from './margins';
import type { Pack } from './pack';
import { readAnswer } from './read-answer';

/** The decoder, and what may be asked of this engine besides. */
export type PocketSphinx = Decoder & {
  /** Teaches a word that the dictionary has not, its sounds parted by spaces. */
  teach: (word: string, sounds: string) => void;
  /** Whether a grammar may use the word. */
  knows: (word: string) => boolean;
  /** What the engine makes of the sounds: a row of numbers each hundredth of a second, for matching by template. */
  features: (samples: Int16Array) => Float32Array[];
};

const MODEL = ['mdef', 'means', 'variances', 'sendump', 'transition_matrices', 'noisedict', 'feat.params'];
/**
 * The engine's own beams (1e-48, 7e-29) take a quarter more time. Narrower ones (1e-32, 1e-20) take a third less and find
 * as many phrases, but in noise they found no row of decoys at all beside 10 phrases of 235.
 */
const NARROW = '-beam 1e-40 -pbeam 1e-40 -wbeam 1e-26';
const NO_WORDS = '/words';
const OFFERED = 'offered';
const AGAINST = 'against';

/** `options` are PocketSphinx's own, over those of the model. */
export async function openPocketSphinx(pack: Pack, options = NARROW): Promise<PocketSphinx> {
  const engine = await openEngine({ wasmBinary: pack.part('engine') });
  const calls = callsTo(engine);
  openModel(engine, calls, pack, options);
  const teach = (word: string, sounds: string) => {
    if (!calls.addWord(word, sounds)) throw new Error(`"${word}" cannot be taught as "${sounds}"`);
  };
  const dictionary = dictionaryOf(pack);
  const load = (name: string, grammar: string) => {
    const unknown = wordsIn(grammar).filter((word) => !calls.knows(word));
    for (const word of unknown) for (const way of dictionary(word)) teach(way.name, way.sounds);
    const missing = unknown.filter((word) => !calls.knows(word));
    if (missing.length > 0) throw new Error(`No way to say: ${missing.join(', ')}`);
    if (!calls.setGrammar(name, grammar)) throw new Error(`Not a grammar: ${grammar.slice(0, 200)}`);
  };
  return {
    ...decoder(calls, load),
    teach,
    knows: (word) => calls.knows(word) || dictionary(word).length > 0,
    features: (samples) => calls.features(samples),
  };
}

/** The engine reads files: they are laid into a file system in memory, and taken away when it has read them. */
function openModel(engine: Engine, calls: EngineCalls, pack: Pack, options: string): void {
  const paths = MODEL.map((name) => `/model/${name}`);
  engine.FS.mkdir('/model');
  for (const name of MODEL) engine.FS.writeFile(`/model/${name}`, pack.part(name));
  engine.FS.writeFile(NO_WORDS, new Uint8Array());
  const isOpen = calls.open(`-hmm /model -dict ${NO_WORDS} -mmap no ${options}`.trim());
  for (const path of [...paths, NO_WORDS]) engine.FS.unlink(path);
  if (!isOpen) throw new Error(`The engine does not open with ${options}`);
}

function decoder(calls: EngineCalls, load: (name: string, grammar: string) => void): Decoder {
  let measures = false;
  return {
    setGrammar(grammar, against) {
      load(OFFERED, grammar);
      if (against !== undefined) load(AGAINST, against);
      measures = against !== undefined;
    },
    decode(samples): Hearing | undefined {
      const heard = readAnswer(calls.decode(OFFERED, samples));
      if (!heard) return undefined;
      const { path: _, ...hearing } = heard;
      // Of talk most is too loose for a phrase: it need not be set against anything, which takes the most time.
      const isMeasured = measures && isWithin(loosenessOf(heard), LOOSEST);
      const other = isMeasured ? readAnswer(calls.decode(AGAINST, samples)) : undefined;
      return other ? { ...hearing, ...margins(heard, other), against: other.segments } : hearing;
    },
  };
}
