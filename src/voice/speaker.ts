/** How a line reached the maker: to its end by ear, or by the caption alone. It is captioned in any case. */
export type Heard = 'spoken' | 'captioned';

/** Says lines one after another, never two at once. Ears, when they come, are shut meanwhile. */
export type Speaker = {
  /** Settles when the line is out. */
  say: (line: string) => Promise<Heard>;
  /** Drops what is being said and what waits; their captions are kept. */
  hush: () => void;
};
