import type { PointSource, RuleExample } from './example.ts'

/** Two pages that differ only in what must not matter, and the one outcome both get. */
export interface SamePair {
  readonly subject: string
  readonly point: PointSource
  readonly one: string
  readonly two: string
  readonly outcome: RuleExample['outcome']
  readonly why: string
}

const arteries: PointSource = {
  text: 'Arteries carry blood away from the heart.',
  ideas: ['arteries + away from + heart'],
}
const sediment: PointSource = {
  text: 'Rivers drop their sediment where they slow down.',
  ideas: ['drop / deposit + sediment', 'slow down / slower'],
}
const insulin: PointSource = {
  text: 'Insulin lowers the glucose level of the blood.',
  ideas: ['insulin + lowers / reduces + glucose'],
}
const ohm: PointSource = {
  text: 'Potential difference is current times resistance.',
  equation: 'V = I × R',
  where: { V: 'voltage / potential difference', I: 'current', R: 'resistance' },
}
const mains: PointSource = { text: 'The mains supply is 230 V.', ideas: ['mains'], value: '230 V' }
const cycle: PointSource = {
  text: 'How the processor runs an instruction.',
  steps: ['fetch', 'decode', 'execute'],
}
const barriers: PointSource = {
  text: 'Name two barriers to trade.',
  any: 2,
  ideas: ['tariff', 'quota', 'subsidy', 'embargo'],
}
const quota: PointSource = {
  text: 'A quota limits imports, and so the price at home rises.',
  ideas: ['quota + limits / limit + imports', 'price + rises'],
}

export const pairs: readonly SamePair[] = [
  {
    subject: 'biology',
    point: arteries,
    one: 'Arteries carry blood away from the heart.',
    two: 'ARTERIES CARRY BLOOD AWAY FROM THE HEART',
    outcome: 'full',
    why: 'capitals, no full stop',
  },
  {
    subject: 'biology',
    point: arteries,
    one: 'Arteries carry blood back to the heart.',
    two: 'aRteries carry BLOOD back to the Heart',
    outcome: 'contradicted',
    why: 'case does not soften a contradiction',
  },
  {
    subject: 'biology',
    point: insulin,
    one: 'Insulin lowers the level of glucose.',
    two: '   Insulin   lowers\tthe  level of glucose .  ',
    outcome: 'full',
    why: 'runs of spaces and a tab',
  },
  {
    subject: 'biology',
    point: insulin,
    one: "Insulin doesn't lower glucose.",
    two: 'Insulin doesn’t lower glucose.',
    outcome: 'contradicted',
    why: 'straight and curly apostrophe in a negation',
  },
  {
    subject: 'rivers',
    point: sediment,
    one: 'Rivers carry mud.\nThey deposit sediment where they slow down.',
    two: 'Rivers carry mud.\r\nThey deposit sediment where they slow down.\r\n',
    outcome: 'full',
    why: 'line endings of two systems',
  },
  {
    subject: 'rivers',
    point: sediment,
    one: 'Rivers deposit sediment.\nThe sea is salty.',
    two: 'Rivers deposit sediment.\n\n\n\n   \nThe sea is salty.\n\n',
    outcome: 'partial',
    why: 'blank lines',
  },
  {
    subject: 'rivers',
    point: sediment,
    one: 'Where they slow down, rivers deposit sediment.',
    two: 'My bus was late today. Where they slow down, rivers deposit sediment. Lunch was pasta.',
    outcome: 'full',
    why: 'chatter before and after',
  },
  {
    subject: 'rivers',
    point: sediment,
    one: 'Salmon swim upstream.',
    two: 'Salmon swim upstream. Castles were built on hills. Chess has sixty-four squares.',
    outcome: 'missed',
    why: 'more off-topic text makes no match',
  },
  {
    subject: 'electricity',
    point: ohm,
    one: 'V=I×R',
    two: 'V  =  I  ×  R',
    outcome: 'full',
    why: 'spaces in an equation',
  },
  {
    subject: 'electricity',
    point: ohm,
    one: 'R = I / V',
    two: 'r=i/v',
    outcome: 'contradicted',
    why: 'a wrong equation in small letters is as wrong',
  },
  {
    subject: 'electricity',
    point: mains,
    one: 'Mains is 230 V.',
    two: 'mains is 230V',
    outcome: 'full',
    why: 'a unit close up',
  },
  {
    subject: 'electricity',
    point: mains,
    one: 'Mains is 230 V.',
    two: 'Mains is 230\u00a0V.',
    outcome: 'full',
    why: 'a no-break space before the unit',
  },
  {
    subject: 'electricity',
    point: mains,
    one: 'The mains is 110 V.',
    two: 'I like toast. The mains is 110 V. Pigeons can find their way home.',
    outcome: 'contradicted',
    why: 'a wrong value between chatter',
  },
  {
    subject: 'computing',
    point: cycle,
    one: 'fetch → decode → execute',
    two: 'Fetch  →  Decode  →  Execute\r\n',
    outcome: 'full',
    why: 'case, spaces and a line ending in a chain',
  },
  {
    subject: 'computing',
    point: cycle,
    one: 'First the instruction is fetched. Then it is executed. Then it is decoded.',
    two: 'First the instruction is fetched.\r\nThen it is executed.\r\nThen it is decoded.\r\n',
    outcome: 'contradicted',
    why: 'one line or three',
  },
  {
    subject: 'trade',
    point: barriers,
    one: '- tariffs\n- quotas',
    two: '• Tariffs\r\n• Quotas\r\n',
    outcome: 'full',
    why: 'the shape of the bullet',
  },
  {
    subject: 'trade',
    point: barriers,
    one: 'Barriers to trade: tariffs',
    two: 'BARRIERS TO TRADE: TARIFFS. We have a dog.',
    outcome: 'partial',
    why: 'capitals and chatter about one item',
  },
  {
    subject: 'trade',
    point: quota,
    one: 'A quota limits imports, so the price rises.',
    two: 'a quota limits imports , so the price rises',
    outcome: 'full',
    why: 'a space before the comma',
  },
  {
    subject: 'trade',
    point: quota,
    one: 'A quota limits imports.',
    two: '\ufeffA quota limits imports.',
    outcome: 'partial',
    why: 'a byte order mark from a pasted file',
  },
  {
    subject: 'history',
    point: {
      text: 'The coup of 18 Brumaire made Napoleon First Consul.',
      ideas: ['coup (d’état) + Napoleon', 'First Consul'],
    },
    one: 'Napoleon became First Consul by a coup d\u2019\u00e9tat.',
    two: 'Napoleon became First Consul by a coup d\u2019e\u0301tat.',
    outcome: 'full',
    why: 'an accent as one character or as two',
  },
]
