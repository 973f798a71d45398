import type { RuleExample } from './example.ts'

export const examples: readonly RuleExample[] = [
  {
    subject: 'chemistry',
    point: {
      text: 'The substance that dissolves is called the solute.',
      ideas: ['solute'],
    },
    says: 'When a substance dissolves in water you get a solution. Stirring speeds it up.',
    outcome: 'missed',
    why: 'a solution is not the solute',
  },
  {
    subject: 'body',
    point: {
      text: 'Several tissues working together make an organ.',
      ideas: ['organ', 'several tissues / different tissues'],
    },
    says: 'An organism is a living thing, anything from one cell up to a whale.',
    outcome: 'missed',
    why: 'an organism is not an organ',
  },
  {
    subject: 'rocks',
    point: {
      text: 'In freeze-thaw weathering, water freezes in cracks and widens them.',
      ideas: ['weathering', 'freezes + cracks', 'widens'],
    },
    says: 'In mountains the weather is often icy. Water freezes in the cracks of the rock and widens them until a bit drops off.',
    outcome: 'partial',
    why: 'the weather is not weathering, the rest stands',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'In distillation the vapour is cooled in a condenser.',
      ideas: ['condenser', 'vapour + cooled'],
    },
    says: 'distillation: boil the mixture, then the vapour is cooled and there is condensation, collect the drops in a beaker',
    outcome: 'partial',
    why: 'the change of state is not the apparatus',
  },
  {
    subject: 'electricity',
    point: {
      text: 'A resistor is put in the circuit to limit the current through the LED.',
      ideas: ['resistor', 'limit(s) / reduce(s) + current'],
    },
    says: 'Resistance is measured in ohms. An LED only conducts one way round.',
    outcome: 'missed',
    why: 'the quantity is not the component',
  },
  {
    subject: 'trade',
    point: {
      text: 'Training raises the productivity of workers.',
      ideas: ['productivity + raises / increases'],
    },
    says: 'Training workers takes time off the line and raises production costs in the short run.',
    outcome: 'missed',
    why: 'production costs are not productivity',
  },
  {
    subject: 'history',
    point: {
      text: 'The Reformation split the western Church in the sixteenth century.',
      ideas: ['Reformation + split + Church'],
    },
    says: 'The Reform Acts of the nineteenth century gave more men the vote and got rid of rotten boroughs.',
    outcome: 'missed',
    why: 'reform of parliament is not the Reformation',
  },
  {
    subject: 'computing',
    point: {
      text: 'In 3 + 4 the numbers are the operands.',
      ideas: ['numbers + operands'],
    },
    says: 'in 3 + 4 the plus sign is the operator. precedence says which one is done first',
    outcome: 'missed',
    why: 'the operator is not an operand',
  },
  {
    subject: 'psychology',
    point: {
      text: 'In conditioning, a neutral stimulus comes to trigger a response.',
      ideas: ['conditioning', 'neutral stimulus'],
    },
    says: 'Each condition of the experiment had ten people and they were put into a condition at random.',
    outcome: 'missed',
    why: 'a condition of an experiment is not conditioning',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'Chlorine bleaches damp litmus paper.',
      ideas: ['chlorine', 'bleaches / turns white + litmus'],
    },
    says: 'Chloride ions give a white precipitate with silver nitrate solution. Acids turn litmus red.',
    outcome: 'missed',
    why: 'chloride is not chlorine',
  },
  {
    subject: 'rivers',
    point: {
      text: 'In its lower course a river does mostly lateral erosion.',
      ideas: ['lateral / sideways', 'erosion'],
    },
    says: 'upper course = cuts down. in the lower course the river erodes sideways and gets wide',
    outcome: 'full',
    why: 'to erode and erosion are one thing',
  },
  {
    subject: 'history',
    point: {
      text: 'The abolition of serfdom in Russia came in 1861.',
      ideas: ['abolition + serfdom', '1861'],
    },
    says: 'Alexander II was the tsar who abolished serfdom, in 1861. He was killed by a bomb twenty years later.',
    outcome: 'full',
    why: 'what was abolished had its abolition',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'Rusting is the oxidation of iron by oxygen in the presence of water.',
      ideas: ['oxidation + iron', 'oxygen', 'water'],
    },
    says: 'rusting – iron is oxidised by oxygen if there is water about. paint keeps both off',
    outcome: 'full',
    why: 'oxidised is the verb of oxidation',
  },
  {
    subject: 'light',
    point: { text: 'Light is refracted towards the normal when it enters glass.' },
    says: 'Mirrors reflect. When light enters glass there is refraction towards the normal.',
    outcome: 'full',
    why: 'refraction is what being refracted is',
  },
  {
    subject: 'trade',
    point: {
      text: 'Specialisation raises output per worker.',
      ideas: ['specialisation', 'raises / increases + output'],
    },
    says: 'if workers specialise in a single task, output per worker increases (pin factory)',
    outcome: 'full',
    why: 'workers who specialise practise specialisation',
  },
  {
    subject: 'computing',
    point: {
      text: 'Encryption turns plaintext into ciphertext.',
      ideas: ['encryption', 'plaintext + ciphertext'],
    },
    says: 'a key is needed both ends. you encrypt plaintext and what you get is ciphertext',
    outcome: 'full',
    why: 'to encrypt is encryption',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'A solute dissolves in a solvent to make a solution.',
      ideas: ['solute + dissolves', 'solvent', 'solution'],
    },
    says: 'the solute (e.g. salt) dissolves in the solvent (e.g. water) and together they make the solution',
    outcome: 'full',
    why: 'three words of one family, each in its own place',
  },
  {
    subject: 'populations',
    point: { text: 'Drought causes people to migrate to the cities.' },
    says: 'pull factors are jobs and schools. Drought is a push factor, it causes migration of people to the cities',
    outcome: 'full',
    why: 'migration is migrating',
  },

  {
    subject: 'cells',
    point: {
      text: 'Ribosomes are put together from parts made in the nucleolus.',
      ideas: ['nucleolus'],
    },
    says: 'The nucleus is surrounded by a double membrane with pores. It holds the chromosomes. Ribosomes make proteins, some of them sit on the rough ER.',
    outcome: 'missed',
    why: 'the nucleus is not the nucleolus inside it',
  },

  {
    subject: 'rocks',
    point: { text: 'Deposition happens where a river slows down.' },
    says: 'meanders, oxbow lakes, deltas. where a river slows down it deposits what it was carrying',
    outcome: 'full',
    why: 'a river that deposits does deposition',
  },
]
