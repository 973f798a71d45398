import { formulaNamed, substanceNames } from '../lexicon/formula'
import { once } from '../lexicon/once'
import { flat, speciesNamed, type Reaction, type Side } from './chemistry'

/**
 * Can the text tell the reaction, or a wrong form of it? All species of one side must be there, by their formulae or their names. Reading a
 * reaction takes much longer than this.
 */
export function mayTell({ from, to }: Reaction, text: string): boolean {
  const here = flat(text).toLowerCase()
  const hasAll = (side: Side) =>
    [...side.keys()].every((species) => writtenAs(species).some((form) => here.includes(form)))
  return hasAll(from) || hasAll(to)
}

/** How a species may be written: its formula without the charge, and its names. */
function writtenAs(species: string): readonly string[] {
  return [species.split('^')[0]!, ...(namesOf().get(species) ?? [])]
}

const namesOf = once((): ReadonlyMap<string, readonly string[]> => {
  const names = new Map<string, string[]>()
  for (const name of substanceNames()) {
    const species = speciesNamed(formulaNamed(name)!)
    names.set(species, [...(names.get(species) ?? []), name])
  }
  return names
})
