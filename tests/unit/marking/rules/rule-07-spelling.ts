import type { RuleExample } from './example.ts'

export const examples: readonly RuleExample[] = [
  {
    subject: 'cells',
    point: {
      text: 'Skin is repaired by cells dividing by mitosis.',
      ideas: ['mitosis'],
    },
    says: 'A cut in the skin heals because the cells round it divide by meiosis.',
    outcome: 'missed',
    why: 'meiosis is a word of its own',
  },
  {
    subject: 'cells',
    point: {
      text: 'Growth happens through mitosis.',
      ideas: ['mitosis'],
    },
    says: 'plants and animals grow by meitosis which copies the cell',
    outcome: 'missed',
    why: 'meitosis could be either of two terms',
  },
  {
    subject: 'hormones',
    point: {
      text: 'The hormone that acts when blood sugar is low is glucagon.',
      ideas: ['glucagon'],
    },
    says: 'if blood sugar is too low then the hormone that acts is glycogen',
    outcome: 'missed',
    why: 'glycogen is the store, not the hormone',
  },
  {
    subject: 'hormones',
    point: {
      text: 'Glucagon puts the blood sugar back up.',
      ideas: ['glucagon', 'blood sugar + up / raises / increases'],
    },
    says: 'After a run, the hormone glucogen puts the blood sugar back up.',
    outcome: 'partial',
    why: 'glucogen lies between glucagon and glycogen',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'The small unsaturated molecule that cracking gives is ethene.',
      ideas: ['ethene'],
    },
    says: 'they crack the heavy fractions because there is too much of them. Cracking gives ethane.',
    outcome: 'missed',
    why: 'one letter makes it another compound',
  },
  {
    subject: 'climate',
    point: {
      text: 'The poles receive less insolation because the sun is low in the sky.',
      ideas: ['less insolation', 'sun + low'],
    },
    says: 'Poles receive less insulation because the sun is so low in the sky there.',
    outcome: 'partial',
    why: 'insulation is an everyday word with another meaning',
  },
  {
    subject: 'body',
    point: {
      text: 'Urine leaves the bladder through the urethra.',
      ideas: ['urethra'],
    },
    says: 'the bladder stores urine, it leaves the bladder down the urether',
    outcome: 'missed',
    why: 'urether is as near to ureter',
  },
  {
    subject: 'plants',
    point: {
      text: 'The cell wall of a plant is made of cellulose.',
      ideas: ['cellulose'],
    },
    says: 'Plant cells have a wall made of cellulase. Fungi have chitin instead.',
    outcome: 'missed',
    why: 'cellulase is the enzyme',
  },
  {
    subject: 'coast',
    point: {
      text: 'In corrasion, pebbles thrown at the cliff grind it away.',
      ideas: ['corrasion / abrasion', 'pebbles / stones + grind'],
    },
    says: 'Corrosion: pebbles get thrown at the cliff and grind it away like sandpaper.',
    outcome: 'partial',
    why: 'corrosion is a different process',
  },
  {
    subject: 'plants',
    point: {
      text: 'Plants take nitrate from the soil to build proteins.',
      ideas: ['nitrate', 'protein(s)'],
    },
    says: 'Plants need nitrite from the soil so that they can build proteins, and magnesium to be green',
    outcome: 'partial',
    why: 'nitrite is a different ion',
  },
  {
    subject: 'electricity',
    point: {
      text: 'The resistance of a thermistor falls as the temperature rises.',
      ideas: ['resistance + falls / decreases', 'temperature + rises / increases'],
    },
    says: 'for a thermister: when the temprature rises the resistence falls. used in fire alarms',
    outcome: 'full',
    why: 'no other words lie near these three slips',
  },
  {
    subject: 'cells',
    point: {
      text: 'Mitochondria are where aerobic respiration takes place.',
      ideas: ['mitochondria', 'aerobic respiration'],
    },
    says: 'arobic resperation takes place in the mitocondria',
    outcome: 'full',
    why: 'three slips in three words and still no doubt',
  },
  {
    subject: 'trade',
    point: {
      text: 'A government can put a tariff on imports to protect jobs at home.',
      ideas: ['tariff', 'protect(s) + jobs'],
    },
    says: 'the goverment may put a tarrif on imports, to protect peoples jobs at home',
    outcome: 'full',
    why: 'a doubled letter in the wrong place',
  },
  {
    subject: 'computing',
    point: {
      text: 'A binary search needs a sorted list and halves it at every step.',
      ideas: ['sorted', 'halves'],
    },
    says: 'binary serch is a fast algorythm, but needs a sorted list. each step it halfs the list',
    outcome: 'full',
    why: 'halfs for halves can be read only one way',
  },
  {
    subject: 'psychology',
    point: {
      text: 'The hippocampus forms new memories.',
      ideas: ['hippocampus', 'new memories'],
    },
    says: 'amygdala -> fear. The hipocampus is the part that forms new memorys.',
    outcome: 'full',
    why: 'one letter short of a term with no neighbour',
  },
  {
    subject: 'plants',
    point: { text: 'Photosynthesis takes place in the chloroplasts.' },
    says: 'fotosynthesis takes place in the cloroplasts. roots dont have any, they are in the dark',
    outcome: 'full',
    why: 'spelt by ear, in a point without ideas',
  },
  {
    subject: 'history',
    point: { text: 'Parliament won the English Civil War.' },
    says: 'the english civil war was won by parliment. cromwell had the better army',
    outcome: 'full',
    why: 'parliment can only be parliament',
  },
  {
    subject: 'air',
    point: {
      text: 'Warm air rises, cools, and its vapour condenses into clouds.',
      ideas: ['rises', 'cools', 'condenses + clouds'],
    },
    says: 'Warm air rises and as it gets higher it cools, then the water vapor condences into clouds. Rain after that.',
    outcome: 'full',
    why: 'c for s leaves no doubt',
  },

  {
    subject: 'computing',
    point: { text: 'An interpreter translates a program line by line.' },
    says: 'a compiler does it in one go. An interpeter translates the progam line by line so you see erors as they come',
    outcome: 'full',
    why: 'letters dropped in haste',
  },
  {
    subject: 'glaciers',
    point: {
      text: 'Ice in a valley glacier flows faster in the middle than at the sides.',
      ideas: ['glacier', 'faster + middle', 'scrapes / scraped / plucks'],
    },
    says: 'A glacier is fasster in the midle than at its sides, and it keeps scrayping the rock.',
    outcome: 'full',
    why: 'scrayping can only be scraping, although the point has the word in other forms only',
  },
  {
    subject: 'harbours',
    point: {
      text: 'The tidal range of a harbour decides how large a ship can come in.',
      ideas: ['tidal range', 'large / size + ship(s)'],
    },
    says: 'the tidal rage decides what size of ship gets in',
    outcome: 'full',
    why: 'beside tidal, one letter off from range: no doubt what is meant',
  },
  {
    subject: 'harbours',
    point: {
      text: 'The tide gauge is read at the coast every hour.',
      ideas: ['tide gauge', 'read + coast'],
    },
    says: 'The tide gauge is read every hour, whatever the cost.',
    outcome: 'partial',
    why: 'cost is a word of its own where nothing beside it makes it the coast',
  },
  {
    subject: 'soils',
    point: {
      text: 'Heat insolation at the surface dries the soil.',
      ideas: ['heat insolation', 'dries + soil'],
    },
    says: 'heat insulation dries the soil',
    outcome: 'partial',
    why: 'a long word that looks like the term is another term',
  },
]
