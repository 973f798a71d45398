import type { RuleExample } from './example.ts'

export const examples: readonly RuleExample[] = [
  {
    subject: 'cells',
    point: {
      text: 'A plant cell has a cell wall made of cellulose.',
      ideas: ['cell wall', 'cellulose'],
    },
    says: "bacteria have walls too. plant cells don't have a cell wall of cellulose, just a membrane",
    outcome: 'contradicted',
    quotes: "plant cells don't have a cell wall of cellulose",
    why: "don't have, with every key word present",
  },
  {
    subject: 'chemistry',
    point: {
      text: 'A catalyst is not used up in the reaction.',
      ideas: ['not used up / unchanged'],
    },
    says: 'A catalyst speeds the reaction along. The catalyst is used up in the reaction, so you must add more.',
    outcome: 'contradicted',
    quotes: 'The catalyst is used up in the reaction',
    why: 'the point says not and the page leaves it out',
  },
  {
    subject: 'electricity',
    point: {
      text: 'A current flows only in a complete circuit.',
      ideas: ['complete circuit / closed circuit'],
    },
    says: 'Cells push charge round. A current can flow without a complete circuit.',
    outcome: 'contradicted',
    quotes: 'A current can flow without a complete circuit',
    why: 'without takes the condition away',
  },
  {
    subject: 'coast',
    point: {
      text: 'Groynes trap sand on the beach.',
      ideas: ['groynes + trap + sand'],
    },
    says: 'Groynes are wooden fences going out to sea. Groynes stop sand from being trapped on the beach.',
    outcome: 'contradicted',
    quotes: 'Groynes stop sand from being trapped',
    why: 'stop turns the trapping round',
  },
  {
    subject: 'trade',
    point: {
      text: 'A tariff brings in revenue for the government.',
      ideas: ['brings in / raises + revenue'],
    },
    says: 'quota = limit on amount. a tariff never brings in any revenue for the government, that is its big drawback',
    outcome: 'contradicted',
    quotes: 'a tariff never brings in any revenue for the government',
    why: 'never, in the middle of the right words',
  },
  {
    subject: 'psychology',
    point: {
      text: 'Negative reinforcement strengthens a behaviour.',
      ideas: ['strengthens + behaviour'],
    },
    says: 'Negative reinforcement weakens a behaviour rather than strengthening it, whereas positive is a treat.',
    outcome: 'contradicted',
    quotes: 'weakens a behaviour rather than strengthening it',
    why: 'rather than, before the right word',
  },
  {
    subject: 'medicine',
    point: {
      text: 'Penicillin stops bacteria from building their cell walls.',
      ideas: ['stops / prevents + building + cell walls'],
    },
    says: 'Penicillin came from a mould. It works by helping bacteria to build their cell walls.',
    outcome: 'contradicted',
    quotes: 'helping bacteria to build their cell walls',
    why: 'helping where the point says stopping',
  },
  {
    subject: 'computing',
    point: { text: 'A solid state drive has no moving parts.' },
    says: 'a solid state drive has moving parts, thats why it wears out',
    outcome: 'contradicted',
    quotes: 'a solid state drive has moving parts',
    why: 'the no of the point is gone',
  },
  {
    subject: 'history',
    point: {
      text: 'Elizabeth I never married.',
      ideas: ['never married / did not marry / unmarried'],
    },
    says: 'Elizabeth I was the last Tudor. In the end Elizabeth I married Robert Dudley to have an heir.',
    outcome: 'contradicted',
    quotes: 'Elizabeth I married Robert Dudley',
    why: 'a wedding that never was',
  },
  {
    subject: 'cells',
    point: {
      text: 'A plant cell has a cell wall made of cellulose.',
      ideas: ['cell wall', 'cellulose'],
    },
    says: 'Animal cells have no cell wall, but a plant cell does have a cell wall and it is made of cellulose.',
    outcome: 'full',
    why: 'the negation belongs to the animal cell',
  },
  {
    subject: 'electricity',
    point: {
      text: 'A current flows only in a complete circuit.',
      ideas: ['complete circuit / closed circuit'],
    },
    says: 'no current flows without a complete circuit, the switch makes a gap',
    outcome: 'full',
    why: 'no and without cancel',
  },
  {
    subject: 'trade',
    point: {
      text: 'A tariff brings in revenue for the government.',
      ideas: ['brings in / raises + revenue'],
    },
    says: 'A tariff not only makes imports dearer but also brings in revenue for the government.',
    outcome: 'full',
    why: 'not only … but also adds and does not deny',
  },
  {
    subject: 'hormones',
    point: {
      text: 'Insulin lets cells take up glucose.',
      ideas: ['take up / absorb + glucose'],
    },
    says: 'type 1 diabetes: the body makes no insulin. without insulin the cells cannot take up glucose so it stays in the blood',
    outcome: 'full',
    why: 'without it they cannot, so with it they can',
  },
  {
    subject: 'computing',
    point: { text: 'A solid state drive has no moving parts.' },
    says: "hard disks spin. a solid state drive doesn't have any moving parts",
    outcome: 'full',
    why: "doesn't have any is has no",
  },
  {
    subject: 'medicine',
    point: {
      text: 'Penicillin stops bacteria from building their cell walls.',
      ideas: ['stops / prevents + building + cell walls'],
    },
    says: 'Penicillin works because with it in the way bacteria cannot build their cell walls, so they burst. Viruses have no wall, no effect on them.',
    outcome: 'full',
    why: 'cannot build is stopped from building',
  },
  {
    subject: 'electricity',
    point: {
      text: 'Metals conduct because their outer electrons are free to move.',
      ideas: ['electrons + free to move / delocalised'],
    },
    says: "In a metal the electrons aren't fixed to one atom, they are free to move, so metals conduct. Plastic doesn't.",
    outcome: 'full',
    why: 'not this but that: the that counts',
  },
  {
    subject: 'waves',
    point: {
      text: 'Sound cannot travel through a vacuum.',
      ideas: ['cannot travel / does not travel + vacuum'],
    },
    says: 'light can go through a vacuum, sound never travels through a vacuum bc there are no particles to pass it on',
    outcome: 'full',
    why: 'never for cannot, light left aside',
  },
  {
    subject: 'coast',
    point: {
      text: 'Waves break when they reach shallow water.',
      ideas: ['break', 'shallow water'],
    },
    says: "Out at sea there's just swell. The waves don't break until they reach shallow water near the shore.",
    outcome: 'full',
    why: 'not … until says when it does happen',
  },

  {
    subject: 'history',
    point: { text: 'The Weimar Republic used proportional representation in its elections.' },
    says: 'Weimar had a president, elected every seven years, and a Reichstag. Article 48 gave emergency powers. The Weimar Republic did not use proportional representation in its elections, so big parties won most seats. Hyperinflation hit in 1923.',
    outcome: 'contradicted',
    quotes: 'did not use proportional representation',
    why: 'one not, buried in a page that is otherwise right',
  },

  {
    subject: 'biology',
    point: { text: 'Viruses cannot reproduce outside a living cell.' },
    says: 'antibiotics only work on bacteria. viruses can reproduce outside a living cell, like on door handles',
    outcome: 'contradicted',
    quotes: 'viruses can reproduce outside a living cell',
    why: 'can for cannot',
  },
  {
    subject: 'biology',
    point: { text: 'Viruses cannot reproduce outside a living cell.' },
    says: "Flu, colds and measles are all viruses. Viruses aren't able to reproduce unless they are inside a living cell.",
    outcome: 'full',
    why: 'not able unless inside is cannot outside',
  },
  {
    subject: 'boats',
    point: {
      text: 'Rope that is not dried rots.',
      ideas: ['not dried / wet', 'rots / decays'],
    },
    says: 'If you dont dry it it rots.',
    outcome: 'full',
    why: 'the denial ends with its clause, although no comma says so',
  },
]
