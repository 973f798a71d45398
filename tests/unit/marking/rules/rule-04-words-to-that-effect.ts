import type { RuleExample } from './example.ts'

export const examples: readonly RuleExample[] = [
  {
    subject: 'chemistry',
    point: {
      text: 'Oxygen relights a glowing splint.',
      ideas: ['glowing splint + relights', 'oxygen'],
    },
    says: 'Test: put a glowing splint in the tube. The splint relights if the gas is the one you are looking for.',
    outcome: 'partial',
    why: 'the gas is too general for oxygen',
  },
  {
    subject: 'electricity',
    point: {
      text: 'Wires are made of copper because it is a good conductor.',
      ideas: ['copper', 'good conductor / conducts well'],
    },
    says: 'the wires in a cable are made of metal because it is a good conductor, with plastic round the outside',
    outcome: 'partial',
    why: 'the wider class is not the member asked for',
  },
  {
    subject: 'hormones',
    point: {
      text: 'Insulin makes the liver store glucose as glycogen.',
      ideas: ['insulin', 'liver + glucose + glycogen'],
    },
    says: 'When you have eaten, a hormone makes the liver store the glucose as glycogen.',
    outcome: 'partial',
    why: 'a hormone is not yet insulin',
  },
  {
    subject: 'forces',
    point: {
      text: 'The resultant force is proportional to the acceleration.',
      ideas: ['force + proportional + acceleration'],
      reject: ['force is proportional to speed / velocity'],
    },
    says: 'For a trolley of fixed mass the resultant force is proportional to its velocity. Friction acts backwards.',
    outcome: 'contradicted',
    quotes: 'the resultant force is proportional to its velocity',
    why: 'velocity is no other word for acceleration',
  },
  {
    subject: 'forces',
    point: {
      text: 'Mass is the amount of matter in a thing and is the same on the Moon.',
      ideas: ['amount of matter', 'same + Moon'],
    },
    says: 'Weight is a force. It gets smaller on the Moon because gravity is weaker up there.',
    outcome: 'missed',
    why: 'a true statement about weight says nothing about mass',
  },
  {
    subject: 'trade',
    point: {
      text: 'A weaker currency makes exports cheaper for buyers abroad.',
      ideas: ['exports + cheaper'],
    },
    says: 'With a weaker currency the things we import get dearer for people at home.',
    outcome: 'missed',
    why: 'imports are not exports, however true it is',
  },
  {
    subject: 'computing',
    point: {
      text: 'RAM loses its contents when the power is switched off.',
      ideas: ['RAM / main memory', 'loses + contents / data'],
    },
    says: 'a hard disk keeps its data even when the power is off, it stores it magnetically',
    outcome: 'missed',
    why: 'the other kind of memory',
  },
  {
    subject: 'history',
    point: {
      text: 'Charles I was executed in 1649.',
      ideas: ['executed / beheaded', '1649'],
    },
    says: 'Charles I lost the civil war and a lot of his power during the 1640s.',
    outcome: 'missed',
    why: 'losing power is far from losing his head',
  },
  {
    subject: 'microbes',
    point: {
      text: 'A bacterium has no nucleus and its DNA is a loop.',
      ideas: ['bacterium + no nucleus', 'DNA + loop / circular'],
    },
    says: 'viruses arent alive. bacteria have no nucleus, instead their dna is in a loop',
    outcome: 'full',
    why: 'bacteria are more than one bacterium',
  },
  {
    subject: 'air',
    point: {
      text: 'Burning coal releases sulphur dioxide, which makes acid rain.',
      ideas: ['sulphur dioxide', 'acid rain'],
    },
    says: 'Burning coal releases sulfur dioxide and that dissolves in clouds to give acid rain',
    outcome: 'full',
    why: 'the other spelling of sulphur',
  },
  {
    subject: 'rocks',
    point: {
      text: 'Sediment is laid down in strata, with the oldest at the bottom.',
      ideas: ['strata / layers', 'oldest + bottom'],
    },
    says: 'Sediment settles stratum by stratum so the oldest is always at the bottom (unless it has been folded).',
    outcome: 'full',
    why: 'the singular of an irregular plural',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'At a higher temperature the particles move faster, so they collide more often.',
      ideas: [
        'higher temperature',
        'particles + faster',
        'collide more often / more frequent collisions',
      ],
    },
    says: 'higher temp = particles going quicker so more frequent collisions',
    outcome: 'full',
    why: 'temp and quicker do the same work',
  },
  {
    subject: 'trade',
    point: {
      text: 'Firms hire fewer workers when the minimum wage is above the market wage.',
      ideas: ['hire / employ + fewer + workers', 'minimum wage + above + market wage'],
    },
    says: 'if the govt sets a minimum wage above the market wage then companies employ fewer staff than before',
    outcome: 'full',
    why: 'staff are workers',
  },
  {
    subject: 'body',
    point: {
      text: 'Sweat cools the skin as it evaporates.',
      ideas: ['evaporates', 'cools + skin'],
    },
    says: 'Shivering makes heat. On a hot day the evaporation of sweat has the effect of cooling the skin.',
    outcome: 'full',
    quotes: 'the evaporation of sweat has the effect of cooling the skin',
    why: 'a noun and a participle for two verbs',
  },
  {
    subject: 'computing',
    point: {
      text: 'An element of an array is found by its index, which starts at zero.',
      ideas: ['element', 'index', 'zero / 0'],
    },
    says: 'you get at the elements of an array by their indices, and these start at 0 not 1',
    outcome: 'full',
    why: 'indices are what an index becomes',
  },
  {
    subject: 'psychology',
    point: { text: 'Behaviour that is rewarded is likely to be repeated.' },
    says: 'punishment is different from reinforcement. rewarded behavior is likely to be repeated',
    outcome: 'full',
    why: 'American spelling, word order turned',
  },
  {
    subject: 'body',
    point: {
      text: 'Fibre keeps food moving through the intestine.',
      ideas: ['fibre', 'food + moving + intestine / gut'],
    },
    says: 'Fiber is not digested, it just keeps the food moving along through your intestines',
    outcome: 'full',
    why: 'fiber is fibre',
  },
  {
    subject: 'history',
    point: { text: 'Gutenberg built a printing press in Mainz.' },
    says: 'It was in Mainz that a printing press was built by Gutenberg. Books got much cheaper after that.',
    outcome: 'full',
    why: 'the passive of the same statement',
  },

  {
    subject: 'trade',
    point: {
      text: 'A recession is a fall in output that lasts for two quarters.',
      ideas: ['fall / decrease + output / GDP', 'two quarters / six months'],
    },
    says: 'In a boom shops are busy and it is easy to find a job. A recession is when prices are falling in the shops. Banks get nervous then.',
    outcome: 'missed',
    why: 'falling prices are no other words for falling output',
  },

  {
    subject: 'computing',
    point: { text: 'A firewall blocks unwanted traffic at the edge of a network.' },
    says: 'passwords should be long. unwanted traffic gets blocked by a firewall, it sits at the edge of the network',
    outcome: 'full',
    why: 'the passive and a second clause, in a point without ideas',
  },
  {
    subject: 'forces',
    point: {
      text: 'A seat belt stretches, so the passenger stops over a longer time and the force is smaller.',
    },
    says: 'Seat belts are compulsory and you get fined without one. They save thousands of lives a year and every passenger should wear theirs.',
    outcome: 'missed',
    why: 'true of the thing and nothing of the physics',
  },
  {
    subject: 'ferries',
    point: {
      text: 'The crew shares the takings by division into four.',
      ideas: ['division + four'],
    },
    says: 'The takings are divided by four.',
    outcome: 'full',
    why: 'divided is a form of divide, and dividing is division',
  },
]
