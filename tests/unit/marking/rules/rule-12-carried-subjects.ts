import type { PointSource, RuleExample } from './example.ts'

const quota: PointSource = {
  text: 'An import quota raises the price at home.',
  ideas: ['quota + raises / pushes up / higher + price'],
}
const thermistor: PointSource = {
  text: 'The resistance of a thermistor falls as it gets hotter.',
  ideas: ['thermistor + resistance + falls / decreases', 'hotter / warmer / temperature rises'],
}

export const examples: readonly RuleExample[] = [
  {
    subject: 'cells',
    point: {
      text: 'Mitochondria are the site of aerobic respiration.',
      ideas: ['mitochondria + aerobic respiration'],
    },
    says: 'Mitochondria are found in nearly every animal cell. They are the site of aerobic respiration.',
    outcome: 'full',
    quotes: 'They are the site of aerobic respiration',
    why: '"they" are the mitochondria of the sentence before',
  },
  {
    subject: 'cells',
    point: {
      text: 'Mitochondria are the site of aerobic respiration.',
      ideas: ['mitochondria + aerobic respiration'],
      reject: ['ribosomes are the site of aerobic respiration'],
    },
    says: 'Mitochondria have a folded inner membrane. Ribosomes are tiny. They are the site of aerobic respiration.',
    outcome: 'contradicted',
    quotes: 'They are the site of aerobic respiration',
    why: '"they" are the ribosomes, which the point rejects',
  },
  {
    subject: 'electricity',
    point: thermistor,
    says: 'A thermistor is a kind of resistor used in ovens and fridges. Its resistance falls when it gets hotter.',
    outcome: 'full',
    why: '"its" belongs to the thermistor',
  },
  {
    subject: 'electricity',
    point: {
      text: 'The resistance of a light-dependent resistor falls as the light gets brighter.',
      ideas: ['light-dependent resistor / LDR + resistance + falls / decreases'],
    },
    says: 'An LDR switches street lamps on at dusk. A thermistor is a sensor as well. Its resistance falls when it gets hotter.',
    outcome: 'missed',
    why: '"its" belongs to the thermistor, the LDR is a sentence further back',
  },
  {
    subject: 'trade',
    point: quota,
    says: 'A quota limits how much of a good can be brought in. This pushes up the price at home because there is less of it.',
    outcome: 'full',
    quotes: 'This pushes up the price at home',
    why: '"this" is the quota',
  },
  {
    subject: 'trade',
    point: quota,
    says: 'A quota is a limit on imports. A tariff is a tax on imports. It raises the price at home.',
    outcome: 'missed',
    why: '"it" is the tariff: true, but another point',
  },
  {
    subject: 'computing',
    point: {
      text: 'The program counter holds the address of the next instruction.',
      ideas: ['program counter / PC + address', 'next instruction'],
    },
    says: 'program counter - a register in the cpu\nit holds the address of the next instruction\ngoes up by one each cycle',
    outcome: 'full',
    why: '"it" reaches over the line break',
  },
  {
    subject: 'computing',
    point: {
      text: 'A compiler translates the whole program before it runs.',
      ideas: ['compiler + translates + whole program / all at once'],
      reject: ['an interpreter translates the whole program'],
    },
    says: 'Compilers make an executable file. Interpreters need to be on the machine each time. They translate the whole program before it runs.',
    outcome: 'contradicted',
    quotes: 'They translate the whole program before it runs',
    why: '"they" are the interpreters',
  },
  {
    subject: 'history',
    point: {
      text: 'Stresemann brought in a new currency, the Rentenmark.',
      ideas: ['Stresemann + Rentenmark / new currency'],
    },
    says: 'Stresemann became chancellor in 1923 when money was worth nothing. He called off the strike in the Ruhr. He also brought in the Rentenmark.',
    outcome: 'full',
    quotes: 'He also brought in the Rentenmark',
    why: '"he" twice over is still Stresemann',
  },
  {
    subject: 'history',
    point: { text: 'Lenin died in 1924.', ideas: ['Lenin + died / death + 1924'] },
    says: 'Lenin led the Bolsheviks in October. Woodrow Wilson pushed for a League of Nations. He died in 1924.',
    outcome: 'missed',
    why: '"he" is Wilson, who died in the same year',
  },
  {
    subject: 'biology',
    point: {
      text: 'Phagocytes engulf pathogens.',
      ideas: ['phagocytes + engulf / ingest / swallow + pathogens / bacteria'],
    },
    says: 'skin is a barrier. phagocytes are white blood cells, they engulf bacteria that get in',
    outcome: 'full',
    why: '"they" after a comma',
  },
  {
    subject: 'biology',
    point: {
      text: 'Phagocytes engulf pathogens.',
      ideas: ['phagocytes + engulf / ingest / swallow + pathogens / bacteria'],
    },
    says: 'Phagocytes are white blood cells. Amoebas live in ponds and are single cells. They engulf bacteria and other food.',
    outcome: 'missed',
    why: '"they" are the amoebas',
  },
  {
    subject: 'rocks',
    point: {
      text: 'Limestone fizzes with acid.',
      ideas: ['limestone + acid + fizzes / reacts / bubbles'],
    },
    says: 'Limestone is a sedimentary rock. It is mostly calcium carbonate. It often has fossils in it. It fizzes with acid.',
    outcome: 'full',
    quotes: 'It fizzes with acid',
    why: 'a chain of "it" leads back to limestone',
  },
  {
    subject: 'biology',
    point: {
      text: 'The intercostal muscles contract when we breathe in.',
      ideas: ['intercostal (muscles) + contract'],
    },
    says: 'The intercostal muscles lie between the ribs. The diaphragm is a sheet of muscle under the lungs. It contracts and flattens when we breathe in.',
    outcome: 'missed',
    why: '"it" is the diaphragm',
  },
  {
    subject: 'biology',
    point: {
      text: 'Enzymes are denatured at high temperatures.',
      ideas: ['enzymes + denatured / denature', 'high temperature / too hot'],
    },
    says: 'Enzymes\n- are biological catalysts\n- have an active site\n- are denatured if it gets too hot',
    outcome: 'full',
    why: 'the heading is the subject of its bullets',
  },
  {
    subject: 'biology',
    point: {
      text: 'Veins carry blood towards the heart.',
      ideas: ['veins + to / towards / back to + heart'],
    },
    says: 'Arteries carry blood away from the heart under pressure. Veins have valves and a wide lumen. They carry blood away from the heart too.',
    outcome: 'contradicted',
    quotes: 'They carry blood away from the heart',
    why: 'the clash is in a sentence that only says "they"',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'Potassium reacts violently with water.',
      ideas: ['potassium + water + violently / vigorously / explosively'],
    },
    says: 'potassium is in group 1, kept under oil. caesium is further down the group. it reacts explosively with water',
    outcome: 'missed',
    why: '"it" is caesium',
  },
  {
    subject: 'psychology',
    point: {
      text: 'Loftus and Palmer changed the verb in the question about speed.',
      ideas: ['Loftus (and Palmer) + verb', 'speed / how fast'],
    },
    says: 'Loftus and Palmer showed students films of car crashes. Then they asked how fast the cars were going, with a different verb for each group (hit, smashed, bumped).',
    outcome: 'full',
    why: '"they" are the two researchers, not the students',
  },
  {
    subject: 'psychology',
    point: {
      text: "Milgram's confederate gave wrong answers on purpose.",
      ideas: ['Milgram + confederate / learner + wrong answers'],
    },
    says: 'Milgram studied obedience at Yale. Asch studied conformity with lines of different length. He had confederates give wrong answers on purpose.',
    outcome: 'missed',
    why: '"he" is Asch',
  },
  {
    subject: 'space',
    point: {
      text: 'Venus has a thick atmosphere of carbon dioxide.',
      ideas: ['Venus + atmosphere + thick / dense', 'carbon dioxide'],
    },
    says: "Mars is small and has thin air. Venus is about the Earth's size but hotter than an oven, as its atmosphere is a thick blanket of carbon dioxide.",
    outcome: 'full',
    why: '"its" stays inside the sentence about Venus',
  },
  {
    subject: 'tides',
    point: {
      text: 'At a spring tide the streams are strong.',
      ideas: ['"spring tide"', 'stream(s) / current(s)', 'strong + streams / currents'],
    },
    others: [
      {
        text: 'At a neap tide the streams are weak.',
        ideas: ['"neap tide"', 'stream(s) / current(s)', 'weak + streams / currents'],
      },
    ],
    says: 'At a spring tide the streams are weak, and at a neap tide they are strong.',
    outcome: 'contradicted',
    why: 'they are the streams, at the tide that the clause names itself',
  },
]
