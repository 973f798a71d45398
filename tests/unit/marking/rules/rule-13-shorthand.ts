import type { PointSource, RuleExample } from './example.ts'

const rate: PointSource = {
  text: 'A higher temperature makes the reaction faster because the particles have more energy.',
  ideas: ['temperature + higher / rises', 'faster / rate increases', 'more + energy'],
}
const photosynthesis: PointSource = {
  text: 'Photosynthesis turns carbon dioxide and water into glucose and oxygen.',
  ideas: ['carbon dioxide + water', 'glucose + oxygen'],
}
const anaerobic: PointSource = {
  text: 'Anaerobic respiration is respiration without oxygen.',
  ideas: ['anaerobic + without oxygen / no oxygen'],
}
const scarcity: PointSource = {
  text: 'If demand is greater than supply, the price rises.',
  ideas: ['demand + greater than / more than / exceeds + supply', 'price + rises'],
}
const runoff: PointSource = {
  text: 'Cutting down forest means less interception and more surface runoff.',
  ideas: ['less interception', 'more + runoff'],
}
const rom: PointSource = {
  text: 'ROM is non-volatile.',
  ideas: ['ROM + non-volatile / not volatile'],
}

export const examples: readonly RuleExample[] = [
  {
    subject: 'chemistry',
    point: rate,
    says: 'temp ↑ → rate ↑ b/c particles have more energy',
    outcome: 'full',
    why: 'temp, two arrows and b/c',
  },
  {
    subject: 'chemistry',
    point: rate,
    says: 'catalyst = cheaper. temp ↓ → rate ↑ b/c particles have more energy',
    outcome: 'contradicted',
    quotes: 'temp ↓ → rate ↑',
    why: 'one arrow of two is upside down',
  },
  {
    subject: 'biology',
    point: photosynthesis,
    says: 'needs light + chlorophyll\nphotosynthesis: CO2 + H2O -> glucose + O2\nhappens in leaves mostly',
    outcome: 'full',
    why: 'formulae for names, an arrow typed on a keyboard',
  },
  {
    subject: 'biology',
    point: photosynthesis,
    says: 'needs light. photosynthesis: glucose + O2 → CO2 + H2O',
    outcome: 'contradicted',
    quotes: 'glucose + O2 → CO2 + H2O',
    why: 'the arrow turns the products into the reactants',
  },
  {
    subject: 'biology',
    point: anaerobic,
    says: 'aerobic = w/ O₂, lots of ATP. anaerobic resp = w/o O₂, makes lactic acid',
    outcome: 'full',
    quotes: 'anaerobic resp = w/o O₂',
    why: 'w/o is "without", O₂ is oxygen',
  },
  {
    subject: 'biology',
    point: anaerobic,
    says: 'resp releases energy from glucose. anaerobic resp = w/ O₂, aerobic = w/o O₂',
    outcome: 'contradicted',
    quotes: 'anaerobic resp = w/ O₂',
    why: 'w/ where w/o is needed',
  },
  {
    subject: 'trade',
    point: scarcity,
    says: 'markets: demand > supply → price ↑ (concert tickets!)',
    outcome: 'full',
    why: 'signs for "greater than", "so" and "rises"',
  },
  {
    subject: 'trade',
    point: scarcity,
    says: 'equilibrium = where the lines cross. if demand > supply => price ↓',
    outcome: 'contradicted',
    quotes: 'demand > supply => price ↓',
    why: 'the price arrow points down',
  },
  {
    subject: 'geography',
    point: runoff,
    says: 'deforestation => ↓ interception => ↑ surface runoff => floods downstream, soil washed away',
    outcome: 'full',
    why: 'arrows before the nouns',
  },
  {
    subject: 'geography',
    point: runoff,
    says: 'deforestation → soil erosion. trees cut → interception ↓ → surface runoff ↓',
    outcome: 'contradicted',
    quotes: 'surface runoff ↓',
    why: 'the chain ends with the wrong arrow',
  },
  {
    subject: 'computing',
    point: rom,
    says: 'RAM = volatile, ROM = non-volatile (boot program)',
    outcome: 'full',
    why: '= is "is", and the comma parts two facts',
  },
  {
    subject: 'computing',
    point: rom,
    says: 'memory types → ROM = volatile, RAM = non-volatile',
    outcome: 'contradicted',
    quotes: 'ROM = volatile',
    why: 'the equals signs are the wrong way about',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'Carbon monoxide binds to haemoglobin, so the blood carries less oxygen.',
      ideas: ['carbon monoxide + binds / sticks / attaches + haemoglobin', 'less oxygen'],
    },
    says: 'co sticks to haemoglobin so less o2 gets carried round, you cant smell it',
    outcome: 'full',
    why: 'formulae without capitals',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'Incomplete combustion makes carbon monoxide.',
      ideas: ['incomplete combustion / too little oxygen / not enough air + carbon monoxide'],
    },
    says: 'fuel + plenty of air → CO2 + H2O. Soot is carbon. Methane is CH4.',
    outcome: 'missed',
    why: 'CO2 begins like CO and is another gas',
  },
  {
    subject: 'chemistry',
    point: { text: 'Bronze is an alloy of copper and tin.', ideas: ['copper', 'tin'] },
    says: 'bronze is an alloy of copper\ntin melts at 232 °C\nbrass is for trumpets',
    outcome: 'partial',
    quotes: 'bronze is an alloy of copper',
    why: 'the line ends the statement, tin is on the next',
  },
  {
    subject: 'biology',
    point: {
      text: 'Osmosis needs a partially permeable membrane.',
      ideas: ['osmosis + partially permeable membrane'],
    },
    says: '• osmosis = water moving\n• dialysis machine: partially permeable membrane lets urea out\n• active transport uses ATP',
    outcome: 'missed',
    why: 'two bullets are two statements',
  },
  {
    subject: 'psychology',
    point: {
      text: 'Short-term memory holds about seven items.',
      ideas: ['short-term memory / STM', 'seven (items)'],
    },
    says: 'STM = approx 7 items, chunking helps\nLTM = no known limit',
    outcome: 'full',
    why: 'a figure for a number word, initials for the term',
  },
  {
    subject: 'waves',
    point: {
      text: 'At resonance the amplitude is at its maximum.',
      ideas: ['resonance', 'amplitude + maximum / greatest'],
    },
    says: 'driving freq = natural freq → resonance & amplitude = max. damping makes it less',
    outcome: 'full',
    why: '& and max',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'A higher concentration gives more frequent collisions.',
      ideas: ['concentration + higher / increases', 'more + collisions'],
    },
    says: 'higher conc = more particles in same space = more collisions per sec',
    outcome: 'full',
    why: 'conc, and = used for "so"',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'A higher concentration gives more frequent collisions.',
      ideas: ['concentration + higher / increases', 'more + collisions'],
    },
    says: 'bigger lumps = slow. ↑ conc → ↓ collisions per sec b/c it gets crowded',
    outcome: 'contradicted',
    quotes: '↑ conc → ↓ collisions',
    why: 'opposite arrows with a believable reason',
  },
  {
    subject: 'history',
    point: {
      text: 'The First World War began in 1914.',
      ideas: ['First World War / WW1 / World War I + 1914'],
    },
    says: 'ww1 = 1914-18, ww2 = 1939-45',
    outcome: 'full',
    quotes: '1914-18',
    why: 'a span of years says when it began',
  },
  {
    subject: 'ferries',
    point: { text: 'How the fare is worked out.', ideas: ['takings + divided by passengers'] },
    says: 'fare = takings / passengers',
    outcome: 'full',
    why: 'a stroke between two quantities divides them',
  },
  {
    subject: 'tides',
    point: { text: 'The sand bar shows at low water.', ideas: ['sand bar', 'low water'] },
    others: [{ text: 'Low water comes twice a day.', ideas: ['low water / LW', 'twice'] }],
    says: 'sand bar shows at LW',
    outcome: 'full',
    why: 'the letters that a point gives for a term stand for it in the other points too',
  },
]
