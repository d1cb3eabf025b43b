import { CARDS } from '../cards/cards';
import ChoicePage from '../choices/ChoicePage.svelte';
import DoubtBanner from '../choices/DoubtBanner.svelte';
import LookAgain from '../mishaps/LookAgain.svelte';
import Recap from '../mishaps/Recap.svelte';
import Picture from '../pictures/Picture.svelte';
import EndFields from './EndFields.svelte';
import EndPage from './EndPage.svelte';
import GatePage from './GatePage.svelte';
import NewReading from './NewReading.svelte';
import PausedPage from './PausedPage.svelte';
import ToldPage from './ToldPage.svelte';
import WaitingPage from './WaitingPage.svelte';

/** What the first act of a batch does not show: fetched as one while it is done. */
export const laterParts = {
  CARDS,
  ChoicePage,
  DoubtBanner,
  EndFields,
  EndPage,
  GatePage,
  LookAgain,
  NewReading,
  PausedPage,
  Picture,
  Recap,
  ToldPage,
  WaitingPage,
};
