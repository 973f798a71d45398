import type { PointSource, RuleExample } from './example.ts'

const arteries: PointSource = {
  text: 'Arteries carry blood away from the heart.',
  ideas: ['arteries / artery + away from + heart'],
}
const tariff: PointSource = {
  text: 'A tariff is a tax on imports.',
  ideas: ['tariff + tax / duty + imports'],
}
const ram: PointSource = {
  text: 'RAM loses its contents when the power is switched off.',
  ideas: ['RAM + loses / lost / wiped + power / switched off'],
}

export const examples: readonly RuleExample[] = [
  {
    subject: 'biology',
    point: arteries,
    says: 'Arteries carry blood away from the heart. Their walls are thick and springy. Veins have valves. Capillaries are one cell thick. Arteries carry blood back to the heart at high pressure.',
    outcome: 'contradicted',
    quotes: 'Arteries carry blood back to the heart',
    why: 'right at the top of the page, wrong at the bottom',
  },
  {
    subject: 'biology',
    point: arteries,
    says: 'arteries carry blood to the heart, no wait, away from the heart',
    outcome: 'full',
    quotes: 'away from the heart',
    why: 'put right in the same breath',
  },
  {
    subject: 'trade',
    point: tariff,
    says: 'A tariff is a tax on imports. No wait, I mean a tax on exports.',
    outcome: 'contradicted',
    quotes: 'a tax on exports',
    why: 'the correction stands, and it is wrong',
  },
  {
    subject: 'trade',
    point: tariff,
    says: 'Quotas are limits. A tariff is a tax on exports. Actually no, a tariff is a tax on imports, exports are what we sell abroad.',
    outcome: 'full',
    quotes: 'a tariff is a tax on imports',
    why: '"actually no" takes the first version back',
  },
  {
    subject: 'computing',
    point: ram,
    says: 'memory:\n- RAM keeps its contents when the power is off\n- ROM holds the start-up program\n- cache is fastest\n- RAM loses everything when the power is switched off',
    outcome: 'contradicted',
    quotes: 'RAM keeps its contents when the power is off',
    why: 'both versions stand, neither is withdrawn',
  },
  {
    subject: 'computing',
    point: ram,
    says: "It is a mistake to think RAM keeps its contents when the power is off. It doesn't: RAM loses them as soon as the power goes.",
    outcome: 'full',
    why: 'the wrong version is only named to be denied',
  },
  {
    subject: 'electricity',
    point: {
      text: 'The current is the same at every point in a series circuit.',
      ideas: ['current + same', 'series'],
      reject: ['the current is shared between the components in series'],
    },
    says: 'In a series circuit the current is the same all the way round. Voltage is shared. In series the current is shared between the components, so two lamps are dimmer.',
    outcome: 'contradicted',
    quotes: 'In series the current is shared between the components',
    why: 'a listed wrong statement beside the right one',
  },
  {
    subject: 'electricity',
    point: {
      text: 'The current is the same at every point in a series circuit.',
      ideas: ['current + same', 'series'],
      reject: ['the current is shared between the components in series'],
    },
    says: 'series: current is the same everywhere, voltage is shared between the components. parallel: current is shared between the branches, voltage is the same',
    outcome: 'full',
    why: 'what is shared is the voltage, and the current only in parallel',
  },
  {
    subject: 'history',
    point: {
      text: 'Henry Tudor defeated Richard III at Bosworth.',
      ideas: ['Henry Tudor / Henry VII + defeated / beat / won', 'Bosworth'],
    },
    says: 'Wars of the Roses, York v Lancaster. Richard III defeated Henry Tudor at Bosworth, scratch that, Henry Tudor defeated Richard III at Bosworth.',
    outcome: 'full',
    quotes: 'Henry Tudor defeated Richard III at Bosworth',
    why: 'scratched and said again the right way round',
  },
  {
    subject: 'history',
    point: {
      text: 'Henry Tudor defeated Richard III at Bosworth.',
      ideas: ['Henry Tudor / Henry VII + defeated / beat / won', 'Bosworth'],
    },
    says: 'Henry Tudor won at Bosworth and became Henry VII. He married Elizabeth of York. At Bosworth Richard III defeated Henry Tudor with the help of the Stanleys.',
    outcome: 'contradicted',
    quotes: 'Richard III defeated Henry Tudor',
    why: 'winner and loser change places two lines later',
  },
  {
    subject: 'psychology',
    point: {
      text: 'Coding in short-term memory is mainly acoustic.',
      ideas: ['short-term memory / STM', 'acoustic / by sound'],
      reject: ['coding in short-term memory is mainly semantic'],
    },
    says: 'STM: acoustic coding, words that sound alike get mixed up. LTM: semantic coding, words that mean the same get mixed up.',
    outcome: 'full',
    why: 'semantic is said of the other store',
  },
  {
    subject: 'psychology',
    point: {
      text: 'The spinal cord is part of the central nervous system.',
      ideas: ['spinal cord + central nervous system / CNS'],
    },
    says: 'The CNS is the brain and the spinal cord. It sends messages through neurones. The spinal cord is not part of the CNS, it is part of the peripheral nervous system.',
    outcome: 'contradicted',
    quotes: 'The spinal cord is not part of the CNS',
    why: 'affirmed once, denied once',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'In electrolysis the positive ions move to the cathode.',
      ideas: ['positive ions / cations + cathode / negative electrode'],
    },
    says: 'The salt must be molten or dissolved. positive ions go to the cathode. Positive ions go to the positive electrode and lose their charge there.',
    outcome: 'contradicted',
    quotes: 'Positive ions go to the positive electrode',
    why: 'the same ions sent to both electrodes',
  },
  {
    subject: 'chemistry',
    point: {
      text: 'In electrolysis the anode is the positive electrode.',
      ideas: ['anode + positive'],
    },
    says: 'Electrolysis splits a compound using dc. The anode is negative - sorry, I mean the anode is positive, as in PANIC: positive anode, negative is cathode.',
    outcome: 'full',
    quotes: 'the anode is positive',
    why: '"sorry, I mean" corrects the sign',
  },
  {
    subject: 'forces',
    point: {
      text: 'In a vacuum all objects fall with the same acceleration.',
      ideas: ['vacuum / no air', 'same + acceleration / rate'],
      reject: ['heavier objects fall faster in a vacuum'],
    },
    says: 'Aristotle said heavier objects fall faster, but he was wrong. In a vacuum all objects fall at the same rate, hammer and feather.',
    outcome: 'full',
    quotes: 'In a vacuum all objects fall at the same rate',
    why: 'an old view reported and called wrong',
  },
  {
    subject: 'biology',
    point: {
      text: 'Plants respire all the time, by day and by night.',
      ideas: ['plants + respire / respiration + all the time / always / day and night'],
      reject: ['plants only respire at night'],
    },
    says: 'Plants respire all the time to get energy from glucose. Photosynthesis needs light so it is in the day, whereas plants only respire at night.',
    outcome: 'contradicted',
    quotes: 'plants only respire at night',
    why: 'undone in the second half of a later sentence',
  },
  {
    subject: 'biology',
    point: {
      text: 'Veins carry blood towards the heart.',
      ideas: ['veins / vein + to / towards / back to + heart'],
    },
    says: 'Veins carry blood away from the heart. The aorta is the biggest vein. No wait, the aorta is an artery.',
    outcome: 'contradicted',
    quotes: 'Veins carry blood away from the heart',
    why: 'the correction is about the aorta only',
  },
  {
    subject: 'biology',
    point: {
      text: 'Diffusion is passive: it needs no energy from respiration.',
      ideas: ['passive / no energy / does not need energy'],
    },
    says: '~~Diffusion needs energy from respiration.~~ Diffusion is passive, it needs no energy. Active transport does.',
    outcome: 'full',
    quotes: 'Diffusion is passive, it needs no energy',
    why: 'the wrong sentence is struck out',
  },
  {
    subject: 'geography',
    point: {
      text: 'Oceanic crust is denser than continental crust.',
      ideas: ['oceanic + denser / more dense'],
    },
    says: 'oceanic crust is denser so it sinks under the other plate. oceanic crust: thin, young. continental crust: thick, old, and denser than oceanic crust',
    outcome: 'contradicted',
    quotes: 'denser than oceanic crust',
    why: 'a table at the end turns the comparison round',
  },
  {
    subject: 'geography',
    point: {
      text: 'Oceanic crust is denser than continental crust.',
      ideas: ['oceanic + denser / more dense'],
    },
    says: 'continental crust is denser than oceanic crust. I mean oceanic crust is denser than continental crust, that is why it gets pushed under',
    outcome: 'full',
    quotes: 'oceanic crust is denser than continental crust',
    why: '"I mean" replaces the sentence before',
  },
]
