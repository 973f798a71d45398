import type { PointSource, RuleExample } from './example.ts'

const drift: PointSource = {
  text: 'Name two structures that slow longshore drift.',
  any: 2,
  ideas: ['groyne', 'breakwater / jetty', 'rock armour / riprap'],
}
const plantCells: PointSource = {
  text: 'Name two parts found in a plant cell and not in an animal cell.',
  any: 2,
  ideas: ['chloroplast', 'cell wall', '(large) permanent vacuole / large vacuole'],
}
const pathogens: PointSource = {
  text: 'Name three kinds of pathogen.',
  any: 3,
  ideas: ['virus', 'bacterium', 'fungus', 'protist'],
}
const barriers: PointSource = {
  text: 'Name two barriers to trade.',
  any: 2,
  ideas: ['tariff / import duty / customs duty', 'quota', 'subsidy', 'embargo'],
}
const rate: PointSource = {
  text: 'Name three things that change the rate of a reaction.',
  any: 3,
  ideas: ['temperature', 'concentration', 'surface area', 'catalyst'],
}
const input: PointSource = {
  text: 'Name two input devices.',
  any: 2,
  ideas: ['keyboard', 'mouse', 'microphone / mic', 'scanner'],
}
const war: PointSource = {
  text: 'Name two long-term causes of the First World War.',
  any: 2,
  ideas: ['militarism / arms race', 'alliance', 'imperialism / colonies / empires', 'nationalism'],
}
const renewable: PointSource = {
  text: 'Name two renewable sources of energy.',
  any: 2,
  ideas: ['solar / sunlight', 'wind', 'tidal / tides', 'geothermal'],
  reject: ['coal is renewable', 'gas is renewable', 'oil is renewable'],
}
const memory: PointSource = {
  text: 'Name two kinds of long-term memory.',
  any: 2,
  ideas: ['episodic', 'semantic', 'procedural'],
}
const sedimentary: PointSource = {
  text: 'Name two sedimentary rocks.',
  any: 2,
  ideas: ['sandstone', 'limestone', 'chalk', 'shale'],
  reject: ['granite is a sedimentary rock', 'basalt is a sedimentary rock'],
}
const insulators: PointSource = {
  text: 'Name two materials that are good thermal insulators.',
  any: 2,
  ideas: ['wool', 'cork', 'polystyrene / foam', '(trapped) air'],
}

