import type { RuleExample } from './example.ts'

export const examples: readonly RuleExample[] = [
  {
    subject: 'plants',
    point: {
      text: 'Chlorophyll absorbs light, and the energy is used to make glucose.',
      ideas: ['chlorophyll + absorbs + light', 'make(s) + glucose'],
    },
    says: 'photosynthesis!! chlorophyll, light, glucose, oxygen, stomata, CO2, water, leaf',
    outcome: 'missed',
    why: 'a string of terms in a row',
  },
  {
    subject: 'trade',
    title: 'Supply and demand',
    point: {
      text: 'The market price settles where supply is equal to demand.',
      ideas: ['supply + equal(s) + demand'],
    },
    says: 'Supply and demand. This topic was all about supply and demand and the curves you draw for them.',
    outcome: 'missed',
    why: 'the title of the topic said back',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'In electrolysis, oxidation takes place at the anode.',
      ideas: ['oxidation', 'anode'],
    },
    says: 'ELECTROLYSIS\n- anode\n- cathode\n- oxidation\n- electrolyte\n- ions',
    outcome: 'missed',
    why: 'bullets that hold one bare term each',
  },
  {
    subject: 'history',
    point: {
      text: 'The Treaty of Versailles made Germany accept the blame for the war and pay reparations.',
      ideas: ['accept(s) / take(s) + blame / guilt', 'pay(s) + reparations'],
    },
    says: 'In this lesson we covered the Treaty of Versailles, reparations, the question of war guilt, and Germany in 1919.',
    outcome: 'missed',
    why: 'a list of what the lesson was about',
  },
  {
    subject: 'computing',
    point: {
      text: 'A router reads the destination address in the packet header and passes the packet on.',
      ideas: ['router + reads', 'destination address', 'header'],
    },
    says: 'Key words for networks: router; packet; header; destination address; switch; bandwidth. Wi-Fi uses radio waves.',
    outcome: 'missed',
    why: 'a glossary without the definitions',
  },
  {
    subject: 'rivers',
    point: {
      text: 'Why rivers drop sediment on the inside of a bend: the water is slower there.',
      ideas: ['slow(er)'],
    },
    says: 'Rivers drop sediment on the inside of a bend. They also have a source and a mouth.',
    outcome: 'missed',
    why: 'what the point asks about is repeated, the reason is not there',
  },
  {
    subject: 'psychology',
    point: {
      text: 'A cue that was present at encoding helps retrieval later.',
      ideas: ['cue + encoding / learning', 'helps / improves + retrieval / recall'],
    },
    says: 'memory topic -- cue / context / encoding / retrieval / specificity / rehearsal',
    outcome: 'missed',
    why: 'terms with slashes between them',
  },
  {
    subject: 'cells',
    point: { text: 'Enzymes are denatured by heat because the active site changes shape.' },
    says: 'enzymes: heat, active site, shape, denatured, substrate, lock and key',
    outcome: 'missed',
    why: 'a heap after a colon is no statement',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'Name two things that speed up a reaction.',
      any: 2,
      ideas: [
        '(higher) temperature',
        '(higher) concentration',
        '(larger) surface area',
        'catalyst',
      ],
    },
    says: 'things that speed up a reaction: higher temperature, a catalyst',
    outcome: 'full',
    why: 'a list point may be answered by a list',
  },
  {
    subject: 'trade',
    point: {
      text: 'Name three barriers to trade.',
      any: 3,
      ideas: ['tariff', 'quota', 'embargo', 'subsidy'],
    },
    says: 'barriers to trade\n- quotas\n- tariffs\n- embargoes',
    outcome: 'full',
    why: 'a list point in bullets, in the plural',
  },
  {
    subject: 'plants',
    point: {
      text: 'Chlorophyll absorbs light, and the energy is used to make glucose.',
      ideas: ['chlorophyll + absorbs + light', 'make(s) + glucose'],
    },
    says: 'leaves are thin so gas gets in easily\nchlorophyll absorbs light -> energy used to make glucose',
    outcome: 'full',
    quotes: 'chlorophyll absorbs light',
    why: 'short notes that do say it',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'In electrolysis, oxidation takes place at the anode.',
      ideas: ['oxidation', 'anode'],
    },
    says: 'electrolyte = liquid with ions that can move. anode = electrode where oxidation happens.',
    outcome: 'full',
    why: 'an equals sign that defines is a statement',
  },
  {
    subject: 'cells',
    title: 'Osmosis',
    point: {
      text: 'Osmosis is the movement of water through a partially permeable membrane from a dilute to a concentrated solution.',
      ideas: [
        'water + moves / movement',
        'partially permeable membrane / selectively permeable membrane',
        'dilute to (a) (more) concentrated',
      ],
    },
    says: 'diffusion, osmosis, active transport. In osmosis water moves through a partially permeable membrane, from a dilute to a more concentrated solution. e.g. root hairs.',
    outcome: 'full',
    quotes: 'water moves through a partially permeable membrane',
    why: 'a term list first, then the thing itself',
  },
  {
    subject: 'history',
    point: {
      text: 'The Treaty of Versailles made Germany accept the blame for the war and pay reparations.',
      ideas: ['accept(s) / take(s) + blame / guilt', 'pay(s) + reparations'],
    },
    says: 'Wilson had his fourteen points. What people hated about Versailles: Germany had to take all the blame for the war and also pay reparations.',
    outcome: 'full',
    why: 'said of its subject in an informal sentence',
  },
  {
    subject: 'trade',
    title: 'Price and demand',
    point: { text: 'When the price of a good rises, the demand for it falls.' },
    says: 'if the price of a good goes up, demand for it falls (people look for something else)',
    outcome: 'full',
    why: 'title words count once something is said with them',
  },
  {
    subject: 'computing',
    point: {
      text: 'A router reads the destination address in the packet header and passes the packet on.',
      ideas: ['router + reads', 'destination address', 'header'],
    },
    says: 'Every packet has a header. The router reads the destination address in this header to know where it goes next.',
    outcome: 'full',
    why: 'the same terms with verbs between them',
  },

  {
    subject: 'space',
    title: 'Seasons',
    point: { text: 'The seasons are caused by the tilt of the axis of the Earth.' },
    says: 'SEASONS: tilt, axis, orbit, Earth, summer, winter, solstice, equinox. The year has four of them and the leaves fall in autumn.',
    outcome: 'missed',
    why: 'a heap, then a remark that everyone could make',
  },
]
