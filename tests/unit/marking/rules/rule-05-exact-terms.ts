import type { RuleExample } from './example.ts'

export const examples: readonly RuleExample[] = [
  {
    subject: 'plants',
    point: {
      text: 'Water enters a root hair by osmosis through its partially permeable membrane.',
      ideas: ['"osmosis"', 'partially permeable membrane / selectively permeable membrane'],
    },
    says: 'Water diffuses into the root hair through the partially permeable membrane.',
    outcome: 'partial',
    why: 'the process is described and its name is asked for',
  },
  {
    subject: 'trade',
    point: {
      text: 'The next best alternative given up is the opportunity cost.',
      ideas: ['"opportunity cost"', 'next best + given up / forgone'],
    },
    says: 'Whenever you choose, there is a cost: the next best thing that you have given up. Resources are scarce.',
    outcome: 'partial',
    why: 'a cost is half of the term',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'The minimum energy needed for particles to react is the activation energy.',
      ideas: ['"activation energy"', 'minimum energy + react'],
    },
    says: 'particles must hit each other with at least the minimum energy needed to react otherwise they just bounce off',
    outcome: 'partial',
    why: 'the definition without the term it defines',
  },
  {
    subject: 'computing',
    point: {
      text: 'When a procedure calls itself, this is recursion.',
      ideas: ['"recursion"'],
    },
    says: 'a procedure can call itself again and again until it hits the base case, like mirrors facing each other',
    outcome: 'missed',
    why: 'a good picture of it does not name it',
  },
  {
    subject: 'history',
    point: {
      text: "Giving in to Hitler's demands to keep the peace was called appeasement.",
      ideas: ['"appeasement"', 'giving in / gave in + demands'],
    },
    says: "Chamberlain gave in to Hitler's demands at Munich since he hoped that would keep the peace.",
    outcome: 'partial',
    why: 'the policy told, its name left out',
  },
  {
    subject: 'measurement',
    point: {
      text: 'A meter that does not read zero to begin with has a zero error.',
      ideas: ['"zero error"'],
    },
    says: 'The newton meter was off from the start, it did not read zero before anything was hung on it.',
    outcome: 'missed',
    why: 'zero is there, zero error is not',
  },
  {
    subject: 'psychology',
    point: {
      text: 'An actor who secretly works for the experimenter is a confederate.',
      ideas: ['"confederate"'],
    },
    says: 'One of the people in the room was really an actor, a stooge working for the experimenter. The others had no clue.',
    outcome: 'missed',
    why: 'a stooge may mean the same and is another word',
  },
  {
    subject: 'energy',
    point: {
      text: 'A stone that speeds up gains kinetic energy.',
      ideas: ['"kinetic energy"'],
    },
    says: 'When the stone falls it speeds up and so it gains energy of movement.',
    outcome: 'missed',
    why: 'a plain-language name for a named store',
  },
  {
    subject: 'plants',
    point: {
      text: 'Water enters a root hair by osmosis through its partially permeable membrane.',
      ideas: ['"osmosis"', 'partially permeable membrane / selectively permeable membrane'],
    },
    says: 'ROOTS: Osmosis takes water into the root hair through a selectively permeable membrane. Minerals go in by active transport.',
    outcome: 'full',
    why: 'the exact term with a capital, the other idea in a listed wording',
  },
  {
    subject: 'coast',
    point: {
      text: 'A groyne traps sand carried along the beach.',
      ideas: ['"groyne"', 'traps / holds + sand'],
    },
    says: 'longshore drift moves stuff along the beach.. groynes trap the sand that it carries',
    outcome: 'full',
    why: 'the plural is an inflection',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'Down a group the ionisation energy falls because the outer electron is further from the nucleus.',
      ideas: ['"ionisation energy"', 'outer electron + further / farther + nucleus'],
    },
    says: 'going down the group the ionization energy falls b/c the outer electron is farther from the nucleus',
    outcome: 'full',
    why: 'both spellings of ionisation are acceptable',
  },
  {
    subject: 'psychology',
    point: {
      text: 'Rehearsal moves information into long-term memory.',
      ideas: ['"rehearsal"', '"long-term memory"'],
    },
    says: 'short term memory: about 7 items. rehearsal moves the information on into long term memory',
    outcome: 'full',
    why: 'a hyphen more or less is the same term',
  },
  {
    subject: 'rocks',
    point: {
      text: 'A band of rock of one age is a stratum.',
      ideas: ['"stratum"'],
    },
    says: 'Geologists call bands of rock of one age strata. Folding can tilt them.',
    outcome: 'full',
    quotes: 'strata',
    why: 'the irregular plural is an inflection too',
  },
  {
    subject: 'coast',
    point: {
      text: 'Stones carried by the waves abrade the cliff.',
      ideas: ['"abrade"', 'stones / pebbles', 'cliff'],
    },
    says: 'The cliff is slowly abraded by the pebbles which the waves carry, so the foot of it gets smooth.',
    outcome: 'full',
    why: 'a past participle of the term, in the passive',
  },
  {
    subject: 'computing',
    point: {
      text: 'Messages are encrypted so that an eavesdropper cannot read them.',
      ideas: ['"encrypt"', 'cannot read / cannot understand / unreadable'],
    },
    says: 'the browser encrypts a message before sending, so someone who intercepts it cannot read it',
    outcome: 'full',
    why: 'the third person of the term',
  },
  {
    subject: 'plants',
    point: {
      text: 'Water moves into the root by osmosis.',
      ideas: ['osmosis / diffusion of water'],
    },
    says: 'water gets into the root by diffusion of water from the soil',
    outcome: 'full',
    why: 'no quotation marks, so the listed wording is enough',
  },
  {
    subject: 'coast',
    point: { text: 'A groyne slows the drift of sand along the beach.' },
    says: 'The drift of sand along the beach gets slowed down by a groyne.',
    outcome: 'full',
    why: 'a point with no ideas asks for no exact wording',
  },

  {
    subject: 'history',
    point: {
      text: 'Prussia and other states dropped duties between themselves in the Zollverein, a customs union.',
      ideas: ['"customs union"'],
    },
    says: 'Germany was a patchwork. From 1834 lots of the states dropped the duties between them, a kind of trade club led by Prussia. Railways helped as well. Austria was kept out.',
    outcome: 'missed',
    why: 'a trade club, where the term was asked for',
  },
]
