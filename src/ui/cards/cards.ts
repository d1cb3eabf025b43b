import type { Component } from 'svelte';
import type { Act } from '../../procedure/step';
import AddCard from './AddCard.svelte';
import BottlesCard from './BottlesCard.svelte';
import ClockCard from './ClockCard.svelte';
import DoCard from './DoCard.svelte';
import FilledCard from './FilledCard.svelte';
import GapCard from './GapCard.svelte';
import InstrumentCard from './InstrumentCard.svelte';
import JudgeCard from './JudgeCard.svelte';
import LitresCard from './LitresCard.svelte';
import ReadingCard from './ReadingCard.svelte';
import TemperatureCard from './TemperatureCard.svelte';

type Kinds = Exclude<Act['kind'], 'account'>;
type Cards = { [Kind in Kinds]: Component<{ act: Extract<Act, { kind: Kind }> }> };

/** One card for every kind of act but the first that a batch asks for: its own comes with the bench. A wait that is over is answered like anything that was done. */
export const CARDS: Cards = {
  do: DoCard,
  add: AddCard,
  stir: ClockCard,
  timer: ClockCard,
  wait: DoCard,
  reading: ReadingCard,
  temperature: TemperatureCard,
  litres: LitresCard,
  gap: GapCard,
  bottles: BottlesCard,
  filled: FilledCard,
  instrument: InstrumentCard,
  judge: JudgeCard,
};
