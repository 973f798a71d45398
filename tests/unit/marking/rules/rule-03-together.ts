import type { RuleExample } from './example.ts'

export const examples: readonly RuleExample[] = [
  {
    subject: 'blood',
    point: {
      text: 'Red blood cells have no nucleus, which leaves more room for haemoglobin.',
      ideas: ['no nucleus', 'room / space + haemoglobin'],
    },
    says: 'Bacteria have no nucleus, their DNA floats about. Plants need room for their roots. The lungs have millions of alveoli. Haemoglobin has iron in it.',
    outcome: 'missed',
    why: 'each idea belongs to something else on the page',
  },
  {
    subject: 'electricity',
    point: {
      text: 'A transformer works because the changing magnetic field in its iron core induces a voltage in the second coil.',
      ideas: ['changing + magnetic field', 'iron core', 'induces / induced + voltage'],
    },
    says: "The Earth's magnetic field is slowly changing and it comes from the iron core deep down. Plugs have a fuse.",
    outcome: 'missed',
    why: 'the same words, about the planet',
  },
  {
    subject: 'trade',
    point: {
      text: 'A country gains when it specialises in goods with its lowest opportunity cost.',
      ideas: ['specialise(s)', 'lowest opportunity cost'],
    },
    says: 'On an assembly line workers specialise in one small job. Money is a unit of account. If I spend the evening revising, the opportunity cost is the film I miss.',
    outcome: 'missed',
    why: 'workers here, a film there, no country anywhere',
  },
  {
    subject: 'rocks',
    point: {
      text: 'Rain takes up carbon dioxide and becomes carbonic acid, which dissolves limestone.',
      ideas: ['rain(water) + carbon dioxide', 'carbonic acid', 'dissolves + limestone / rock'],
    },
    says: 'Rainwater takes up carbon dioxide as it falls. Cliffs fall when the waves undercut them. Basalt has small crystals. Sugar dissolves faster in hot tea.',
    outcome: 'partial',
    quotes: 'Rainwater takes up carbon dioxide as it falls',
    why: 'the tea does not dissolve the limestone',
  },
  {
    subject: 'computing',
    point: {
      text: 'A compiler translates the whole program before it is run.',
      ideas: ['translates / converts + whole', 'before + run(s) / executed'],
    },
    says: 'An interpreter translates a program one line at a time. Always test the whole thing before you hand it in. Loops run until the condition is false.',
    outcome: 'missed',
    why: 'the pieces come from three unrelated remarks',
  },
  {
    subject: 'psychology',
    point: {
      text: 'People conform more when the task is difficult, because they look to others for information.',
      ideas: ['task + difficult / hard', 'look to others / copy others'],
    },
    says: 'Babies copy others from a very early age. Hypnosis is controversial. A task is hard to finish if you are tired.',
    outcome: 'missed',
    why: 'nothing here is about conformity',
  },
  {
    subject: 'history',
    point: {
      text: 'The League of Nations was weak because the USA never joined and it had no army.',
      ideas: ['USA / America + never joined / did not join', 'no army'],
    },
    says: 'The USA joined the First World War in 1917. Iceland has no army to this day. The League of Nations met in Geneva.',
    outcome: 'missed',
    why: 'the country without an army is another one',
  },
  {
    subject: 'air',
    point: { text: 'Warm air rises over the equator and leaves low pressure there.' },
    says: 'Pressure in a tyre rises when it gets warm. The equator is latitude zero. A low tide uncovers the rocks.',
    outcome: 'missed',
    why: 'the words of the point spread over three topics',
  },
  {
    subject: 'blood',
    point: {
      text: 'Red blood cells have no nucleus, which leaves more room for haemoglobin.',
      ideas: ['no nucleus', 'room / space + haemoglobin'],
    },
    says: 'White cells fight disease. Red blood cells have no nucleus. That leaves more space for haemoglobin. Platelets help clotting.',
    outcome: 'full',
    why: 'two neighbouring sentences on one subject',
  },
  {
    subject: 'cells',
    point: {
      text: 'Root hair cells have a large surface area and many mitochondria to take in minerals.',
      ideas: [
        'large surface area',
        'many mitochondria / lots of mitochondria',
        'minerals / mineral ions',
      ],
    },
    says: 'root hair cell\n- large surface area\n- lots of mitochondria\n- so it can take in minerals from the soil\n\nxylem\n- dead, hollow',
    outcome: 'full',
    why: 'bullets under the heading they belong to',
  },
  {
    subject: 'electricity',
    point: {
      text: 'A transformer works because the changing magnetic field in its iron core induces a voltage in the second coil.',
      ideas: ['changing + magnetic field', 'iron core', 'induces / induced + voltage'],
    },
    says: 'In a transformer the alternating current in the first coil makes a changing magnetic field. This field passes through the iron core, and a voltage is induced in the second coil.',
    outcome: 'full',
    why: 'the second sentence carries the field on',
  },
  {
    subject: 'rocks',
    point: {
      text: 'Rain takes up carbon dioxide and becomes carbonic acid, which dissolves limestone.',
      ideas: ['rain(water) + carbon dioxide', 'carbonic acid', 'dissolves + limestone / rock'],
    },
    says: 'Limestone has caves. How? Rain takes up carbon dioxide on its way down. It turns into weak carbonic acid. The acid slowly dissolves the limestone along its cracks.',
    outcome: 'full',
    why: 'a chain of three short sentences',
  },
  {
    subject: 'computing',
    point: {
      text: 'A compiler translates the whole program before it is run.',
      ideas: ['translates / converts + whole', 'before + run(s) / executed'],
    },
    says: 'A compiler converts the whole program into machine code. It does this before the program is run.',
    outcome: 'full',
    why: 'the when comes in the sentence after the what',
  },
  {
    subject: 'history',
    point: {
      text: 'The League of Nations was weak because the USA never joined and it had no army.',
      ideas: ['USA / America + never joined / did not join', 'no army'],
    },
    says: 'problems of the League: America never joined; it had no army of its own; decisions had to be unanimous.',
    outcome: 'full',
    why: 'one list of faults, all of the League',
  },
  {
    subject: 'air',
    point: { text: 'Warm air rises over the equator and leaves low pressure there.' },
    says: 'Trade winds blow from the tropics. At the equator the sun heats the ground. The warm air rises, and it leaves an area of low pressure there.',
    outcome: 'full',
    why: 'the place is set in one sentence and used in the next',
  },
  {
    subject: 'trade',
    point: {
      text: 'A monopoly can charge a high price because it has no rivals.',
      ideas: ['high(er) price', 'no rivals / no competitors / no competition'],
    },
    says: 'A monopoly can charge a higher price. Gold is heavy and soft. On the island there was no competition for seats on the ferry.',
    outcome: 'partial',
    quotes: 'A monopoly can charge a higher price',
    why: 'the missing half turns up in a remark about something else',
  },

  {
    subject: 'psychology',
    point: {
      text: 'In a double-blind trial neither the participants nor the researchers know who gets the drug, which prevents bias.',
      ideas: ['participants', 'researchers', 'prevents / avoids / reduces + bias'],
    },
    says: 'Types of design: repeated measures, independent groups. A hypothesis is a prediction you can test. In a double-blind trial the participants do not know who gets the real drug. The researchers do not know it either. This prevents bias when the results are read. Ethics: consent, right to withdraw.',
    outcome: 'full',
    why: 'three sentences in the middle of a long page',
  },

  {
    subject: 'trade',
    point: { text: 'A large firm buys in bulk, so its cost per unit is lower.' },
    says: 'economies of scale:\n- a large firm buys its materials in bulk\n- this makes the cost per unit lower\n- a small shop has to pay the full price',
    outcome: 'full',
    why: 'cause in one bullet, effect in the next',
  },
  {
    subject: 'boats',
    point: {
      text: 'A ketch has two masts; a sloop has one.',
      ideas: ['ketch + two', 'sloop + one (mast)'],
    },
    says: 'kinds of boat:\n- ketch = two masts\n- sloop = one mast\n- dinghy = no deck',
    outcome: 'full',
    why: 'the items of one list carry on its subject',
  },
]
