import type { Instant } from '../domain/unit';
import type { Facts } from './facts';
import type { Mishap } from './mishap';
import { isEnd, type Place } from './phase';

/** A mishap that wants another look, and when. `entry` is its place in the journal. */
export type LookAgain = { entry: number; mishap: Mishap; due: Instant };

/** Every mishap that wants another look, the soonest first. Nothing is looked at again once the batch has ended. */
export const looksAgain = ({ mishaps }: Facts, place: Place): LookAgain[] =>
  isEnd(place)
    ? []
    : mishaps
        .flatMap(({ entry, mishap, lookAgain, struck }) =>
          lookAgain === undefined || struck ? [] : [{ entry, mishap, due: lookAgain }],
        )
        .toSorted((a, b) => a.due - b.due);
