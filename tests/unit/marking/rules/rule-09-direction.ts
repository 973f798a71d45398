import type { RuleExample } from './example.ts'

export const examples: readonly RuleExample[] = [
  {
    subject: 'air',
    point: {
      text: 'Air pressure decreases with height.',
      ideas: ['pressure + decreases / falls + height / altitude'],
    },
    says: 'Air has weight. Air pressure increases with height, so climbers carry oxygen.',
    outcome: 'contradicted',
    quotes: 'Air pressure increases with height',
    why: 'increases for decreases',
  },
  {
    subject: 'electricity',
    point: {
      text: 'A thicker wire has a lower resistance.',
      ideas: ['thicker / thick + lower / less resistance'],
    },
    says: 'resistance in ohms. a thick wire has a higher resistance than a thin one because there is more metal in the way',
    outcome: 'contradicted',
    quotes: 'a thick wire has a higher resistance than a thin one',
    why: 'a believable reason for the wrong direction',
  },
  {
    subject: 'trade',
    point: {
      text: 'When the interest rate rises, people borrow less.',
      ideas: ['interest rate + rises / higher', 'borrow less / less borrowing'],
    },
    says: 'saving is putting money by. if interest rates rise then people borrow more from the bank',
    outcome: 'contradicted',
    quotes: 'people borrow more',
    why: 'one half right, the other turned round',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'A chlorine atom gains one electron to become an ion.',
      ideas: ['gains / gain + electron'],
    },
    says: 'Sodium forms a positive ion. Each chlorine atom loses one electron and it becomes a chloride ion.',
    outcome: 'contradicted',
    quotes: 'chlorine atom loses one electron',
    why: 'loses for gains',
  },
  {
    subject: 'computing',
    point: {
      text: 'A higher sample rate makes a larger sound file.',
      ideas: ['higher + sample rate', 'larger / bigger + file'],
    },
    says: 'bit depth = bits per sample\nsample rate ↑ file size ↓\nmono is half of stereo',
    outcome: 'contradicted',
    quotes: 'sample rate ↑ file size ↓',
    why: 'the second arrow points the wrong way',
  },
  {
    subject: 'psychology',
    point: {
      text: 'The longer the delay, the fewer words are recalled.',
      ideas: ['longer delay', 'fewer / less + recalled'],
    },
    says: 'They counted backwards to block rehearsal. The longer the delay, the more words they recalled.',
    outcome: 'contradicted',
    quotes: 'The longer the delay, the more words they recalled',
    why: 'the … the … with one side turned',
  },
  {
    subject: 'history',
    point: {
      text: 'After the bad harvest the price of bread rose.',
      ideas: ['price of bread / bread price + rose / went up'],
    },
    says: 'The king called the Estates. After the bad harvest of 1788 the price of bread fell sharply in Paris.',
    outcome: 'contradicted',
    quotes: 'the price of bread fell sharply',
    why: 'fell for rose',
  },
  {
    subject: 'plates',
    point: {
      text: 'At a constructive margin the plates move apart.',
      ideas: ['plates + move apart / move away from each other'],
    },
    says: 'Magma comes up in Iceland. At a constructive margin the two plates move towards each other.',
    outcome: 'contradicted',
    quotes: 'the two plates move towards each other',
    why: 'towards where the point says apart',
  },
  {
    subject: 'space',
    point: { text: 'The Moon is slowly moving away from the Earth.' },
    says: 'tides come from the moon. the moon is slowly moving towards the earth',
    outcome: 'contradicted',
    quotes: 'the moon is slowly moving towards the earth',
    why: 'towards for away, in a point without ideas',
  },
  {
    subject: 'electricity',
    point: {
      text: 'A thicker wire has a lower resistance.',
      ideas: ['thicker / thick + lower / less resistance'],
    },
    says: 'thinner wire → higher resistance, same as traffic in a narrow road',
    outcome: 'full',
    why: 'both sides turned round: the reverse argument',
  },
  {
    subject: 'trade',
    point: {
      text: 'When the interest rate rises, people borrow less.',
      ideas: ['interest rate + rises / higher', 'borrow less / less borrowing'],
    },
    says: 'The central bank sets it. When the interest rate falls, people borrow more because the loan is cheap.',
    outcome: 'full',
    quotes: 'When the interest rate falls, people borrow more',
    why: 'falls and more are rises and less reversed',
  },
  {
    subject: 'computing',
    point: {
      text: 'A higher sample rate makes a larger sound file.',
      ideas: ['higher + sample rate', 'larger / bigger + file'],
    },
    says: 'mp3 throws some away. sound: ↑ sample rate → ↑ file size',
    outcome: 'full',
    why: 'two arrows the same way up',
  },
  {
    subject: 'air',
    point: {
      text: 'When air is heated it expands and becomes less dense.',
      ideas: ['expands', 'less dense / density falls'],
    },
    says: 'Balloons work like this. When air is cooled it contracts and becomes denser, so it sinks.',
    outcome: 'full',
    why: 'cooling with everything turned round',
  },
  {
    subject: 'trade',
    point: {
      text: 'As the price rises, the quantity demanded falls.',
      ideas: ['price + rises / up', 'quantity demanded / demand + falls / down'],
    },
    says: 'As the price rises producers supply more. Demand is the other way: price up, demand down.',
    outcome: 'full',
    quotes: 'price up, demand down',
    why: 'the opposite direction next door is about supply',
  },
  {
    subject: 'water',
    point: { text: 'Warm water holds less dissolved oxygen than cold water.' },
    says: 'Trout like mountain streams, since cold water holds more dissolved oxygen than warm water.',
    outcome: 'full',
    why: 'the comparison read from the other end',
  },
  {
    subject: 'psychology',
    point: {
      text: 'The longer the delay, the fewer words are recalled.',
      ideas: ['longer delay', 'fewer / less + recalled'],
    },
    says: 'results of the trigram thing: with a shorter delay more was recalled, as nothing had faded yet',
    outcome: 'full',
    why: 'shorter and more for longer and fewer',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'A smaller particle size makes the reaction faster.',
      ideas: ['smaller + particles / pieces / size', 'faster / rate increases'],
    },
    says: 'Same mass of marble each time. Smaller pieces reacted faster, big lumps were slowest and took ages.',
    outcome: 'full',
    why: 'slow lumps beside fast pieces are one and the same result',
  },

  {
    subject: 'rivers',
    point: { text: 'The discharge of a river increases downstream.' },
    says: 'Tributaries join the river on its way. The gradient gets gentler and the load gets smaller and rounder. The discharge of the river decreases downstream. The valley gets wide and flat.',
    outcome: 'contradicted',
    quotes: 'The discharge of the river decreases downstream',
    why: 'one wrong trend among right ones, in a point without ideas',
  },

  {
    subject: 'sound',
    point: { text: 'A shorter string makes a higher note.' },
    says: 'pluck harder = louder. the longer the string, the lower the note (compare a double bass and a violin)',
    outcome: 'full',
    why: 'longer and lower are shorter and higher turned round, without ideas',
  },
  {
    subject: 'harbours',
    point: {
      text: 'A port that spends more than it earns has a deficit.',
      ideas: ['deficit / excess spending', 'spends more'],
    },
    says: 'A port that spends more than it earns: its spending leaves a deficit.',
    outcome: 'full',
    why: 'a deficit is what one wording asks for, and no opposite of the excess in the other',
  },
]