export const examples: readonly RuleExample[] = [
  {
    subject: 'coast',
    point: drift,
    says: 'to slow the drift: rock armour, also called riprap',
    outcome: 'partial',
    quotes: 'rock armour',
    why: 'two names of one structure',
  },
  {
    subject: 'coast',
    point: drift,
    says: 'Groynes hold back the sand that is moving along the shore. So do jetties, if they are long enough.',
    outcome: 'full',
    why: 'the second item carried by "so do"',
  },
  {
    subject: 'coast',
    point: drift,
    says: 'Longshore drift is slowed by groynes. The ferry to the island leaves from the jetty.',
    outcome: 'partial',
    quotes: 'Longshore drift is slowed by groynes',
    why: 'the jetty is named as a place to board a ferry',
  },
  {
    subject: 'cells',
    point: plantCells,
    says: 'only plant cells have chloroplasts. the chloroplasts are green. no chloroplasts in animal cells',
    outcome: 'partial',
    why: 'one item three times',
  },
  {
    subject: 'cells',
    point: plantCells,
    says: 'Plant and animal cells both have a nucleus, cytoplasm, membrane, mitochondria. Plant cells have a cell wall and a large vacuole on top of that.',
    outcome: 'full',
    quotes: 'a cell wall and a large vacuole',
    why: 'the two that count come after four that do not',
  },
  {
    subject: 'cells',
    point: plantCells,
    says: 'plant cells: cell wall, ribosomes, nucleus',
    outcome: 'partial',
    quotes: 'cell wall',
    why: 'three items, one of them on the list',
  },
  {
    subject: 'biology',
    point: pathogens,
    says: 'pathogens:\n* viruses\n* bacteria\n* fungi',
    outcome: 'full',
    why: 'irregular plurals as bare bullets',
  },
  {
    subject: 'biology',
    point: pathogens,
    says: 'Pathogens make you ill. Bacteria like salmonella, bacteria like cholera, and viruses such as measles are pathogens.',
    outcome: 'partial',
    why: 'bacteria twice count once: two of three',
  },
  {
    subject: 'biology',
    point: pathogens,
    says: 'There are several kinds of pathogen and I need three of them. They spread by air, water and touch.',
    outcome: 'missed',
    why: 'three ways of spreading are no kinds of pathogen',
  },
  {
    subject: 'trade',
    point: barriers,
    says: 'trade barriers = tariffs, quotas',
    outcome: 'full',
    why: 'a heap of names is enough for a list',
  },
  {
    subject: 'trade',
    point: barriers,
    says: 'Countries keep goods out with a tariff, in other words an import duty or customs duty.',
    outcome: 'partial',
    quotes: 'tariff',
    why: 'three words for one barrier',
  },
  {
    subject: 'trade',
    point: barriers,
    says: 'Protectionism: you can pay home firms a subsidy so they sell cheaper, or put an embargo on a country you are in dispute with, which stops all trade.',
    outcome: 'full',
    why: 'each item inside an explanation',
  },
  {
    subject: 'chemistry',
    point: rate,
    says: 'rate depends on temp, conc & whether theres a catalyst',
    outcome: 'full',
    why: 'shorthand items',
  },
  {
    subject: 'chemistry',
    point: rate,
    says: 'The rate changes with temperature: a high temperature is fast, a low temperature slow. The colour of the beaker does not matter.',
    outcome: 'partial',
    quotes: 'The rate changes with temperature',
    why: 'both ends of one factor',
  },
  {
    subject: 'chemistry',
    point: rate,
    says: 'Rate goes up with temperature, with concentration, with surface area and if a catalyst is there.',
    outcome: 'full',
    why: 'more items than asked for',
  },
  {
    subject: 'computing',
    point: input,
    says: 'Input devices\n- mic\n- mouse\nOutput devices\n- printer\n- monitor',
    outcome: 'full',
    why: 'two under the right heading',
  },
  {
    subject: 'computing',
    point: input,
    says: 'input devices: keyboard, printer, monitor, speakers',
    outcome: 'partial',
    quotes: 'keyboard',
    why: 'one input device and three for output',
  },
  {
    subject: 'computing',
    point: input,
    says: 'you can put data in with a wireless keyboard, a usb keyboard or an on-screen keyboard, all input devices',
    outcome: 'partial',
    why: 'three sorts of keyboard are one item',
  },
  {
    subject: 'history',
    point: war,
    says: 'causes of ww1 = M A I N: militarism, alliances, imperialism, nationalism',
    outcome: 'full',
    why: 'a memory aid spelt out',
  },
  {
    subject: 'history',
    point: war,
    says: 'Causes of the war: the alliance system. There was the Triple Alliance on one side. The other alliance was the Entente.',
    outcome: 'partial',
    why: 'two alliances are one cause',
  },
  {
    subject: 'history',
    point: war,
    says: 'Sarajevo was only the trigger. Underneath were the arms race between Britain and Germany at sea, and nationalism in the Balkans.',
    outcome: 'full',
    why: 'the trigger is no item, two causes follow',
  },
  {
    subject: 'energy',
    point: renewable,
    says: 'wind & solar are renewable, coal, oil and gas are not',
    outcome: 'full',
    why: 'the fossil fuels are named to be ruled out',
  },
  {
    subject: 'energy',
    point: renewable,
    says: 'Wind is renewable and coal is renewable because more is dug up every year.',
    outcome: 'contradicted',
    quotes: 'coal is renewable',
    why: 'a rejected item stated beside a right one',
  },
  {
    subject: 'energy',
    point: insulators,
    says: 'Good thermal insulators: cork, and the air trapped in a jumper. Copper and aluminium are conductors.',
    outcome: 'full',
    why: 'two items and two opposites',
  },
  {
    subject: 'energy',
    point: insulators,
    says: 'wool is a good insulator. metals are bad insulators. saucepans have a copper base',
    outcome: 'partial',
    quotes: 'wool is a good insulator',
    why: 'one item only',
  },
  {
    subject: 'psychology',
    point: memory,
    says: 'LTM splits up: knowing how to ride a bike is procedural, remembering your tenth birthday is episodic.',
    outcome: 'full',
    why: 'each item after its example',
  },
  {
    subject: 'psychology',
    point: memory,
    says: 'one kind of LTM is procedural. typing is procedural, swimming is procedural',
    outcome: 'partial',
    why: 'two examples of one kind',
  },
  {
    subject: 'rocks',
    point: sedimentary,
    says: 'Sedimentary rocks form in layers. Examples of sedimentary rocks are chalk and shale.',
    outcome: 'full',
    why: 'two of four in a plain sentence',
  },
  {
    subject: 'rocks',
    point: sedimentary,
    says: 'Marble is metamorphic, slate is metamorphic, granite is igneous.',
    outcome: 'missed',
    why: 'rocks of the other two families',
  },
]
