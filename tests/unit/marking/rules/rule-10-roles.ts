import type { RuleExample } from './example.ts'

export const examples: readonly RuleExample[] = [
  {
    subject: 'hormones',
    point: {
      text: 'Insulin makes the liver turn glucose into glycogen.',
      ideas: ['glucose (turned) into glycogen'],
    },
    says: 'Insulin comes from the pancreas. Insulin makes the liver turn glycogen into glucose.',
    outcome: 'contradicted',
    quotes: 'turn glycogen into glucose',
    why: 'what turns into what is swapped',
  },
  {
    subject: 'chemistry',
    title: 'Electrolysis',
    point: {
      text: 'Oxidation takes place at the anode.',
      ideas: ['oxidation + anode'],
    },
    others: [{ text: 'Reduction takes place at the cathode.', ideas: ['reduction + cathode'] }],
    says: 'Electrolysis needs a molten or dissolved salt. Reduction takes place at the anode and oxidation takes place at the cathode.',
    outcome: 'contradicted',
    quotes: 'oxidation takes place at the cathode',
    why: 'the electrodes have changed places',
  },
  {
    subject: 'trade',
    point: {
      text: 'The importer pays the tariff to the government.',
      ideas: ['importer + pays + government'],
    },
    says: 'Free trade means no barriers. With a tariff the government pays the importer.',
    outcome: 'contradicted',
    quotes: 'the government pays the importer',
    why: 'payer and payee swapped',
  },
  {
    subject: 'history',
    point: {
      text: 'Prussia defeated France in the war of 1870.',
      ideas: ['Prussia + defeated / beat + France'],
    },
    says: 'Bismarck was the chancellor. In the war of 1870 France defeated Prussia.',
    outcome: 'contradicted',
    quotes: 'France defeated Prussia',
    why: 'the winner made the loser',
  },
  {
    subject: 'computing',
    point: {
      text: 'The client sends a request to the server.',
      ideas: ['client + sends + request + server'],
    },
    says: 'web pages are in html. the server sends a request to the client',
    outcome: 'contradicted',
    quotes: 'the server sends a request to the client',
    why: 'sender and receiver swapped',
  },
  {
    subject: 'psychology',
    point: {
      text: 'In proactive interference, old memories disrupt new ones.',
      ideas: ['old + disrupt(s) + new'],
    },
    others: [
      {
        text: 'In retroactive interference, new memories disrupt old ones.',
        ideas: ['new + disrupt(s) + old'],
      },
    ],
    says: 'forgetting can be decay as well. in proactive interference new memories disrupt old ones',
    outcome: 'contradicted',
    quotes: 'in proactive interference new memories disrupt old ones',
    why: "one term with its partner's description",
  },
  {
    subject: 'plates',
    point: {
      text: 'The oceanic plate sinks under the continental plate.',
      ideas: ['oceanic (plate) + sinks / goes + under / beneath + continental (plate)'],
    },
    says: 'A trench forms where they meet: the continental plate sinks beneath the oceanic plate.',
    outcome: 'contradicted',
    quotes: 'the continental plate sinks beneath the oceanic plate',
    why: 'the wrong plate goes down',
  },
  {
    subject: 'blood',
    title: 'Blood vessels',
    point: {
      text: 'Arteries carry blood away from the heart.',
      ideas: ['away from (the) heart'],
    },
    others: [
      { text: 'Veins carry blood to the heart.', ideas: ['to (the) heart / towards (the) heart'] },
    ],
    says: 'vessels:\n- veins carry blood away from the heart\n- arteries carry blood to the heart\n- capillaries are one cell thick',
    outcome: 'contradicted',
    quotes: 'arteries carry blood to the heart',
    why: 'two vessels, two jobs, crossed over',
  },
  {
    subject: 'space',
    point: { text: 'Jupiter is larger than Saturn.' },
    says: 'Saturn has rings. Saturn is larger than Jupiter, and both are made of gas.',
    outcome: 'contradicted',
    quotes: 'Saturn is larger than Jupiter',
    why: 'the two sides of a comparison swapped',
  },
  {
    subject: 'hormones',
    point: {
      text: 'Insulin makes the liver turn glucose into glycogen.',
      ideas: ['glucose (turned) into glycogen'],
    },
    says: 'After a meal insulin acts on the liver and there the glucose is turned into glycogen to be stored.',
    outcome: 'full',
    quotes: 'the glucose is turned into glycogen',
    why: 'the passive keeps the roles',
  },
  {
    subject: 'history',
    point: {
      text: 'Prussia defeated France in the war of 1870.',
      ideas: ['Prussia + defeated / beat + France'],
    },
    says: 'Napoleon III was captured at Sedan. France was defeated by Prussia and the German Empire was declared.',
    outcome: 'full',
    why: 'named first, and still the loser',
  },
  {
    subject: 'computing',
    point: {
      text: 'The client sends a request to the server.',
      ideas: ['client + sends + request + server'],
    },
    says: 'a request is sent to the server by the client, then a page comes back',
    outcome: 'full',
    why: 'the sender comes last in the passive',
  },
  {
    subject: 'oceans',
    point: { text: 'The Atlantic Ocean is smaller than the Pacific Ocean.' },
    says: 'Five oceans. The Pacific Ocean is larger than the Atlantic Ocean, it covers nearly a third of the globe.',
    outcome: 'full',
    why: 'the comparison from the other side',
  },
  {
    subject: 'plates',
    point: {
      text: 'The oceanic plate sinks under the continental plate.',
      ideas: ['oceanic (plate) + sinks / goes + under / beneath + continental (plate)'],
    },
    says: 'subduction! oceanic plate is denser, so it is the oceanic one that goes beneath the continental plate. volcanoes behind.',
    outcome: 'full',
    why: 'a cleft sentence says who does it',
  },
  {
    subject: 'chemistry',
    title: 'Electrolysis',
    point: {
      text: 'Reduction takes place at the cathode.',
      ideas: ['reduction + cathode'],
    },
    others: [{ text: 'Oxidation takes place at the anode.', ideas: ['oxidation + anode'] }],
    says: 'At the anode you get oxidation and at the cathode you get reduction. Ions carry the charge in between.',
    outcome: 'full',
    why: 'partners side by side, each with its own',
  },
  {
    subject: 'blood',
    title: 'Blood vessels',
    point: {
      text: 'Veins carry blood to the heart and have valves.',
      ideas: ['to (the) heart / towards (the) heart', 'valves'],
    },
    others: [
      { text: 'Arteries carry blood away from the heart.', ideas: ['away from (the) heart'] },
    ],
    says: 'Arteries take blood away from the heart while veins, which have valves, bring it back to the heart.',
    outcome: 'full',
    why: 'while sets the partners apart',
  },
  {
    subject: 'energy',
    point: {
      text: 'A generator turns kinetic energy into electrical energy.',
      ideas: [
        'kinetic (energy) to electrical (energy) / kinetic (energy) into electrical (energy)',
      ],
    },
    others: [
      {
        text: 'A motor turns electrical energy into kinetic energy.',
        ideas: [
          'electrical (energy) to kinetic (energy) / electrical (energy) into kinetic (energy)',
        ],
      },
    ],
    says: 'motor: electrical energy to kinetic energy\ngenerator: kinetic energy to electrical energy',
    outcome: 'full',
    why: 'each device with its own order',
  },
  {
    subject: 'trade',
    point: {
      text: 'The importer pays the tariff to the government.',
      ideas: ['importer + pays + government'],
    },
    says: 'tariff = tax on goods from abroad. it is paid to the government by the importer, who then puts prices up',
    outcome: 'full',
    why: 'paid by and paid to keep payer and payee',
  },

  {
    subject: 'ecology',
    point: { text: 'Dog whelks eat barnacles.' },
    says: 'Rock pools: limpets scrape off algae, crabs scavenge at night. Barnacles eat dog whelks. Seaweed holds on with a holdfast, it has no roots.',
    outcome: 'contradicted',
    quotes: 'Barnacles eat dog whelks',
    why: 'eater and eaten swapped, in a point without ideas',
  },
  {
    subject: 'ecology',
    point: { text: 'Dog whelks eat barnacles.' },
    says: 'on the lower rocks there are fewer barnacles.. they get eaten by dog whelks down there. higher up it is too dry for the whelks',
    outcome: 'full',
    why: 'the eater comes after by',
  },
  {
    subject: 'sediment',
    point: {
      text: 'Fine sand settles more slowly because its grains have a larger surface for their weight.',
      ideas: ['fine sand + slower / more slowly', 'larger surface'],
    },
    says: 'Pebbles have a larger surface than fine sand, so they settle more slowly.',
    outcome: 'partial',
    why: 'what follows is said of the pebbles, not of what stands behind than',
  },
  {
    subject: 'law of the sea',
    point: {
      text: 'The harbour master orders the pilot on board.',
      ideas: ['harbour master', 'orders + pilot'],
    },
    says: 'A ship that the pilot cannot see from the tower: the harbour master orders a pilot on board.',
    outcome: 'full',
    why: 'who does what in a relative clause is no exchange of roles',
  },
]
