/** Words of the trade that the pronouncing dictionary has not, with their sounds as it would write them. */
export const TRADE_WORDS: ReadonlyMap<string, string> = new Map([
  ['finings', 'F AY N IH NG Z'],
  ['foamed', 'F OW M D'],
  ['stabiliser', 'S T EY B AH L AY Z ER'],
]);
