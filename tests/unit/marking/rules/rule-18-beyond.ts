import type { PointSource } from './example.ts'

/** A topic, a page about it, and the statements of the page that match no point; each is a literal part of the page. */
export interface BeyondExample {
  readonly subject: string
  readonly points: readonly PointSource[]
  readonly says: string
  readonly beyond: readonly string[]
  readonly why: string
}

export const beyond: readonly BeyondExample[] = [
  {
    subject: 'biology',
    points: [
      {
        text: 'Arteries carry blood away from the heart.',
        ideas: ['arteries + away from + heart'],
      },
      { text: 'Veins have valves.', ideas: ['veins + valves'] },
    ],
    says: 'Arteries carry blood away from the heart. An octopus has three hearts. Veins have valves.',
    beyond: ['An octopus has three hearts'],
    why: 'a true extra between two points, with a word of one of them',
  },
  {
    subject: 'electricity',
    points: [
      {
        text: 'Potential difference is current times resistance.',
        equation: 'V = I × R',
        where: { V: 'voltage', I: 'current', R: 'resistance' },
      },
      {
        text: 'A fuse melts when the current is too large.',
        ideas: ['fuse + melts', 'current + too large'],
      },
    ],
    says: 'r = v/i\nTesla loved pigeons\nfuse: thin wire that melts if the current is too big',
    beyond: ['Tesla loved pigeons'],
    why: 'a rearranged equation and a reworded point are not extras',
  },
  {
    subject: 'trade',
    points: [{ text: 'A tariff is a tax on imports.', ideas: ['tariff + tax + imports'] }],
    says: 'A tariff is a tax on exports. Bananas are mostly shipped in refrigerated containers.',
    beyond: ['Bananas are mostly shipped in refrigerated containers'],
    why: 'a statement that contradicts a point belongs to that point',
  },
  {
    subject: 'history',
    points: [
      {
        text: 'The Rentenmark ended the hyperinflation of 1923.',
        ideas: ['Rentenmark', 'ended / stopped + hyperinflation'],
      },
    ],
    says: 'The Beatles played in Hamburg. Shakespeare wrote sonnets. My grandmother collects stamps.',
    beyond: [
      'The Beatles played in Hamburg',
      'Shakespeare wrote sonnets',
      'My grandmother collects stamps',
    ],
    why: 'nothing on the page belongs to the topic',
  },
  {
    subject: 'computing',
    points: [
      { text: 'RAM is volatile.', ideas: ['RAM + volatile'] },
      { text: 'A byte is 8 bits.', ideas: ['byte'], value: '8 bits' },
    ],
    says: 'ram = volatile. 8 bits = 1 byte.',
    beyond: [],
    why: 'every statement matches a point',
  },
  {
    subject: 'computing',
    points: [
      {
        text: 'A compiler translates the whole program at once.',
        ideas: ['compiler + whole program'],
      },
      { text: 'An interpreter translates line by line.', ideas: ['interpreter + line by line'] },
    ],
    says: 'Compilers translate the whole program in one go. Interpreters do it line by line. The first computer bug was a moth in a relay. Python was named after a comedy group.',
    beyond: [
      'The first computer bug was a moth in a relay',
      'Python was named after a comedy group',
    ],
    why: 'anecdotes of the same field, whether true or not',
  },
  {
    subject: 'geography',
    points: [
      {
        text: 'Oceanic crust sinks beneath continental crust because it is denser.',
        ideas: ['oceanic + sinks / subducts', 'denser'],
      },
      {
        text: 'Friction between the plates causes earthquakes.',
        ideas: ['friction', 'earthquakes'],
      },
    ],
    says: '- oceanic crust subducts, its denser\n- the Eiffel Tower is painted every few years\n- friction between plates -> earthquakes\n- Japan has fast trains',
    beyond: ['the Eiffel Tower is painted every few years', 'Japan has fast trains'],
    why: 'bullets on and off the topic in turn',
  },
  {
    subject: 'chemistry',
    points: [
      {
        text: 'Magnesium reacts with hydrochloric acid.',
        equation: 'Mg + 2HCl → MgCl₂ + H₂',
      },
      {
        text: 'Hydrogen gives a squeaky pop with a lit splint.',
        ideas: ['squeaky pop', 'lit splint'],
      },
    ],
    says: 'Mg + 2HCl → MgCl2 + H2. A lit splint gives a squeaky pop. Gold can be beaten very thin.',
    beyond: ['Gold can be beaten very thin'],
    why: 'a fact about another substance',
  },
  {
    subject: 'psychology',
    points: [
      {
        text: 'Short-term memory holds about seven items.',
        ideas: ['short-term memory / STM', 'seven (items)'],
      },
    ],
    says: 'stm: 7 items. Freud smoked cigars. Snow White had friends in the forest.',
    beyond: ['Freud smoked cigars', 'Snow White had friends in the forest'],
    why: 'the shortest statement is the one that counts',
  },
  {
    subject: 'rocks',
    points: [
      {
        text: 'Name two sedimentary rocks.',
        any: 2,
        ideas: ['sandstone', 'limestone', 'chalk', 'shale'],
      },
    ],
    says: 'Sandstone and chalk are sedimentary. Diamonds are made of carbon.',
    beyond: ['Diamonds are made of carbon'],
    why: 'list items are matched, the rest is shown',
  },
  {
    subject: 'cells',
    points: [
      {
        text: 'Mitochondria are the site of aerobic respiration.',
        ideas: ['mitochondria + aerobic respiration'],
      },
    ],
    says: 'Mitochondria are the site of aerobic respiration. Bees see ultraviolet light. Bats find their way by echo.',
    beyond: ['Bees see ultraviolet light', 'Bats find their way by echo'],
    why: 'other facts of biology that are on no point of this topic',
  },
]
