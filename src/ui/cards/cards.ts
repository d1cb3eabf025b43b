import type { Component } from 'svelte';
import type { Act } from '../../procedure/step';
import AccountCard from './AccountCard.svelte';
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

type Cards = { [Kind in Act['kind']]: Component<{ act: Extract<Act, { kind: Kind }> }> };

/** Whether a card has nothing to be filled in: it shows an act, and is answered by a word. */
export const isPlain = ({ kind }: Act): boolean => kind === 'do' || kind === 'add';

/** One card for every kind of act. A wait that is over is answered like anything that was done. */
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
  account: AccountCard,
  instrument: InstrumentCard,
  judge: JudgeCard,
};
