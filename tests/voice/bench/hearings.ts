import { DECOYS } from '../../../src/voice/decoys';
import type { Hearing } from '../../../src/voice/ear/decoder';
import { grammarAgainst, grammarFor, type Offer } from '../../../src/voice/grammar-for';
import { hearingOf, type Understood } from '../../../src/voice/hearing-of';
import type { Ear } from '../hear';
import { everything } from './commands';
import { timed, type Cut } from './cut';

/** Something to be decoded while an offer stands. */
export type Job = { cut: Cut; offer: Offer };
export type Done = { hearing: Hearing | undefined; understood: Understood; took: number };

type Way = {
  load: (ear: Ear, offer: Offer) => void;
  understand: (hearing: Hearing | undefined, offer: Offer, snr: number) => Understood;
};

/** As the app does: set against decoys, and weighed. */
export const AS_THE_APP: Way = {
  load: ({ decoder }, offer) =>
    decoder.setGrammar(grammarFor(offer), grammarAgainst(offer, everything.phrases, DECOYS)),
  understand: hearingOf,
};

/** As the engine is by itself: the phrase that it finds is taken for said. */
export const PLAIN: Way = {
  load: ({ decoder }, offer) => decoder.setGrammar(grammarFor(offer)),
  understand: (hearing, offer, snr) => {
    const weighed = hearing && hearingOf({ ...hearing, margin: 1000, inside: 1000, against: [] }, offer, snr);
    return weighed && { sure: Object.values(weighed)[0] as string | number };
  },
};

/** All jobs in their order, but done offer by offer: each grammar is loaded once. */
export function decodeAll(ear: Ear, way: Way, jobs: readonly Job[]): Done[] {
  const order = jobs.map(({ offer }) => JSON.stringify(offer));
  const done = new Map<Job, Done>();
  for (const key of new Set(order)) {
    const same = jobs.filter((_, nth) => order[nth] === key);
    if (same[0]) way.load(ear, same[0].offer);
    for (const job of same) {
      const { samples, snr } = job.cut;
      const { result, took } = timed(() => {
        const hearing = ear.decoder.decode(samples);
        return { hearing, understood: way.understand(hearing, job.offer, snr) };
      });
      done.set(job, { ...result, took });
    }
  }
  return jobs.map((job) => done.get(job)!);
}

/** Every cut of each recording, decoded while its offer stands. */
export function decodeEach(
  ear: Ear,
  way: Way,
  all: readonly { cuts: readonly Cut[]; offer: Offer }[],
): Done[][] {
  const jobs = all.map(({ cuts, offer }) => cuts.map((cut): Job => ({ cut, offer })));
  const flat = jobs.flat();
  const done = new Map(decodeAll(ear, way, flat).map((each, nth) => [flat[nth], each]));
  return jobs.map((mine) => mine.map((job) => done.get(job)!));
}
