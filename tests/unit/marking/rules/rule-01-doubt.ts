import type { RuleExample } from './example.ts'

export const examples: readonly RuleExample[] = [
  {
    subject: 'trade',
    point: {
      text: 'A tariff raises the price of imports, so home producers sell more.',
      ideas: [
        'raises / increases + price of imports',
        'home producers / domestic firms + sell more',
      ],
    },
    says: 'A tariff does something to the price of imports and that has an effect on domestic firms as well. Quotas are a limit on quantity.',
    outcome: 'missed',
    offered: true,
    why: 'an effect is mentioned, never which way it goes',
  },
  {
    subject: 'cells',
    point: {
      text: 'Mitochondria release energy from glucose by aerobic respiration.',
      ideas: ['release / transfer + energy', 'aerobic respiration'],
    },
    says: 'nucleus = holds the dna, controls stuff\nmitochondria = super important, keep the cell going\nribosomes = make protein',
    outcome: 'missed',
    offered: true,
    why: 'importance is not a function',
  },
  {
    subject: 'electricity',
    point: {
      text: 'A second lamp in series raises the total resistance, so the current falls.',
      ideas: ['(total) resistance + rises / increases', 'current + falls / decreases'],
    },
    says: 'If you put a second lamp in series then both the resistance and the current will change.',
    outcome: 'missed',
    offered: true,
    why: 'change without a direction',
  },
  {
    subject: 'history',
    point: {
      text: 'The Corn Laws were repealed in 1846 by the government of Robert Peel.',
      ideas: ['repealed / abolished + 1846', 'Peel'],
    },
    says: 'corn laws – kept bread dear. got rid of in either 1832 or 1846, by either Peel or Disraeli, no idea which',
    outcome: 'missed',
    offered: true,
    why: 'the right answer hedged with a wrong one is no answer',
  },
  {
    subject: 'psychology',
    point: {
      text: 'In retroactive interference, new learning makes earlier learning harder to recall.',
      ideas: ['new (learning) + disrupts / makes harder to recall + old / earlier (learning)'],
    },
    says: 'Retroactive interference is something about new memories and old memories getting muddled up with one another somehow.',
    outcome: 'missed',
    offered: true,
    why: 'both sides named, which one suffers is left open',
  },
  {
    subject: 'computing',
    point: {
      text: 'A stack is last in, first out.',
      ideas: ['last in first out / LIFO'],
    },
    says: 'arrays have a fixed length\na stack is a kind of list where things go in and come out in a special order\ntrees have nodes',
    outcome: 'missed',
    offered: true,
    why: 'an order is said to exist and not given',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'When an acid is diluted its pH rises.',
      ideas: ['pH + rises / increases'],
    },
    says: 'acids have pH under 7. what happens to the pH when you dilute one?? does it rise?',
    outcome: 'missed',
    offered: true,
    why: 'a question states nothing',
  },
  {
    subject: 'electricity',
    point: {
      text: 'A longer wire has more resistance, so the lamp is dimmer.',
      ideas: ['resistance + more / greater / increases', 'lamp + dimmer'],
    },
    says: 'a longer wire has a greater resistance and that does something to how the lamp looks',
    outcome: 'partial',
    quotes: 'a longer wire has a greater resistance',
    why: 'one idea is clear, the other is only waved at',
  },
  {
    subject: 'rivers',
    point: {
      text: 'Felling a forest cuts interception, so rivers rise faster after rain.',
      ideas: ['interception + less / reduced / cut', 'rivers / discharge + rises faster'],
    },
    says: 'When the forest is felled it might affect interception, or it might not, and rivers could go either way I suppose.',
    outcome: 'missed',
    offered: true,
    why: 'hedged until nothing is left',
  },
  {
    subject: 'psychology',
    point: {
      text: 'Recall is better when mood at recall is the same as mood at learning.',
      ideas: ['recall / remember + better', 'same / matching + mood / state'],
    },
    says: "Forgot the names of the researchers completely. Anyway they showed people recall better when they're in the same mood as when they learned it.",
    outcome: 'full',
    quotes: "people recall better when they're in the same mood as when they learned it",
    why: 'the doubt is about something the point does not ask',
  },
  {
    subject: 'coast',
    point: {
      text: 'Constructive waves have a strong swash and a weak backwash and build the beach up.',
      ideas: ['swash + strong(er)', 'backwash + weak(er)', 'build(s) up / deposit(s)'],
    },
    says: 'Generally constructive waves have a strong swash and a fairly weak backwash, so over time they tend to build up the beach.',
    outcome: 'full',
    why: 'the careful words of a scientist are not doubt',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'A catalyst lowers the activation energy and is unchanged at the end.',
      ideas: ['lowers / reduces + activation energy', 'unchanged / not used up'],
    },
    says: 'is platinum one? not sure!\nwhat I do know: a catalyst lowers the activation energy, and when the reaction is over it comes out unchanged',
    outcome: 'full',
    quotes: 'a catalyst lowers the activation energy',
    why: 'an open question next door leaves the statement standing',
  },
  {
    subject: 'geography',
    point: { text: 'Desert nights are cold because clear skies let heat escape.' },
    says: 'Camels store fat not water. There is hardly a cloud over a desert, so at night the heat escapes through the clear sky and it gets very cold.',
    outcome: 'full',
    why: 'cause and effect are both said, in another order',
  },
  {
    subject: 'trade',
    point: {
      text: 'A weaker currency makes imports cost more, which can raise inflation.',
      ideas: [
        'imports + cost more / dearer / more expensive',
        'inflation + rise(s) / raise(s) / higher',
      ],
    },
    says: 'if the pound gets weak, imports become more expensive to bring in & this can push inflation higher',
    outcome: 'full',
    why: 'the point itself says can',
  },
  {
    subject: 'history',
    point: {
      text: 'The Black Death killed about a third of the people of Europe.',
      ideas: ['killed / wiped out + third + Europe'],
    },
    says: 'Came along the trade routes with fleas. It wiped out roughly a third of everybody in Europe, the Black Death I mean.',
    outcome: 'full',
    why: 'roughly is what the point says too',
  },
  {
    subject: 'space',
    point: { text: 'Venus is hotter than Mercury because its thick atmosphere traps heat.' },
    says: 'Venus and Mercury are both hot planets and there is some reason why one of them is hotter.',
    outcome: 'missed',
    why: 'a comparison announced and never made',
  },

  {
    subject: 'computing',
    point: { text: 'A primary key identifies each record in a table.' },
    says: 'DATABASES\nTables have rows and columns. A row is a record and a column is a field. I always mix up the two sorts of key but the primary key is the one that identifies each record in a table. Queries are written in SQL. Joins put two tables together.',
    outcome: 'full',
    why: 'an admitted muddle, then a plain statement',
  },

  {
    subject: 'plants',
    point: { text: 'Guard cells swell with water and open the stoma.' },
    says: 'Leaves: waxy on top. Guard cells do their thing with water and the stoma reacts. Most stomata are underneath.',
    outcome: 'missed',
    why: 'doing its thing is not a mechanism',
  },
]
