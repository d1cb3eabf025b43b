/** How the app is driven, and what it holds back. */
export const help = {
  title: 'Help',
  driving: {
    heading: 'How to drive it',
    paragraphs: [
      'At the bench there is one act on the screen, with a picture and a few big pads. Do the act, then press the pad that says so. A knuckle will do.',
      'Everything is written down as you go. You can leave, reload or let the battery die: it opens where you were and says what the clock has done meanwhile.',
      'When something must wait for its day, the list of batches shows what is next and when. What is late stands first.',
    ],
  },
  holds: {
    heading: 'What it will not let you do, and why',
    rows: [
      {
        what: 'Stabiliser before fermentation is over.',
        why: 'It does not stop yeast that is at work. The wine goes on fermenting, will not clear, and can burst its bottles. Readings two days apart have to agree, low enough, at one corrected temperature.',
      },
      {
        what: 'Sweetening before every stabiliser of the sheet is in.',
        why: 'Sugar without it is food for the yeast.',
      },
      {
        what: 'Bottling while the gravity falls, or on a failed gas test.',
        why: 'What still moves in the vessel turns into pressure under the cork.',
      },
      {
        what: 'Yeast into must that is too cold or too warm.',
        why: 'Cold yeast does not wake, hot yeast dies, and either leaves the juice open to whatever else wants it.',
      },
      {
        what: 'Changing what was recorded.',
        why: 'A wrong reading is struck, with a reason, and stays to be seen. Gates that used it are asked again.',
      },
      {
        what: 'A kit sheet that loosens a gate.',
        why: 'A sheet may be stricter than the house, never laxer, and cannot put a sachet where it may not go.',
      },
    ],
  },
  words: {
    heading: 'Words of the trade',
    rows: [
      {
        word: 'Gravity',
        means:
          'How heavy the juice is beside water. Sugar makes it heavy, so it falls as the yeast eats. Lower is later.',
      },
      { word: 'Must', means: 'The juice before it is wine.' },
      { word: 'Siphon off (rack)', means: 'To move the wine off its sediment through a hose.' },
      { word: 'Stabiliser', means: 'Sulphite and sorbate, which keep finished wine from starting again.' },
      { word: 'Finings', means: 'What pulls the haze down to the bottom.' },
      { word: 'To fall bright', means: 'To clear by itself until print can be read through it.' },
    ],
  },
};
