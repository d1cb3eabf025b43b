/** Where someone or the wine can be hurt: the hazard in one sentence, then what to do in one. Said before the act. */
export const cautions = {
  fumes:
    'Sulphite fumes can bring on an asthma attack. Open a window, keep your face away, and follow the label and your local rules.',
  sanitiser:
    'Sanitiser can burn the eyes and bring on an asthma attack, and mixed with another cleaner it can give off poisonous gas. Use one product alone, with a window open, as its label says.',
  hotWater:
    'Hot water scalds, and shatters cold glass. Keep it warm to the hand, and never pour it into glass.',
  lifting:
    'A full vessel can weigh 25 kilograms or more, and glass that slips cuts deep. Do not lift it alone; fill it where it will stand.',
  carbonDioxide:
    'Fermenting wine gives off carbon dioxide, which gathers low in closed rooms and makes people faint. Keep the room aired, never use a cupboard or a chest, and keep children out.',
  openingVessel:
    'The gas under the lid takes your breath away. Turn your face aside as you open it, and do not lean in to sniff.',
  byMouth:
    'Sucking on the hose can make you choke, and spoils the wine. Start it with water or a pump, never by mouth.',
  eruption:
    'Powder in gassy wine can erupt like a fountain. Stand back, add it a little at a time, and have a cloth ready.',
  stirringGas:
    'Gas can foam the wine out of the vessel. Stir for one second first, wait, and go on only if it stays down.',
  drill:
    'Wet hands and mains cables do not go together. If you use a drill, let it be a battery drill in dry hands.',
  corker:
    'A bottle can break in the corker or capper and cut through a hand. Wear gloves and eye protection, check each rim, and never force the lever.',
  bottlesMayBurst:
    'Bottles whose closures rise may burst. Cover them with a thick towel, protect your eyes, and do not move them while they are warm.',
  chippedGlass:
    'Splinters cannot be seen in wine. If a rim is chipped or a bottle breaks, throw its wine away.',
  chippedRim: 'A chipped rim cuts, and sheds splinters that cannot be seen. Put that bottle aside for good.',
  airlockPressure:
    'A blocked airlock builds up pressure that can fire off the lid. Turn your face aside and clear it at once.',
  allergen: {
    sulphite:
      'This holds sulphite, which some people react to, above all with asthma. It belongs on the label.',
    shellfish:
      'This is made from shellfish. If anyone who handles or drinks it is allergic, stop here; it belongs on the label.',
    fish: 'This is made from fish. If anyone who handles or drinks it is allergic, stop here; it belongs on the label.',
    egg: 'This is made from egg. If anyone who handles or drinks it is allergic, stop here; it belongs on the label.',
    milk: 'This is made from milk. If anyone who handles or drinks it is allergic, stop here; it belongs on the label.',
  },
  guidance: 'Follow the maker’s sheet and your local rules; this is guidance, not a licence.',
};
